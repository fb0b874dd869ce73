import type { Stock, StockPanel } from './types.ts';

/** A length as the files write it. */
const mm = (length: number): string => `${Number(length.toFixed(3))} mm`;

/** A name, in quotes where YAML would read something else. */
const word = (name: string): string => (['true', 'false', 'null'].includes(name) ? `"${name}"` : name);

/**
 * The text of a stock file that reads as this stock: the same stock, the same text. `schema` is the way from the
 * file to the published schema, for editors.
 */
export function stockText(stock: Stock, schema = '../schemas/stock.schema.json'): string {
  const { name, kit, note, tubes, panels, cables } = stock;
  return [
    `# yaml-language-server: $schema=${schema}`,
    'kind: stock',
    `name: ${word(name)}`,
    `kit: ${word(kit)}`,
    ...(note === null ? [] : [`note: ${JSON.stringify(note)}`]),
    ...list('tubes', tubes.map(({ name: called, count, length, notFromEnd, cracked }) => [
      `name: ${word(called)}`, `count: ${count}`, `length: ${mm(length)}`,
      ...(notFromEnd > 0 ? [`not-from-end: ${mm(notFromEnd)}`] : []),
      ...(cracked ? ['cracked: true'] : []),
    ])),
    ...list('panels', panels.map(panelLines)),
    ...list('cables', cables.map(({ name: called, count, length }) => [`name: ${word(called)}`, `count: ${count}`, `length: ${mm(length)}`])),
    '',
    `joints: ${stock.joints}`,
    `panel-pins: ${stock.panelPins}`,
    `joint-pins: ${stock.jointPins}`,
    `wing-nuts: ${stock.wingNuts}`,
    '',
  ].join('\n');
}

function list(name: string, entries: readonly (readonly string[])[]): readonly string[] {
  return entries.length === 0 ? [] : ['', `${name}:`, ...entries.flatMap((lines) => lines.map((line, index) => `${index === 0 ? '  - ' : '    '}${line}`))];
}

function panelLines(panel: StockPanel): readonly string[] {
  const { name, count, length, width, grain, defects } = panel;
  return [
    `name: ${word(name)}`, `count: ${count}`, `length: ${mm(length)}`, `width: ${mm(width)}`,
    ...(grain === null ? [] : [`grain: ${grain}`]),
    ...(defects.length === 0 ? [] : ['not-to-use:', ...defects.flatMap((defect) => {
      const { along, across } = fromCorner(panel, defect);
      return [
        `  - is: ${defect.is}`, `    corner: ${defect.corner}`,
        ...(along > 0 ? [`    along: ${mm(along)}`] : []), ...(across > 0 ? [`    across: ${mm(across)}`] : []),
        `    length: ${mm(defect.width)}`, `    width: ${mm(defect.height)}`,
      ];
    })]),
  ];
}

/** Where a rectangle begins, from the corner it was measured from, mm. */
export function fromCorner({ length, width }: StockPanel, { corner, ...at }: StockPanel['defects'][number]): { readonly along: number; readonly across: number } {
  return {
    along: corner.endsWith('right') ? length - at.x - at.width : at.x,
    across: corner.startsWith('upper') ? width - at.y - at.height : at.y,
  };
}
