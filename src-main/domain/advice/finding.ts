export type Verdict = 'keep' | 'drop' | 'replace' | 'add' | 'ask' | 'coach-first' | 'wait' | 'stop';

/** A figure that a finding stands on, in the reader's units, with its range where it has one, and its source. */
export type Evidence = { figure: string; value: number | string; range?: [number, number]; source: string };

export type FindingKind =
  | 'pain'
  | 'too-little-data'
  | 'wide-gap'
  | 'unsure-gap'
  | 'crowded-pair'
  | 'long-end-falls-off'
  | 'driver-behind-irons'
  | 'driver-launch-spin'
  | 'flex'
  | 'wedge-surplus'
  | 'wedge-shortage'
  | 'forgiveness'
  | 'improving'
  | 'go-to'
  | 'why-this-club'
  | 'hard-from-the-deck'
  | 'firm-ground'
  | 'strong-lofts'
  | 'one-length'
  | 'check-conformity'
  | 'count'
  | 'bend'
  | 'nothing-needed';

/** Something true about the bag. Severity: 1 a note, 2 worth acting on, 3 act on first. */
export type Finding = {
  kind: FindingKind;
  clubs: string[];
  severity: 1 | 2 | 3;
  verdict: Verdict;
  text: string;
  evidence: Evidence[];
};

/**
 * Something to measure or look up. Worth: how often the best plan would change times the money at stake, in the
 * reader's currency; below 1 a rank for what no re-planning can weigh.
 */
export type Question = { ask: string; about: string[]; worth: number };

/** A finding that money would answer. */
export function asksForMoney(finding: Finding): boolean {
  return finding.verdict === 'add' || finding.verdict === 'replace';
}
