import { Watch, type Hooks } from '../../solve/hooks.ts';
import type { Instance, Point } from '../../solve/instance.ts';
import { curveLimited, type LimitedCurve } from '../../solve/limited.ts';

/** So many questions are remembered: the open bag's, and that of one beside it, each also as it was before an edit. */
const MOST_KNOWN = 4;
const known = new Map<string, Point[]>();

/**
 * As `curveLimited`, and soon where the same was asked lately. A budget cuts no curve, so one that is tried or moved,
 * and another page about the same bag, ask for nothing new.
 * @throws SolveStopped when a hook ends the solve.
 */
export function knownCurve(instance: Instance, hooks: Hooks = {}): LimitedCurve {
  const key = JSON.stringify({ ...instance, budget: null });
  const before = known.get(key);
  if (before !== undefined) {
    new Watch(hooks).made(0);
    keep(key, before);
    return { instance, curve: before, unproven: null };
  }
  const limited = curveLimited(instance, hooks);
  // What was not proven stands for a smaller question, whose bound hangs on the budget.
  if (limited.unproven === null) keep(key, limited.curve);
  return limited;
}

/** As the one asked last; the one that was asked the longest ago makes room. */
function keep(key: string, curve: Point[]): void {
  known.delete(key);
  const [oldest] = known.keys();
  if (known.size >= MOST_KNOWN && oldest !== undefined) known.delete(oldest);
  known.set(key, curve);
}
