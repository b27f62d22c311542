import { isOwnUrl } from './urls.ts';

/** As much of an Electron frame as the check needs. */
export type Frame = { url: string; parent: unknown };

/**
 * Whether a message comes from the window itself: its top frame, at an address of ours. A frame that is gone (null),
 * one inside another, or any other page is not.
 */
export function isOwnSender(frame: Frame | null): boolean {
  return frame !== null && frame.parent === null && isOwnUrl(frame.url);
}
