/** What the data let us say of narrow gaps at the long end. */
export type LongEndCause = 'flat-ball-speed' | 'wide-spread' | 'make-up' | 'unknown' | 'odd-pair';
