/** Plain figures and names of things of ours; nothing of the people in the records, nor of the machine's. */
export type Facts = Readonly<Record<string, string | number | boolean | null | undefined>>;

const MOST_FRAMES = 12;
const MOST_CAUSES = 3;

/**
 * What can be told of an error without its message: kind, code, and where in the program it was thrown, as
 * `function:file:line`, the newest first. The causes likewise.
 */
export function faultFacts(error: unknown, depth = 0): Facts {
  if (!(error instanceof Error)) return { thrown: error === null ? 'null' : typeof error };
  const { code } = error as { code?: unknown };
  const facts: Facts = {
    kind: error.name,
    code: typeof code === 'string' ? code : undefined,
    at: frames(error.stack ?? ''),
  };
  if (error.cause === undefined || depth >= MOST_CAUSES) return facts;
  const cause = Object.entries(faultFacts(error.cause, depth + 1));
  return { ...facts, ...Object.fromEntries(cause.map(([name, value]) => [`cause.${name}`, value])) };
}

/** A frame is told by its function and its place below the program's own folder; others by their package. */
function frames(stack: string): string | undefined {
  const told = stack.split('\n').flatMap((line) => {
    const [, name = '', place = '', at = ''] = /^\s+at (?:(.*?) \()?(.+?):(\d+):\d+\)?$/.exec(line) ?? [];
    const where = placeInProgram(place);
    return where === null ? [] : [`${name.replaceAll(/[^\w.<>#]/g, '') || 'here'}:${where}:${at}`];
  });
  return told.length === 0 ? undefined : told.slice(0, MOST_FRAMES).join('|');
}

function placeInProgram(place: string): string | null {
  const path = place.replaceAll('\\', '/');
  if (path.startsWith('node:')) return path.replace('node:', 'node-').replaceAll('/', '.');
  const own = /\/((?:src-main|db|build|out|test)\/[\w./-]+)$/.exec(path)?.[1];
  const pack = /\/node_modules\/((?:@[\w.-]+\/)?[\w.-]+)\//.exec(path)?.[1];
  return (pack ?? own)?.replaceAll('/', '.').replaceAll('@', '') ?? null;
}
