/** How much, and for how long, the host lets a connection take. Sizes in bytes, times in milliseconds. */
export type Limits = {
  callBytes: number;
  uploadBytes: number;
  headersMs: number;
  requestMs: number;
  /** How often Node looks for connections over the two times above. */
  checkEveryMs: number;
  /** Silence within a body after which it is cut. */
  bodyIdleMs: number;
  keepAliveMs: number;
  /** How long the rest of a refused body is read and thrown away, so that the sender sees the refusal. */
  lingerMs: number;
  connections: number;
  eventStreams: number;
  uploadsAtOnce: number;
  heartbeatMs: number;
  /** An event stream that reads slower than this much behind is cut; the window reconnects and reads anew. */
  eventBacklogBytes: number;
};

const MIB = 1024 * 1024;

export const LIMITS: Limits = {
  callBytes: MIB,
  uploadBytes: 200 * MIB,
  headersMs: 5_000,
  requestMs: 300_000,
  checkEveryMs: 1_000,
  bodyIdleMs: 10_000,
  keepAliveMs: 5_000,
  lingerMs: 1_000,
  connections: 64,
  eventStreams: 4,
  uploadsAtOnce: 2,
  heartbeatMs: 15_000,
  eventBacklogBytes: 4 * MIB,
};
