import { readFileSync } from 'node:fs';
import { stockFromTable, stockFromText, type Stock } from '../read/index.ts';

/** A stock file, or a table of one when its name ends in .csv. Throws when it is not there or has faults. */
export function readStock(path: string): Stock {
  const text = textOf(path, 'a stock file, as steps/stock/ has them, or its table (.csv)');
  return path.endsWith('.csv') ? stockFromTable(text, path) : stockFromText(text, path);
}

/** The text of a file that was named. */
export function textOf(path: string, right: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    const told = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new Error(`${path}: cannot be read (${told}); would be right: ${right}`);
  }
}
