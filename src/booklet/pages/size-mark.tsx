import type { ReactNode } from 'react';
import { endsOfTube, type Model, type Vec2 } from '../../model/index.ts';
import { sizeName } from './names.ts';
import type { BookletInput } from './types.ts';

interface SizeMarkProps {
  readonly input: Pick<BookletInput, 'model' | 'variants' | 'words'>;
  /** The size that is marked; the booklet's own unless given. */
  readonly size?: Model;
  /** The marked size without the others, at the same scale. */
  readonly isAlone?: boolean;
  /** mm */
  readonly height: number;
  /** What it says, for those who hear the page; the size's name unless given. */
  readonly label?: string;
}

/** Units of the mark's grid: its height, the room of one size, the white between them, and the pens. */
const grid = { high: 12, widest: 16, gap: 2, marked: 1, other: 0.5 } as const;
/** Other sizes are paler than the marked one. */
const pale = '#888';

/** A tube seen from the front: its two ends, mm, z upwards. */
type Line = readonly [from: Vec2, to: Vec2];

/** A size variant in outline from the front: its tubes as one path. */
interface SizeFront {
  readonly size: string;
  readonly path: string;
  readonly isMarked: boolean;
}

/** All sizes, or the marked one alone, at one scale on one floor, in a box 12 units high and `width` wide. */
export function sizeFronts(variants: readonly Model[], marked: string, isAlone = false): { readonly width: number; readonly fronts: readonly SizeFront[] } {
  const all = variants.map((variant) => { const lines = linesOf(variant); return { variant, lines, box: boxOf(lines) }; });
  const scale = Math.min((grid.high - 1) / Math.max(...all.map(({ box }) => box.high)), grid.widest / Math.max(...all.map(({ box }) => box.wide)));
  const shown = all.filter(({ variant }) => !isAlone || variant.size === marked);
  const widths = shown.map(({ box }) => box.wide * scale + grid.gap);
  const fronts = shown.map(({ variant: { size }, lines, box: { left, low } }, index) => {
    const start = widths.slice(0, index).reduce((sum, width) => sum + width, grid.gap / 2);
    const at = ([x, z]: Vec2): string => `${rounded(start + (x - left) * scale)} ${rounded(grid.high - 0.5 - (z - low) * scale)}`;
    return { size, path: lines.map(([from, to]) => `M${at(from)}L${at(to)}`).join(''), isMarked: size === marked };
  });
  return { width: widths.reduce((sum, width) => sum + width, 0), fronts };
}

/** Each size variant in outline from the front, the marked one's tubes black and thick. */
export function SizeMark({ input, size = input.model, isAlone = false, height, label }: SizeMarkProps): ReactNode {
  const { variants, words } = input;
  const { width, fronts } = sizeFronts(variants, size.size, isAlone);
  return (
    <svg
      className="size-mark"
      role="img"
      direction="ltr"
      aria-label={label ?? words.t('booklet.alt.size', { name: sizeName(input, size) })}
      width={`${rounded((width * height) / grid.high)}mm`}
      height={`${height}mm`}
      viewBox={`0 0 ${rounded(width)} ${grid.high}`}
    >
      {fronts.map((front) => (
        <path key={front.size} d={front.path} fill="none" strokeLinecap="round" stroke={front.isMarked ? '#000' : pale} strokeWidth={front.isMarked ? grid.marked : grid.other} />
      ))}
    </svg>
  );
}

const rounded = (value: number): number => Math.round(value * 100) / 100;

/** Tubes from the front, each line once: those behind one another are one. */
function linesOf(model: Model): readonly Line[] {
  const lines = model.parts.flatMap((part): Line[] => {
    const ends = endsOfTube(part);
    if (ends === null) return [];
    const [from, to] = ends;
    return [[[Math.round(from[0]), Math.round(from[2])], [Math.round(to[0]), Math.round(to[2])]]];
  });
  return [...new Map(lines.map((line) => [line.join(' '), line])).values()];
}

function boxOf(lines: readonly Line[]): { readonly left: number; readonly low: number; readonly wide: number; readonly high: number } {
  const [across, up] = [lines.flat().map(([x]) => x), lines.flat().map(([, z]) => z)];
  const [left, low] = [Math.min(...across), Math.min(...up)];
  return { left, low, wide: Math.max(1, Math.max(...across) - left), high: Math.max(1, Math.max(...up) - low) };
}
