/** @throws what the work throws; the signal's reason when it was aborted; that it took too long. */
export function withinTime<T>(
  work: Promise<T>,
  timeoutMs: number,
  signal: AbortSignal | undefined,
): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(
      () => reject(new Error(`It took longer than ${String(timeoutMs / 1000)} s.`)),
      timeoutMs,
    );
    const onAbort = () => reject(signal?.reason as Error);
    signal?.addEventListener('abort', onAbort, { once: true });
    work.then(resolve, reject).finally(() => {
      clearTimeout(timer);
      signal?.removeEventListener('abort', onAbort);
    });
  });
}
