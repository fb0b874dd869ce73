import type { Vec2 } from '../../model/index.ts';
import { linearDimension } from '../kit/dimension.ts';
import { capHeights } from '../kit/lettering.ts';
import type { Mark } from '../kit/marks.ts';
import { area, figure, line, outline, toldWidth } from '../kit/marks.ts';
import { earlier, pens } from '../kit/pens.ts';
import { tell } from '../../scene/index.ts';

/** The pieces that come off a saw whose blade takes `kerf` mm. Half of it comes off each side of a mark. */
export interface SawnPieces {
  readonly kerf: number;
  readonly pieces: readonly { readonly letter: string; readonly length: number }[];
}

const cap = capHeights.step;
const detailWidth = 58;
const leastHeight = 38;
const rowPitch = 7;
const columns = 2;
/** mm of paper to a mm of the saw's cut. */
const enlarged = 8;
const barHeight = 12;
const bladeOver = 9;
/** Between the two figures of a piece's least and full length. */
const dash = 4;

export const sawHeight = ({ pieces }: SawnPieces): number => Math.max(leastHeight, Math.ceil(pieces.length / columns) * rowPitch + 6);

/** The blade has gone through with its middle on the pencil mark, enlarged: between two faces what it took is gone; beside it the lengths between which every piece then measures. */
export function sawMarks(sawn: SawnPieces, [left, top]: Vec2, width: number): readonly Mark[] {
  return [...bladeOnMark(sawn.kerf, [left, top]), ...measures(sawn, [left + detailWidth + 6, top], width - detailWidth - 6)];
}

function bladeOnMark(kerf: number, [left, top]: Vec2): readonly Mark[] {
  const middle = left + detailWidth / 2;
  const half = (kerf * enlarged) / 2;
  const bar = top + 18;
  const box = (from: number, to: number, low = bar, high = bar + barHeight): readonly Vec2[] => [[from, low], [to, low], [to, high], [from, high]];
  const tip = bar - 1.2;
  const teeth: readonly Vec2[] = [[middle - half, tip], [middle - half / 2, tip - 1.6], [middle, tip], [middle + half / 2, tip - 1.6], [middle + half, tip]];
  const blade: readonly Vec2[] = [...teeth, [middle + half, bar - bladeOver], [middle - half, bar - bladeOver]];
  return [
    { mark: 'view', name: 'saw', scale: enlarged, marks: [
      ...[box(left, middle - half), box(middle + half, left + detailWidth)].flatMap((piece) => [area('panel', piece), outline(pens.cut, piece)]),
      area('white', blade), outline(pens.cut, blade),
      line(earlier(pens.edge), [middle, bar - bladeOver], [middle, tip]),
      line(pens.edge, [middle, bar], [middle, bar + barHeight + 3]),
    ] },
    ...linearDimension({ axis: 'x', told: tell.mm(kerf), ends: [middle - half, middle + half], line: bar - bladeOver - 3.5, feature: bar - bladeOver, cap }),
  ];
}

/** Letter, least and full length of every piece, in columns. */
function measures({ kerf, pieces }: SawnPieces, [left, top]: Vec2, width: number): readonly Mark[] {
  const rows = Math.ceil(pieces.length / columns);
  return pieces.flatMap(({ letter, length }, index) => {
    const [x, y] = [left + Math.floor(index / rows) * (width / columns), top + 6 + ((index % rows) + 0.5) * rowPitch];
    const [sign, least, full] = [tell.letters(letter), tell.mm(length - kerf), tell.mm(length)];
    const [wide, wider] = [least, full].map((told) => toldWidth(told, cap, 400));
    const start = x + 8;
    const end = start + (wide ?? 0) + 1.5;
    return [
      figure(sign, [x + 2.5, y], cap, 700),
      figure(least, [start + (wide ?? 0) / 2, y], cap),
      line(pens.edge, [end, y], [end + dash, y]),
      figure(full, [end + dash + 1.5 + (wider ?? 0) / 2, y], cap),
    ];
  });
}
