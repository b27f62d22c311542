import { describe, expect, it } from 'vitest';
import { german } from '../../../../src-main/domain/advice/words/de.ts';
import { english } from '../../../../src-main/domain/advice/words/en.ts';
import { adviceWords } from '../../../../src-main/domain/advice/words/index.ts';
import type { Archetype } from '../../../../src-main/domain/bag/types.ts';

// Which sentence is said when, and that it has the figures and names it was given; not how it reads.
const LANGUAGES = [
  {
    words: english,
    says: {
      launch: { '-1': /launches low/, '0': /^(?!.*launch)/i, '1': /launches high/ },
      spin: { '-1': /spins little/, '0': /^(?!.*spin)/i, '1': /spins much/ },
      head: { '-1': /higher-spin head/, '0': /Another head/, '1': /lower-spin head/ },
      leftMiss: /left/,
      fit: { 'too-soft': /soft/, 'too-stiff': /stiff/ },
      behind: { true: /less/, false: /more/ },
      coach: /coach/,
      weaker: { true: /weaker/, false: /stronger/ },
      measure: /measured/,
      course: { given: /course given/, default: /default course/ },
      never: /hardly ever/,
      spinTier: { low: /low spin/, mid: /^(?!.*spin)/, high: /high spin/ },
      own: { limits: /gap limits/, tiers: /forgiveness/, weights: /weights/ },
    },
  },
  {
    words: german,
    says: {
      launch: { '-1': /flacher Abflug/, '0': /^(?!.*Abflug)/, '1': /hoher Abflug/ },
      spin: { '-1': /wenig Spin/, '0': /^(?!.*Spin)/, '1': /viel Spin/ },
      head: { '-1': /Kopf mit mehr Spin/, '0': /anderer Kopf/, '1': /Kopf mit weniger Spin/ },
      leftMiss: /links/,
      fit: { 'too-soft': /weich/, 'too-stiff': /hart/ },
      behind: { true: /weniger/, false: /mehr/ },
      coach: /Trainer/,
      weaker: { true: /schwächer/, false: /stärker/ },
      measure: /messen/,
      course: { given: /angegebener Platz/, default: /üblicher Platz/ },
      never: /so gut wie nie/,
      spinTier: { low: /niedriger Spin/, mid: /^(?!.*Spin)/, high: /hoher Spin/ },
      own: { limits: /Abstandsgrenzen/, tiers: /Fehlerverzeihung/, weights: /Gewichte/ },
    },
  },
] as const;

const hybrid: Archetype = {
  id: 'h',
  kind: 'hybrid',
  loftDeg: 22,
  forgiveness: 3,
  spinTier: 'mid',
  lengthIn: 40,
};
const irons: Archetype = {
  ...hybrid,
  kind: 'irons',
  loftDeg: 31,
  members: [
    { kind: 'iron', number: '5', loftDeg: 24 },
    { kind: 'iron', number: '6', loftDeg: 27 },
    { kind: 'wedge', number: 'GW', loftDeg: 44 },
  ],
};

