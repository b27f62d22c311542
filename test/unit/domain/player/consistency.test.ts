import { describe, expect, it } from 'vitest';
import { inconsistencies } from '../../../../src-main/domain/player/consistency.ts';
import { playerModel } from '../../../../src-main/domain/player/model.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, domainBag, withClub } from '../../../support/bags.ts';

const of = (file: BagFile) => {
  const bag = domainBag(file);
  return inconsistencies(bag, playerModel(bag));
};

describe('inconsistencies', () => {
  it('finds none in a usual bag', () => {
    expect(of(bagFile())).toEqual([]);
  });
  it('asks when a weaker loft carries further', () => {
    expect(of(withClub(bagFile(), '8i', { carry: 136 }))).toEqual([
      { kind: 'carry-rises-with-loft', clubs: ['7i', '8i'], byYd: 7 },
    ]);
  });
  it('lets a few yards pass', () => {
    expect(of(withClub(bagFile(), '8i', { carry: 134 }))).toEqual([]);
  });
  it('asks whether a drive beyond the speed is a total', () => {
    expect(of(withClub(bagFile(), 'driver', { carry: 222 }))).toMatchObject([
      { kind: 'maybe-total', clubs: ['driver'] },
    ]);
  });
  it('says when a drive is impossible for the speed', () => {
    expect(of(withClub(bagFile(), 'driver', { carry: 260 }))).toMatchObject([
      { kind: 'impossible-for-speed', clubs: ['driver'], carryYd: 260 },
    ]);
  });
  it('cannot tell beyond potential without a speed', () => {
    const file = withClub(bagFile(), 'driver', { carry: 260 });
    const { driverSpeed: _speed, ...player } = file.player;
    expect(of({ ...file, player })).toEqual([]);
  });
});
