// Lets only a seeded random sample of the mutants through (`main.mjs --sample N --seed S`). Stryker asks a checker about
// every mutant that it would run before it runs any; those not drawn leave as "compile errors" with the reason NOT_DRAWN.
import { NOT_DRAWN, drawn } from './sample.ts';

class SampleChecker {
  #chosen = null;

  init() {
    return Promise.resolve();
  }

  /** Called once, with all of them: one group, so that the draw is over the whole part. */
  async group(mutants) {
    if (this.#chosen) throw new Error('The sample was already drawn; Stryker asked in more than one piece.');
    const ids = mutants.map(({ id }) => id);
    this.#chosen = new Set(
      drawn(ids, Number(process.env.MUTATION_SAMPLE), Number(process.env.MUTATION_SEED)),
    );
    return ids.length > 0 ? [ids] : [];
  }

  async check(mutants) {
    return Object.fromEntries(
      mutants.map(({ id }) => [
        id,
        this.#chosen.has(id) ? { status: 'passed' } : { status: 'compileError', reason: NOT_DRAWN },
      ]),
    );
  }
}

export const strykerPlugins = [{ kind: 'Checker', name: 'sample', injectableClass: SampleChecker }];
