import type { Model, Vec2 } from '../model/index.ts';

/** A rectangle on a stock panel, from the panel's lower left corner, mm. */
export interface PanelArea {
  readonly at: Vec2;
  readonly sides: Vec2;
}

/** A piece of an item's panels: the blank of a pattern that is folded, or a flat panel, by its place in the model's list. */
export interface OwnPiece extends PanelArea {
  readonly is: 'blank' | 'plate';
  readonly index: number;
  /** What it is cut from: a whole stock panel, or what an earlier piece has left over. */
  readonly from: PanelArea;
}

/** The pieces of one stock panel, in the order in which they are cut. */
export type OwnPanel = readonly OwnPiece[];

interface Sheet {
  readonly pieces: readonly OwnPiece[];
  readonly left: readonly PanelArea[];
}

/**
 * What the steps of one item cut from each of its stock panels: blanks alike beside each other as many as it holds, flat panels
 * from what is left over where one is large enough, each cut from edge to edge. An order of several items is planned by `planOrder`.
 */
export function ownPanels(model: Pick<Model, 'kit' | 'patterns' | 'plates'>): readonly OwnPanel[] {
  const stock: PanelArea = { at: [0, 0], sides: [model.kit.panel.length, model.kit.panel.width] };
  const blanks = model.patterns.flatMap(({ form, min, max, partIds }, index) =>
    (form === 'flat' ? [] : partIds.map(() => ({ is: 'blank' as const, index, sides: laidOn(stock.sides, [max[0] - min[0], max[1] - min[1]], partIds.length) }))));
  const plates = model.plates.flatMap(({ width, height, partIds }, index) => partIds.map(() => ({ is: 'plate' as const, index, sides: [width, height] as const })));
  const all = [...blanks, ...plates].reduce<readonly Sheet[]>((sheets, piece) => withPiece(sheets, stock, piece), []);
  return all.map(({ pieces }) => pieces);
}

type Wanted = Pick<OwnPiece, 'is' | 'index'> & { readonly sides: Vec2 };

/** The sides of so many pieces alike along a panel's: turned by a quarter where that lets one hold more of them. */
function laidOn([wide, high]: Vec2, sides: Vec2, count: number): Vec2 {
  const held = ([x, y]: Vec2): number => Math.min(count, Math.floor((wide + 1e-9) / x) * Math.floor((high + 1e-9) / y));
  const turned: Vec2 = [sides[1], sides[0]];
  return held(turned) > held(sides) ? turned : sides;
}

/** A blank is cut from what one of its kind has left over, a flat panel from what is left of any. */
function withPiece(sheets: readonly Sheet[], stock: PanelArea, piece: Wanted): readonly Sheet[] {
  for (const [place, sheet] of sheets.entries()) {
    if (piece.is === 'blank' && sheet.pieces.some(({ is, index }) => is !== piece.is || index !== piece.index)) continue;
    const area = sheet.left.filter(({ sides }) => turnedToFit(piece.sides, sides) !== null).toSorted((a, b) => a.sides[0] * a.sides[1] - b.sides[0] * b.sides[1])[0];
    if (area !== undefined) return sheets.flatMap((each, index) => (index === place ? cutFrom(area, sheet, piece) : [each]));
  }
  return [...sheets, ...cutFrom(stock, { pieces: [], left: [] }, piece)];
}

/** First right across what it is cut from, then along: what is left on the right, and above. None where the piece is too large. */
function cutFrom(from: PanelArea, { pieces, left }: Sheet, piece: Wanted): readonly Sheet[] {
  const sides = turnedToFit(piece.sides, from.sides);
  if (sides === null) return [];
  const [x, y] = sides;
  const rest: readonly PanelArea[] = [
    { at: [from.at[0] + x, from.at[1]], sides: [from.sides[0] - x, from.sides[1]] },
    { at: [from.at[0], from.at[1] + y], sides: [x, from.sides[1] - y] },
  ];
  return [{ pieces: [...pieces, { ...piece, at: from.at, sides, from }], left: [...left.filter((area) => area !== from), ...rest] }];
}

function turnedToFit([x, y]: Vec2, [wide, high]: Vec2): Vec2 | null {
  if (x <= wide + 1e-9 && y <= high + 1e-9) return [x, y];
  return y <= wide + 1e-9 && x <= high + 1e-9 ? [y, x] : null;
}
