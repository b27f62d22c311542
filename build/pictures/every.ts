// Every screen in every light, language, size and amount, for somebody to look at one by one.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { demoBag } from '../../db/demo/index.ts';
import type { BagFile } from '../../src-main/contract/formats/bag-file.ts';
import { startProgram } from '../../test/e2e/support/program.ts';

const SCREENS = ['players', 'bag', 'ladder', 'prices', 'spend', 'side', 'handover', 'files'] as const;
const THEMES = ['light', 'dark'] as const;
type Amount = 'normal' | 'empty' | 'crowded';

type Size = { width: number; height: number; scale?: number };
/** 200 % is half the room at twice the pixels, as a browser does it. */
const SIZES = {
  usual: { width: 1280, height: 860 },
  narrow: { width: 520, height: 860 },
  zoom200: { width: 640, height: 430, scale: 2 },
  '4k': { width: 3840, height: 2160 },
} satisfies Record<string, Size>;

type Shot = { amount: Amount; size: keyof typeof SIZES; language: 'en' | 'de' };

/** Each state in each theme; languages and sizes where they change something. */
const SHOTS: readonly Shot[] = [
  ...(['normal', 'empty', 'crowded'] as const).map((amount) => ({
    amount,
    size: 'usual' as const,
    language: 'en' as const,
  })),
  { amount: 'crowded', size: 'narrow', language: 'en' },
  { amount: 'crowded', size: 'zoom200', language: 'en' },
  { amount: 'normal', size: '4k', language: 'en' },
  { amount: 'normal', size: 'usual', language: 'de' },
];

/** @returns how many pictures were written to the folder. */
export async function takeEvery(folder: string): Promise<number> {
  mkdirSync(folder, { recursive: true });
  let taken = 0;
  for (const shot of SHOTS) taken += await takeOne(folder, shot);
  return taken;
}

async function takeOne(folder: string, { amount, size, language }: Shot): Promise<number> {
  const program = await startProgram();
  let taken = 0;
  try {
    const { width, height, scale = 1 }: Size = SIZES[size];
    const { page } = await program.openWindow({
      viewport: { width, height },
      deviceScaleFactor: scale,
      locale: language === 'de' ? 'de-DE' : 'en-GB',
      reducedMotion: 'reduce',
    });
    const bagId = await fill(page, amount);
    for (const theme of THEMES) {
      await page.emulateMedia({ colorScheme: theme });
      for (const screen of SCREENS) {
        const bare = screen === 'players' || screen === 'files' || bagId === null;
        await page.evaluate(
          (hash) => (location.hash = hash),
          bare ? `#/${screen}` : `#/${screen}/${String(bagId)}`,
        );
        await page.waitForTimeout(1500);
        const name = `${amount}-${size}-${language}-${screen}-${theme}.png`;
        await page.screenshot({ path: join(folder, name), fullPage: size !== '4k' });
        taken++;
      }
    }
  } finally {
    await program.close();
  }
  return taken;
}

/** @returns the bag to open; null where there is none. */
async function fill(page: Page, amount: Amount): Promise<number | null> {
  if (amount === 'empty') return null;
  const call = async (name: string, args: unknown): Promise<unknown> => {
    const answer = await page.evaluate(
      async ([name, args]) => {
        const response = await fetch('/call', {
          method: 'POST',
          headers: { 'Content-Type': 'application/json' },
          body: JSON.stringify({ call: name, args }),
        });
        return (await response.json()) as { ok: boolean; value: unknown };
      },
      [name, args] as const,
    );
    if (!answer.ok) throw new Error(`${name} was refused`);
    return answer.value;
  };
  if (amount === 'normal') {
    return ((await call('players.openDemo', { demo: 'invented-bag' })) as { bagId: number }).bagId;
  }
  const full = demoBag('range-bag') as BagFile;
  const long = 'Invented Bartholomew Featherstonehaugh-Cholmondeley of the Lower Meadow';
  for (let i = 0; i < 24; i++) {
    const name = i % 4 === 0 ? `${long} ${String(i)}` : `Invented player ${String(i)}`;
    await call('players.importBag', { text: JSON.stringify({ ...full, player: { ...full.player, name } }) });
  }
  const crowded = {
    ...full,
    player: { ...full.player, name: long },
    clubs: full.clubs.map((club, i) => (i % 2 === 0 ? { ...club, label: `${String(i)} ${long}` } : club)),
  };
  const { bagId } = (await call('players.importBag', { text: JSON.stringify(crowded) })) as {
    bagId: number;
  };
  return bagId;
}
