import { COMMANDS } from './commands/index.ts';
import { EXIT } from './exit.ts';
import { runCommand } from './run.ts';

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
