import { CsvError, parse } from 'csv-parse/sync';
import { FaultError } from './faults.ts';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import { nearestName } from './nearest.ts';
import { COUNTS, LISTS, TABLE_COLUMNS, TABLE_PARTS, tableHeader, type TableColumn, type TablePart } from './stock-columns.ts';
import { stockMessages } from './stock-messages.ts';
import { stockOf, stockRules } from './stock.ts';
import { stockSchema } from './stock-schema.ts';
import type { Fault, Position, Stock } from './types.ts';
import { measuredBy } from './units.ts';
import { validated } from './validate.ts';
import { fieldName, quoted, type FieldPath, type YamlSource } from './yaml-source.ts';

const say = stockMessages.table;

/** A line of the table with its number in the file. */
interface Line {
  readonly number: number;
  readonly cells: readonly string[];
}

/** A column of this very table: where it stands and in which unit its lengths are. */
interface Placed extends TableColumn {
  readonly at: number;
  readonly unit: string;
}

/**
 * Reads a stock from a table: columns parted by , or ; or tabs, with or without a byte order mark, a point or a
 * comma before decimals, lengths in the unit their column names. A column of a fault's position is that of the table.
 * Throws a FaultError with every fault.
 */
export function stockFromTable(text: string, file: string): Stock {
  const faults: Fault[] = [];
  const lines = linesOf(text, file);
  const [header, ...rest] = lines;
  const placed = columnsOf(header, file, faults);
  if (faults.length > 0) throw new FaultError(faults);
  const source = sourceOf(rest, placed, file, faults);
  const { data, faults: broken } = validated(source, stockSchema);
  const further: Fault[] = [...broken];
  if (data !== null) stockRules(data, (path, remedy) => further.push(source.fault(path, remedy)));
  // A cell that could not be read is told of once.
  const told = new Set(faults.map(({ position }) => `${position.line}:${position.column}`));
  const all = [...faults, ...further.filter(({ position }) => !told.has(`${position.line}:${position.column}`))];
  if (all.length > 0 || data === null) throw new FaultError(all);
  return stockOf(data);
}

function linesOf(text: string, file: string): readonly Line[] {
  const fail = (line: number, found: string, remedy: string): FaultError => new FaultError([{ position: { file, line, column: 1 }, field: '', found, remedy }]);
  if (text.length > limits.fileLength) throw fail(1, `${text.length} characters`, messages.tooLong(limits.fileLength));
  try {
    const records = parse(text, { bom: true, delimiter: delimiterOf(text), info: true, relax_column_count: true, skip_empty_lines: true, trim: true }) as unknown as
      readonly { readonly info: { readonly lines: number }; readonly record: readonly string[] }[];
    return records.map(({ info, record }) => ({ number: info.lines, cells: record })).filter(({ cells }) => cells.some((cell) => cell !== ''));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line = typeof error['lines'] === 'number' ? error['lines'] : 1;
    throw fail(line, quoted(text.split(/\r?\n/)[line - 1] ?? ''), say.quotes);
  }
}

/** The sign between columns: that of , ; and tab which stands in the first line most often. */
function delimiterOf(text: string): string {
  const [first = ''] = text.split(/\r?\n/, 1);
  const times = (sign: string): number => first.split(sign).length;
  return [',', ';', '\t'].reduce((best, sign) => (times(sign) > times(best) ? sign : best));
}

function columnsOf(header: Line | undefined, file: string, faults: Fault[]): readonly Placed[] {
  const known = TABLE_COLUMNS.map(({ name }) => name);
  const complain = (at: number, found: string, remedy: string): void => {
    faults.push({ position: { file, line: header?.number ?? 1, column: at + 1 }, field: '', found, remedy });
  };
  if (header === undefined || header.cells[0]?.toLowerCase() !== 'part') {
    complain(0, header === undefined ? messages.nothing : quoted(header.cells[0] ?? ''), say.header(tableHeader()));
    return [];
  }
  const columns = header.cells.flatMap((cell, at): Placed[] => {
    if (at === 0 || cell === '') return [];
    const [, name = '', unit = ''] = /^([^[(]*?)\s*(?:[[(]([^\])]*)[\])])?$/.exec(cell.toLowerCase()) ?? [];
    const column = TABLE_COLUMNS.find((each) => each.name === name.replace(/[-_\s]+/g, ' '));
    if (column === undefined) {
      const nearest = nearestName(name, known);
      complain(at, quoted(cell), nearest === null ? say.knownColumn(tableHeader().slice(1)) : `${nearest}? ${say.knownColumn(tableHeader().slice(1))}`);
      return [];
    }
    if (column.is === 'length' && measuredBy(unit) !== 'length') complain(at, quoted(cell), `${column.name} [mm], or another unit of length`);
    return [{ ...column, at, unit }];
  });
  const twice = columns.find((column, index) => columns.findIndex(({ name }) => name === column.name) < index);
  if (twice !== undefined) complain(twice.at, quoted(twice.name), say.once);
  return columns;
}

type Entry = Record<string, unknown>;
type Complain = (line: Line, at: number, field: string, remedy: string) => void;

/** The stock file that the lines make up, as it grows, and where each of its values stands in the table. */
interface Draft {
  readonly file: string;
  readonly columns: readonly Placed[];
  readonly complain: Complain;
  readonly single: Entry;
  readonly lists: Readonly<Record<'tubes' | 'panels' | 'cables', Entry[]>>;
  readonly places: Map<string, { readonly position: Position; readonly found: string }>;
}

