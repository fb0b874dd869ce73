/** What can be kept: plain data. A key is made from everything that the result hangs on. */
export type KeyPart = string | number | boolean | null | object;

/** Results of earlier builds, by what they were made from. A result that is not there, or is damaged, is made again. */
export interface Keep {
  /** The key of a result of this kind, made from these parts by this code. Equal parts give equal keys. */
  key(kind: string, ...parts: readonly KeyPart[]): string;
  /** What is kept under a key, whole and as it was written, or null. */
  read(key: string): Uint8Array | null;
  /** Whether something is kept under a key; whether it is whole shows when it is read. */
  holds(key: string): boolean;
  /** Keeps a result. Where the disk refuses, nothing is kept and nothing fails. */
  write(key: string, bytes: Uint8Array): void;
  /** Lets go what was used longest ago, until what is kept is under the limit. */
  trim(): void;
}
