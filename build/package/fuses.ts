import { FuseState, FuseV1Options, FuseVersion, flipFuses, getCurrentFuseWire } from '@electron/fuses';
import { FUSES } from '../../src-main/electron-host/policy/security-policy.ts';

/** Electron's fuses (docs/tutorial/fuses): bits in its binary that a packaged program cannot be talked out of. */

export type FuseName = keyof typeof FuseV1Options;

/**
 * The policy's fuses, and the two that it leaves as Electron ships them (from memory): no V8 snapshot of our own, and
 * traps for WebAssembly's bounds. All are named, so that a fuse that a new Electron brings stops the packaging.
 */
export const ALL_FUSES = {
  ...FUSES,
  LoadBrowserProcessSpecificV8Snapshot: false,
  WasmTrapHandlers: true,
} as const satisfies Record<FuseName, boolean>;

const NAMES = Object.keys(ALL_FUSES) as FuseName[];

/**
 * Sets every fuse in a packed program and reads them back. To be done before the program is signed.
 * @param program the binary, or on macOS the .app folder
 * @throws Error when the binary has other fuses than are named here, or does not hold what was written
 */
export async function setFuses(program: string): Promise<void> {
  const fuses = Object.fromEntries(NAMES.map((name) => [FuseV1Options[name], ALL_FUSES[name]]));
  await flipFuses(program, {
    version: FuseVersion.V1,
    strictlyRequireAllFuses: true,
    ...(fuses as Record<FuseV1Options, boolean>),
  });
  const problems = await fuseProblems(program);
  if (problems.length > 0) throw new Error(`The fuses of ${program} did not take: ${problems.join('; ')}.`);
}

/** @returns what differs from the table, a line each; nothing when all is as it should be. */
export async function fuseProblems(program: string): Promise<string[]> {
  const wire = await getCurrentFuseWire(program);
  const differing = NAMES.flatMap((name) => {
    const wanted = ALL_FUSES[name] ? FuseState.ENABLE : FuseState.DISABLE;
    const found = wire[FuseV1Options[name]];
    return found === wanted ? [] : [`${name} is ${word(found)}, not ${word(wanted)}`];
  });
  const unknown = Object.keys(wire).filter(
    (key) => key !== 'version' && FuseV1Options[Number(key)] === undefined,
  );
  return [...differing, ...unknown.map((key) => `fuse ${key} has no name here`)];
}

function word(state: FuseState | undefined): string {
  if (state === undefined) return 'missing';
  return FuseState[state] ?? `unreadable (${String(state)})`;
}
