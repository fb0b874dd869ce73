import { describe, expect, it } from 'vitest';
import { blocksMarks, blocksPicture } from '../../../src/draw/flat/blocks-picture.ts';
import { fetchedBlocksMarks, fetchedBlocksPicture } from '../../../src/draw/flat/fetched-blocks.ts';
import { clipKindsMarks, clipKindsPicture } from '../../../src/draw/flat/clip-kinds.ts';
import { drilledOver } from '../../../src/draw/flat/drilled-over.ts';
import { endMarks, endPicture } from '../../../src/draw/flat/end-picture.ts';
import { onBarMarks, onBarPicture } from '../../../src/draw/flat/on-bar-picture.ts';
import { sleeveMarkMarks, sleeveMarkPicture } from '../../../src/draw/flat/sleeve-mark-picture.ts';
import { stockMarks, stockPicture } from '../../../src/draw/flat/stock-picture.ts';
import { traceMarks, tracePicture, type Traced } from '../../../src/draw/flat/trace-picture.ts';
import { linesInWall } from '../../../src/draw/flat/lines-in-wall.ts';
import { finderMarks } from '../../../src/draw/flat/finder-picture.ts';
import { unfixedMarks } from '../../../src/draw/flat/unfixed-picture.ts';
import { wallMarks, wallPictures, type AtWall } from '../../../src/draw/flat/wall-picture.ts';
import type { WallShown } from '../../../src/draw/flat/wall-pieces.ts';
import { wallPlaces, type Vec2 } from '../../../src/model/index.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import { holeKinds, holeMark, holeSection } from '../../../src/draw/flat/hole-marks.ts';
import { toPicture } from '../../../src/draw/kit/svg.ts';
import { pens } from '../../../src/draw/kit/pens.ts';
import { defaultLimits } from '../../../src/check/index.ts';
import { clipsTold, wallSheets } from '../../../src/draw/work-kit/index.ts';
import { measuredOn } from '../../../src/draw/work-kit/on-bars.ts';
import { planTubes } from '../../../src/cut/index.ts';
import { itemNamed, modelOf } from '../../support/items.ts';
import { planOf } from '../../support/plans.ts';
import { PULL_TEST, WALLS } from '../../../src/work/fix-to-wall/walls.ts';
import { linesOf, outside, overlaps, pointsOutside, struckFigures, texts, widthAndHeight } from './inspect.ts';

const papers = [FORMATS.page.bench, FORMATS.small.bench];
const tube = { outside: 28, inside: 22 };
const bracket = { plate: 80, thickness: 4, reach: 60 };

describe('the picture of sawn ends', () => {
  it.each(papers)('tells how many there are and how much is filed off, on paper of $width by $height', (paper) => {
    const [cap, ends] = [{ diameter: 28, thickness: 3, plug: 20 }, {
      filed: 24, capped: [{ letter: 'A', count: 4, length: 1500, marks: [74.5, 514, 954], first: true, last: true }, { letter: 'B2', count: 12, length: 300, marks: [], first: false, last: true }],
    }];
    const picture = endPicture(tube, cap, ends, paper);
    expect(texts(picture)).toEqual(expect.arrayContaining(['×24', 'A ×4', 'B2 ×12', '1', '2', '3', '4']));
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(endMarks(tube, cap, ends, paper))]).toEqual([[], [], [], []]);
  });
});

