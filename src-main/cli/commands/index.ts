import type { Command } from '../args.ts';
import { backupCommand } from './backup.ts';
import { catalogueCommand } from './catalogue.ts';
import { exportCommand } from './export.ts';
import { flightCommand } from './flight.ts';
import { handoverCommand } from './handover.ts';
import { importCommand } from './import.ts';
import { planCommand } from './plan.ts';
import { restoreCommand } from './restore.ts';
import { solveCommand } from './solve.ts';

/** Every command, in the order of the overview. */
export const COMMANDS: readonly Command[] = [
  planCommand,
  solveCommand,
  catalogueCommand,
  flightCommand,
  handoverCommand,
  importCommand,
  exportCommand,
  backupCommand,
  restoreCommand,
];
