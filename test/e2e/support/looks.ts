import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright';

/**
 * What axe finds, as short lines that say where.
 * @param without rules that the page breaks on purpose.
 */
export async function violations(page: Page, without: string[] = []): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page })
    // What passes is not asked for: naming every element that does takes most of the time.
    .options({ resultTypes: ['violations'] })
    .disableRules(without)
    // No script runs in the frame of a document, axe's no more than others: it is looked at by itself.
    .exclude('iframe')
    .analyze();
  return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 120)}`));
}

/** Text under 12 px, and things to press under 24 px in either direction (links in running text aside). */
export function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const seen = (element: Element) => element.getClientRects().length > 0;
    const found: string[] = [];
    for (const element of document.querySelectorAll('body *')) {
      const hasText = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
      if (hasText && seen(element) && parseFloat(getComputedStyle(element).fontSize) < 12) {
        found.push(`text: ${element.textContent ?? ''}`);
      }
    }
    for (const element of document.querySelectorAll('button, a, select, input, summary')) {
      // A box to tick is pressed by its label.
      const target = element.closest('label') ?? element;
      const { width, height } = target.getBoundingClientRect();
      if (seen(element) && !element.matches('.skip') && (width < 24 || height < 24)) {
        found.push(`target: ${element.outerHTML.slice(0, 90)} ${String(width)}×${String(height)}`);
      }
    }
    return found;
  });
}

/** How many px the page is wider than the window. */
export function overflow(page: Page): Promise<number> {
  return page.evaluate(() =>
    Math.max(0, document.documentElement.scrollWidth - document.documentElement.clientWidth),
  );
}

/** Words of a chart that reach out of its drawing, or lie on one another. */
export function crampedWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    for (const svg of document.querySelectorAll('svg[role="img"]')) {
      const frame = svg.getBoundingClientRect();
      const title = (svg.getAttribute('aria-label') ?? '').slice(0, 40);
      const words = [...svg.querySelectorAll('text')].map((text) => ({
        said: text.textContent ?? '',
        box: text.getBoundingClientRect(),
      }));
      for (const { said, box } of words) {
        const out = Math.max(
          frame.left - box.left,
          box.right - frame.right,
          frame.top - box.top,
          box.bottom - frame.bottom,
        );
        if (out > 2) found.push(`${title}: "${said}" is ${out.toFixed(0)} px out`);
      }
      words.forEach((one, i) => {
        for (const other of words.slice(i + 1)) {
          const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
          const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
          // A line's box is taller than its letters.
          if (across > 1 && down > 5) found.push(`${title}: "${one.said}" lies on "${other.said}"`);
        }
      });
    }
    return found;
  });
}