describe('the picture of what is drilled close over the floor', () => {
  const drilled = { bit: 6, panel: 9, tube, room: 28 };

  it.each([FORMATS.page.closeUp, FORMATS.small.closeUp])('tells how far the floor is under the tube, on paper of $width by $height', (paper) => {
    const marks = drilledOver(drilled, paper);
    const picture = toPicture(paper, marks);
    expect(texts(picture)).toEqual(['28', 'Ø6']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(marks)]).toEqual([[], [], [], []]);
  });

  it('has the bit out under the tube and over the floor, and under a cross in the floor', () => {
    const paper = FORMATS.page.closeUp;
    const lines = linesOf(drilledOver(drilled, paper));
    const tips = lines.filter(({ closed, points }) => closed && points.length === 5).map(({ points }) => Math.max(...points.map(([, y]) => y)));
    const [floor = NaN] = lines.filter(({ pen, closed, points: [from, to] }) => pen === pens.cut && !closed && from?.[1] === to?.[1]).map(({ points: [from] }) => from?.[1] ?? NaN);
    const scale = Math.min(...widthAndHeight(lines.filter(({ closed, points }) => closed && points.length === 5)[0]?.points ?? [])) / drilled.bit;
    const under = floor - drilled.room * scale;
    expect(tips).toHaveLength(2);
    expect([(tips[0] ?? NaN) > under + 1, (tips[0] ?? NaN) < floor - 1, (tips[1] ?? NaN) > floor]).toEqual([true, true, true]);
  });
});

describe('the picture of a sleeve to drill', () => {
  it.each(papers)('measures the hole from the rim that is drawn, the nearer one, on paper of $width by $height', ({ width }) => {
    const drilled = { near: 52, far: 22, hole: 36, outside: 38, tube: 28, nearEnd: 'right' } as const;
    const picture = sleeveMarkPicture(drilled, width);
    const marks = sleeveMarkMarks(drilled);
    expect(texts(picture)).toEqual(['16']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(marks)]).toEqual([[], [], [], []]);
    const lines = linesOf(marks);
    const ends = lines.filter(({ pen, points }) => pen === pens.dimension && points[0]?.[0] === points[1]?.[0]).map(({ points: [from] }) => from?.[0] ?? NaN);
    const [mark] = lines.filter(({ pen }) => pen.width === 0.9).map(({ points: [from] }) => from?.[0] ?? NaN);
    const sleeve = lines.filter(({ closed, points }) => closed && Math.abs(widthAndHeight(points)[0] - 74 * 0.7) < 1e-6).map(({ points }) => Math.max(...points.map(([x]) => x)));
    expect(sleeve).toHaveLength(1);
    expect(ends).toEqual([mark, sleeve[0]]);
    expect((sleeve[0] ?? 0) - (mark ?? 0)).toBeCloseTo(16 * 0.7, 6);
  });

  it('shows along the tube the bit over the middle, and over crosses beside it, and with a hand where it comes out', () => {
    const marks = sleeveMarkMarks({ near: 52, far: 22, hole: 36, outside: 38, tube: 28, nearEnd: 'right' });
    const middles = [...new Set(marks.flatMap((mark) => (mark.mark === 'circle' ? [mark.centre[0]] : [])))];
    const bits = linesOf(marks).filter(({ closed, points }) => closed && points.length === 5).map(({ points }) => points[2]?.[0] ?? NaN);
    const fingers = linesOf(marks).filter(({ closed, points }) => closed && points.length === 11).map(({ points }) => points[0] ?? [NaN, NaN]);
    expect(middles).toHaveLength(3);
    expect(fingers).toHaveLength(4);
    expect(fingers.every(([x, y]) => Math.abs(x - (middles[2] ?? NaN)) < 8 && y > 28)).toBe(true);
    expect(bits.map((bit, index) => Math.round(Math.abs(bit - (middles[index] ?? NaN)) * 10) / 10)).toEqual([0, expect.toSatisfy((off: number) => off > 2.5), 0]);
  });

  it.each(papers)('lies as the joint lies in the step: mirrored, its figures upright, on paper of $width by $height', ({ width }) => {
    const drilled = { near: 52, far: 22, hole: 36, outside: 38, tube: 28, nearEnd: 'left' } as const;
    const picture = sleeveMarkPicture(drilled, width);
    const marks = sleeveMarkMarks(drilled);
    expect(texts(picture)).toEqual(['16']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(marks)]).toEqual([[], [], [], []]);
    const lines = linesOf(marks);
    const [mark] = lines.filter(({ pen }) => pen.width === 0.9).map(({ points: [from] }) => from?.[0] ?? NaN);
    const [rim] = lines.filter(({ closed, points }) => closed && Math.abs(widthAndHeight(points)[0] - 74 * 0.7) < 1e-6).map(({ points }) => Math.min(...points.map(([x]) => x)));
    expect((mark ?? 0) - (rim ?? 0)).toBeCloseTo(16 * 0.7, 6);
  });
});

