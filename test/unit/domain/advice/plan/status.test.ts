import { describe, expect, it } from 'vitest';
import type { Finding, FindingKind, Verdict } from '../../../../../src-main/domain/advice/finding.ts';
import { statusOf, type StatusInput } from '../../../../../src-main/domain/advice/plan/status.ts';

// DESIGN §6: statuses and their order; §9: stopped, coach-first, ask-first, nothing-needed, ok, partly, over-budget.
const finding = (verdict: Verdict, kind: FindingKind = 'wide-gap', severity: 1 | 2 | 3 = 2): Finding => ({
  kind,
  clubs: [],
  severity,
  verdict,
  text: '',
  evidence: [],
});
const point = (penalty: number, cost = 0) => ({ cost, penalty, changes: 0, items: [] });
const status = (more: Partial<StatusInput> = {}) =>
  statusOf({
    findings: [],
    todayPenalty: 0,
    headline: point(0),
    frontier: [point(0)],
    budget: null,
    swaps: 0,
    openShare: 0,
    ...more,
  });

describe('what comes before the plan', () => {
  const asks = { openShare: 0.3 };
  it('stop, then coach first, then ask first', () => {
    const coach = finding('coach-first', 'long-end-falls-off');
    expect(status({ findings: [coach, finding('stop', 'pain')], ...asks })).toBe('stopped');
    expect(status({ findings: [finding('ask'), coach], ...asks })).toBe('coach-first');
    expect(status(asks)).toBe('ask-first');
  });
  it('an open question counts from three in ten', () => {
    expect(status({ openShare: 0.29 })).toBe('nothing-needed');
  });
  it('nothing known at all asks first; one club that cannot be placed does not', () => {
    const little = (severity: 1 | 2 | 3) => [finding('ask', 'too-little-data', severity)];
    expect(status({ findings: little(3) })).toBe('ask-first');
    expect(status({ findings: little(2) })).toBe('nothing-needed');
    expect(status({ findings: little(2), headline: null })).toBe('ask-first');
    expect(status({ findings: [finding('ask', 'flex')], headline: null })).toBe('nothing-needed');
  });
});

describe('nothing-needed: no swaps, today under 100, and no finding asks for money', () => {
  it.each<[Partial<StatusInput>, string]>([
    [{ todayPenalty: 99, headline: point(99) }, 'nothing-needed'],
    [{ todayPenalty: 100, headline: point(100), frontier: [point(100)] }, 'partly'],
    [{ todayPenalty: 99, headline: point(99), findings: [finding('add')] }, 'partly'],
    [{ todayPenalty: 99, headline: point(99), findings: [finding('replace')] }, 'partly'],
    [{ todayPenalty: 99, headline: point(99), findings: [finding('drop')] }, 'nothing-needed'],
    [{ todayPenalty: 50, swaps: 1 }, 'ok'],
  ])('%j', (more, want) => {
    expect(status(more)).toBe(want);
  });
});

describe('ok: within a yard, or under 100 with swaps', () => {
  const wide = { todayPenalty: 400 };
  it.each<[Partial<StatusInput>, string]>([
    [{ headline: point(20) }, 'ok'],
    [{ headline: point(21) }, 'partly'],
    [{ headline: point(99), swaps: 1 }, 'ok'],
    [{ headline: point(100), swaps: 1 }, 'partly'],
    [{ headline: null }, 'partly'],
  ])('%j', (more, want) => {
    expect(status({ ...wide, frontier: [point(0, 50)], ...more })).toBe(want);
  });
});

describe('over-budget: nothing within the budget beats today though the curve does', () => {
  const wide = { todayPenalty: 400, headline: point(400) };
  it.each<[Partial<StatusInput>, string]>([
    [{ budget: 49, frontier: [point(400), point(0, 50)] }, 'over-budget'],
    [{ budget: 50, frontier: [point(400), point(0, 50)] }, 'partly'],
    [{ budget: 49, frontier: [point(400), point(300, 40), point(0, 50)] }, 'partly'],
    [{ budget: 49, frontier: [point(400)] }, 'partly'],
    [{ budget: null, frontier: [point(400), point(0, 50)] }, 'partly'],
  ])('%j', (more, want) => {
    expect(status({ ...wide, ...more })).toBe(want);
  });
});
