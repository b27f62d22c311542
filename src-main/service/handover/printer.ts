/** Sets pages as PDF. One printer prints many documents; `close` it in the end. Each host brings its own. */
export type Printer = {
  /**
   * A self-contained page → a tagged PDF with the page's title and language, on the paper that its style asks for.
   * @throws PrintError when it cannot, or takes too long; the signal's reason when it was aborted.
   */
  print(page: string, signal?: AbortSignal): Promise<Uint8Array>;
  close(): Promise<void>;
};

/** @throws PrintError where there is nothing to print with. */
export type OpenPrinter = () => Printer;

/** Printing failed; the message says what to do. */
export class PrintError extends Error {
  /** What the printing program said last, for a terminal: it may name places of this machine. */
  readonly lastWords: string;
  constructor(message: string, { lastWords = '', ...options }: ErrorOptions & { lastWords?: string } = {}) {
    super(message, options);
    this.name = 'PrintError';
    this.lastWords = lastWords;
  }
}
