import { createHash } from 'node:crypto';
import type { GatePage } from '../../contract/gate.ts';

/** Pages and files that a call has made and the host may be asked for: the newest few, in memory. */
export type Pages = {
  /** @returns its id: the same for the same content, so that a page that did not change is not loaded anew. */
  keep(page: GatePage): string;
  find(id: string): GatePage | null;
};

const MOST_PAGES = 12;
const MOST_BYTES = 32 * 1024 * 1024;

export function createPages(): Pages {
  const kept = new Map<string, GatePage>();
  return {
    keep(page) {
      const id = createHash('sha256')
        .update(`${page.type}\0${page.policy ?? ''}\0`)
        .update(page.bytes)
        .digest('hex');
      kept.delete(id); // so that it counts as the newest
      kept.set(id, page);
      let bytes = 0;
      const newest = [...kept].reverse().filter(([, one], i) => {
        bytes += one.bytes.length;
        return i === 0 || (i < MOST_PAGES && bytes <= MOST_BYTES);
      });
      kept.clear();
      for (const [key, one] of newest.reverse()) kept.set(key, one);
      return id;
    },
    find: (id) => kept.get(id) ?? null,
  };
}

/**
 * What a document may do while it is looked at: be read and printed. No script, no form, no address, no style but its
 * own; the sandbox holds even where the page is opened by itself. It keeps its origin so that the window can measure
 * and print it, which gives a page without scripts nothing.
 * @param style what stands in its one style element
 */
export function documentPolicy(style: string): string {
  const digest = createHash('sha256').update(style).digest('base64');
  return [
    "default-src 'none'",
    `style-src 'sha256-${digest}'`,
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'self'",
    'sandbox allow-same-origin allow-modals',
  ].join('; ');
}
