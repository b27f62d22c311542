import { createRawSnippet } from 'svelte';
import { render } from 'svelte/server';

/** A table twin is tested as a part of its own: here one stands in for it. */
export const noTable = createRawSnippet(() => ({ render: () => '<table></table>' }));

// What TypeScript alone knows of a `.svelte` file is that it exports a component; svelte-check knows its props.
const draw = render as unknown as (
  component: unknown,
  options: { props: Record<string, unknown> },
) => { body: string };

/** A chart as the server would render it, 600 px wide. */
export function htmlOf(chart: unknown, props: Record<string, unknown>): string {
  return draw(chart, { props }).body;
}

/**
 * The drawing of a rendered chart as text, an element a line, places rounded to whole px: a snapshot shows what moved
 * and not how a float ended. Marks of the renderer (comments, names of scoped styles) are left out.
 */
export function svgText(html: string): string {
  const svg = /<svg[^>]*role="img"[\s\S]*?<\/svg>/.exec(html)?.[0];
  if (svg === undefined) throw new Error('The chart has no drawing with role="img".');
  return svg
    .replaceAll(/<!--[\s\S]*?-->/g, '')
    .replaceAll(/ ?svelte-[0-9a-z]+/g, '')
    .replaceAll(/ class=""/g, '')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(
      / (?!aria-label)([a-z][a-z0-9-]*)="([^"]*)"/g,
      (_all, name: string, value: string) =>
        ` ${name}="${value.replaceAll(/-?\d+\.\d+(?:e-?\d+)?/g, whole)}"`,
    )
    .replaceAll(/><\/(?:circle|line|path|rect)>/g, '/>')
    .replaceAll(/> ?</g, '>\n<')
    .trim();
}

/** A true 0, never −0. */
const whole = (value: string) => String(Math.round(Number(value)) + 0);
