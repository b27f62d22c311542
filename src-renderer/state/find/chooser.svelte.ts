/** A line of the list, as far as choosing goes. */
type Choosable = { id: string; isOff: boolean };
type Group = { lines: readonly Choosable[] };

/**
 * Which line of a list Enter would take, while the focus stays in the field above it. The first that can be taken is
 * chosen until another is; so it is again when that one has gone.
 */
export class Chooser {
  #groups: () => readonly Group[];
  #wanted = $state<string | null>(null);
  #takeable = $derived.by(() => this.#groups().map(({ lines }) => lines.filter(({ isOff }) => !isOff)));
  #ids = $derived.by(() => this.#takeable.flat().map(({ id }) => id));
  #chosen = $derived.by(() => this.#ids.find((id) => id === this.#wanted) ?? this.#ids[0] ?? null);

  constructor(groups: () => readonly Group[]) {
    this.#groups = groups;
  }

  /** Null when no line can be taken. */
  get chosen(): string | null {
    return this.#chosen;
  }

  choose(id: string): void {
    if (this.#ids.includes(id)) this.#wanted = id;
  }

  /** Back to the first, as when something else is typed. */
  reset(): void {
    this.#wanted = null;
  }

  /** One line on, or back; beyond the last comes the first. */
  step(by: 1 | -1): void {
    const ids = this.#ids;
    const at = ids.findIndex((id) => id === this.#chosen);
    this.#wanted = ids.at((at + by) % ids.length) ?? null;
  }

  /** To the first line of the next group, or of this group and then of the one before. */
  leap(by: 1 | -1): void {
    const firsts = this.#takeable.flatMap((lines) => lines[0]?.id ?? []);
    const order = this.#ids;
    const now = order.indexOf(this.#chosen ?? '');
    const next =
      by === 1
        ? firsts.find((id) => order.indexOf(id) > now)
        : firsts.findLast((id) => order.indexOf(id) < now);
    this.#wanted = next ?? this.#chosen;
  }
}
