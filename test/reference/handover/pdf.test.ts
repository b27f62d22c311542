/**
 * The PDF, read by tools that are none of ours: poppler's pdftotext and pdfinfo. Where they are missing the checks that
 * need them are skipped and said to be; what the bytes themselves show is checked in any case.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { findChromium } from '../../../build/find/find-chromium.mjs';
import { html, type Paper } from '../../../src-main/domain/report/formats/html.ts';
import { openChromiumPrinter } from '../../../src-main/host/print/chromium-printer.ts';
import type { Printer } from '../../../src-main/service/handover/printer.ts';
import { png } from '../../unit/service/handover/pictures.ts';
import { make, NAMES, type Variant } from '../../unit/domain/report/variants.ts';
import { figuresOf, holds, plain } from './figures.ts';

const chromium = findChromium();
const has = (tool: string) => spawnSync(tool, ['-v']).error === undefined;
const readable = has('pdftotext') && has('pdfinfo');
if (!readable)
  process.stderr.write('pdftotext and pdfinfo (poppler-utils) are missing: their checks are skipped.\n');

/** Pages that a variant may take: a usual plan two. */
const PAGES: Partial<Record<Variant, number>> = { 'six purchases': 3, 'long names': 4, hostile: 4 };

describe.skipIf(chromium === null)('pdf', () => {
  let folder = '';
  let printer: Printer;
  const made = new Map<string, { bytes: Uint8Array; file: string }>();
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'loftledger-pdf-'));
    printer = openChromiumPrinter({ chromium });
  });
  afterAll(async () => {
    await printer.close();
    rmSync(folder, { recursive: true, force: true });
  });

  async function pdf(name: Variant, paper: Paper = 'a4') {
    const file = path.join(folder, `${name}-${paper}.pdf`);
    const known = made.get(file);
    if (known) return known;
    const bytes = await printer.print(html(make(name).document, { paper }));
    writeFileSync(file, bytes);
    made.set(file, { bytes, file });
    return { bytes, file };
  }
  const run = (tool: string, ...words: string[]) => {
    const { stdout, stderr } = spawnSync(tool, words, { encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
    return `${stdout}${stderr}`;
  };

  it.each(NAMES)('%s: tagged, in its language, titled, all fonts embedded', async (name) => {
    const { bytes } = await pdf(name);
    const raw = Buffer.from(bytes).toString('latin1');
    expect(raw.startsWith('%PDF-')).toBe(true);
    expect(raw).toMatch(/\/MarkInfo\s*<<\s*\/Type\s*\/MarkInfo\s*\/Marked true|\/Marked true/);
    expect(raw).toContain('/StructTreeRoot');
    expect(raw).toContain(`/Lang (${make(name).document.language})`);
    expect(raw).toMatch(/\/Title[ (<]/);
    const fonts = raw.match(/\/Type\s*\/FontDescriptor/g)?.length ?? 0;
    expect(fonts).toBeGreaterThan(0);
    // A Type 3 font is its own drawing (a made-up bold); every other brings its file.
    const drawn = raw.match(/\/Subtype\s*\/Type3/g)?.length ?? 0;
    expect((raw.match(/\/FontFile[23]?\s/g)?.length ?? 0) + drawn).toBe(fonts);
    // Nothing that acts or leads away.
    expect(raw).not.toMatch(/\/(?:JavaScript|Launch|URI|EmbeddedFile|SubmitForm)\b/);
  });

  it.runIf(readable).each(NAMES)('%s: the text holds every figure of the plan file', async (name) => {
    const { file } = await pdf(name);
    const { plan, document } = make(name);
    const figures = figuresOf(plan, document.locale);
    const lines = run('pdftotext', '-layout', file, '-').split('\n').map(plain);
    const text = plain(lines.join(' '));
    for (const figure of [
      ...figures.sums,
      ...figures.prices,
      ...figures.walkAways,
      ...figures.ladder.flat(),
    ]) {
      expect([figure, holds(text, figure)]).toEqual([figure, true]);
    }
    // Where names are short, a club's figures stand in one line.
    if (name === 'usual' || name === 'six purchases' || name === 'german') {
      for (const club of figures.ladder) {
        expect([club, lines.some((line) => club.every((figure) => holds(line, figure)))]).toEqual([
          club,
          true,
        ]);
      }
    }
    // In reading order the verdict comes first, then the sections.
    const read = plain(run('pdftotext', file, '-'));
    const places = [document.title, ...document.sections.map(({ title }) => title)].map((said) =>
      read.indexOf(plain(said)),
    );
    if (name !== 'hostile' && name !== 'long names') expect(places).not.toContain(-1);
    expect(read.startsWith(plain(document.title).slice(0, 20))).toBe(true);
  });

  it.runIf(readable).each(NAMES)('%s: title, size and number of pages', async (name) => {
    const { file } = await pdf(name);
    const info = run('pdfinfo', file);
    expect(plain(/^Title: +(.*)$/m.exec(info)?.[1] ?? '')).toBe(plain(make(name).document.title));
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(info).toMatch(/^Page size: +59[45][.\d]* x 84[12][.\d]* pts \(A4\)$/m); // ISO 216: 210 × 297 mm
    expect(Number(/^Pages: +(\d+)$/m.exec(info)?.[1])).toBeLessThanOrEqual(PAGES[name] ?? 2);
  });

  it.runIf(readable)('keeps to two pages of Letter paper, too', async () => {
    const { file } = await pdf('usual', 'letter');
    const info = run('pdfinfo', file);
    expect(info).toMatch(/^Page size: +612 x 792 pts \(letter\)$/m); // 8.5 × 11 in
    expect(info).toMatch(/^Pages: +2$/m);
  });

  it.runIf(readable)('tags headings, lists, figures and table heads in reading order', async () => {
    const { file } = await pdf('usual');
    const tree = run('pdfinfo', '-struct-text', file);
    const tags = [...tree.matchAll(/^ *(H1|H2|H3|L|LI|Table|TH|TD|Caption|Figure|P)\b/gm)].map(
      ([, tag]) => tag,
    );
    expect(tags[0]).toBe('H1');
    expect(new Set(tags)).toEqual(
      new Set(['H1', 'P', 'H2', 'Table', 'TH', 'TD', 'H3', 'L', 'LI', 'Caption', 'Figure']),
    );
    const { document } = make('usual');
    const heads = document.sections.map(({ title }) => tree.indexOf(`"${title}"`));
    expect(heads).not.toContain(-1);
    expect(heads).toEqual([...heads].sort((a, b) => a - b));
    expect(tree).toMatch(/\/Scope \/Column/);
    expect(tree).toMatch(/\/Scope \/Row/);
    const { bytes } = await pdf('usual');
    expect(Buffer.from(bytes).toString('latin1')).toMatch(/\/Alt \(/);
  });

  it.runIf(readable)('a letterhead is read before the title; its picture says nothing more', async () => {
    const { document } = make('usual', {
      letterhead: { name: 'Coach Invented', contact: 'Range 3\n01234 567' },
      coverNote: 'Dear Rowan,\n\nsee below.',
      retestOn: '2027-03-01',
      picked: { name: 'Path A', why: 'It is enough.', day: '2026-11-05' },
    });
    const picture = `data:image/png;base64,${png(90, 30).toString('base64')}`;
    const file = path.join(folder, 'letterhead.pdf');
    writeFileSync(file, await printer.print(html(document, { paper: 'a4', picture })));
    const read = plain(run('pdftotext', file, '-'));
    const places = ['Coach Invented Range 3 01234 567', document.title, 'see below.', 'Buy 25° hybrid'].map(
      (said) => read.indexOf(said),
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(read).toContain('Picked on 5 November 2026: Path A.');
    expect(read).toContain('1 March 2027, or as soon as');
    expect(run('pdfimages', '-list', file).split('\n')).toHaveLength(4); // two of heading, the picture, the end
    const figures = run('pdfinfo', '-struct', file).match(/^ *Figure\b/gm);
    expect(figures).toHaveLength(2); // the ladder's figure and the drawing in it
    expect(run('pdfinfo', file)).toMatch(/^Pages: +2$/m);
  });

  it('prints several at once, and ends when asked', async () => {
    const page = (n: number) => `<!doctype html><html lang="en"><title>t${String(n)}</title><p>${String(n)}`;
    const printed = await Promise.all([1, 2, 3, 4].map((n) => printer.print(page(n))));
    expect(printed.map((bytes) => Buffer.from(bytes.subarray(0, 5)).toString())).toEqual(
      Array(4).fill('%PDF-'),
    );
    const stop = new AbortController();
    const late = printer.print(page(5), stop.signal);
    stop.abort(new Error('enough'));
    await expect(late).rejects.toThrow('enough');
    await expect(printer.print(page(6), stop.signal)).rejects.toThrow('enough');
  });

  it('leaves no profile behind', async () => {
    const own = mkdtempSync(path.join(folder, 'tmp-'));
    vi.stubEnv('TMPDIR', own);
    const another = openChromiumPrinter({ chromium });
    vi.unstubAllEnvs();
    const [profile = ''] = readdirSync(own);
    expect(profile).toMatch(/^loftledger-print-/);
    expect(statSync(path.join(own, profile)).mode & 0o777).toBe(0o700);
    await another.print('<!doctype html><title>x</title>x');
    await another.close();
    expect(readdirSync(own)).toEqual([]);
    await expect(another.print('x')).rejects.toThrow(/printer is closed/);
  });
});
