import { toMajor } from '../../../contract/money.ts';
import { fromYards, toYards } from '../../../contract/units.ts';
import { findBag } from '../../../../db/repositories/bags/bags.ts';
import { carriesOf, deleteCarry } from '../../../../db/repositories/bags/carries.ts';
import { listClubs, updateClub } from '../../../../db/repositories/bags/clubs.ts';
import { StorageError } from '../../../../db/errors.ts';
import type { Money } from '../../../../db/row.ts';
import { clubFile } from '../../bags/bag-rows.ts';
import { checkedEdit, clubOf } from '../../bags/bag-store.ts';
import { recordDated } from '../../bags/club-carry.ts';
import { carryTrend } from '../../bags/carry-trend.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { moneyIn } from '../../prices/money-in.ts';
import { clubStep } from '../../records/steps.ts';

export const clubHandlers: Handlers<Subject<'clubs'>> = {
  'clubs.history': ({ db }, { bagId, clubId }) => {
    const { distanceUnit } = findBag(db, bagId);
    const shown = (yards: number) => Math.round(fromYards(yards, distanceUnit) * 10) / 10;
    const entries = carriesOf(db, clubOf(db, bagId, clubId).id);
    const trend = carryTrend(entries);
    return {
      entries: entries.map(({ id, onDate, source, carryYd, carrySdYd, shots, totalYd, importId }, i) => ({
        id,
        on: onDate,
        source,
        carry: shown(carryYd),
        ...(carrySdYd === undefined ? {} : { carrySd: shown(carrySdYd) }),
        ...(shots === undefined ? {} : { shots }),
        ...(totalYd === undefined ? {} : { total: shown(totalYd) }),
        imported: importId !== undefined,
        counts: i === 0,
      })),
      trend:
        trend === null
          ? null
          : { perYear: shown(trend.perYearYd), low: shown(trend.lowYd), high: shown(trend.highYd) },
    };
  },
  'clubs.recordCarry': {
    step: ({ bagId, clubId, on }, { db }) => ({ ...clubStep(db, bagId, clubId), on }),
    run: ({ db, now }, { bagId, clubId, on, carry, carrySd, shots, total }) => {
      const row = clubOf(db, bagId, clubId);
      const { distanceUnit, ...bag } = findBag(db, bagId);
      const units = { distance: distanceUnit, speed: bag.speedUnit, currency: bag.currency };
      const given = {
        carry,
        ...(carrySd === undefined ? {} : { carrySd }),
        ...(shots === undefined ? {} : { shots }),
        ...(total === undefined ? {} : { total }),
      };
      const { carry: _carry, carrySd: _sd, shots: _shots, total: _total, ...rest } = clubFile(row, units);
      // The checks of a bag file hold for a carry of any day.
      checkedEdit(db, bagId, (file) => ({
        ...file,
        sets: [],
        clubs: [...file.clubs.filter((club) => club.id !== clubId), { ...rest, ...given }],
      }));
      const yd = (value: number) => toYards(value, distanceUnit);
      recordDated(
        db,
        row.id,
        {
          onDate: on,
          source: shots === undefined ? 'stated' : 'measured',
          carryYd: yd(carry),
          ...(carrySd === undefined ? {} : { carrySdYd: yd(carrySd) }),
          ...(shots === undefined ? {} : { shots }),
          ...(total === undefined ? {} : { totalYd: yd(total) }),
        },
        now(),
      );
      return null;
    },
  },
  'clubs.removeCarry': {
    step: ({ bagId, clubId }, { db }) => clubStep(db, bagId, clubId),
    run: ({ db }, { bagId, clubId, carryId }) => {
      const { id } = clubOf(db, bagId, clubId);
      if (!carriesOf(db, id).some((entry) => entry.id === carryId)) {
        const remedy = 'Look at the history again.';
        throw new StorageError(
          'missing',
          `There is no carry ${String(carryId)} of ${clubId}`,
          remedy,
          db.name,
        );
      }
      deleteCarry(db, carryId);
      return null;
    },
  },
  'clubs.elsewhere': ({ db }, { bagId }) => {
    findBag(db, bagId);
    const money = ({ minor, currency }: Money) => ({ amount: toMajor(minor, currency), currency });
    return (['shelf', 'sold'] as const).flatMap((place) =>
      listClubs(db, bagId, place).map(({ key, kind, label, sold, soldOn, bought, boughtOn }) => ({
        clubId: key,
        kind,
        ...(label === undefined ? {} : { label }),
        place,
        ...(sold === undefined ? {} : { soldFor: money(sold) }),
        ...(soldOn === undefined ? {} : { soldOn }),
        ...(bought === undefined ? {} : { boughtFor: money(bought) }),
        ...(boughtOn === undefined ? {} : { boughtOn }),
      })),
    );
  },
  'clubs.move': {
    step: ({ bagId, clubId, to }, { db }) => ({ ...clubStep(db, bagId, clubId), to }),
    run: ({ db, today }, { bagId, clubId, to, price }) => {
      const row = clubOf(db, bagId, clubId);
      const { currency } = findBag(db, bagId);
      const sold = price === undefined ? null : moneyIn(price, currency, '$.price');
      updateClub(db, row.id, {
        place: to,
        sold: to === 'sold' ? sold : null,
        soldOn: to === 'sold' ? today() : null,
      });
      // Back in the bag it must fit what is there.
      if (to === 'bag') checkedEdit(db, bagId, (file) => file);
      return null;
    },
  },
};
