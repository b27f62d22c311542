import type { BagFile } from '../../contract/formats/bag-file.ts';
import { createPlayer } from '../../../db/repositories/bags/players.ts';
import { writeBag } from '../../../db/repositories/bags/whole-bag.ts';
import type { Db } from '../../../db/sqlite.ts';
import { playerRow, wholeBag } from './bag-rows.ts';

/** Stores a checked bag file as a new player with this bag of now. */
export function addPlayer(db: Db, file: BagFile, at: string): { playerId: number; bagId: number } {
  const playerId = createPlayer(db, playerRow(file.player, file.units), at);
  return { playerId, bagId: writeBag(db, playerId, wholeBag(file), at) };
}
