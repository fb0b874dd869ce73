/** What a line of the table is about, by the word in its first column. */
export const TABLE_PARTS = ['stock', 'kit', 'note', 'tube', 'panel', 'not-to-use', 'cable', 'joint', 'panel-pin', 'joint-pin', 'wing-nut'] as const;
export type TablePart = (typeof TABLE_PARTS)[number];

/** A column: its name in the first line, the field it fills, and whether its figures are lengths, whose unit stands in the name. */
export interface TableColumn {
  readonly name: string;
  readonly field: string;
  readonly is: 'word' | 'length' | 'count' | 'yes';
  /** The parts that may have a value here. */
  readonly parts: readonly TablePart[];
}

export const TABLE_COLUMNS: readonly TableColumn[] = [
  { name: 'name', field: 'name', is: 'word', parts: ['stock', 'kit', 'tube', 'panel', 'not-to-use', 'cable'] },
  { name: 'count', field: 'count', is: 'count', parts: ['tube', 'panel', 'cable', 'joint', 'panel-pin', 'joint-pin', 'wing-nut'] },
  { name: 'length', field: 'length', is: 'length', parts: ['tube', 'panel', 'not-to-use', 'cable'] },
  { name: 'width', field: 'width', is: 'length', parts: ['panel', 'not-to-use'] },
  { name: 'not from end', field: 'not-from-end', is: 'length', parts: ['tube'] },
  { name: 'cracked', field: 'cracked', is: 'yes', parts: ['tube'] },
  { name: 'grain', field: 'grain', is: 'word', parts: ['panel'] },
  { name: 'is', field: 'is', is: 'word', parts: ['not-to-use'] },
  { name: 'corner', field: 'corner', is: 'word', parts: ['not-to-use'] },
  { name: 'along', field: 'along', is: 'length', parts: ['not-to-use'] },
  { name: 'across', field: 'across', is: 'length', parts: ['not-to-use'] },
  { name: 'text', field: 'note', is: 'word', parts: ['note'] },
];

/** Which list or count of the stock file a part stands in. */
export const LISTS: Readonly<Partial<Record<TablePart, 'tubes' | 'panels' | 'cables'>>> = { tube: 'tubes', panel: 'panels', cable: 'cables' };
export const COUNTS: Readonly<Partial<Record<TablePart, 'joints' | 'panel-pins' | 'joint-pins' | 'wing-nuts'>>> = {
  joint: 'joints', 'panel-pin': 'panel-pins', 'joint-pin': 'joint-pins', 'wing-nut': 'wing-nuts',
};

/** The first line as it is written: lengths with their unit. */
export const tableHeader = (): readonly string[] => ['part', ...TABLE_COLUMNS.map(({ name, is }) => (is === 'length' ? `${name} [mm]` : name))];
