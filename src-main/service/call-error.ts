import type { CallError } from '../contract/gate.ts';
import { RefusedInput, saidInWords } from '../contract/refusal.ts';
import { Cancelled } from './answers/answerer.ts';
import { PictureError } from './handover/picture.ts';
import { PrintError } from './handover/printer.ts';
import { SaveError } from './handover/save.ts';
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
  if (error instanceof PrintError) return { kind: 'conflict', message: error.message };
  if (error instanceof PictureError) return { kind: 'refused', message: error.message };
  if (error instanceof SaveError) {
    const message = `The document could not be written (${error.code}). Make room on the disk, or look at the rights of the folder for exports.`;
    return { kind: 'conflict', message };
  }
  if (error instanceof Cancelled) return { kind: 'conflict', message: error.message };
  return {
    kind: 'bug',
    message: 'This is a fault of the program. What you did last may not have been kept; try again.',
  };
}

/** The same in one line of words, for a list of what failed. */
export function saidOf(error: unknown): string {
  return saidInWords({ refusals: [], ...callError(error) });
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
