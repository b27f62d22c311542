/** What has been opened and must be closed again, last opened first, whatever happened in between. */
export type Closers = {
  add(what: string, close: () => void | Promise<void>): void;
  closeAll(): Promise<void>;
};

/** @param onFault told of what could not be closed; the rest is closed all the same. */
export function createClosers(onFault: (what: string, error: unknown) => void): Closers {
  const open: { what: string; close: () => void | Promise<void> }[] = [];
  return {
    add: (what, close) => void open.push({ what, close }),
    async closeAll() {
      for (let last = open.pop(); last !== undefined; last = open.pop()) {
        try {
          await last.close();
        } catch (error) {
          onFault(last.what, error);
        }
      }
    },
  };
}
