import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright';

const DEMO = join(resolve(import.meta.dirname, '..', '..', '..'), 'db', 'demo');

export const demoBag = readFileSync(join(DEMO, 'invented-bag.json'), 'utf8');
export const demoShots = readFileSync(join(DEMO, 'shots-one-bag.csv'), 'utf8');

export const bagOf = (name: string) => demoBag.replace('Invented player: Rowan Ashdown', name);

/** As a person chooses them. */
export async function chooseFiles(page: Page, files: Record<string, string | Uint8Array>): Promise<void> {
  await page.locator('input[type=file][multiple]').setInputFiles(
    Object.entries(files).map(([name, bytes]) => ({
      name,
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(bytes),
    })),
  );
}

/** As a person drops them on the window, wherever it stands. */
export async function dropFiles(page: Page, files: Record<string, string>): Promise<void> {
  const data = await page.evaluateHandle((list) => {
    const transfer = new DataTransfer();
    for (const [name, text] of list) transfer.items.add(new File([text], name));
    return transfer;
  }, Object.entries(files));
  await page.dispatchEvent('body', 'dragenter', { dataTransfer: data });
  await page.getByText('Let go to see what it would bring').waitFor();
  await page.dispatchEvent('body', 'drop', { dataTransfer: data });
}
