import { describe, expect, it } from 'vitest';
import { reachOf } from '../../../../../src-main/domain/player/need/reach.ts';

const driver = { clubId: 'driver', kind: 'driver', carryYd: 230 };
const wood = { clubId: '5w', kind: 'fairway', carryYd: 200 };

describe('reachOf', () => {
  it('is null without a club', () => {
    expect(reachOf([])).toBeNull();
  });
  it('tells the tee from the ground', () => {
    expect(reachOf([wood, driver])).toEqual({ teeYd: 230, teeRollYd: 20, deckYd: 200, deckWishYd: 207 });
  });
  it('wishes for no more than the longest club when that is a long one already', () => {
    expect(reachOf([driver, { ...wood, carryYd: 215 }])?.deckWishYd).toBe(215);
  });
  it('plays the driver from the ground when there is nothing else', () => {
    expect(reachOf([driver])).toEqual({ teeYd: 230, teeRollYd: 20, deckYd: 230, deckWishYd: 230 });
  });
  it('is a drive’s where a wood behind it in the ladder carries as far', () => {
    const far = { ...wood, carryYd: 230 };
    expect(reachOf([driver, far])).toMatchObject({ teeYd: 230, teeRollYd: 20, deckYd: 230 });
  });
  it('has no roll without a driver, nor when another club is longer', () => {
    expect(reachOf([wood])).toEqual({ teeYd: 200, teeRollYd: 0, deckYd: 200, deckWishYd: 200 });
    expect(reachOf([{ ...driver, carryYd: 190 }, wood])).toMatchObject({ teeYd: 200, teeRollYd: 0 });
  });
});
