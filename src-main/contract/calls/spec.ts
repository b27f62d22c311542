import type { z } from 'zod';

/**
 * How a call touches the records: `read` changes nothing; `write` changes what undo does not cover (settings, "last
 * looked at"); `undoable` is an edit that undo takes back.
 */
export type Mode = 'read' | 'write' | 'undoable';

export type CallSpec<
  M extends Mode = Mode,
  A extends z.ZodType = z.ZodType,
  R extends z.ZodType = z.ZodType,
> = {
  mode: M;
  args: A;
  result: R;
};

const spec =
  <M extends Mode>(mode: M) =>
  <A extends z.ZodType, R extends z.ZodType>(args: A, result: R): CallSpec<M, A, R> => ({
    mode,
    args,
    result,
  });

export const read = spec('read');
export const write = spec('write');
export const undoable = spec('undoable');