describe('the picture of what comes on a bar', () => {
  const bar = { between: 800, tube: 28, socket: 38 };

  it.each(papers)('tells how far it is from the nearer joint, and from both where it comes in the middle, on paper of $width by $height', ({ width }) => {
    for (const [things, told] of [[[{ from: 4, to: 796 }], ['4', '4']], [[{ from: 380, to: 420 }], ['380', '380']], [[{ from: 20, to: 60 }, { from: 700, to: 740 }], ['20', '60']]] as const) {
      const picture = onBarPicture({ ...bar, things }, width);
      expect(texts(picture)).toEqual(told);
      expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(onBarMarks({ ...bar, things }, width))]).toEqual([[], [], [], []]);
    }
  });

  it('measures from the mouths of the joints that the bar ends in', () => {
    const model = modelOf(itemNamed('bed'), 'toddler');
    const [plate, bar] = model.connections.flatMap((each) => (each.is === 'pin' ? [each.holds.map((id) => model.parts.find((part) => part.id === id))] : [])).find(([thing]) => thing?.kind === 'flat-panel') ?? [];
    if (plate === undefined || bar?.shape.form !== 'tube' || plate.shape.form !== 'plate') throw new Error('no plate on a bar');
    const measured = measuredOn(model, { ...bar, shape: bar.shape }, [plate]);
    const [depth] = model.connections.flatMap((each) => (each.is === 'socket' && each.bar === bar.id ? [each.depth] : []));
    expect(measured?.between).toBeCloseTo(bar.shape.length - 2 * (depth ?? 0), 6);
    expect(measured?.things.map(({ from, to }) => to - from)).toEqual([expect.closeTo(plate.shape.width, 6)]);
  });
});

describe('the picture of what is fetched', () => {
  const stock = { tube: { length: 2000, outside: 28, inside: 22, count: 9 }, panel: { sides: [1500, 1000] as const, thickness: 9, skin: 1, count: 4 }, cable: { length: 3000, diameter: 4, patterns: [{ count: 2, pieces: [2530], steps: [36] }, { count: 1, pieces: [1420, 1230], steps: [37, 38] }] } };

  it.each(papers)('tells length, thickness and number of tubes, panels and cables, the bore of a tube and what a panel is made of, on paper of $width by $height', ({ width }) => {
    const picture = stockPicture(stock, width);
    expect(texts(picture)).toEqual(['Ø22', '2000', 'Ø28', '×9', '×4', '9', '1500 × 1000 × 9', '3000', 'Ø4', '×3', '2530', '×2', '36', '1420', '1230', '×1', '37', '38']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(stockMarks(stock, picture))]).toEqual([[], [], [], []]);
    expect(texts(stockPicture({ ...stock, cable: { ...stock.cable, patterns: [] } }, width))).not.toContain('3000');
  });
});

