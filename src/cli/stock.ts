import { stockFromTable, stockTable, stockText } from '../read/index.ts';
import { writeWhole } from './files.ts';
import { readStock, textOf } from './stock-file.ts';

/** Writes a stock file as a table that a spreadsheet opens. */
export function exportStock(path: string, options: { readonly out?: string }): void {
  write(options.out ?? `${path.replace(/\.yaml$/, '')}.csv`, stockTable(readStock(path)));
}

/** Writes a table as a stock file. */
export function importStock(path: string, options: { readonly out?: string }): void {
  write(options.out ?? `${path.replace(/\.csv$/, '')}.yaml`, stockText(stockFromTable(textOf(path, 'a table of a stock, as `stock export` writes it'), path)));
}

function write(path: string, text: string): void {
  writeWhole(path, text);
  process.stdout.write(`${path}\n`);
}
