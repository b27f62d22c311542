import { stateOf } from '../kill/protocol.ts';
import { connect, pragmaNumber, type Db } from '../../../db/sqlite.ts';
import { Wrong } from './target.ts';

/** Every so many cases all rows are compared besides. */
const DUMP_EVERY = 50;

/**
 * Sees whether anything was committed to the records between two looks: SQLite raises a file's version at each commit of
 * another connection. Since that trusts SQLite, all rows are compared as well now and then.
 */
export class Watch {
  readonly #file: string;
  #db: Db | null = null;
  #version = 0;
  #hash: string | null = null;
  #looks = 0;

  constructor(file: string) {
    this.#file = file;
  }

  /** Before a case. @param replaces the file may be replaced, so that nobody else may have it open meanwhile. */
  begin(replaces = false): void {
    this.#looks += 1;
    if (replaces) this.close();
    else {
      this.#db ??= connect(this.#file, { readonly: true, mustExist: true });
      this.#version = pragmaNumber(this.#db, 'data_version');
    }
    this.#hash = replaces || this.#looks % DUMP_EVERY === 0 ? stateOf(this.#file).hash : null;
  }

  /** @throws Wrong when anything was committed, or a row is not as it was. */
  expectSame(what: string, input: unknown): void {
    const moved = this.#db !== null && pragmaNumber(this.#db, 'data_version') !== this.#version;
    const changed = this.#hash !== null && stateOf(this.#file).hash !== this.#hash;
    if (moved || changed) throw new Wrong(what, input);
  }

  close(): void {
    this.#db?.close();
    this.#db = null;
  }
}