describe('the picture of blocks', () => {
  it('tells how many there are of each height, and how thick they may be where there is little room', () => {
    const blocks = [{ high: 28, most: null, count: 4 }, { high: 132, most: 40, count: 12 }];
    const picture = blocksPicture(blocks);
    expect(texts(picture)).toEqual(['28', '×4', '132', '40', '×12']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(blocksMarks(blocks))]).toEqual([[], [], [], []]);
  });

  it('tells of those that are there already under the ones to fetch, each kind ticked', () => {
    const [blocks, there] = [[{ high: 35, most: null, count: 2 }], [{ high: 35, most: null, count: 1 }, { high: 132, most: 40, count: 2 }]];
    const picture = blocksPicture(blocks, there);
    expect(texts(picture)).toEqual(['35', '×2', '35', '×1', '132', '40', '×2']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(blocksMarks(blocks, there))]).toEqual([[], [], [], []]);
  });

  it('tells of all to fetch how many there are of each height, which those of wood and brick have too, and fits on small pages', () => {
    const blocks = [{ high: 28, most: null, count: 4 }, { high: 132, most: 40, count: 12 }];
    const picture = fetchedBlocksPicture(blocks);
    expect(texts(picture)).toEqual(['28', '×4', '28', '132', '×12', '40', '132']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(fetchedBlocksMarks(blocks))]).toEqual([[], [], [], []]);
    expect(picture.width).toBeLessThanOrEqual(FORMATS.small.bench.width);
  });
});

describe('the picture of the first piece as a pattern', () => {
  const sides = [1387, 887] as const;
  const pieces = {
    bare: { sides, places: [[], []], holes: [] },
    lines: { sides, places: [[190.5, 1196.5], [190.5, 696.5]], holes: [] },
    holes: { sides, places: [[242.5, 1144.5], [242.5, 644.5]], holes: [[242.5, 242.5], [1144.5, 242.5], [1144.5, 644.5], [242.5, 644.5]] },
    close: { sides, places: [[242.5, 1144.5], [420, 467]], holes: [[242.5, 420], [1144.5, 467]] },
  } as const satisfies Record<string, Traced>;

  it.each([['round', 'bare', '1'], ['round', 'holes', '1'], ['edges', 'lines', ''], ['edges', 'holes', ''], ['edges', 'close', '']] as const)('numbers the others after it, so that the last is how many there are in all, and tells where marks are carried down a stack: %s, %s', (way, kind, again) => {
    const piece = pieces[kind];
    const figures = way === 'round' ? [again] : [piece.places[0][0], piece.places[0][1], piece.places[1][1], piece.places[1][0]].map(String);
    for (const paper of papers) {
      for (const [others, last] of [[1, ['2']], [3, ['2', '4']], [11, ['2', '12']]] as const) {
        const picture = tracePicture(way, piece, others, paper);
        expect(texts(picture)).toEqual(way === 'round' ? ['1', ...figures, ...last] : ['1', '1', ...figures, ...last]);
        // An order is ringed; what is written on a piece is not.
        expect(traceMarks(way, piece, others, paper.width).filter(({ mark }) => mark === 'order')).toEqual([]);
        expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(traceMarks(way, piece, others, paper.width))]).toEqual([[], [], [], []]);
      }
    }
  });

  it('draws the holes of a piece on it and on the others, and lines where it has none', () => {
    const rings = (kind: 'lines' | 'holes'): number => traceMarks('edges', pieces[kind], 3, 165).filter(({ mark }) => mark === 'circle').length;
    const dotted = (kind: 'lines' | 'holes'): number => linesOf(traceMarks('edges', pieces[kind], 3, 165)).filter(({ pen }) => pen.type === 'dotted').length;
    expect([rings('lines'), rings('holes'), dotted('lines'), dotted('holes')]).toEqual([0, 4, 4, 0]);
  });
});

