import type { UndoableCall } from '../../../src-main/contract/calls/index.ts';
import type { Step } from '../../../src-main/contract/step.ts';
import { words } from '../../words/index.ts';
import type { StepField } from '../../words/en/steps.ts';
import type { Formats } from '../format/formats.ts';

/** More fields than this are not listed in the name of a step. */
const MOST_FIELDS = 3;

/** @param nameOf what an archetype is called; its id where nobody knows. */
export function stepText(step: Step, formats: Formats, nameOf: (archetype: string) => string): string {
  const text = words.steps;
  const { did, player, club, archetype, named, money, on, to } = step;
  // A step from elsewhere has a plain name of its own.
  if (!Object.hasOwn(text.did, did)) return named ?? did;
  const of = club ? clubText(club, formats) : archetype === undefined ? named : nameOf(archetype);
  const what = of ?? (isOfPlayer(did) ? (player ?? '') : '');
  const more =
    step.fields !== undefined
      ? fieldsText(step.fields, formats)
      : money
        ? formats.moneyOf(money.minor, money.currency)
        : to
          ? text.moved[to]
          : on === undefined
            ? ''
            : formats.day(on);
  const said = text.did[did as UndoableCall](what, more);
  return player === undefined || what === player ? said : text.of(said, player);
}

function isOfPlayer(did: string): boolean {
  return did.startsWith('players.') || did === 'files.importBag';
}

function clubText({ label, kind, loftDeg }: NonNullable<Step['club']>, formats: Formats): string {
  if (label !== undefined) return label;
  return words.steps.club(words.kinds[kind], loftDeg === undefined ? '' : `${formats.number(loftDeg)}°`);
}

function fieldsText(fields: readonly string[], formats: Formats): string {
  const known: Readonly<Record<string, string>> = words.steps.fields;
  const names = [...new Set(fields.flatMap((field) => known[field as StepField] ?? []))];
  return names.length === 0 || names.length > MOST_FIELDS ? words.steps.someFields : formats.list(names);
}
