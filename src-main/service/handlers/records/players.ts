import type { BagFile } from '../../../contract/formats/bag-file.ts';
import { MAX_BAG_BYTES, readBagFile } from '../../../contract/formats/read-bag.ts';
import { toMph } from '../../../contract/units.ts';
import { demoBag } from '../../../../db/demo/index.ts';
import { erasePlayer } from '../../../../db/erase.ts';
import { listBags } from '../../../../db/repositories/bags/bags.ts';
import { listClubs } from '../../../../db/repositories/bags/clubs.ts';
import { addCostLine, costLinesOf } from '../../../../db/repositories/prices/cost-lines.ts';
import {
  archivePlayer,
  listPlayers,
  readPlayer,
  roster,
  touchPlayer,
  unarchivePlayer,
  updatePlayer,
} from '../../../../db/repositories/bags/players.ts';
import { getSetting, setSetting } from '../../../../db/repositories/settings.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { addPlayer } from '../../bags/add-player.ts';
import { backupsOf } from '../../records/backups.ts';
import { checkedEdit, loadOwnBag } from '../../bags/bag-store.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { playerStep } from '../../records/steps.ts';
import { clubNaming } from '../../bags/club-naming.ts';
import { usualBag } from '../../bags/usual-bag.ts';
import { refuseUnknownArchetypes } from '../../../worker/answer.ts';
import { withoutUndefined } from '../../without-undefined.ts';

export const playerHandlers: Handlers<Subject<'players'>> = {
  'players.roster': ({ db }, { archived }) => (archived === true ? archivedRoster(db) : currentRoster(db)),
  'players.create': {
    step: ({ name }) => ({ player: name }),
    run: ({ db, now }, { name, handicap, units, locale }) => {
      const opened = addPlayer(db, usualBag(name, handicap, units, locale), now());
      takeDefaultCosts(db, opened.bagId, units.currency);
      return opened;
    },
  },
  'players.update': {
    step: ({ playerId, patch }, { db }) => ({ ...playerStep(db, playerId), fields: Object.keys(patch) }),
    run: ({ db }, { playerId, patch }) => {
      const bagId = bagOfNow(db, playerId);
      const changes = Object.fromEntries(Object.entries(patch).filter(([, value]) => value !== undefined));
      const { units } = checkedEdit(db, bagId, (file) => ({
        ...file,
        player: withoutNulls({ ...file.player, ...changes }),
      }));
      const { driverSpeed, ...same } = patch;
      updatePlayer(db, playerId, {
        ...withoutUndefined(same),
        ...(driverSpeed === undefined
          ? {}
          : { driverSpeedMph: driverSpeed === null ? null : toMph(driverSpeed, units.speed) }),
      });
      return null;
    },
  },
  'players.duplicate': {
    step: ({ playerId }, { db }) => playerStep(db, playerId),
    run: ({ db, now }, { playerId, locale }) => {
      const { file } = loadOwnBag(db, bagOfNow(db, playerId));
      const name = clubNaming(locale).copyOf(file.player.name).slice(0, 200);
      return addPlayer(db, { ...file, player: { ...file.player, name } }, now());
    },
  },
  'players.archive': {
    step: ({ playerId }, { db }) => playerStep(db, playerId),
    run: ({ db, now }, { playerId }) => {
      archivePlayer(db, playerId, now());
      return null;
    },
  },
  'players.unarchive': {
    step: ({ playerId }, { db }) => playerStep(db, playerId),
    run: ({ db }, { playerId }) => {
      unarchivePlayer(db, playerId);
      return null;
    },
  },
  'players.look': ({ db, now }, { playerId }) => {
    touchPlayer(db, playerId, now());
    return null;
  },
  'players.importBag': {
    step: ({ text }) => ({ player: bagIn(text).player.name }),
    run: ({ db, now, catalogue }, { text }) => {
      const file = bagIn(text);
      refuseUnknownArchetypes(file, catalogue());
      return addPlayer(db, file, now());
    },
  },
  'players.erase': ({ db, records }, { playerId }) => {
    const { logEmptied } = erasePlayer(db, playerId);
    return { logEmptied, backups: records.file === null ? 0 : backupsOf(records.file).length };
  },
  'players.openDemo': {
    step: ({ demo }) => ({ player: demoFile(demo).player.name }),
    run: ({ db, now }, { demo }) => {
      const known = getSetting(db, `demo.${demo}`);
      const there = currentRoster(db).find((line) => line.id === known);
      if (there) return { playerId: there.id, bagId: there.bagId };
      const opened = addPlayer(db, demoFile(demo), now());
      setSetting(db, `demo.${demo}`, opened.playerId);
      return opened;
    },
  },
};

function bagIn(text: string): BagFile {
  return readBagFile(text.length > MAX_BAG_BYTES ? text : new TextEncoder().encode(text));
}

function demoFile(demo: Parameters<typeof demoBag>[0]): BagFile {
  return readBagFile(JSON.stringify(demoBag(demo)));
}

/** A new bag begins with the user's usual costs, those in another currency left out. */
function takeDefaultCosts(db: Db, bagId: number, currency: string): void {
  for (const { id: _id, ...line } of costLinesOf(db, null)) {
    if (line.amount === undefined || line.amount.currency === currency) addCostLine(db, bagId, line);
  }
}

function bagOfNow(db: Db, playerId: number): number {
  readPlayer(db, playerId);
  const bag = listBags(db, playerId)[0];
  if (!bag) throw new Error(`player ${String(playerId)} has no bag`);
  return bag.id;
}

/** Everybody with a bag; one whose bag was put away is known by the newest of the others. */
function currentRoster(db: Db) {
  return roster(db).map((line) => ({ ...line, bagId: line.bagId ?? bagOfNow(db, line.id) }));
}

function archivedRoster(db: Db) {
  return listPlayers(db, { archived: true }).map(({ id, name, handicap, lastLookedAt }) => {
    const bagId = bagOfNow(db, id);
    return {
      id,
      bagId,
      name,
      handicap,
      clubs: listClubs(db, bagId).length,
      ...(lastLookedAt === undefined ? {} : { lastLookedAt }),
    };
  });
}

function withoutNulls(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== null));
}
