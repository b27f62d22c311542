import type { Page } from 'playwright';
import { bagOf, chooseFiles } from './files.ts';

/** One player's bag, taken in by its file and opened on its ladder. */
export async function takeInAda(page: Page): Promise<void> {
  await chooseFiles(page, { 'ada.json': bagOf('Ada Invented') });
  await page.getByRole('button', { name: 'Take the player in' }).click();
  await page.getByRole('heading', { level: 1, name: /Ladder.*Ada/ }).waitFor();
}

/** What stands on the Files page, by its names. @param page the window, once it is open */
export function filesPage(page: () => Page) {
  return {
    async toFiles(): Promise<void> {
      await page().getByRole('link', { name: 'Players' }).click();
      await page().getByRole('button', { name: 'Files' }).click();
      await page().getByRole('heading', { level: 1, name: 'Files' }).waitFor();
    },
    preview: (name: string) => page().getByRole('region', { name }),
    taken: () => page().getByRole('list', { name: 'Taken in' }),
    button: (name: string | RegExp) => page().getByRole('button', { name }),
    choice: (name: string) => page().getByRole('combobox', { name, exact: true }),
    /** What each row of a table says, cell by cell. */
    rowsOf: (name: string) =>
      page()
        .getByRole('table', { name })
        .locator('tbody tr')
        .evaluateAll((rows) =>
          rows.map((row) =>
            [...row.children].map((cell) => (cell as HTMLElement).innerText.replace(/\s+/g, ' ').trim()),
          ),
        ),
  };
}
