import { expect, it } from 'vitest';
import { createPages, documentPolicy } from '../../../../src-main/service/handover/pages.ts';

const page = (text: string, policy = 'p') => ({ type: 'text/html', bytes: Buffer.from(text), policy });

it('keeps a page under an id that only its content decides', () => {
  const pages = createPages();
  const id = pages.keep(page('a'));
  expect(id).toMatch(/^[0-9a-f]{64}$/);
  expect(pages.keep(page('a'))).toBe(id);
  expect(pages.keep(page('b'))).not.toBe(id);
  expect(pages.keep(page('a', 'q'))).not.toBe(id);
  expect(pages.find(id)?.bytes.toString()).toBe('a');
  for (const other of ['', 'x', '__proto__', id.toUpperCase()]) expect(pages.find(other)).toBeNull();
});

it('forgets the oldest beyond a dozen, and beyond 32 MiB, but never the newest', () => {
  const pages = createPages();
  const ids = Array.from({ length: 13 }, (_, i) => pages.keep(page(String(i))));
  expect(ids.map((id) => pages.find(id) !== null)).toEqual([false, ...Array<boolean>(12).fill(true)]);
  pages.keep(page('1')); // asked for again: it is the newest now
  pages.keep(page('new'));
  expect(pages.find(ids[1] ?? '')).not.toBeNull();
  expect(pages.find(ids[2] ?? '')).toBeNull();
  const huge = pages.keep(page('x'.repeat(33 * 1024 * 1024)));
  expect(pages.find(huge)).not.toBeNull();
  expect(pages.find(ids[12] ?? '')).toBeNull();
});

it('the policy lets the page’s own style in and nothing that runs or leads away', () => {
  const policy = documentPolicy('p{}');
  // echo -n 'p{}' | openssl dgst -sha256 -binary | base64
  expect(policy).toContain("style-src 'sha256-gG2yISYereRMiG2lMXrbiUgi0Ubw9p7QCeWcroOvy9Y='");
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain('sandbox allow-same-origin allow-modals');
  expect(policy).toContain("frame-ancestors 'self'");
  expect(policy).not.toMatch(/script|unsafe|https?:|\*/);
});