function sourceOf(lines: readonly Line[], columns: readonly Placed[], file: string, faults: Fault[]): YamlSource {
  const complain: Complain = (line, at, field, remedy) => {
    faults.push({ position: { file, line: line.number, column: at + 1 }, field, found: quotedCell(line.cells[at]), remedy });
  };
  const draft: Draft = { file, columns, complain, single: { kind: 'stock' }, lists: { tubes: [], panels: [], cables: [] }, places: new Map() };
  for (const line of lines) {
    const part = TABLE_PARTS.find((each) => each === line.cells[0]?.toLowerCase());
    if (part === undefined) complain(line, 0, 'part', say.part(TABLE_PARTS));
    else enter(draft, part, line);
  }
  const end = { position: { file, line: lines.at(-1)?.number ?? 1, column: 1 }, found: messages.nothing as string };
  const placeOf = (path: FieldPath) => path.map((_, index) => draft.places.get(fieldName(path.slice(0, path.length - index)))).find((place) => place !== undefined) ?? end;
  const fault = (path: FieldPath, remedy: string, found?: string): Fault => {
    const place = placeOf(path);
    return { position: place.position, field: fieldName(path), found: found ?? place.found, remedy: remedy === messages.withUnit('length') ? say.number : remedy };
  };
  return { file, raw: { ...draft.single, ...draft.lists }, faults: [], fault, faultAtName: (path, remedy) => fault(path, remedy), positionOf: (path) => placeOf(path).position };
}

function enter(draft: Draft, part: TablePart, line: Line): void {
  const values = valuesOf(part, line, draft.columns, draft.complain);
  const list = LISTS[part];
  if (list !== undefined) {
    draft.lists[list].push(values);
    placeLine(draft, [list, draft.lists[list].length - 1], line);
  } else if (part === 'not-to-use') enterDefect(draft, values, line);
  else enterSingle(draft, part, values, line);
}

function enterDefect(draft: Draft, values: Entry, line: Line): void {
  const { panels } = draft.lists;
  const index = panels.findIndex(({ name }) => name === values['name']);
  const panel = panels[index];
  if (panel === undefined) {
    draft.complain(line, columnOf(draft.columns, 'name'), 'not-to-use.name', say.ownPanel(panels.map(({ name }) => String(name))));
    return;
  }
  const before = Array.isArray(panel['not-to-use']) ? panel['not-to-use'] as Entry[] : [];
  panel['not-to-use'] = [...before, Object.fromEntries(Object.entries(values).filter(([field]) => field !== 'name'))];
  placeLine(draft, ['panels', index, 'not-to-use', before.length], line);
}

function enterSingle(draft: Draft, part: TablePart, values: Entry, line: Line): void {
  const counted = COUNTS[part];
  const [to, from] = counted !== undefined ? [counted, 'count'] : part === 'stock' ? ['name', 'name'] : part === 'kit' ? ['kit', 'name'] : ['note', 'note'];
  if (draft.single[to] !== undefined) draft.complain(line, 0, part, say.oneLine(part));
  if (values[from] !== undefined) draft.single[to] = values[from];
  draft.places.set(to, cellPlace(draft.file, line, columnOf(draft.columns, from)));
}

function placeLine({ file, columns, places }: Draft, path: FieldPath, line: Line): void {
  places.set(fieldName(path), cellPlace(file, line, 0));
  for (const { field, at } of columns) places.set(fieldName([...path, field]), cellPlace(file, line, at));
}

const columnOf = (columns: readonly Placed[], field: string): number => columns.find((column) => column.field === field)?.at ?? 0;

const cellPlace = (file: string, line: Line, at: number) => ({ position: { file, line: line.number, column: at + 1 }, found: quotedCell(line.cells[at]) });

const quotedCell = (cell: string | undefined): string => (cell === undefined || cell === '' ? messages.nothing : quoted(cell));

/** The values of a line, as the stock file has them; an empty cell is no value. */
function valuesOf(part: TablePart, line: Line, columns: readonly Placed[], complain: Complain): Entry {
  const widest = Math.max(0, ...columns.map(({ at }) => at)) + 1;
  line.cells.forEach((cell, at) => { if (at >= widest && cell !== '') complain(line, at, part, say.fields(widest)); });
  return Object.fromEntries(columns.flatMap((column): [string, unknown][] => {
    const cell = (line.cells[column.at] ?? '').replace(/^'(?=[=+\-@])/, '');
    if (cell === '') return [];
    const field = `${part}.${column.field}`;
    if (!column.parts.includes(part)) {
      complain(line, column.at, field, say.empty);
      return [];
    }
    const value = valueOf(column, cell);
    if (value === null) {
      complain(line, column.at, field, column.is === 'yes' ? say.yes : column.is === 'count' ? say.whole : say.number);
      return [];
    }
    return [[column.field, value]];
  }));
}

/** A cell as the stock file writes it, or null. */
function valueOf({ is, unit }: Placed, cell: string): string | number | boolean | null {
  if (is === 'word') return cell;
  if (is === 'yes') return /^(yes|y|x|true|1)$/i.test(cell) ? true : /^(no|n|false|0)$/i.test(cell) ? false : null;
  const figure = cell.replace(/^(\d+),(\d+)$/, '$1.$2');
  if (!/^\d+(\.\d+)?$/.test(figure)) return null;
  return is === 'count' ? Number(figure) : `${figure} ${unit}`;
}
