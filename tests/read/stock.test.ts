import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FaultError, stockFromTable, stockFromText, stockTable, stockText, type Stock, type StockDefect, type StockPanel } from '../../src/read/index.ts';

const file = 'steps/stock/tern-island.yaml';
const text = readFileSync(file, 'utf8');
const stock = stockFromText(text, file);

/** The faults of a text that must not be read. */
function faults(read: () => unknown): string {
  try {
    read();
  } catch (error) {
    if (error instanceof FaultError) return error.message;
    throw error;
  }
  throw new Error('no fault was found');
}

const spoilt = (was: string, now: string): string => {
  if (!text.includes(was)) throw new Error(`"${was}" must be in the file`);
  return faults(() => stockFromText(text.replace(was, now), file));
};

describe('the stock file of the demo', () => {
  it('reads as counted, rectangles from the lower left corner, mm', () => {
    expect(stock.tubes.map(({ name, count, length, notFromEnd, cracked }) => [name, count, length, notFromEnd, cracked])).toEqual([
      ['whole', 92, 2000, 0, false], ['crushed', 9, 2000, 180, false], ['sawn', 6, 1480, 0, false], ['split', 3, 2000, 0, true],
    ]);
    expect(stock.panels.map(({ name, defects }) => [name, defects.map(({ is, x, y, width, height }) => [is, x, y, width, height])])).toEqual([
      ['wall', []],
      ['roof', [['rib', 730, 0, 40, 1000]]],
      ['corner', [['broken-corner', 1280, 860, 220, 140]]],
      ['hatch', [['hole', 880, 260, 300, 200], ['broken-corner', 0, 0, 90, 60]]],
    ]);
  });
});

const mistakes: readonly (readonly [name: string, was: string, now: string, told: RegExp])[] = [
  ['a length without its unit', 'length: 1480 mm', 'length: 1480', /^steps\/stock\/tern-island\.yaml:\d+:13 tubes\.3\.length: found "1480", would be right: a length with its unit, for example 1000 mm$/],
  ['a count that is no whole number', 'count: 92', 'count: 92.5', /tubes\.1\.count: found "92\.5", would be right: a whole number from 1/],
  ['a count beyond all reason', 'count: 92', 'count: 9200000', /tubes\.1\.count: .* a whole number from 1 to 100000/],
  ['a negative count of joints', 'joints: 380', 'joints: -1', /joints: found "-1", would be right: a whole number from 0 to 100000/],
  ['a damaged end as long as the tube', 'not-from-end: 180 mm', 'not-from-end: 2000 mm', /tubes\.2\.not-from-end: found "2000 mm", would be right: less than the length; cracked: true if none of it is to be used/],
  ['the same name twice', 'name: crushed', 'name: whole', /tubes\.2\.name: found "whole", would be right: a name that no other line of this list has/],
  ['a panel higher than it is long', 'width: 1000 mm', 'width: 1600 mm', /panels\.1\.width: found "1600 mm", would be right: the longer side as length/],
  ['a hole beyond the panel', 'length: 300 mm', 'length: 1300 mm', /panels\.4\.not-to-use\.1\.length: found "1300 mm", would be right: a rectangle that lies on the panel, whose length it passes/],
  ['a rib without a width', '        along: 730 mm\n        length: 40 mm', '        along: 730 mm', /panels\.2\.not-to-use\.1\.length: found nothing, would be right: a length, a width or both/],
  ['a broken corner away from its corner', 'corner: upper-right', 'corner: upper-right\n        along: 5 mm', /panels\.3\.not-to-use\.1\.along: found "5 mm", would be right: no along or across/],
  ['an unknown corner', 'corner: upper-right', 'corner: top-right', /panels\.3\.not-to-use\.1\.corner: found "top-right", would be right: one of lower-left, lower-right, upper-left, upper-right/],
  ['an unknown field', 'cracked: true', 'craked: true', /tubes\.4\.craked: found "craked", would be right: cracked\? /],
  ['no kit', 'kit: stall-kit ', 'kitt: stall-kit ', /kit: found nothing, would be right: a name in small letters/],
];

