import type { Step } from '../../plan/index.ts';
import { checkWidth } from './check-pictures.tsx';
import { glyphHeight, type Sheet } from './sheet.ts';

/** Between pictograms of one group, between groups where there is room and at the least, and between two rows, mm. */
export const innerGap = 1.2;
const widestGap = 6;
const leastGap = 2.4;
const stripRowGap = 3;
/** Room of the minutes to wait beside their pictogram, mm. */
const waitText = 17;
/** Heights of the pictograms that are tried, mm; at the least they can still be told apart. */
const heights = [glyphHeight, 10, 9, 8, 7.5];

type Row = Pick<Step, 'tools' | 'cautions' | 'waits' | 'check'>;

type Below = 'nothing' | 'check' | 'cautions';

/** How a step's pictograms are set. All in mm. */
export interface Strip {
  /** Height of a pictogram. */
  readonly glyph: number;
  /** Between groups. */
  readonly gap: number;
  /** What stands in a second row: nothing, what to look at, or the cautions with that. */
  readonly below: Below;
  /** Height of it all. */
  readonly height: number;
}

/**
 * The highest pictograms with which the strip fits its column: those of a long strip are set smaller, and where not
 * even the least fit, in two rows: what to look at in the second, or the cautions with it. Throws where that is not enough.
 */
export function stripOf(step: Step, { main: width }: Sheet): Strip {
  for (const below of ['nothing', 'check', 'cautions'] as const) {
    for (const glyph of heights) {
      const gap = Math.min(...rowsOf(step, below).map((row) => widestGapIn(row, width, glyph)));
      if (gap < leastGap) continue;
      return { glyph, gap: Math.min(widestGap, Math.floor(gap * 10) / 10), below, height: below === 'nothing' ? glyphHeight : 2 * glyph + stripRowGap };
    }
  }
  throw new Error(`booklet: step ${step.number} (${step.key}) has more pictograms than a strip of ${width} mm holds`);
}

/** What stands in the first row, and where cautions come into the second what stands beside them there. */
function rowsOf({ tools, cautions, waits, check }: Row, below: Below): readonly Row[] {
  const first = { tools, cautions, waits, check: below === 'nothing' ? check : null };
  return below === 'cautions' ? [{ ...first, cautions: [], waits: 0 }, { tools: [], cautions, waits, check }] : [first];
}

function widestGapIn(row: Row, width: number, glyph: number): number {
  const groups = groupWidths(row, glyph);
  return (width - groups.reduce((sum, each) => sum + each, 0)) / (groups.length - 1);
}

/** Widths of the groups of pictograms in their order, `inner` white between those of one group, mm. */
export function groupWidths({ tools, cautions, waits, check }: Row, glyph: number, inner = innerGap): readonly number[] {
  const row = (count: number): number => count * glyph + Math.max(0, count - 1) * inner;
  return [
    row(1),
    row(tools.length),
    row(1),
    ...(cautions.length > 0 ? [row(cautions.length)] : []),
    ...(waits > 0 ? [glyph + inner + waitText] : []),
    ...(check ? [checkWidth(check.kind, glyph)] : []),
  ];
}
