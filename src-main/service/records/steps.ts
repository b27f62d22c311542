import { toMinor } from '../../contract/money.ts';
import { stepSchema, type Step } from '../../contract/step.ts';
import type { Db } from '../../../db/sqlite.ts';
import { findBag } from '../../../db/repositories/bags/bags.ts';
import { listClubs } from '../../../db/repositories/bags/clubs.ts';
import { readPlayer } from '../../../db/repositories/bags/players.ts';

/** What a handler tells of its step; the call's name is added by the dispatcher. */
export type StepParts = Omit<Step, 'did'>;

const LONGEST_NAME = 80;
const MOST_FIELDS = 12;

/** A step as the history keeps it, at most 1000 letters. */
export function stepLabel(did: string, parts: StepParts): string {
  const { player, club, named, fields, ...rest } = parts;
  const step: Step = {
    did,
    ...rest,
    ...(player === undefined ? {} : { player: short(player) }),
    ...(club === undefined
      ? {}
      : { club: { ...club, ...(club.label === undefined ? {} : { label: short(club.label) }) } }),
    ...(named === undefined ? {} : { named: short(named) }),
    ...(fields === undefined ? {} : { fields: fields.slice(0, MOST_FIELDS) }),
  };
  return JSON.stringify(step);
}

/** The step that a label tells of; a label in plain words is told as it is. */
export function stepOf(label: string): Step {
  try {
    return stepSchema.parse(JSON.parse(label));
  } catch {
    return { did: '', named: label };
  }
}

/** Whose it is; nothing for a player who is gone, since the edit itself has the better message. */
export function playerStep(db: Db, playerId: number): StepParts {
  return found(() => ({ player: readPlayer(db, playerId).name }));
}

export function bagStep(db: Db, bagId: number): StepParts {
  return found(() => playerStep(db, findBag(db, bagId).playerId));
}

/** A club as it is called before the edit, wherever it is. */
export function clubStep(db: Db, bagId: number, clubId: string): StepParts {
  const club = (['bag', 'shelf', 'sold'] as const)
    .flatMap((place) => listClubs(db, bagId, place))
    .find(({ key }) => key === clubId);
  return {
    ...bagStep(db, bagId),
    ...(club === undefined ? { named: clubId } : { club: clubNamed(club) }),
  };
}

/** An amount in the bag's currency; left out where that has no such digits. */
export function amountStep(db: Db, bagId: number, amount: number): StepParts {
  return found(() => {
    const { currency } = findBag(db, bagId);
    const minor = toMinor(amount, currency);
    return minor === null ? {} : { money: { minor, currency } };
  });
}

type Named = Required<StepParts>['club'];

/** What is needed to call a club by its name. */
export function clubNamed({ kind, label, loftDeg }: Unset<Named>): Named {
  return {
    kind,
    ...(label === undefined ? {} : { label }),
    ...(loftDeg === undefined ? {} : { loftDeg }),
  };
}

type Unset<T> = { [K in keyof T]: T[K] | undefined } & { kind: Named['kind'] };

function found(find: () => StepParts): StepParts {
  try {
    return find();
  } catch {
    return {};
  }
}

/** By whole code points, so that no half of one is left. */
function short(name: string): string {
  const letters = [...name];
  return letters.length <= LONGEST_NAME ? name : `${letters.slice(0, LONGEST_NAME - 1).join('')}…`;
}
