/**
 * A value as JSON, cut to so many characters. Stops writing when they are full, so that what is shown of a hostile
 * value costs nothing, however large or deep it is; what is no JSON (NaN, a circle) has words too.
 */
export function shownJson(value: unknown, most = 60): string {
  const out = new Cut(most + 1);
  write(value, out, new Set());
  return out.text.length > most ? `${wellCut(out.text, most - 3)}...` : out.text;
}

class Cut {
  text = '';
  readonly #most: number;
  constructor(most: number) {
    this.#most = most;
  }
  get full(): boolean {
    return this.text.length >= this.#most;
  }
  add(part: string): void {
    if (!this.full) this.text += part.slice(0, this.#most - this.text.length);
  }
}

function write(value: unknown, out: Cut, open: Set<object>): void {
  if (out.full) return;
  if (typeof value === 'string') return out.add(JSON.stringify(value.slice(0, 200)));
  if (value === null || typeof value !== 'object') return out.add(plain(value));
  if (open.has(value)) return out.add('(itself)');
  open.add(value);
  if (Array.isArray(value)) writeList(value, out, open);
  else writeObject(value, out, open);
  open.delete(value);
}

function plain(value: unknown): string {
  return typeof value === 'function' || typeof value === 'symbol' ? `(${typeof value})` : String(value);
}

function writeList(list: readonly unknown[], out: Cut, open: Set<object>): void {
  out.add('[');
  for (let i = 0; i < list.length && !out.full; i++) {
    if (i > 0) out.add(',');
    write(list[i], out, open);
  }
  out.add(']');
}

function writeObject(object: object, out: Cut, open: Set<object>): void {
  out.add('{');
  let first = true;
  for (const key in object) {
    if (out.full) break;
    if (!Object.hasOwn(object, key)) continue;
    out.add(`${first ? '' : ','}${JSON.stringify(key.slice(0, 200))}:`);
    first = false;
    write((object as Record<string, unknown>)[key], out, open);
  }
  out.add('}');
}

/** Cut without leaving half a surrogate pair. */
export function wellCut(text: string, most: number): string {
  if (text.length <= most) return text;
  const cut = text.slice(0, most);
  return /[\ud800-\udbff]$/.test(cut) ? cut.slice(0, -1) : cut;
}
