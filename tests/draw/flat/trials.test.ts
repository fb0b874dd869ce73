import { describe, expect, it } from 'vitest';
import { dented, dentOf, RIM } from '../../../src/draw/flat/dent.ts';
import { faceSign, markedFace } from '../../../src/draw/flat/marked-face.ts';
import { rolledMarks, rolledTrial } from '../../../src/draw/flat/rolled-trial.ts';
import type { CutOut } from '../../../src/draw/flat/waste.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import { pens } from '../../../src/draw/kit/pens.ts';
import { ticked } from '../../../src/draw/kit/right-wrong.ts';
import type { Vec2 } from '../../../src/model/index.ts';
import { linesOf, outside, overlaps, pointsOutside, struckFigures, texts } from './inspect.ts';

const papers = [FORMATS.page.bench, FORMATS.small.bench];

/** A panel whose four corners are cut out of its blank. */
const crossShaped: CutOut = { min: [-3, -2], max: [3, 2], outline: [[-3, -1], [-2, -1], [-2, -2], [2, -2], [2, -1], [3, -1], [3, 1], [2, 1], [2, 2], [-2, 2], [-2, 1], [-3, 1]] };

describe('the picture of a crease tried on waste', () => {
  it.each(papers)('tells how deep it is to be, by a rule at its end, on paper of $width by $height', (paper) => {
    const panel = { ...crossShaped, thickness: 9, skin: 1 };
    const picture = rolledTrial(panel, paper);
    expect(texts(picture)).toEqual([String(dentOf(panel))]);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(rolledMarks(panel, paper.width))]).toEqual([[], [], [], []]);
  });

  it.each(papers)('has a column for each outcome: its verdict alone stands there, and what follows under that, on paper of $width by $height', (paper) => {
    const marks = rolledMarks({ ...crossShaped, thickness: 9, skin: 1 }, paper.width);
    const lines = linesOf(marks);
    const columns = lines.flatMap(({ pen, points: [from, to] }) => (pen.name === 'edge' && from?.[0] === to?.[0] && Math.abs((from?.[1] ?? 0) - (to?.[1] ?? 0)) > 60 ? [from?.[0] ?? NaN] : []));
    expect(columns).toHaveLength(3);
    const inColumn = (x: number): number => columns.filter((each) => each < x).length;
    // A tick is one stroke of three points, a cross two strokes of two, both as wide.
    const wide = ticked([0, 0], 1.5).flatMap((mark) => (mark.mark === 'line' ? [mark.pen.width] : []))[0] ?? NaN;
    const verdicts = lines.filter(({ pen }) => pen.width === wide).map(({ points }) => [inColumn(points[0]?.[0] ?? NaN), points.length]);
    expect(verdicts).toEqual([[1, 3], [2, 2], [2, 2], [3, 2], [3, 2]]);
    // Pressed home, more where it was too shallow, lightly where the skin tore; that on waste not used yet.
    const shafts = lines.filter(({ pen, points: [from, to] }) => pen.name === 'motion' && pen.width !== wide && from?.[0] === to?.[0] && pen.width !== pens.motion.width).map(({ pen, points: [from] }) => [inColumn(from?.[0] ?? NaN), pen.width]);
    expect(shafts.map(([column]) => column)).toEqual([0, 0, 2, 3]);
    const [light = 0, home = 0, more = 0, less = 0] = shafts.map(([, width]) => width);
    expect([light < home, home < more, less]).toEqual([true, true, light]);
    const hatched = lines.filter(({ pen }) => pen.colour === 'faded').map(({ points: [from] }) => inColumn(from?.[0] ?? NaN));
    expect([...new Set(hatched)].sort()).toEqual([0, 3]);
  });

  it('draws the dent as round at its bottom as the rim that pressed it, and as deep as told', () => {
    const panel = { thickness: 9, skin: 1 };
    const [face] = linesOf(dented(panel, { at: [0, 0], scale: 1, half: 20, dents: [0] })).filter(({ closed }) => closed).map(({ points }) => points.filter(([, y]) => y < panel.thickness - 1));
    const lowest = face?.reduce((low, each) => (each[1] > low[1] ? each : low), [0, 0]) ?? [0, 0];
    expect(lowest[1]).toBeCloseTo(dentOf(panel), 9);
    // The circle through the lowest point and its neighbours.
    const index = face?.indexOf(lowest) ?? 0;
    const [x = NaN, y = NaN] = face?.[index + 1] ?? [];
    const [dx, dy] = [x - lowest[0], lowest[1] - y];
    expect((dx * dx + dy * dy) / (2 * dy)).toBeGreaterThan(RIM * 0.95);
    expect((dx * dx + dy * dy) / (2 * dy)).toBeLessThan(RIM * 1.15);
  });
});

describe('the sign of the marked face beside a section', () => {
  it.each(['up', 'down', 'left', 'right'] as const)('is the same that is drawn on the panel, upright, and joined to the face, which looks %s', (facing) => {
    const [mast, pennant] = [markedFace([50, 50], facing), faceSign([0, 0], 'there')].map((marks) => marks.flatMap((mark) => (mark.mark === 'area' ? [mark.rings[0] ?? []] : [])));
    const shape = (ring: readonly Vec2[] | undefined): readonly Vec2[] => (ring ?? []).map(([x, y]): Vec2 => [Math.round(1e6 * (x - (ring?.[0]?.[0] ?? 0))) / 1e6, Math.round(1e6 * (y - (ring?.[0]?.[1] ?? 0))) / 1e6]);
    expect(shape(mast?.[0])).toEqual(shape(pennant?.[0]));
    expect(linesOf(markedFace([50, 50], facing))[0]?.points[0]).toEqual([50, 50]);
  });
});
