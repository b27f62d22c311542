import type { CallError } from '../contract/gate.ts';
import { RefusedInput } from '../contract/refusal.ts';
import { Cancelled } from './answerer.ts';
import { namedFault, StorageError } from '../../db/errors.ts';

/** What a window is told of an error: never a stack, never a path of this machine. */
export function callError(thrown: unknown): CallError {
  const error = namedFault(thrown, 'the records', 'Using');
  if (error instanceof RefusedInput) {
    return { kind: 'refused', message: error.message, refusals: [...error.refusals] };
  }
  if (error instanceof StorageError) {
    const file = error.file === '' ? error.message : error.message.replaceAll(error.file, 'the records');
    return { kind: kindOf(error), message: `${file.replace(/\.?$/, '.')} ${error.remedy}` };
  }
  if (error instanceof Cancelled) return { kind: 'conflict', message: error.message };
  return {
    kind: 'bug',
    message: 'This is a fault of the program. What you did last may not have been kept; try again.',
  };
}

function kindOf({ code }: StorageError): CallError['kind'] {
  switch (code) {
    case 'missing':
      return 'not-found';
    case 'bad-rows':
    case 'bad-value':
    case 'constraint':
      return 'refused';
    case 'bug':
      return 'bug';
    default:
      return 'conflict';
  }
}
