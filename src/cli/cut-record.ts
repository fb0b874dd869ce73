import type { CutOrder, CutPart, PanelSheet, Serves, Thrift, TubeSheet } from '../cut/index.ts';

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/** The content of cut.json: the plan of an order with every figure and its unit. */
export function cutRecord(order: CutOrder): object {
  const { kit, lines, stock, tubePieces, tubes, tubeThrift, panelPieces, panels, panelThrift, counted, kits } = order;
  return {
    kit: kit.name,
    stock,
    order: lines.map(({ model, count }) => ({ item: model.item, size: model.size, count })),
    tubes: {
      unit: 'mm', kerf: kit.practice.sawKerf, thrift: thriftRecord(tubeThrift, 'mm'),
      pieces: tubePieces.map(({ letter, length, count, uses }) => ({ letter, length: rounded(length), count, uses })),
      sheets: tubes.map(tubeRecord),
    },
    panels: {
      unit: 'mm', kerf: kit.practice.knifeKerf, thrift: thriftRecord(panelThrift, 'mm²'),
      pieces: panelPieces.map(({ letter, width, height, count, uses }) => ({ letter, width: rounded(width), height: rounded(height), count, uses })),
      sheets: panels.map(panelRecord),
    },
    counted,
    kits,
  };
}

const thriftRecord = ({ used, fromKits, fewestFromKits, stock, pieces, useful, leastStock, proven }: Thrift, unit: string): object => ({
  used, fromKits, fewestFromKits, unit, stock: rounded(stock), pieces: rounded(pieces), usefulOffCuts: rounded(useful), leastStock: rounded(leastStock),
  leftOverPercent: rounded(stock === 0 ? 0 : (100 * (stock - pieces)) / stock), proven,
});

const servesRecord = (serves: readonly Serves[]): object => serves.map(({ item, size, kind, sides }) => ({ item, size, kind, sides: sides.map(rounded) }));

const tubeRecord = ({ source, times, length, usable, pieces, ends, shorter, offCut, serves }: TubeSheet): object => ({
  source, times, length: rounded(length), usable: rounded(usable), pieces, ends: ends.map(rounded), shorter: rounded(shorter), offCut: rounded(offCut), serves: servesRecord(serves),
});

const rectangle = ({ x, y, width, height }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number }): object =>
  ({ x: rounded(x), y: rounded(y), width: rounded(width), height: rounded(height) });

const panelRecord = ({ source, times, length, width, grain, defects, cuts, pieces, offCuts }: PanelSheet): object => ({
  source, times, length: rounded(length), width: rounded(width), grain,
  defects: defects.map((defect) => ({ is: defect.is, ...rectangle(defect) })),
  pieces: pieces.map((piece) => ({ letter: piece.letter, pattern: piece.isPattern, turned: piece.turned, ...rectangle(piece) })),
  offCuts: offCuts.map(({ region, clear, serves }) => ({ ...rectangle(region), clear: clear === null ? null : rectangle(clear), serves: servesRecord(serves) })),
  cuts: partRecord(cuts),
});

function partRecord(part: CutPart): object {
  switch (part.part) {
    case 'piece': return { piece: rectangle(part.lies) };
    case 'loose': return { loose: part.lies.map(rectangle) };
    case 'off-cut': return { offCut: rectangle(part.region) };
    case 'cut': return { axis: part.axis, at: rounded(part.at), first: partRecord(part.first), second: partRecord(part.second) };
  }
}
