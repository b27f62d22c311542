import { describe, expect, it } from 'vitest';
import { markdown } from '../../../../../src-main/domain/report/formats/markdown.ts';
import type { Table } from '../../../../../src-main/domain/report/model.ts';
import { pipeTables } from '../pipe-tables.ts';
import { HOSTILE, make, NAMES } from '../variants.ts';

const oneLine = (text: string) => text.replace(/[\r\n]+/g, ' ').trim();

describe('markdown', () => {
  it.each(NAMES)('%s: its tables read back to the very same cells', (name) => {
    const { document } = make(name);
    const tables = pipeTables(markdown(document));
    const wanted = document.sections.flatMap(({ blocks }) =>
      blocks.filter((block): block is Table => block.kind === 'table'),
    );
    for (const { columns, rows } of wanted) {
      const head = columns.map(({ label }) => oneLine(label));
      const found = tables.find((table) => table.head.join() === head.join());
      expect(found?.rows).toEqual(rows.map(({ cells }) => cells.map(oneLine)));
      expect(found?.aligns).toEqual(columns.map(({ align }) => align));
    }
    const entries = document.sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.kind === 'entries' ? block.entries : [])),
    );
    for (const { title, price, groups } of entries) {
      const found = tables.find((table) => table.head[0] === title);
      expect(found?.head).toEqual([title, price ?? '']);
      expect(found?.rows).toEqual(
        groups.flatMap(({ facts }) => facts.map(({ label, text }) => [label, oneLine(text)])),
      );
    }
    expect(tables).toHaveLength(wanted.length + entries.length);
  });

  it('has one title, and a heading for each section', () => {
    const { document } = make('usual');
    const text = markdown(document);
    expect(text.match(/^# .*/gm)).toHaveLength(1);
    expect(text.match(/^## .*/gm)).toHaveLength(document.sections.length);
    expect(text).toMatch(/^\*\*Buy 25° hybrid.*\*\*$/m);
  });

  it('leaves no mark-up of a name alive', () => {
    const text = markdown(make('hostile').document);
    expect(text).not.toMatch(/(?<!\\)<script/);
    expect(text).not.toMatch(/(?<!\\)\[x(?!\\)\]/);
    expect(text).not.toMatch(/(?<!\\)`/);
    expect(text).toContain(HOSTILE.slice(8, 16)); // alert(1) itself is only text
  });

  it('starts no list, heading or number where a text begins like one', () => {
    const { document } = make('usual', {
      coverNote: '# no heading\n\n1. no number\n\n- no list\n\nwww.x.y http://z',
    });
    expect(markdown(document)).toContain(
      '> \\# no heading\n\n> 1\\. no number\n\n> \\- no list\n\n> www\\.x.y http\\://z',
    );
  });
});
