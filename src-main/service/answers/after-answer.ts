/** Work that an answer need not wait for, as keeping it for the roster; done before any other call is looked at. */
export type AfterAnswer = {
  add(work: () => void): void;
  /** Does what is left to do. */
  settle(): void;
};

/** The work runs as soon as the answer is on its way. It must not throw. */
export function createAfterAnswer(): AfterAnswer {
  const left: (() => void)[] = [];
  const settle = (): void => {
    for (let work = left.shift(); work !== undefined; work = left.shift()) work();
  };
  return {
    add(work) {
      left.push(work);
      setImmediate(settle);
    },
    settle,
  };
}
