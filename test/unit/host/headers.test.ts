import { describe, expect, it } from 'vitest';
import { ANSWER_HEADERS, CONTENT_SECURITY_POLICY, pageHeaders } from '../../../src-main/host/headers.ts';

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

  it('of a page are its own policy, and a file that is only to be saved has none', () => {
    const bytes = new Uint8Array();
    expect(pageHeaders({ type: 'text/html', bytes, policy: "default-src 'none'" })).toEqual({
      'Content-Type': 'text/html',
      'Content-Security-Policy': "default-src 'none'",
    });
    expect(pageHeaders({ type: 'application/pdf', bytes, name: "Ann Óg's\r\n(1).pdf" })).toEqual({
      'Content-Type': 'application/pdf',
      'Content-Disposition': "attachment; filename*=UTF-8''Ann%20%C3%93g%27s%0D%0A%281%29.pdf",
    });
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
