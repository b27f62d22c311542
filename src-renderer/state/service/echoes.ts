/**
 * Every edit comes back twice: as the answer to the call and as a "changed" event. Screens read again on the answer;
 * the echo would only have them read once more. Edits of other windows have no answer here and are no echo.
 */
export type Echoes = {
  sent(call: string): void;
  /** The call changed nothing, so no echo will come. */
  failed(call: string): void;
  /** Whether this event is the echo of an edit of ours; each edit has one. */
  isEcho(call: string): boolean;
  /** After a lost connection none of the echoes still out will come. */
  forget(): void;
};

export function createEchoes(): Echoes {
  const out = new Map<string, number>();
  const add = (call: string, by: number) => {
    out.set(call, Math.max(0, (out.get(call) ?? 0) + by));
  };
  return {
    sent: (call) => add(call, 1),
    failed: (call) => add(call, -1),
    isEcho(call) {
      if ((out.get(call) ?? 0) === 0) return false;
      add(call, -1);
      return true;
    },
    forget: () => out.clear(),
  };
}
