import { RefusedInput } from '../contract/refusal.ts';
import { InstanceError } from '../domain/solve/model/refusal.ts';
import { namedFault, StorageError } from '../../db/errors.ts';
import type { Command } from './args.ts';
import { EXIT, UsageError } from './exit.ts';

/** Runs one command; turns what was thrown into a message on standard error and an exit code. */
export async function runCommand(command: Command, words: readonly string[]): Promise<number> {
  if (words.includes('--help') || words.includes('-h')) {
    process.stdout.write(`${command.usage.trim()}\n`);
    return EXIT.ok;
  }
  try {
    return await command.run(words);
  } catch (thrown) {
    const error = namedFault(thrown, 'the records', 'Using');
    process.stderr.write(`${messageOf(error, command)}\n`);
    return isWrongInput(error) ? EXIT.wrongUse : EXIT.no;
  }
}

function isWrongInput(error: unknown): boolean {
  return (
    error instanceof UsageError ||
    error instanceof RefusedInput ||
    error instanceof InstanceError ||
    error instanceof StorageError
  );
}

function messageOf(error: unknown, command: Command): string {
  if (error instanceof UsageError) {
    return `loftledger ${command.name}: ${error.message}\nSee: npm run --silent ${command.name} -- --help`;
  }
  if (error instanceof StorageError) {
    return `loftledger ${command.name}: ${error.message.replace(/(?<![.!?])$/, '.')} ${error.remedy}`;
  }
  if (error instanceof RefusedInput) return `loftledger ${command.name}: ${error.message}`;
  if (error instanceof InstanceError) {
    return `loftledger ${command.name}: This instance cannot be solved:\n${error.message.replace(/^/gm, '  ')}`;
  }
  const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return `loftledger ${command.name}: this is a fault of the program, not of your input. Please report it:\n${detail}`;
}
