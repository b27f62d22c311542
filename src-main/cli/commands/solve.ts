import { parseJson } from '../../contract/json.ts';
import { solve } from '../../domain/solve/index.ts';
import type { Point, Solution } from '../../domain/solve/instance.ts';
import { readInstance } from '../../domain/solve/model/read.ts';
import { InstanceError } from '../../domain/solve/model/refusal.ts';
import { readFlags, type Command } from '../args.ts';
import { EXIT, UsageError } from '../exit.ts';
import { readInput } from '../files.ts';
import { textTable } from '../text/table.ts';

const MAX_BYTES = 32 * 1024 * 1024;

export const solveCommand: Command = {
  name: 'solve',
  summary: 'the exact answers to one solver instance, or to a list of them',
  usage: `
npm run --silent solve -- --instance FILE [--json]

FILE (or - for standard input) holds one instance of the formal model, or an array of them: whole numbers,
distances in tenths of a yard, money in minor units. See src-main/domain/solve/README.md.

  --instance FILE   the instance
  --json            print {today, cheapestClean, bestWithinBudget, headline, frontier, walkAway}`,

  async run(words) {
    const { values } = readFlags(words, { instance: { type: 'string' }, json: { type: 'boolean' } });
    if (values.instance === undefined) throw new UsageError('give --instance FILE');
    const limits = { what: 'solver instance', maxBytes: MAX_BYTES };
    const json = parseJson(readInput(values.instance, limits.what, MAX_BYTES), limits);
    const many = Array.isArray(json);
    const instances = many ? readMany(json) : [readInstance(json)];
    const solutions = instances.map((instance) => solve(instance));
    if (values.json === true) process.stdout.write(`${JSON.stringify(many ? solutions : solutions[0])}\n`);
    else process.stdout.write(solutions.map(solutionText).join('\n'));
    return EXIT.ok;
  },
};

function readMany(list: readonly unknown[]) {
  return list.map((one, i) => {
    try {
      return readInstance(one);
    } catch (error) {
      if (!(error instanceof InstanceError)) throw error;
      throw new InstanceError(
        error.refusals.map((refusal) => ({
          ...refusal,
          path: refusal.path.replace(/^\$/, `$[${String(i)}]`),
        })),
      );
    }
  });
}

function solutionText(solution: Solution): string {
  const row = (name: string, point: Point | null) =>
    point
      ? [name, String(point.cost), String(point.penalty), String(point.changes), point.items.join(' ')]
      : [name, 'none', '', '', ''];
  const columns = [
    { head: 'answer' },
    { head: 'cost', align: 'right' as const },
    { head: 'penalty', align: 'right' as const },
    { head: 'changes', align: 'right' as const },
    { head: 'items' },
  ];
  const rows = [
    row('today', solution.today),
    row('cheapest clean', solution.cheapestClean),
    row('best within budget', solution.bestWithinBudget),
    row('headline', solution.headline),
    ...solution.frontier.map((point, i) => row(`curve ${String(i + 1)}`, point)),
  ];
  const prices = Object.entries(solution.walkAway).map(
    ([id, price]) => `walk away from ${id} above ${price === null ? '(no ceiling)' : String(price)}`,
  );
  return `${[textTable(columns, rows), ...prices].join('\n')}\n`;
}
