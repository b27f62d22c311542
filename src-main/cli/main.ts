import { backupCommand } from './commands/backup.ts';
import { catalogueCommand } from './commands/catalogue.ts';
import { exportCommand } from './commands/export.ts';
import { flightCommand } from './commands/flight.ts';
import { handoverCommand } from './commands/handover.ts';
import { importCommand } from './commands/import.ts';
import { planCommand } from './commands/plan.ts';
import { restoreCommand } from './commands/restore.ts';
import { solveCommand } from './commands/solve.ts';
import { EXIT } from './exit.ts';
import { runCommand } from './run.ts';

const COMMANDS = [
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

function overview(): string {
  const width = Math.max(...COMMANDS.map((command) => command.name.length));
  return [
    'Loftledger commands (each with --help):',
    ...COMMANDS.map((command) => `  ${command.name.padEnd(width)}  ${command.summary}`),
    '',
  ].join('\n');
}

// A reader that closes early (`| head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exit(error.code === 'EPIPE' ? EXIT.ok : EXIT.no);
});

const [name = '', ...words] = process.argv.slice(2);
const command = COMMANDS.find((one) => one.name === name);
if (command) process.exitCode = await runCommand(command, words);
else {
  const asked = name === '' || name === '--help';
  (asked ? process.stdout : process.stderr).write(
    asked ? overview() : `There is no command "${name}".\n${overview()}`,
  );
  process.exitCode = asked ? EXIT.ok : EXIT.wrongUse;
}
