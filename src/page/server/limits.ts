/** What one who asks may take of the program, so that nobody keeps it from the others. Ours: far above what the page itself needs. */
export const LIMITS = {
  /** Bytes of what a request brings. */
  body: 100_000,
  /** Bytes of its address and headers. */
  headers: 8192,
  /** Until a request is there whole, ms. */
  request: 10_000,
  /** How often is looked for requests that take longer, ms. */
  look: 1000,
  /** Without a byte either way, ms; streams of news wait as long as a making is silent. */
  silence: 60_000,
  /** Connections at once. */
  connections: 200,
  /** Streams of news at once. */
  streams: 32,
  /** Bytes of news that wait for one who does not read them. */
  waiting: 1_000_000,
} as const;
