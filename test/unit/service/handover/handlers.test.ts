import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { HostEvent } from '../../../../src-main/contract/gate.ts';
import { planFileSchema } from '../../../../src-main/contract/formats/plan-file.ts';
import { documentLanguageSchema } from '../../../../src-main/contract/calls/answers/handover.ts';
import { REPORT_LANGUAGES } from '../../../../src-main/domain/report/words/index.ts';
import { PrintError } from '../../../../src-main/service/handover/printer.ts';
import { bagFile } from '../../../support/bags.ts';
import { HOSTILE } from '../../domain/report/variants.ts';
import { useService } from '../kit.ts';
import { address, jpeg, png } from './pictures.ts';

let folder = '';
/** Prints by handing the page back, after `turn`; a page that holds "unprintable" fails. */
let turn: () => Promise<void>;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-handover-'));
  turn = () => Promise.resolve();
});
const { call, refused, open, gate } = useService(() => folder, {
  openPrinter: () => ({
    async print(page, signal) {
      await turn();
      signal?.throwIfAborted();
      if (page.includes('unprintable')) throw new PrintError('The PDF could not be made. Try again.');
      return Buffer.from(`%PDF ${page}`);
    },
    close: () => Promise.resolve(),
  }),
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const demo = () => call('players.openDemo', { demo: 'invented-bag' });
const textOf = async (bagId: number, more: { record?: number; locale?: string } = {}) =>
  (await call('handover.text', { bagId, format: 'md', ...more })).text;
async function pageOf(bagId: number, more: { record?: number; locale?: string } = {}) {
  const { page } = await call('handover.preview', { bagId, ...more });
  const found = await gate().page(page);
  if (found === null) throw new Error('the page is no more');
  return { ...found, text: Buffer.from(found.bytes).toString() };
}

describe('what a coach adds', () => {
  it('is nothing at first, with what is usual beside it', async () => {
    const { bagId } = await demo();
    const form = await call('handover.form', { bagId, locale: 'de-AT' });
    expect(form).toMatchObject({
      letterhead: { name: '', contact: '', paper: null, pictureBytes: null },
      added: { coverNote: null, language: null, retestOn: null },
      usual: { language: 'de', paper: 'a4' },
    });
    expect(form.usual.retest).toMatch(/^\d{4}-\d{2}$/);
    const us = await call('handover.form', { bagId, locale: 'en-US' });
    expect(us.usual).toMatchObject({ language: 'en', paper: 'letter' });
    const none = await call('handover.form', { bagId, locale: 'zz-XX' });
    expect(none.usual).toMatchObject({ language: 'en', paper: 'a4' });
  });

  it('is kept: the letterhead for everybody, the rest for the bag', async () => {
    const [one, two] = [{ bagId: (await open()).bagId }, { bagId: (await open()).bagId }];
    await call('handover.setLetterhead', { name: '  Coach Zoë ', contact: 'Range 3\n01234' });
    await call('handover.setPicture', { picture: address(png(4, 2)) });
    await call('handover.setAdded', {
      bagId: one.bagId,
      patch: { coverNote: ' Dear A,\n\nwell played. ', language: 'de', retestOn: '2027-02-28' },
    });
    const first = await call('handover.form', one);
    expect(first.letterhead).toEqual({
      name: 'Coach Zoë',
      contact: 'Range 3\n01234',
      paper: null,
      pictureBytes: png(4, 2).length,
    });
    expect(first.added).toEqual({
      coverNote: 'Dear A,\n\nwell played.',
      language: 'de',
      retestOn: '2027-02-28',
    });
    const second = await call('handover.form', two);
    expect(second.letterhead).toEqual(first.letterhead);
    expect(second.added).toEqual({ coverNote: null, language: null, retestOn: null });
    await call('handover.setAdded', { bagId: one.bagId, patch: { coverNote: '  ', retestOn: null } });
    expect((await call('handover.form', one)).added).toEqual({
      coverNote: null,
      language: 'de',
      retestOn: null,
    });
  });

  it('is taken back step by step, the picture too, each named', async () => {
    const { bagId } = await open();
    await call('handover.setLetterhead', { name: 'Coach' });
    await call('handover.setPicture', { picture: address(png(4, 2)) });
    await call('handover.setAdded', { bagId, patch: { coverNote: 'Dear A' } });
    expect(await call('history.undo', {})).toEqual({
      did: 'handover.setAdded',
      player: 'Invented',
      fields: ['coverNote'],
    });
    expect((await call('handover.form', { bagId })).added.coverNote).toBeNull();
    expect(await call('history.undo', {})).toEqual({ did: 'handover.setPicture' });
    expect((await call('handover.form', { bagId })).letterhead.pictureBytes).toBeNull();
    expect(await call('history.undo', {})).toEqual({ did: 'handover.setLetterhead', fields: ['name'] });
    await call('history.redo', {});
    await call('history.redo', {});
    expect((await call('handover.form', { bagId })).letterhead).toMatchObject({
      name: 'Coach',
      pictureBytes: png(4, 2).length,
    });
  });

  it('a picture is refused for what its bytes are, whatever its address says', async () => {
    const { bagId } = await open();
    const wrong = await refused('handover.setPicture', { picture: address(Buffer.from('<svg/>')) });
    expect(wrong).toMatchObject({
      kind: 'refused',
      message: expect.stringContaining('no whole PNG or JPEG'),
    });
    const bomb = png(1, 1, { width: 60_000, height: 60_000 });
    expect((await refused('handover.setPicture', { picture: address(bomb) })).message).toMatch(
      /at most 4096/,
    );
    for (const picture of [
      'https://example.org/x.png',
      'data:image/svg+xml;base64,AAAA',
      'data:image/png;base64,AA" onload="x',
      `data:image/png;base64,${'A'.repeat(1_000_000)}`,
    ]) {
      expect((await refused('handover.setPicture', { picture })).kind).toBe('refused');
    }
    await call('handover.setPicture', { picture: address(jpeg(9, 9)) });
    // What it is, its bytes say.
    expect((await pageOf(bagId)).text).toContain('<img src="data:image/jpeg;base64,/9j/');
  });

  it('refuses a day that is none, a language that is not offered, and what is too long', async () => {
    const { bagId } = await open();
    for (const patch of [{ retestOn: '2027-02-30' }, { language: 'fr' }, { coverNote: 'x'.repeat(4001) }]) {
      expect((await refused('handover.setAdded', { bagId, patch })).kind).toBe('refused');
    }
    expect((await refused('handover.setAdded', { bagId: 99, patch: { coverNote: 'x' } })).kind).toBe(
      'not-found',
    );
    expect((await refused('handover.form', { bagId: 99 })).kind).toBe('not-found');
  });

  it('the languages offered are those that there are words for', () => {
    expect(documentLanguageSchema.options).toEqual(REPORT_LANGUAGES);
  });
});

describe('the document', () => {
  it('is the same in every format, with letterhead, cover note and retest day', async () => {
    const { bagId } = await demo();
    await call('handover.setLetterhead', { name: 'Coach Zoë', contact: 'Range 3' });
    await call('handover.setAdded', {
      bagId,
      patch: { coverNote: 'Dear Ada,\n\nsee below.', retestOn: '2027-02-28' },
    });
    const page = await pageOf(bagId);
    expect(page.type).toBe('text/html; charset=utf-8');
    const verdict = 'Buy 25° hybrid (game improvement) for about £62 in all: that mends the bag.';
    for (const text of [
      page.text,
      await textOf(bagId),
      (await call('handover.text', { bagId, format: 'csv' })).text,
      (await call('handover.text', { bagId, format: 'html' })).text,
    ]) {
      for (const said of [verdict, 'Coach Zoë', 'Range 3', 'see below.', '28 February 2027']) {
        expect(text).toContain(said);
      }
    }
    const json = await call('handover.text', { bagId, format: 'json' });
    expect(planFileSchema.parse(JSON.parse(json.text)).plan.cash).toBe(62);
    expect(json.name).toMatch(/^Bag-plan-for-[\w-]+-\d{4}-\d\d-\d\d\.json$/);
    expect((await call('handover.preview', { bagId })).status).toBe('ok');
  });

  it('is in the bag’s language, else the window’s; figures as in the window’s country', async () => {
    const { bagId } = await demo();
    expect(await textOf(bagId)).toMatch(/^# Bag plan for/);
    expect(await textOf(bagId, { locale: 'de-CH' })).toMatch(/^# Schlägerplan für/);
    expect(await textOf(bagId, { locale: 'en-US' })).toMatch(/Made on [A-Z][a-z]+ \d+, \d{4}/);
    expect(await textOf(bagId, { locale: 'fr-FR' })).toMatch(/Made on \d+ [A-Z][a-z]+ \d{4}/);
    await call('handover.setAdded', { bagId, patch: { language: 'de' } });
    expect(await textOf(bagId, { locale: 'en-US' })).toMatch(/^# Schlägerplan für/);
  });

  it('is on the paper that was chosen, else on the usual one of the country', async () => {
    const { bagId } = await demo();
    expect((await pageOf(bagId, { locale: 'en-GB' })).text).toContain('size: A4;');
    expect((await pageOf(bagId, { locale: 'en-US' })).text).toContain('size: letter;');
    await call('handover.setLetterhead', { paper: 'a4' });
    expect((await pageOf(bagId, { locale: 'en-US' })).text).toContain('size: A4;');
  });

  it('stays under one address while it stays the same', async () => {
    const { bagId } = await demo();
    const { page } = await call('handover.preview', { bagId });
    expect((await call('handover.preview', { bagId })).page).toBe(page);
    await call('handover.setAdded', { bagId, patch: { coverNote: 'x' } });
    expect((await call('handover.preview', { bagId })).page).not.toBe(page);
  });

  it('is shown under a policy that lets nothing of a hostile name run', async () => {
    const file = bagFile({}, { name: HOSTILE });
    const { bagId } = await open(file);
    await call('handover.setLetterhead', { name: HOSTILE, contact: HOSTILE });
    await call('handover.setAdded', { bagId, patch: { coverNote: HOSTILE } });
    const { text, policy = '' } = await pageOf(bagId);
    expect(text).not.toContain('<script');
    expect(text.match(/&lt;script&gt;/g)?.length).toBeGreaterThan(3);
    expect(policy).toMatch(/^default-src 'none'; style-src 'sha256-[A-Za-z0-9+/]{43}='; img-src data:;/);
    expect(policy).toMatch(/sandbox allow-same-origin allow-modals$/);
  });

  it('says why there is none', async () => {
    expect((await refused('handover.preview', { bagId: 99 })).kind).toBe('not-found');
    expect((await refused('handover.pdf', { bagId: 99 })).kind).toBe('not-found');
    expect((await refused('handover.text', { bagId: 1, format: 'doc' })).kind).toBe('refused');
    const { bagId } = await demo();
    expect((await refused('handover.preview', { bagId, record: 7 })).kind).toBe('not-found');
    expect((await refused('handover.preview', { bagId, locale: 'x"' })).kind).toBe('refused');
  });
});

describe('a record of what was picked', () => {
  async function pickOf(bagId: number, which: 'today' | 'plan' | 'cheap') {
    const { plan } = await call('answers.plan', { bagId });
    const owned = plan.instance.items.filter(({ origin }) => origin === 'owned').map(({ id }) => id);
    const cheap = plan.frontier.find(({ cost, penalty }) => cost > 0 && penalty > 20)?.items;
    const items = { today: owned, plan: plan.plan.items ?? [], cheap: cheap ?? [] }[which];
    return call('plans.pick', { bagId, name: 'Path A', why: 'It is enough <b>now</b>.', items });
  }

  it('says what was picked, when and why, from the bag and prices of then', async () => {
    const { bagId } = await demo();
    const { planId } = await pickOf(bagId, 'plan');
    const before = await textOf(bagId, { record: planId });
    expect(before).toContain(
      '**Buy 25° hybrid (game improvement) for about £62 in all: that mends the bag.**',
    );
    expect(before).toMatch(
      /Picked on \d+ [A-Z][a-z]+ \d{4}: Path A\. Bag and prices are those of that day\./,
    );
    expect(before).toContain('The reason given: It is enough \\<b\\>now\\</b\\>.');
    expect(before).toMatch(/Walk away above \| £\d+ for the club alone/);
    await call('bags.setBudget', { bagId, budget: { amount: 10 } });
    await call('bags.setPrice', { bagId, archetype: 'hybrid-25-t3', band: null });
    expect(await textOf(bagId, { record: planId })).toBe(before);
    expect(await textOf(bagId)).not.toContain('Picked on');
    const plan = (await call('handover.text', { bagId, record: planId, format: 'json' })).text;
    expect(planFileSchema.parse(JSON.parse(plan)).plan.cash).toBe(62);
  });

  it('of nothing says so, and what stays open', async () => {
    const { bagId } = await demo();
    const { planId } = await pickOf(bagId, 'today');
    const text = await textOf(bagId, { record: planId });
    expect(text).toContain('**Buy nothing: the bag stays as it is.**');
    expect(text).toContain('Stays open');
  });

  it('belongs to its bag', async () => {
    const { bagId } = await demo();
    const { planId } = await pickOf(bagId, 'plan');
    const other = await open();
    expect((await refused('handover.preview', { bagId: other.bagId, record: planId })).kind).toBe(
      'not-found',
    );
  });

  it('is refused with a way out where its clubs are gone from the catalogue', async () => {
    await call('archetypes.add', {
      archetype: { id: 'mine', kind: 'hybrid', loftDeg: 24, forgiveness: 3, spinTier: 'mid', lengthIn: 39.5 },
    });
    const { bagId } = await demo();
    await call('bags.setPrice', { bagId, archetype: 'mine', band: { low: 1, likely: 2, high: 3 } });
    const { plan } = await call('answers.plan', { bagId });
    expect(plan.plan.items).toContain('buy:mine');
    const { planId } = await call('plans.pick', { bagId, name: 'x', why: '', items: plan.plan.items ?? [] });
    await call('bags.setPrice', { bagId, archetype: 'mine', band: null });
    await call('archetypes.remove', { id: 'mine' });
    const error = await refused('handover.preview', { bagId, record: planId });
    expect(error.kind).toBe('refused');
    expect(error.refusals?.[0]?.value).toContain('mine');
  });
});

describe('a PDF', () => {
  it('is kept among the exports, privately, and can be fetched once more', async () => {
    const { bagId } = await demo();
    const made = await call('handover.pdf', { bagId });
    expect(path.dirname(made.file)).toBe(path.join(folder, 'exports'));
    expect(made.name).toMatch(/^Bag-plan-for-[\w-]+\.pdf$/);
    const bytes = readFileSync(made.file);
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF ');
    expect(bytes.toString()).toContain('Buy 25° hybrid');
    expect(made.bytes).toBe(bytes.length);
    expect(statSync(path.dirname(made.file)).mode & 0o777).toBe(0o700);
    expect(await gate().page(made.page)).toEqual({ type: 'application/pdf', bytes, name: made.name });
  });

  it('that cannot be made or written says why, and leaves nothing half done', async () => {
    const { bagId } = await open(bagFile({}, { name: 'unprintable' }));
    expect(await refused('handover.pdf', { bagId })).toEqual({
      kind: 'conflict',
      message: 'The PDF could not be made. Try again.',
    });
    expect(existsSync(path.join(folder, 'exports'))).toBe(false);
  });
});

describe('a batch', () => {
  const listen = () => {
    const events: HostEvent[] = [];
    gate().subscribe((event) => events.push(event));
    return events;
  };
  const names = ['Ada', 'Bea', 'Ada', '../../etc', HOSTILE];
  const roster = () => Promise.all(names.map((name) => open(bagFile({}, { name }))));

  it('prints a document for each player into a folder of its own, and tells how far it is', async () => {
    const bags = await roster();
    const events = listen();
    turn = () => new Promise((resolve) => setTimeout(resolve, 100));
    const bagIds = bags.map(({ bagId }) => bagId);
    const result = await call('handover.batch', { bagIds, job: 'b1' });
    expect(result).toMatchObject({ failed: [], cancelled: false });
    expect(result.saved.map(({ bagId }) => bagId)).toEqual(bagIds);
    expect(result.saved.slice(0, 4).map(({ name }) => name)).toEqual([
      'Ada.pdf',
      'Bea.pdf',
      'Ada-2.pdf',
      'etc.pdf',
    ]);
    expect(path.dirname(result.folder ?? '')).toBe(path.join(folder, 'exports'));
    expect(readdirSync(result.folder ?? '').sort()).toEqual(result.saved.map(({ name }) => name).sort());
    const progress = events.filter(({ event }) => event === 'progress').map(({ data }) => data);
    expect(progress.at(-1)).toEqual({ job: 'b1', done: 5, of: 5 });
    expect(progress.length).toBeGreaterThan(1);
  });

  it('goes past one that fails, and says which and why', async () => {
    const good = await open();
    const bad = await open(bagFile({}, { name: 'unprintable' }));
    const bagIds = [bad.bagId, 999, good.bagId];
    const result = await call('handover.batch', { bagIds, job: 'b2' });
    expect(result.saved.map(({ bagId }) => bagId)).toEqual([good.bagId]);
    expect(result.failed.map(({ bagId, message }) => [bagId, message])).toEqual([
      [bad.bagId, 'The PDF could not be made. Try again.'],
      [999, expect.stringContaining('There is no bag 999')],
    ]);
  });

  it('ends when it is cancelled; what is saved stays', async () => {
    const bags = await roster();
    let printed = 0;
    turn = async () => {
      printed += 1;
      if (printed > 2) await call('jobs.cancel', { job: 'b3' });
    };
    const result = await call('handover.batch', { bagIds: bags.map(({ bagId }) => bagId), job: 'b3' });
    expect(result.cancelled).toBe(true);
    expect(result.saved.length).toBeLessThan(5);
    expect(readdirSync(result.folder ?? '').sort()).toEqual(result.saved.map(({ name }) => name).sort());
  });

  it('leaves no empty folder behind', async () => {
    const result = await call('handover.batch', { bagIds: [999], job: 'b4' });
    expect(result.folder).toBeNull();
    expect(readdirSync(path.join(folder, 'exports'))).toEqual([]);
  });
});
