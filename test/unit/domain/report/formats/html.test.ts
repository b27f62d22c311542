import { describe, expect, it } from 'vitest';
import { html } from '../../../../../src-main/domain/report/formats/html.ts';
import { make, NAMES } from '../variants.ts';

const page = (name: (typeof NAMES)[number]) => html(make(name).document, { paper: 'a4' });

describe('print page', () => {
  it.each(NAMES)('%s: whole, closed, in its language, and self-contained', (name) => {
    const { document } = make(name);
    const text = html(document, { paper: 'a4' });
    expect(text).toMatch(/^<!doctype html>\n<html lang="(?:en|de)">/);
    expect(text).toContain(`<html lang="${document.language}">`);
    expect(text.match(/<title>[^<]+<\/title>/)).not.toBeNull();
    // Nothing is fetched, nothing runs: no address, no script, no event handler, no style from elsewhere.
    expect(text).not.toMatch(/<(?:script|link|iframe|object|embed|base|form)\b/i);
    expect(text).not.toMatch(/\b(?:src|href|action)=/i);
    expect(text).not.toMatch(/<[^>]*\son\w+=/i);
    expect(text).not.toMatch(/url\(|@import|@font-face/);
    expect(text).toContain('content="default-src &#39;none&#39;;');
    for (const tag of [
      'section',
      'table',
      'tr',
      'td',
      'th',
      'ul',
      'li',
      'p',
      'div',
      'article',
      'span',
      'b',
      'i',
      'svg',
      'g',
    ]) {
      const open = text.match(new RegExp(`<${tag}[ >]`, 'g'))?.length ?? 0;
      expect([tag, text.match(new RegExp(`</${tag}>`, 'g'))?.length ?? 0]).toEqual([tag, open]);
    }
    const ids = [...text.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, target] of text.matchAll(/aria-labelledby="([^"]+)"/g)) {
      for (const id of (target ?? '').split(' ')) expect(ids).toContain(id);
    }
  });

  it.each(NAMES)('%s: one h1, no heading level left out, every table head with a scope', (name) => {
    const text = page(name);
    const levels = [...text.matchAll(/<h([1-6])[ >]/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, i) => expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1));
    for (const [head] of text.matchAll(/<th[ >][^>]*/g)) expect(head).toMatch(/scope="(?:row|col)"/);
  });

  it('escapes what a hostile file puts into names', () => {
    const text = page('hostile');
    expect(text).not.toContain('<script');
    expect(text).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(text).toContain('&amp;amp;'); // an entity that was typed stays what was typed
    const style = /<style>([\s\S]*?)<\/style>/.exec(text)?.[1];
    expect(style).not.toContain('alert');
  });

  it('takes only a data address for the picture', () => {
    const { document } = make('usual', { letterhead: { name: 'A & B', contact: '<c>' } });
    const shown = (picture: string) => html(document, { paper: 'a4', picture });
    expect(shown('data:image/png;base64,AA==')).toContain('<img src="data:image/png;base64,AA==" alt="">');
    expect(shown('https://example.org/x.png')).not.toContain('<img');
    expect(shown('data:text/html,x')).not.toContain('<img');
    expect(shown('data:image/png;base64,AA==')).toContain('<p class="contact">&lt;c&gt;</p>');
  });

  it('names the paper', () => {
    const { document } = make('usual');
    expect(html(document, { paper: 'a4' })).toContain('size: A4;');
    expect(html(document, { paper: 'letter' })).toContain('size: letter;');
  });

  it('names the chart, and has its table beside it', () => {
    const text = page('usual');
    expect(text).toMatch(
      /<svg[^>]*role="img"[^>]*><title id="ladder-title">[^<]+<\/title><desc id="ladder-text">[^<]+<\/desc>/,
    );
    expect(text).toMatch(/<\/figure><table>/);
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('keeps the labels of the chart apart, and shortens long names by whole letters', () => {
    for (const name of NAMES) {
      const text = page(name);
      expect(text).not.toMatch(/[\ud800-\udbff](?![\udc00-\udfff])/u);
      for (const [side] of text.matchAll(/<g transform[\s\S]*?<\/g>/g)) {
        const places = [...side.matchAll(/<text class="(?:stays|out|new)"[^>]* y="([\d.]+)"/g)].map(([, y]) =>
          Number(y),
        );
        places.forEach((y, i) => {
          if (i > 0) expect(y - (places[i - 1] ?? 0)).toBeGreaterThan(8);
        });
      }
    }
  });

  it('marks sentences in another language', () => {
    const { document } = make('usual', { locale: 'de-DE' });
    expect(html(document, { paper: 'a4' })).toMatch(/<p class="why" lang="en">/);
    expect(page('german')).not.toMatch(/<p[^>]* lang=/);
    expect(page('usual')).not.toMatch(/<p[^>]* lang=/);
  });
});
