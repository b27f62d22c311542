/** @throws the error of `late` when the promise has not settled after so many milliseconds. */
export async function inTime<T>(promise: Promise<T>, forMs: number, late: () => Error): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(late()), forMs);
  });
  try {
    return await Promise.race([promise, tooLate]);
  } finally {
    clearTimeout(timer);
  }
}
