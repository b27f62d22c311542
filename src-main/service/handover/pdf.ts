import { openPrinter, type PrinterOptions } from './printer.ts';

export { PrintError } from './printer.ts';

/**
 * One page → one PDF, with a Chromium of its own that is gone afterwards.
 * @throws PrintError where there is no Chromium or it fails; the signal's reason when aborted
 */
export async function pdfOf(
  page: string,
  { signal, ...options }: PrinterOptions & { signal?: AbortSignal },
): Promise<Uint8Array> {
  const printer = openPrinter(options);
  try {
    return await printer.print(page, signal);
  } finally {
    await printer.close();
  }
}
