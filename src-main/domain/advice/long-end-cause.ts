/** What the data let us say of narrow gaps at the long end. */
export type LongEndCause = 'flat-ball-speed' | 'wide-spread' | 'close-lofts' | 'unknown' | 'odd-pair';