describe('a mistake in a stock file', () => {
  it.each(mistakes)('%s is told with its place and what would be right', (_, was, now, told) => { expect(spoilt(was, now)).toMatch(told); });
});

const mm = fc.integer({ min: 1000, max: 40_000 }).map((tenths) => tenths / 10);
const name = fc.stringMatching(/^[a-z][a-z0-9]{0,6}(-[a-z0-9]{1,4}){0,2}$/);
const count = fc.integer({ min: 1, max: 5000 });
const corner = fc.constantFrom('lower-left' as const, 'lower-right' as const, 'upper-left' as const, 'upper-right' as const);
const share = fc.integer({ min: 1, max: 99 });

const rounded = (value: number): number => Math.max(0.1, Math.round(value * 10) / 10);

/** A rectangle within a panel; in the corner it is measured from when it is broken off there. */
const defectIn = (length: number, width: number): fc.Arbitrary<StockDefect> =>
  fc.record({ is: fc.constantFrom('hole' as const, 'rib' as const, 'seam' as const, 'other' as const), corner, at: fc.tuple(share, share), size: fc.tuple(share, share) }).map(({ is, corner: from, at: [a, b], size: [c, d] }) => {
    const x = rounded((length * a) / 200);
    const y = rounded((width * b) / 200);
    return { is, corner: from, x, y, width: rounded((length * c) / 200), height: rounded((width * d) / 200) };
  });

const anyPanel: fc.Arbitrary<StockPanel> = fc.record({ name, count, sides: fc.tuple(mm, mm), grain: fc.constantFrom(null, 'length' as const, 'width' as const) })
  .chain(({ sides, ...rest }) => {
    const [length, width] = [Math.max(...sides), Math.min(...sides)];
    return fc.array(defectIn(length, width), { maxLength: 3 }).map((defects) => ({ ...rest, length, width, defects }));
  });

const anyStock: fc.Arbitrary<Stock> = fc.record({
  name, kit: name,
  note: fc.option(fc.string({ minLength: 1, maxLength: 60 }).filter((words) => /\S/.test(words) && words.trim() === words && !/[\r\n]/.test(words) && !words.startsWith('\''))),
  tubes: fc.uniqueArray(fc.record({ name, count, length: mm, cracked: fc.boolean(), damaged: share }).map(({ damaged, ...tube }) => ({ ...tube, notFromEnd: damaged > 50 ? rounded((tube.length * damaged) / 100) : 0 })), { selector: (tube) => tube.name, maxLength: 5 }),
  panels: fc.uniqueArray(anyPanel, { selector: (panel) => panel.name, maxLength: 4 }),
  cables: fc.uniqueArray(fc.record({ name, count, length: mm }), { selector: (cable) => cable.name, maxLength: 3 }),
  joints: fc.nat(999), panelPins: fc.nat(999), jointPins: fc.nat(999), wingNuts: fc.nat(999),
});

/** Places to a thousandth of a millimetre, as they are written. */
const asWritten = (one: Stock): unknown => JSON.parse(JSON.stringify(one, (_, value: unknown) => (typeof value === 'number' ? Math.round(value * 1000) / 1000 : value)));

describe('any stock', () => {
  it('comes back from its own text', () => {
    fc.assert(fc.property(anyStock, (one) => { expect(asWritten(stockFromText(stockText(one), 'x.yaml'))).toEqual(asWritten(one)); }));
  });

  it('comes back from its table', () => {
    fc.assert(fc.property(anyStock, (one) => { expect(asWritten(stockFromTable(stockTable(one), 'x.csv'))).toEqual(asWritten(one)); }));
  });
});

