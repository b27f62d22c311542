import type { Target } from '../target.ts';
import { appTarget } from './app.ts';
import { callsTarget } from './calls.ts';
import { commandsTarget } from './commands.ts';
import { databasesTarget } from './databases.ts';
import { httpTarget } from './http.ts';
import { importersTarget } from './importers.ts';
import { schemasTarget } from './schemas.ts';
import { plansTarget, solverTarget } from './solver.ts';

export const TARGETS: readonly Target[] = [
  schemasTarget,
  callsTarget,
  importersTarget,
  databasesTarget,
  commandsTarget,
  solverTarget,
  plansTarget,
  httpTarget,
  appTarget,
];
