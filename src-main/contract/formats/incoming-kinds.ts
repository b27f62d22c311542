/** What files can be taken in. A table that is neither prices nor a roster is taken for shots: the user may know better. */
export const INCOMING_KINDS = ['bag', 'prices', 'roster', 'shots', 'database'] as const;
export type IncomingKind = (typeof INCOMING_KINDS)[number];

const MIB = 1024 * 1024;

/**
 * The most that a file of each kind may hold, bytes. A usual bag file has 5 kB; 20 MiB of a table are a hundred
 * thousand rows; 200 MiB is what the hosts let through at most.
 */
export const MOST_BYTES: Readonly<Record<IncomingKind, number>> = {
  bag: 2 * MIB,
  prices: 20 * MIB,
  roster: 20 * MIB,
  shots: 20 * MIB,
  database: 200 * MIB,
};
