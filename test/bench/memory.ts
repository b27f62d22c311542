import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { solve } from '../../src-main/domain/solve/index.ts';
import { realistic } from './support/solve-instances.ts';

/** Most memory, in MB, that a process of its own holds while it gives all answers to `realistic(seed, items)`. */
export function peakRssMb(seed: number, items: number): number {
  const child = spawnSync(process.execPath, [fileURLToPath(import.meta.url), String(seed), String(items)], {
    encoding: 'utf8',
  });
  const peak = Number(child.stdout);
  if (child.status !== 0 || !(peak > 0)) throw new Error(`The process measured ended badly: ${child.stderr}`);
  return peak;
}

if (import.meta.main) {
  const [seed, items] = process.argv.slice(2).map(Number);
  solve(realistic(seed ?? 1, items ?? 300));
  process.stdout.write(String(Math.round(process.resourceUsage().maxRSS / 1024)));
}