describe('the picture of a wall', () => {
  const walls = (['masonry', 'timber', 'board'] as const).map((kind): WallShown => ({ kind, fixing: WALLS[kind] }));

  it.each(papers)('tells holes over the floor and between brackets, hole, screw and pull where it holds, and when the item comes, on paper of $width by $height', (paper) => {
    for (const wall of walls) {
      for (const [apart, areOnPosts] of [[[1040], false], [[640, 640], true], [[], true]] as const) {
        const fixed = { bracket, wall, pull: PULL_TEST.mass, tie: 600, holes: { heights: [1394, 1346], apart, areOnPosts, moved: PULL_TEST.moved }, item: { deep: 624, high: 1506, fixed: 1370 } } as const;
        const inOrder = <Each>({ before, after }: AtWall<Each>): readonly Each[] => [...before, ...after];
        const [pictures, marks] = [inOrder(wallPictures(fixed, paper)), inOrder(wallMarks(fixed, paper))];
        // The item comes to the wall when that is drilled, or with its brackets screwed on.
        expect(wallPictures(fixed, paper).before).toHaveLength(wall.fixing === null ? 1 : areOnPosts ? 4 : 7);
        for (const [index, picture] of pictures.entries()) expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(marks[index]?.marks ?? [])]).toEqual([[], [], [], []]);
        if (wall.fixing === null) expect(pictures.map(texts)).toEqual([[]]);
        else {
          // Measured, drilled, where there are plugs those pushed in, screwed on, pulled at, the item pushed in or to the wall.
          const parts = ['1', '2', '3', '4', '5', ...(wall.fixing.plug === null ? [] : ['6'])];
          const [lines, finder, unfixed, measured, cut, fixedOn, cameOut, tied, tried] = pictures.map(texts);
          const shown = [...measured ?? [], ...fixedOn ?? []];
          expect([finder, unfixed]).toEqual([[], []]);
          // Masonry has a bit of its own.
          expect(lines).toEqual(wall.kind === 'masonry' ? ['Ø8'] : []);
          expect(shown.filter((told) => told.length === 1).sort()).toEqual(parts);
          expect(shown).toEqual(expect.arrayContaining(['1394', '1346', ...apart.map(String), `Ø${wall.fixing.hole.diameter}`, String(wall.fixing.hole.depth), `Ø${wall.fixing.screw.diameter}`, '20 kg']));
          // Where it is pulled out all holes are moved aside, and it goes on with drilling.
          const pulledAt = parts.length - (areOnPosts ? 0 : 1);
          expect(cameOut).toEqual([String(pulledAt), '100', '2']);
          // A cord for each post, which is tied in three small pictures, with two knots, and pulled at as its bracket was; what comes out is tied anew, or its bracket is a new one.
          const next = parts.length + 1;
          expect(cut).toEqual(expect.arrayContaining([`×${apart.length + 1}`, '600']));
          expect(tied).toEqual([...[0, 1, 2].map((index) => String(next + index)), '×2']);
          expect(tried).toEqual(expect.arrayContaining([String(next + 3), '20 kg', String(next), String(parts.length - (areOnPosts ? 1 : 2))]));
        }
      }
    }
  });

  it.each(walls.filter(({ fixing }) => fixing !== null))('lets no hole come on a wire or a pipe, straight up, down or level from what is on the wall: $kind', (wall) => {
    const marks = linesInWall(wall);
    const holes = marks.flatMap((mark) => (mark.mark === 'circle' && Math.abs(mark.radius - 2.4) < 1e-9 && mark.pen === null ? [mark.centre] : []));
    const runs = linesOf(marks).filter(({ pen }) => pen.name === 'half-cut').map(({ points: [from, to] }) => ({ from: from ?? [NaN, NaN], to: to ?? [NaN, NaN] }));
    const nearest = holes.map(([x, y]) => Math.min(...runs.map(({ from, to }) => Math.abs(from[0] === to[0] ? x - from[0] : y - from[1]))));
    expect(runs.every(({ from, to }) => from[0] === to[0] || from[1] === to[1])).toBe(true);
    expect(runs).toHaveLength(6);
    expect(nearest.map((far) => far < 2)).toEqual([true, true, true, true, false]);
    expect(nearest.at(-1)).toBeGreaterThan(5);
  });

  it.each(walls.filter(({ fixing }) => fixing !== null))('lights the finder\'s lamp over a wire alone: $kind', (wall) => {
    const marks = finderMarks(wall);
    const lamps = marks.flatMap((mark) => (mark.mark === 'circle' && mark.pen === pens.cut ? [{ x: mark.centre[0], lights: mark.fill === 'ink' }] : []));
    const [wire] = linesOf(marks).filter(({ pen }) => pen.name === 'half-cut').map(({ points: [from] }) => from?.[0]);
    expect(lamps.map(({ lights }) => lights)).toEqual([false, true, false]);
    expect(lamps[1]?.x).toBeCloseTo(wire ?? NaN, 9);
  });

  it.each(walls.filter(({ fixing }) => fixing !== null))('lets what stands unfixed tip away from its wall, on the floor, and what is fixed stand: $kind', (wall) => {
    for (const item of [{ deep: 624, high: 1506, fixed: 1370 }, { deep: 424, high: 396, fixed: 283 }]) {
      const posts = linesOf(unfixedMarks(wall, item)).filter(({ closed, points: [a, b, c] }) => closed && a !== undefined && b !== undefined && c !== undefined && Math.abs(Math.hypot(b[0] - a[0], b[1] - a[1]) - 1.6) < 1e-6);
      expect(posts).toHaveLength(4);
      const feet = posts.map(({ points }) => Math.max(...points.map(([, y]) => y)));
      // The front foot of what tips stays on the floor, its back foot is off it; the other stands on both.
      const floor = feet[3] ?? NaN;
      expect(feet).toEqual([expect.toSatisfy((y: number) => y < floor - 1), expect.closeTo(floor, 0), expect.closeTo(floor, 9), floor]);
    }
  });

  it.each(papers)('moves every hole as far aside as the item, none up or down, and crosses out the old ones, on paper of $width by $height', (paper) => {
    const holes = { heights: [1394, 1346], apart: [1040], areOnPosts: false, moved: PULL_TEST.moved } as const;
    const marks = wallMarks({ bracket, wall: { kind: 'masonry', fixing: WALLS.masonry }, pull: PULL_TEST.mass, tie: 600, holes, item: { deep: 624, high: 1506, fixed: 1370 } }, paper).before[6]?.marks ?? [];
    const old = marks.flatMap((mark) => (mark.mark === 'circle' && mark.fill === 'core' ? [mark.centre] : []));
    const level = linesOf(marks).filter(({ pen, points: [from, to] }) => pen.width === 0.8 && from?.[1] === to?.[1] && Math.abs((to?.[0] ?? 0) - (from?.[0] ?? 0)) < 5);
    const anew = level.map(({ points: [from, to] }): Vec2 => [((from?.[0] ?? 0) + (to?.[0] ?? 0)) / 2, from?.[1] ?? 0]);
    expect(old).toHaveLength(4);
    const steps = old.map(([x, y], index) => [(anew[index]?.[0] ?? NaN) - x, (anew[index]?.[1] ?? NaN) - y]);
    for (const [dx, dy] of steps) expect([dx, dy]).toEqual([expect.closeTo(steps[0]?.[0] ?? NaN, 6), expect.closeTo(0, 6)]);
    const left = (points: readonly Vec2[]): number => Math.min(...points.map(([x]) => x));
    const before = linesOf(marks).filter(({ pen }) => pen.name === 'half-cut').map(({ points }) => left(points));
    const posts = linesOf(marks).filter(({ points, closed }) => closed && Math.abs(widthAndHeight(points)[0] - 3) < 1e-6).map(({ points }) => left(points));
    expect([before, posts].map(({ length }) => length)).toEqual([1, 2]);
    expect(Math.min(...posts) - (before[0] ?? NaN)).toBeCloseTo(steps[0]?.[0] ?? NaN, 6);
  });

  it('moves no hole to where another was: all are clear of each other by more than a screw is long', () => {
    for (const name of ['rack', 'chest']) {
      for (const size of itemNamed(name).sizes.map((each) => each.name)) {
        const xs = wallPlaces(modelOf(itemNamed(name), size)).map(({ at }) => at[0]);
        for (const one of xs) for (const other of xs) expect(Math.abs(one + PULL_TEST.moved - other)).toBeGreaterThan(WALLS.masonry?.screw.length ?? NaN);
      }
    }
  });

  it('measures to the two holes of each plate, from the floor that the item stands on', () => {
    const model = modelOf(itemNamed('rack'), 'standard');
    const { plate } = model.kit.catalogue.fittings.find((fitting) => fitting.is === 'wall-bracket') ?? { plate: 0 };
    const [place] = wallPlaces(model);
    const told = wallSheets(model, { kind: 'masonry', fixing: WALLS.masonry }, { ...PULL_TEST, tie: 600 }, FORMATS.page.bench).before.flatMap(texts).map(Number);
    const heights = told.filter((each) => Math.abs(each - (place?.at[2] ?? NaN)) < plate / 2);
    expect(heights).toHaveLength(2);
    expect((Math.max(...heights) + Math.min(...heights)) / 2).toBeCloseTo(place?.at[2] ?? NaN, 0);
  });

  it('shows no way to fix it to a board', () => {
    expect(WALLS.board).toBeNull();
  });

  it('pulls twice as hard as a pull at the top that nothing may tip at, and a plug’s screw is thinner than its hole', () => {
    expect(PULL_TEST.mass * defaultLimits.gravity.value).toBeGreaterThanOrEqual(0.98 * defaultLimits.wallPull.value * defaultLimits.tippingForce.value);
    for (const fixing of Object.values(WALLS)) if (fixing !== null) expect(fixing.hole.diameter > fixing.screw.diameter).toBe(fixing.plug !== null);
  });
});

