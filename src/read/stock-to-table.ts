import { stringify } from 'csv-stringify/sync';
import { TABLE_COLUMNS, tableHeader, type TablePart } from './stock-columns.ts';
import { fromCorner } from './stock-text.ts';
import type { Stock } from './types.ts';

type Cells = Readonly<Record<string, string | number>>;

const mm = (length: number): number => Number(length.toFixed(3));

/**
 * The stock as a table that a spreadsheet opens: comma-separated, UTF-8 with a byte order mark, lengths in mm, a line
 * for each kind of piece and each rectangle not to be used. Reads back as the same stock.
 */
export function stockTable(stock: Stock): string {
  return stringify([tableHeader(), ...rowsOf(stock)], { bom: true, record_delimiter: '\r\n', escape_formulas: true });
}

function rowsOf(stock: Stock): readonly (readonly (string | number)[])[] {
  return [
    row('stock', { name: stock.name }),
    row('kit', { name: stock.kit }),
    ...(stock.note === null ? [] : [row('note', { note: stock.note })]),
    ...stock.tubes.map(({ name, count, length, notFromEnd, cracked }) => row('tube', {
      name, count, length: mm(length), ...(notFromEnd > 0 ? { 'not-from-end': mm(notFromEnd) } : {}), ...(cracked ? { cracked: 'yes' } : {}),
    })),
    ...stock.panels.flatMap((panel) => [
      row('panel', { name: panel.name, count: panel.count, length: mm(panel.length), width: mm(panel.width), ...(panel.grain === null ? {} : { grain: panel.grain }) }),
      ...panel.defects.map((defect) => {
        const { along, across } = fromCorner(panel, defect);
        return row('not-to-use', { name: panel.name, length: mm(defect.width), width: mm(defect.height), is: defect.is, corner: defect.corner, along: mm(along), across: mm(across) });
      }),
    ]),
    ...stock.cables.map(({ name, count, length }) => row('cable', { name, count, length: mm(length) })),
    row('joint', { count: stock.joints }),
    row('panel-pin', { count: stock.panelPins }),
    row('joint-pin', { count: stock.jointPins }),
    row('wing-nut', { count: stock.wingNuts }),
  ];
}

const row = (part: TablePart, cells: Cells): readonly (string | number)[] => [part, ...TABLE_COLUMNS.map(({ field }) => cells[field] ?? '')];