describe.each(LANGUAGES)('what is said in $words.language', ({ words, says }) => {
  it('which way launch and spin are off, which head that asks for, and the left miss only where it is', () => {
    for (const launch of [-1, 0, 1] as const) {
      for (const spin of [-1, 0, 1] as const) {
        if (launch === 0 && spin === 0) continue;
        for (const left of [true, false]) {
          const text = words.driverLaunchSpin({ club: 'Mine', launch, spin, left });
          expect(text).toContain('Mine');
          expect(text).toMatch(says.launch[launch]);
          expect(text).toMatch(says.head[spin]);
          if (spin !== 0 || launch === 1) expect(text.split('.')[0]).toMatch(says.spin[spin]);
          expect(says.leftMiss.test(text)).toBe(left);
          expect(/ (and|und) /.test(text.split('.')[0] ?? '')).toBe(launch !== 0 && spin !== 0);
        }
      }
    }
  });
  it('whether a shaft is soft or stiff, and whether the miss fits that', () => {
    for (const fit of ['too-soft', 'too-stiff'] as const) {
      const told = (miss: boolean) => words.flex({ club: 'Mine', flex: 'R', fit, speed: '91 mph', miss });
      for (const figure of ['Mine', 'R', '91 mph']) expect(told(true)).toContain(figure);
      expect(told(true)).toMatch(says.fit[fit]);
      expect(told(true).length).toBeGreaterThan(told(false).length);
    }
  });
  it('whether a driver carries less or more, and the coach only where launch and spin are fine', () => {
    for (const behind of [true, false]) {
      for (const fitIsFine of [true, false]) {
        const text = words.driverBehindIrons({ club: 'Mine', by: '21 yd', behind, fitIsFine });
        expect(text).toContain('Mine');
        expect(text).toContain('21 yd');
        expect(text.split('.')[0]).toMatch(says.behind[`${behind}`]);
        expect(says.coach.test(text)).toBe(fitIsFine);
      }
    }
  });
  it('the clubs and the usual gap of a falling long end, whatever the cause', () => {
    for (const cause of ['flat-ball-speed', 'wide-spread', 'make-up', 'unknown', 'odd-pair'] as const) {
      const text = words.longEnd({ clubs: '5w, 4h', cause, usual: '11 yd' });
      expect(text).toContain('5w, 4h');
      expect(text).toContain('11 yd');
      expect(says.coach.test(text)).toBe(cause === 'flat-ball-speed' || cause === 'wide-spread');
      expect(words.questions.longEnd({ clubs: '5w, 4h', cause })).toContain('5w, 4h');
    }
    const asked = (cause: 'unknown' | 'odd-pair') => words.questions.longEnd({ clubs: 'A', cause });
    expect(asked('unknown')).not.toBe(asked('odd-pair'));
  });
  it('which way a loft is bent, and a strong one to be measured only where it was not', () => {
    for (const weaker of [true, false]) {
      const text = words.bend({ club: 'Mine', by: '1.5°', weaker, longer: 'gw', shorter: 'sw' });
      for (const figure of ['Mine', '1.5°', 'gw', 'sw']) expect(text).toContain(figure);
      expect(text).toMatch(says.weaker[`${weaker}`]);
    }
    expect(words.strongLofts({ club: 'Mine', measured: false })).toMatch(says.measure);
    expect(words.strongLofts({ club: 'Mine', measured: true })).not.toMatch(says.measure);
  });
  it('the course that a need is reckoned for', () => {
    for (const source of ['given', 'default'] as const) {
      const text = words.needSource({ holes: 9, parTotal: 34, totalYd: 2871.6, source });
      expect(text).toMatch(says.course[source]);
      for (const figure of ['9', '34', '2872']) expect(text).toContain(figure);
    }
  });
  it('how often a club is asked for, or that it is hardly ever', () => {
    const told = (need: string) => words.whyThisClub({ club: 'Mine', need });
    expect(told('0.2')).toContain('0.2');
    expect(told('0.2')).not.toMatch(says.never);
    expect(told('0.0')).toMatch(says.never);
    expect(told('0.0')).not.toContain('0.0');
  });
  it('which clubs of too many go, once that is known', () => {
    const told = (dropped: string) => words.count({ count: 16, most: 14, dropped });
    expect(told('gw, lw')).toContain('gw, lw');
    expect(told('gw, lw')).toContain(told(''));
    for (const figure of ['16', '14']) expect(told('')).toContain(figure);
    expect(told('')).not.toMatch(/:/);
  });
  it('an unsure gap on either side, with its clubs, the gap and the limit', () => {
    for (const state of ['unsure-wide', 'unsure-crowded'] as const) {
      const text = words.unsureGap({ longer: 'PW', shorter: 'SW', gap: '17 yd', limit: '16 yd', state });
      for (const figure of ['PW', 'SW', '17 yd', '16 yd']) expect(text).toContain(figure);
    }
  });
  it('only what is the user’s own', () => {
    for (const limits of [true, false]) {
      for (const tiers of [true, false]) {
        for (const weights of [true, false]) {
          const text = words.cautions.ownConventions({ limits, tiers, weights });
          expect(says.own.limits.test(text)).toBe(limits);
          expect(says.own.tiers.test(text)).toBe(tiers);
          expect(says.own.weights.test(text)).toBe(weights);
          const named = [limits, tiers, weights].filter(Boolean).length;
          const plain = words.cautions.ownConventions({ limits: false, tiers: false, weights: false });
          expect(text.split(', ').length - plain.split(', ').length).toBe(Math.max(0, named - 1));
        }
      }
    }
  });
  it('a tier by its name, another number by itself', () => {
    const names = [1, 2, 3, 4].map(words.tierName);
    expect(new Set(names).size).toBe(4);
    for (const name of names) expect(name).toMatch(/^[^\d]+$/);
    expect(words.tierName(5)).toContain('5');
    expect(words.archetypeName(hybrid)).toContain(words.tierName(3));
  });
  it('a head by kind, loft and spin; a putter by its own measure; a set by its first and last club', () => {
    for (const spinTier of ['low', 'mid', 'high'] as const) {
      for (const one of [hybrid, irons])
        expect(words.archetypeName({ ...one, spinTier })).toMatch(says.spinTier[spinTier]);
    }
    const kinds = ['driver', 'fairway', 'hybrid', 'iron', 'wedge', 'putter'] as const;
    const names = kinds.map((kind) => words.archetypeName({ ...hybrid, kind }));
    expect(new Set(names).size).toBe(kinds.length);
    for (const name of names) expect(name).toContain('22°');
    expect(words.archetypeName({ ...hybrid, kind: 'putter' })).toMatch(/3 (of|von) 4/);
    expect(words.archetypeName(irons)).toContain('5–GW');
    expect(words.archetypeName(irons)).toContain('31°');
    const { members: _members, ...bare } = irons;
    expect(words.archetypeName(bare)).toContain('31°');
  });
  it('a member of a set by its number where that is one, else by its letters', () => {
    for (const number of ['5', '10', 'PW', 'P2']) {
      expect(words.memberName(number, irons)).toContain(number);
      expect(words.memberName(number, irons)).toContain('31°');
      const named = words.memberName(number, irons).split('(')[0]?.trim();
      expect(named === number).toBe(number.startsWith('P'));
    }
  });
});

it('a locale’s language counts, not its country nor how it is written', () => {
  for (const locale of ['de', 'de-AT', 'DE-ch']) expect(adviceWords(locale)).toBe(german);
  for (const locale of ['en-GB', 'xx', '', 'constructor', 'nde']) expect(adviceWords(locale)).toBe(english);
});
