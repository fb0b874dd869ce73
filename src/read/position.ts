/** Where a value stands in a file; lines and columns count from 1. */
export interface Position {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}
