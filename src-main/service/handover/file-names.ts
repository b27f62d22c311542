const MOST_LETTERS = 80;
/** Names that Windows keeps for devices, whatever their ending. */
const RESERVED = /^(?:con|prn|aux|nul|com\d|lpt\d)$/i;

/** A file name for each title: letters and digits of any script, hyphens between; equal ones are numbered. */
export function fileNamesFor(titles: readonly string[], ending: string): string[] {
  const used = new Set<string>();
  return titles.map((title) => {
    const base = baseName(title);
    let name = base;
    for (let i = 2; used.has(name.toLowerCase()); i++) name = `${base}-${String(i)}`;
    used.add(name.toLowerCase());
    return `${name}.${ending}`;
  });
}

function baseName(title: string): string {
  const plain = title.normalize('NFC').replace(/[^\p{L}\p{N}\p{M}]+/gu, '-');
  const short = [...plain]
    .slice(0, MOST_LETTERS)
    .join('')
    .replace(/^-+|-+$/g, '');
  return short === '' || RESERVED.test(short) ? `plan-${short}`.replace(/-$/, '') : short;
}
