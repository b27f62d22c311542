import type { BesideChoice } from '../../contract/calls/answers/beside.ts';
import { findBag, listBags } from '../../../db/repositories/bags/bags.ts';
import { listClubs } from '../../../db/repositories/bags/clubs.ts';
import { lookedAtLast, readPlayer } from '../../../db/repositories/bags/players.ts';
import type { PlayerName } from '../../../db/repositories/search.ts';
import type { Context } from '../handler.ts';

/** Bags to set beside this one, at most `limit`; the order is that of the contract. @throws StorageError 'missing' */
export function besideChoices(
  { db, search, catalogue, today }: Pick<Context, 'db' | 'search' | 'catalogue' | 'today'>,
  bagId: number,
  text: string,
  limit: number,
): BesideChoice[] {
  const { id, name, archivedAt } = readPlayer(db, findBag(db, bagId).playerId);
  const own = { playerId: id, name, archived: archivedAt !== undefined };
  // One more than asked for: the player's own bag may be all that one of them has.
  const players: PlayerName[] =
    text.trim() === ''
      ? [own, ...lookedAtLast(db, limit + 1).filter(({ playerId }) => playerId !== own.playerId)]
      : search.all(db, text, limit, { catalogue: catalogue(), today: today() }).players;
  return players
    .flatMap(({ playerId, name, archived }) =>
      listBags(db, playerId).map(({ id, name: bag, state }) => ({
        bagId: id,
        playerId,
        player: name,
        archived,
        bag: bag ?? null,
        state,
        clubs: listClubs(db, id).length,
      })),
    )
    .filter((choice) => choice.bagId !== bagId)
    .slice(0, limit);
}