describe('the table', () => {
  const table = stockTable(stock);
  const changed = (was: string, now: string): string => {
    if (!table.includes(was)) throw new Error(`"${was}" must be in the table`);
    return table.replace(was, now);
  };

  it('begins with a byte order mark and names its unit, so that a spreadsheet opens it right', () => {
    expect(table.startsWith('\uFEFFpart,name,count,length [mm],width [mm],')).toBe(true);
  });

  it('is read with semicolons, tabs, decimal commas, other units, other order of columns and empty lines', () => {
    expect(stockFromTable(table.replaceAll(',', ';'), 'x.csv')).toEqual(stock);
    expect(stockFromTable(table.replaceAll(',', '\t'), 'x.csv')).toEqual(stock);
    expect(stockFromTable(table.replaceAll(',', ';').replace('1480', '1480,5'), 'x.csv').tubes[2]?.length).toBe(1480.5);
    expect(stockFromTable('part,count,name,length [cm]\r\nstock,,pile\r\nkit,,stall-kit\r\n,,,\r\ntube,3,long,200\r\n', 'x.csv').tubes).toEqual([{ name: 'long', count: 3, length: 2000, notFromEnd: 0, cracked: false }]);
  });

  it('keeps a note that a spreadsheet would take for a formula from being one', () => {
    const sly = { ...stock, note: '=1+2' };
    expect(stockTable(sly)).toContain('\'=1+2');
    expect(stockFromTable(stockTable(sly), 'x.csv').note).toBe('=1+2');
  });

  it.each([
    ['a word for a length', 'tube,sawn,6,1480', 'tube,sawn,6,long', 'x.csv:7:4 tube.length: found "long", would be right: a number in mm without a unit, for example 2000 or 12.5'],
    ['a negative count', 'tube,whole,92', 'tube,whole,-2', 'x.csv:5:3 tube.count: found "-2", would be right: a whole number, for example 24'],
    ['no length', 'tube,sawn,6,1480', 'tube,sawn,6,', 'x.csv:7:4 tubes.3.length: found nothing, would be right: a number in mm without a unit, for example 2000 or 12.5'],
    ['an unknown part', 'cable,short', 'cabel,short', 'x.csv:18:1 part: found "cabel", would be right: one of stock, kit, note, tube, panel, not-to-use, cable, joint, panel-pin, joint-pin, wing-nut'],
    ['damage of a panel that is not there', 'not-to-use,roof', 'not-to-use,rof', 'x.csv:11:2 not-to-use.name: found "rof", would be right: the name of a panel on a line above: one of wall, roof'],
    ['an open quote', 'cable,short', 'cable,"short', /^x\.csv:\d+:1: found .*, would be right: a table with ; or , between the columns/],
    ['a value in a column of other parts', 'tube,sawn,6,1480,', 'tube,sawn,6,1480,28', 'x.csv:7:5 tube.width: found "28", would be right: nothing here: the column does not go with this part'],
    ['a length without a unit in its column', 'length [mm]', 'length', 'x.csv:1:4: found "length", would be right: length [mm], or another unit of length'],
    ['an unknown column', ',count,', ',cuont,', /^x\.csv:1:3: found "cuont", would be right: count\? one of the columns name, count/],
    ['a hole beyond the panel', 'not-to-use,hatch,,300', 'not-to-use,hatch,,3000', 'x.csv:15:4 panels.4.not-to-use.1.length: found "3000", would be right: a rectangle that lies on the panel, whose length it passes'],
  ] as const)('%s is told with line and column', (_, was, now, told) => {
    const found = faults(() => stockFromTable(changed(was, now), 'x.csv'));
    if (typeof told === 'string') expect(found).toBe(told);
    else expect(found).toMatch(told);
  });

  it('that is none is told so', () => {
    expect(faults(() => stockFromTable('', 'x.csv'))).toMatch(/^x\.csv:1:1: found nothing, would be right: a first line with the columns part, name/);
    expect(faults(() => stockFromTable('a;b\n1;2', 'x.csv'))).toMatch(/^x\.csv:1:1: found "a", would be right: a first line/);
  });
});

describe('any text', () => {
  it('is read or told of, never worse', () => {
    const tried = (read: () => unknown): void => {
      try { read(); } catch (error) { expect(error).toBeInstanceOf(FaultError); }
    };
    fc.assert(fc.property(fc.string({ maxLength: 200 }), (any) => {
      tried(() => stockFromText(any, 'x.yaml'));
      tried(() => stockFromTable(any, 'x.csv'));
      tried(() => stockFromTable(`part,name,count,length [mm]\n${any}`, 'x.csv'));
    }));
  });
});
