import type { GatePage } from '../contract/gate.ts';

/**
 * 'self' per kind of content, nothing else: no inline script or style, no form target, no other origin. The one frame is
 * the hand-over's document, which brings a stricter policy of its own.
 */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** On every answer of both hosts, refusals included. */
export const ANSWER_HEADERS: Readonly<Record<string, string>> = {
  'Content-Security-Policy': CONTENT_SECURITY_POLICY,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy':
    'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=(), payment=(), midi=()',
  'Cache-Control': 'no-store',
};

/** Over those above: a page that is shown has its own policy, any other file is only saved. */
export function pageHeaders({ type, policy, name = 'file' }: GatePage): Record<string, string> {
  if (policy !== undefined) return { 'Content-Type': type, 'Content-Security-Policy': policy };
  return {
    'Content-Type': type,
    'Content-Disposition': `attachment; filename*=UTF-8''${encodeURIComponent(name).replace(/['()*]/g, escapeByte)}`,
  };
}

/** What encodeURIComponent leaves and RFC 5987 does not allow in a name. */
function escapeByte(letter: string): string {
  return `%${letter.charCodeAt(0).toString(16).toUpperCase()}`;
}
