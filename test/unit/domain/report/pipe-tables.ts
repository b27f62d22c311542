/** Reads pipe tables as GitHub's specification has them: cells split at bare pipes, then backslash escapes undone. */
export type PipeTable = { head: string[]; aligns: ('left' | 'right')[]; rows: string[][] };

export function pipeTables(text: string): PipeTable[] {
  const tables: PipeTable[] = [];
  const lines = text.split('\n');
  for (let i = 0; i + 1 < lines.length; i++) {
    const rule = lines[i + 1] ?? '';
    if (!/^\|(?: :?-+:? \|)+$/.test(rule) || !(lines[i] ?? '').startsWith('|')) continue;
    const aligns = rule
      .slice(2, -2)
      .split(' | ')
      .map((mark) => (mark.endsWith(':') ? 'right' : 'left'));
    const head = cells(lines[i] ?? '');
    const rows: string[][] = [];
    for (i += 2; (lines[i] ?? '').startsWith('|'); i++) rows.push(cells(lines[i] ?? ''));
    tables.push({ head, aligns, rows });
  }
  return tables;
}

function cells(line: string): string[] {
  const inner = line.replace(/^\|/, '').replace(/\|$/, '');
  return inner
    .split(/(?<!(?<!\\)(?:\\\\)*\\)\|/)
    .map((cell) => cell.trim().replace(/\\([!-/:-@[-`{-~])/g, '$1'));
}
