import type { BackupLine } from '../../../src-main/contract/calls/program/files.ts';

/** The moment in a backup's name: an ISO time whose colons a file name cannot have. */
export function momentOf({ takenAt }: Pick<BackupLine, 'takenAt'>): string {
  return takenAt.replace(
    /T(\d\d)-(\d\d)-(\d\d)(?:-(\d+))?/,
    (_all, h: string, m: string, s: string, ms?: string) =>
      `T${h}:${m}:${s}${ms === undefined ? '' : `.${ms}`}`,
  );
}
