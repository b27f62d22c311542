import type { ChromiumPipe } from '../../host/chromium/chromium-pipe.ts';
import { asWindowPlace, type WindowPlace } from '../../host/window-place.ts';

/** What we ask of our own window through Chromium's pipe. Each throws when Chromium is gone. */

/** Un-minimised and above the others. */
export async function bringToFront(pipe: ChromiumPipe): Promise<void> {
  const page = await pageTarget(pipe);
  if (page === null) return;
  const { windowId, bounds } = await windowOf(pipe, page);
  if (bounds['windowState'] === 'minimized') {
    await pipe.send('Browser.setWindowBounds', { windowId, bounds: { windowState: 'normal' } });
  }
  await pipe.send('Target.activateTarget', { targetId: page });
}

/**
 * @param before the place as known so far: a maximised window keeps the size that it goes back to.
 * @returns null while there is no window, or a minimised one.
 */
export async function currentPlace(
  pipe: ChromiumPipe,
  before: WindowPlace | null,
): Promise<WindowPlace | null> {
  const page = await pageTarget(pipe);
  if (page === null) return null;
  const { bounds } = await windowOf(pipe, page);
  const state = bounds['windowState'];
  if (state === 'minimized') return null;
  if (state === 'maximized' || state === 'fullscreen') return before && { ...before, maximized: true };
  return asWindowPlace({ ...bounds, maximized: false });
}

export async function hasPage(pipe: ChromiumPipe): Promise<boolean> {
  return (await pageTarget(pipe)) !== null;
}

export async function closeBrowser(pipe: ChromiumPipe): Promise<void> {
  await pipe.send('Browser.close');
}

async function pageTarget(pipe: ChromiumPipe): Promise<string | null> {
  const { targetInfos } = await pipe.send('Target.getTargets');
  const page = (targetInfos as { type: string; targetId: string }[]).find(({ type }) => type === 'page');
  return page?.targetId ?? null;
}

async function windowOf(pipe: ChromiumPipe, targetId: string) {
  const answer = await pipe.send('Browser.getWindowForTarget', { targetId });
  return answer as { windowId: number; bounds: Record<string, unknown> };
}
