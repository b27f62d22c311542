import type { Command, CommandGroup } from './commands.ts';
import { FOUND_GROUPS, type Found, type FoundGroup, type Place } from './found.ts';
import { matching } from './match.ts';

/** What a line leads to: something that is done, or a place. */
export type FindLine = {
  id: string;
  text: string;
  /** Beside the text, smaller; blank for nothing. */
  note: string;
  keys: string | null;
  /** There is nothing to do: it is shown, and not taken. */
  isOff: boolean;
  does: { run: () => void } | { place: Place };
};
export type LineGroup = { name: CommandGroup | FoundGroup; lines: FindLine[] };

/**
 * Commands by how well they fit what was typed, then what was found in the records. Commands come first because they
 * are there at once: what is found later pushes no line away from under the fingers.
 */
export function lineGroups(
  commands: readonly Command[],
  found: readonly Found[],
  typed: string,
): LineGroup[] {
  // A group stands where its best line does.
  const done = Map.groupBy(matching(commands, typed), ({ group }) => group);
  const groups: LineGroup[] = [...done].map(([name, some]) => ({ name, lines: some.map(commandLine) }));
  for (const name of FOUND_GROUPS) {
    const lines = found.filter(({ group }) => group === name).map(foundLine);
    if (lines.length > 0) groups.push({ name, lines });
  }
  return groups;
}

function commandLine({ id, text, keys, off, run }: Command): FindLine {
  return { id, text, note: off ?? '', keys, isOff: off !== null, does: { run } };
}

function foundLine({ id, text, note, place }: Found): FindLine {
  return { id, text, note, keys: null, isOff: false, does: { place } };
}
