import { describe, expect, it } from 'vitest';
import { ANSWER_HEADERS, CONTENT_SECURITY_POLICY } from '../../../src-main/host/headers.ts';

describe('the headers of every answer', () => {
  it('allow nothing by default, and the own origin per kind', () => {
    const rules = new Map(
      CONTENT_SECURITY_POLICY.split('; ').map((rule) => rule.split(' ', 2) as [string, string]),
    );
    expect(rules.get('default-src')).toBe("'none'");
    expect(rules.get('script-src')).toBe("'self'");
    expect(rules.get('frame-ancestors')).toBe("'none'");
    expect(rules.get('base-uri')).toBe("'none'");
    expect(rules.get('form-action')).toBe("'none'");
    expect(new Set(rules.values())).toEqual(new Set(["'none'", "'self'"]));
    expect(CONTENT_SECURITY_POLICY).not.toMatch(/unsafe|data:|https?:|\*/);
  });

  it('keep other origins, guesses of types, referrers and caches out', () => {
    expect(ANSWER_HEADERS).toMatchObject({
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'Cross-Origin-Opener-Policy': 'same-origin',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Cache-Control': 'no-store',
    });
  });
});
