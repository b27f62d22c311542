// Takes the README's pictures of the program as it is, from the demo, in real Chromium (`npm run pictures`).
// `npm run pictures -- FOLDER` takes every screen in every state to that folder instead, to be looked at.
import { join } from 'node:path';
import { startProgram } from '../../test/e2e/support/program.ts';
import { takeEvery } from './every.ts';

const HERE = import.meta.dirname;
const SCREENS = ['ladder', 'spend'] as const;

const [folder] = process.argv.slice(2);
if (folder !== undefined) {
  console.log(`${String(await takeEvery(folder))} pictures in ${folder}`);
  process.exit(0);
}

const program = await startProgram();
try {
  const { page } = await program.openWindow({ viewport: { width: 1200, height: 860 } });
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.waitForURL(/#\/[a-z]+\/\d+/);
  const bagId = page.url().split('/').at(-1) ?? '';
  for (const screen of SCREENS) {
    await page.evaluate((hash) => (location.hash = hash), `#/${screen}/${bagId}`);
    await page.locator('figure svg').first().waitFor();
    await page.waitForTimeout(800);
    await page.screenshot({ path: join(HERE, `${screen}.png`) });
  }
} finally {
  await program.close();
}