describe('the mark of a hole', () => {
  const lines = (depth: number | null, face: 'drawn' | 'other'): number => linesOf(holeMark({ depth, face }, [0, 0], 2, pens.hole)).length;

  it('is a circle alone where it goes through, in a square where it is blind, in four corners from the other face', () => {
    expect([lines(null, 'drawn'), lines(6, 'drawn'), lines(6, 'other')]).toEqual([0, 1, 4]);
  });

  it('is told once a kind, those through first, with its depth in the section', () => {
    const hole = (depth: number | null, face: 'drawn' | 'other') => ({ diameter: 5, depth, face });
    expect(holeKinds([hole(6, 'other'), hole(null, 'drawn'), hole(6, 'drawn'), hole(6, 'other'), hole(null, 'drawn')]).map(({ depth, face, count }) => [depth, face, count]))
      .toEqual([[null, 'drawn', 2], [6, 'drawn', 1], [6, 'other', 2]]);
    const figures = (depth: number | null): number => holeSection(hole(depth, 'drawn'), { thickness: 9, skin: 1 }, [0, 0]).filter(({ mark }) => mark === 'figure').length;
    expect([figures(null), figures(6)]).toEqual([0, 1]);
  });
});

describe('the picture of hinges and stays', () => {
  const side = { bar: 28, thickness: 3, leaf: 60, reach: 27 };

  it.each(papers)('rings the knob that only one of them has, whichever the step takes, on paper of $width by $height', (paper) => {
    const ringAt = (hasKnob: boolean): number => {
      const kinds = { hasKnob, knobbed: side, plain: side };
      expect(pointsOutside(clipKindsPicture(kinds, paper))).toEqual([]);
      const rings = clipKindsMarks(kinds, paper.width).flatMap((mark) => (mark.mark === 'circle' && mark.pen?.name === 'detail' ? [mark.centre[0]] : []));
      expect(rings).toHaveLength(1);
      return rings[0] ?? NaN;
    };
    expect([ringAt(true) < paper.width / 2, ringAt(false) > paper.width / 2]).toEqual([true, true]);
  });

  it('is drawn at each step that clips one of them on, where an item has both', async () => {
    const item = itemNamed('chest');
    const [name] = item.sizes.map((each) => each.name);
    const model = modelOf(item, name ?? '');
    const [plan, cuts] = [planOf(item, model.size), await planTubes(model)];
    const steps = plan.steps.filter(({ action }) => action === 'fit-hinge');
    expect(steps).toHaveLength(2);
    expect(steps.map((step) => clipsTold({ model, plan, cuts, papers: FORMATS.page }, step).length)).toEqual([1, 1]);
  });
});
