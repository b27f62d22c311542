import { afterEach, describe, expect, test } from 'vitest';
import { createFormats } from '../../../../../src-renderer/state/format/formats.ts';
import { stepText } from '../../../../../src-renderer/state/window/step-text.ts';
import { setLanguage } from '../../../../../src-renderer/words/index.ts';
import type { Step } from '../../../../../src-main/contract/step.ts';

const formats = createFormats('en-GB', 'en');
const nameOf = (archetype: string) => (archetype === 'hybrid-22-t3' ? '22° hybrid' : archetype);
const text = (step: Step) => stepText(step, formats, nameOf);
const hybrid = { kind: 'hybrid', loftDeg: 22 } as const;

afterEach(() => setLanguage('en'));

describe('a step in words', () => {
  test.each<[Step, string]>([
    [{ did: 'bags.removeClub', player: 'Ada', club: hybrid }, '22° hybrid struck out (Ada)'],
    [{ did: 'bags.removeClub', player: 'Ada', club: { ...hybrid, label: '4h' } }, '4h struck out (Ada)'],
    [{ did: 'bags.removeClub', player: 'Ada', club: { kind: 'putter' } }, 'putter struck out (Ada)'],
    [
      { did: 'bags.updateClub', player: 'Ada', club: hybrid, fields: ['carry', 'carrySd'] },
      'carry and spread of the carry of 22° hybrid (Ada)',
    ],
    [
      {
        did: 'bags.updateClub',
        player: 'Ada',
        club: hybrid,
        fields: ['carry', 'carrySd', 'shots', 'total'],
      },
      'several entries of 22° hybrid (Ada)',
    ],
    [{ did: 'clubs.move', player: 'Ada', club: hybrid, to: 'shelf' }, '22° hybrid to the shelf (Ada)'],
    [
      { did: 'clubs.recordCarry', player: 'Ada', club: hybrid, on: '2026-05-01' },
      'carry of 22° hybrid on 1 May 2026 (Ada)',
    ],
    [
      {
        did: 'bags.bought',
        player: 'Ada',
        archetype: 'hybrid-22-t3',
        money: { minor: 4150, currency: 'GBP' },
      },
      '22° hybrid bought at £41.50 (Ada)',
    ],
    [{ did: 'prices.add', archetype: 'wedge-own' }, 'price note on wedge-own'],
    [{ did: 'players.archive', player: 'Ada' }, 'Ada archived'],
    [{ did: 'players.update', player: 'Ada', fields: ['handicap'] }, 'handicap of Ada'],
    [{ did: 'files.importBag', player: 'Ada' }, 'bag file of Ada imported'],
    [{ did: 'files.importRoster' }, 'roster imported'],
    [{ did: 'shots.import', player: 'Ada', named: 'range.csv' }, 'shots of range.csv imported (Ada)'],
    [{ did: 'bags.setBudget', player: 'Ada' }, 'budget (Ada)'],
    [{ did: '', named: 'long ago' }, 'long ago'],
    [{ did: 'toString' }, 'toString'],
  ])('%j', (step, said) => {
    expect(text(step)).toBe(said);
  });

  test('in German', () => {
    setLanguage('de');
    expect(text({ did: 'bags.removeClub', player: 'Ada', club: hybrid })).toBe('Hybrid 22° gestrichen (Ada)');
  });
});
