import { demoBag } from '../../../db/demo/index.ts';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import { bagFile } from '../../support/bags.ts';
import { mulberry32 } from '../../support/random.ts';

/**
 * Bag files of invented players, as a coach has them: the two demos played shorter or longer, with other handicaps and
 * budgets. Always the same for a seed; the 4th plays with pain, the 8th has a bag without a fault, the 12th no carry.
 */
export function inventedRoster(players: number, seed = 1): { name: string; file: BagFile }[] {
  const random = mulberry32(seed);
  return Array.from({ length: players }, (_, i) => {
    const name = `Invented player ${String(i + 1).padStart(2, '0')}`;
    const usual = demoBag(i % 3 === 2 ? 'range-bag' : 'invented-bag') as BagFile;
    const scale = 0.86 + 0.24 * random();
    const file: BagFile = {
      ...usual,
      player: { ...usual.player, name, handicap: Math.round(300 * random()) / 10 },
      clubs: usual.clubs.map((club) => stretched(club, scale)),
      budget: { amount: 60 + 20 * Math.floor(10 * random()) },
    };
    if (file.player.driverSpeed !== undefined) file.player.driverSpeed = Math.round(92 * scale);
    if (i === 3) file.player.pain = true;
    if (i === 7) return { name, file: bagFile({}, { name }) };
    if (i === 11)
      file.clubs = file.clubs.map(
        ({ carry: _carry, carrySd: _sd, shots: _shots, total: _total, ...club }) => club,
      );
    return { name, file };
  });
}

function stretched(club: BagFile['clubs'][number], scale: number): BagFile['clubs'][number] {
  return club.carry === undefined ? club : { ...club, carry: Math.round(club.carry * scale * 10) / 10 };
}
