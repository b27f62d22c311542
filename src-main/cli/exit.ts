/** 0 ok, 1 the answer is no or the check fails (and a fault of ours), 2 wrong input or use. */
export const EXIT = { ok: 0, no: 1, wrongUse: 2 } as const;

/** Wrong use of a command: an unknown flag, a missing file. */
export class UsageError extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'UsageError';
  }
}
