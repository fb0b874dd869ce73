import { describe, expect, it } from 'vitest';
import { brakeMarks, brakePicture, type Held } from '../../../src/draw/flat/brake-picture.ts';
import { dented, dentOf } from '../../../src/draw/flat/dent.ts';
import { endTrial, endTrialMarks } from '../../../src/draw/flat/end-trial.ts';
import { fittingMarks, leverEnd, standing, type Castor, type EndFitting } from '../../../src/draw/flat/fitted-end.ts';
import { WHEEL_RIM } from '../../../src/plan/index.ts';
import { guideMarks, guidePicture } from '../../../src/draw/flat/guide-picture.ts';
import { faceSign, markedFace } from '../../../src/draw/flat/marked-face.ts';
import { boundTrialMarks, boundTrialPicture } from '../../../src/draw/flat/bound-trial-picture.ts';
import { knifeOnStrip, onBody, tapeAcross } from '../../../src/draw/flat/leaning-knife.ts';
import { KNIFE, PADDED, paddedKnife, STRIP } from '../../../src/draw/flat/padded-knife.ts';
import { practiceMarks, practicePicture } from '../../../src/draw/flat/practice-picture.ts';
import { pullMarks, pullPicture } from '../../../src/draw/flat/pull-picture.ts';
import { rolledMarks, rolledTrial } from '../../../src/draw/flat/rolled-trial.ts';
import { knifeStopMarks, knifeStopPicture } from '../../../src/draw/flat/knife-stop-picture.ts';
import { LONGEST_SLIT, slitMarks, slitPicture } from '../../../src/draw/flat/slit-picture.ts';
import { stopMarks, stopPicture } from '../../../src/draw/flat/stop-picture.ts';
import { slideTrial, slideTrialMarks } from '../../../src/draw/flat/slide-trial.ts';
import { holdMarks, holdPicture } from '../../../src/draw/flat/hold-picture.ts';
import { pinTrial, pinTrialMarks } from '../../../src/draw/flat/pin-trial.ts';
import type { CutOut } from '../../../src/draw/flat/waste.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
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
    expect(texts(picture)).toEqual([`R${WHEEL_RIM}`, String(dentOf(panel))]);
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
    expect((dx * dx + dy * dy) / (2 * dy)).toBeGreaterThan(WHEEL_RIM * 0.95);
    expect((dx * dx + dy * dy) / (2 * dy)).toBeLessThan(WHEEL_RIM * 1.15);
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

/** The widths and heights of closed lines of a pen, mm of paper. */
const closedSizes = (marks: Parameters<typeof linesOf>[0]): readonly Vec2[] => linesOf(marks).filter(({ closed }) => closed).map(({ points }): Vec2 => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
});

describe('the pictures of stops', () => {
  it.each(papers)('tell how far the tip of a punch stands out, on paper of $width by $height', (paper) => {
    const picture = stopPicture(15, 9, paper);
    expect(texts(picture)).toEqual(['15']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(stopMarks(15, 9, paper.width))]).toEqual([[], [], [], []]);
  });

  it.each(papers)('tell a knife\'s strips, how long and how high, and its tip from their edge, on paper of $width by $height', (paper) => {
    const picture = knifeStopPicture(8, crossShaped, paper);
    expect(texts(picture)).toEqual(['100', '20', '×2', '8', '1', '2', '3', '4']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(knifeStopMarks(8, crossShaped, paper.width))]).toEqual([[], [], [], []]);
  });

  it('draw the blade leaning before it is bound, as when it is pulled, its tip square to the strip as far out as told', () => {
    const [width, depth] = [165, 8];
    const leaning = (marks: readonly Mark[]): readonly (readonly Vec2[])[] => linesOf(marks).filter(({ pen, closed, points }) => pen === pens.cut && closed && points.length === 4 && new Set(points.map(([x]) => x)).size === 4).map(({ points }) => points);
    const leanOf = ([tip = [NaN, NaN], , , edge = [NaN, NaN]]: readonly Vec2[]): number => Math.atan2(edge[0] - tip[0], tip[1] - edge[1]);
    const [[pulled = []], blades] = [leaning(pullMarks({ depth, thickness: 9, skin: 1 }, 6, width)), leaning(knifeStopMarks(depth, crossShaped, width))];
    expect(blades).toHaveLength(2);
    for (const blade of blades) expect(leanOf(blade)).toBeCloseTo(leanOf(pulled), 9);
    // Both strips at the knife as long and high as they are cut; from their lower edge the tip stands out to the same scale.
    const strips = closedSizes(knifeStopMarks(depth, crossShaped, width)).filter(([long, high]) => Math.abs(long / high - STRIP.long / STRIP.high) < 1e-6);
    const scale = Math.max(...strips.map(([long]) => long)) / STRIP.long;
    const feet = linesOf(knifeStopMarks(depth, crossShaped, width)).filter(({ closed, points }) => closed && Math.abs(Math.max(...points.map(([x]) => x)) - Math.min(...points.map(([x]) => x)) - scale * STRIP.long) < 1e-6).map(({ points }) => Math.max(...points.map(([, y]) => y)));
    expect(Math.max(...(blades[0] ?? []).map(([, y]) => y)) - Math.max(...feet)).toBeCloseTo(depth * scale, 9);
  });

  it('stand the knife\'s body on the strips, so that no more of the blade is out than they are high and it is to cut', () => {
    const at = { foot: [50, 50], depth: 8, scale: 0.5 } as const;
    const areas = knifeOnStrip(at).flatMap((mark) => (mark.mark === 'area' && mark.fill === 'ink' ? [mark.rings[0] ?? []] : []));
    expect(areas).toHaveLength(1);
    expect(Math.max(...(areas[0] ?? []).map(([, y]) => y))).toBeCloseTo(50 - STRIP.high * at.scale, 9);
    // Across, the body is wider than the blade and stands on both pads, whose upper edge it touches.
    const across = paddedKnife([50, 50], 5, { up: 30, isBound: false }).flatMap((mark) => (mark.mark === 'area' && mark.fill === 'ink' ? [mark.rings[0] ?? []] : []));
    expect(across).toHaveLength(1);
    expect(Math.max(...(across[0] ?? []).map(([, y]) => y))).toBeCloseTo(50 - PADDED.high, 9);
    expect([Math.min(...(across[0] ?? []).map(([x]) => x)) < 50 - PADDED.half - 2, Math.max(...(across[0] ?? []).map(([x]) => x)) > 50 + PADDED.half + 2]).toEqual([true, true]);
  });
});

describe('the picture of how a knife is bound to its strips', () => {
  const numbers = { taped: 5, tried: 6, stop: 2 } as const;

  it.each(papers)('tells that as much of the tip is out when it has been pushed, and what is done where less is, on paper of $width by $height', (paper) => {
    const picture = boundTrialPicture(8, numbers, paper);
    expect(texts(picture)).toEqual(['5', '6', '8', '8', '2']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(boundTrialMarks(8, numbers, paper.width))]).toEqual([[], [], [], []]);
  });

  it('draws tape across the knife from either end of the strips', () => {
    const at = { foot: [50, 50], depth: 8, scale: 0.5 } as const;
    const { marks, ends } = tapeAcross(at);
    const bands = marks.flatMap((mark) => (mark.mark === 'area' ? [mark.rings[0] ?? []] : []));
    expect([bands.length, ends.map(([x]) => Math.sign(x - 50))]).toEqual([2, [-1, 1]]);
    // Each ends on the other side of the knife from where it begins, over the strips.
    const [edge, back] = [onBody(at)(24, 0), onBody(at)(24, KNIFE.body)];
    expect(edge[0]).toBeGreaterThan(back[0]);
    [edge, back].forEach(([x, y], index) => {
      const ring = bands[index] ?? [];
      expect([Math.min(...ring.map(([at]) => at)) <= x && Math.max(...ring.map(([at]) => at)) >= x, y < 50 - STRIP.high * at.scale]).toEqual([true, true]);
    });
  });
});

describe('the picture of how a knife is led', () => {
  it.each(papers)('tells how far beside the line the straight-edge lies where strips run along it, on paper of $width by $height', (paper) => {
    for (const [led, told] of [[{ pads: 9, number: 5 }, ['5', '9']], [{ pads: null }, []]] as const) {
      const picture = guidePicture(led, paper);
      expect(texts(picture)).toEqual(told);
      expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(guideMarks(led, paper.width))]).toEqual([[], [], [], []]);
    }
  });

  it.each([9, 6])('draws the strips from above as long as they are, for their thickness of %s mm', (pads) => {
    const ratio = STRIP.long / pads;
    const strips = closedSizes(guideMarks({ pads, number: 5 }, 165)).filter(([long, thick]) => Math.abs(long / thick - ratio) < 1e-6);
    expect(strips).toHaveLength(STRIP.count);
  });
});

describe('the picture of a knife that is pulled', () => {
  const pulled = { depth: 8, thickness: 9, skin: 1 };

  it.each(papers)('tells the strip and the depth, and stays on paper of $width by $height', (paper) => {
    const picture = pullPicture(pulled, 6, paper);
    expect(texts(picture)).toEqual(['6', '8']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(pullMarks(pulled, 6, paper.width))]).toEqual([[], [], [], []]);
  });

  it('leans the way it is pulled, its sharp edge on that side, its tip the lowest', () => {
    const [blade] = linesOf(pullMarks(pulled, 6, 165)).filter(({ closed, points }) => closed && points.length === 4 && new Set(points.map(([x]) => x)).size === 4).map(({ points }) => points);
    const [tip, heel, spine, edge] = blade ?? [];
    if (tip === undefined || heel === undefined || spine === undefined || edge === undefined) throw new Error('no blade');
    expect(Math.max(...[heel, spine, edge].map(([, y]) => y))).toBeLessThan(tip[1]);
    // To the right is ahead, as the arrow tells.
    expect([edge[0] > tip[0], edge[0] > spine[0], tip[0] > heel[0]]).toEqual([true, true, true]);
  });

  it('goes deeper with each pull', () => {
    const tips = linesOf(pullMarks(pulled, 6, 165)).filter(({ closed, points }) => closed && points.length === 5).map(({ points: [tip] }) => tip?.[1] ?? NaN);
    expect(tips).toHaveLength(3);
    expect(tips).toEqual([...tips].sort((a, b) => a - b));
    expect(new Set(tips).size).toBe(3);
  });
});

describe('the picture of a half-cut tried on waste', () => {
  it.each(papers)('tells what is done once more, and stays on its paper of $width by $height', (paper) => {
    const numbers = { own: 7, stop: 2, held: 5, pulled: 6 } as const;
    const picture = practicePicture(crossShaped, numbers, paper);
    expect(texts(picture)).toEqual(['7', '5', '6', '6', '2', '5', '6']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture)]).toEqual([[], [], []]);
    // Well tried, the panel comes next; cut through, another piece of waste.
    const hatched = linesOf(practiceMarks(crossShaped, numbers, paper.width)).filter(({ pen }) => pen.colour === 'faded').map(({ points: [from] }) => from?.[0] ?? NaN);
    expect(Math.min(...hatched)).toBeGreaterThan((2 * paper.width) / 3);
  });
});

describe('the picture of a half-cut that went through', () => {
  it.each(papers)('tells how long a slit may be taped over, and from which step the panel is made anew, on paper of $width by $height', (paper) => {
    const anew = { step: 14, sheet: [1500, 1000] } as const;
    const picture = slitPicture(crossShaped, anew, paper);
    // A longer one asks for one more sheet of its size, and then for the step.
    expect(texts(picture)).toEqual([String(LONGEST_SLIT), String(LONGEST_SLIT), '+1', '1500', '1000', '14']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(slitMarks(crossShaped, anew, paper.width))]).toEqual([[], [], [], []]);
  });
});

describe('the picture of whether a tube holds in its socket', () => {
  it.each(papers)('tells what is done once more where it does not, on paper of $width by $height', (paper) => {
    const numbers = { own: 3, pushed: 2 } as const;
    const picture = holdPicture(numbers, paper);
    expect(texts(picture)).toEqual(['3', '2', '3']);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(holdMarks(numbers, paper.width))]).toEqual([[], [], [], []]);
  });
});

describe('the picture of a pin tried on waste', () => {
  it.each(papers)('holds together without figures, on paper of $width by $height', (paper) => {
    const picture = pinTrial(paper);
    expect(texts(picture)).toEqual([]);
    expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(pinTrialMarks(paper.width))]).toEqual([[], [], [], []]);
  });

  it.each(papers)('has a column for a pin that stays, one for a loose one, one for a core that stayed, on paper of $width by $height', ({ width }) => {
    const lines = linesOf(pinTrialMarks(width));
    const columns = lines.flatMap(({ pen, points: [from, to] }) => (pen.name === 'edge' && from?.[0] === to?.[0] && Math.abs((from?.[1] ?? 0) - (to?.[1] ?? 0)) > 50 ? [from?.[0] ?? NaN] : []));
    const wide = ticked([0, 0], 1.3).flatMap((mark) => (mark.mark === 'line' ? [mark.pen.width] : []))[0] ?? NaN;
    const verdicts = lines.filter(({ pen }) => pen.width === wide).map(({ points }) => [columns.filter((each) => each < (points[0]?.[0] ?? NaN)).length, points.length]);
    expect(verdicts).toEqual([[1, 3], [2, 2], [2, 2], [3, 2], [3, 2]]);
  });
});

describe('the picture of how a tube goes through a sleeve', () => {
  const given = { filedAt: 3, passesMore: true };

  it.each(papers)('numbers its moves, sends back to the first where it is stuck or taped, names the step that files ends, and stays on paper of $width by $height', (paper) => {
    const picture = slideTrial(paper, given);
    expect([texts(picture), overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(slideTrialMarks(paper.width, given))]).toEqual([['1', '3', '1', '2', '3', '3', '1', '3'], [], [], [], []]);
    expect(texts(slideTrial(paper, { filedAt: null, passesMore: false }))).toEqual(['1', '1', '2', '3', '3', '1']);
  });

  it('ticks a tube that stays and tape between two sleeves; crosses a mallet, a tube that is stuck, one that slips, and tape before both sleeves', () => {
    // A tick is one line of three places, a cross two lines of two.
    const verdicts = linesOf(slideTrialMarks(165, given)).filter(({ pen }) => pen.width > 1 && pen.colour === 'ink').map(({ points }) => [Math.floor((points[0]?.[1] ?? NaN) / 32), points.length]);
    expect(verdicts).toEqual([[0, 2], [0, 2], [0, 2], [0, 2], [1, 3], [1, 2], [1, 2], [2, 3], [2, 2], [2, 2]]);
  });
});

const castor: Castor = { name: 'castor', mass: 0.3, is: 'castor', wheel: 60, width: 24, height: 80, trail: 20, plug: 25, brake: true, load: 300 };
const ends: readonly (readonly [string, EndFitting, number])[] = [
  ['castor', castor, 28], ['large castor', { ...castor, wheel: 125, width: 32, height: 160, trail: 42 }, 28],
  ['foot', { name: 'foot', mass: 0.1, is: 'foot-plate', diameter: 60, thickness: 6, plug: 25 }, 28], ['cap', { name: 'cap', mass: 0.1, is: 'end-cap', diameter: 28, thickness: 3, plug: 20 }, 28], ['wide foot', { name: 'foot', mass: 0.1, is: 'foot-plate', diameter: 120, thickness: 8, plug: 30 }, 34],
];

describe('the picture of how an end is fitted and tried', () => {
  it.each(ends)('has its order alone as figures, and stays on its paper: a %s', (_, fitting, outsideOf) => {
    for (const paper of papers) {
      const picture = endTrial(fitting, outsideOf, paper);
      expect([texts(picture), overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(endTrialMarks(fitting, outsideOf, paper.width))]).toEqual([['1', '2', '1', '2'], [], [], [], []]);
    }
  });

  it.each(ends)('crosses a blow at the edge and an end that comes out, and ticks one that stays: a %s', (_, fitting, outsideOf) => {
    // A tick is one line of three places, a cross two lines of two; columns and rows as the rules part them.
    const verdicts = linesOf(endTrialMarks(fitting, outsideOf, 165)).filter(({ pen }) => pen.width > 1 && pen.colour === 'ink').map(({ points: [first = [NaN, NaN], ...rest] }) => [first[0] > 108, first[1] > 34, rest.length + 1]);
    expect(verdicts).toEqual([[false, false, 2], [false, false, 2], [false, true, 3], [true, false, 2], [true, false, 2]]);
  });
});

describe('the picture of how a brake is set', () => {
  it.each(['lying', 'standing'] as const)('tells how many there are, stays on its paper, and is wrong with the lever up and right with it down, where the tube is %s', (held: Held) => {
    for (const paper of papers) {
      const picture = brakePicture({ castor, count: 2 }, held, paper);
      expect([texts(picture), outside(picture), pointsOutside(picture), struckFigures(brakeMarks({ castor, count: 2 }, held, paper.width))]).toEqual([['×2'], [], [], []]);
      const wide = ticked([0, 0], 1.3).flatMap((mark) => (mark.mark === 'line' ? [mark.pen.width] : []))[0] ?? NaN;
      const verdicts = linesOf(brakeMarks({ castor, count: 2 }, held, paper.width)).filter(({ pen }) => pen.width === wide).map(({ points }) => [Math.floor((3 * (points[0]?.[0] ?? NaN)) / paper.width), points.length]);
      expect(verdicts).toEqual([[0, 2], [0, 2], [2, 3]]);
    }
  });

  it('draws a locked lever as the solid has it, and a loose one higher', () => {
    const at = standing([0, 0]);
    // The end of a locked lever is level with the turned-up end of the solid: a quarter of the wheel over its axle, and its toe.
    const [[x, y], [, loose]] = [leverEnd(castor, at, 1, 'locked'), leverEnd(castor, at, 1, 'loose')];
    expect([x, y]).toEqual([64, 19]);
    expect(loose).toBeLessThan(y - 8);
    const levers = (brake: boolean): number => fittingMarks({ ...castor, brake }, at, 1, { long: 10, half: 4 }).filter((mark) => mark.mark === 'area' && mark.fill === 'ink').length;
    expect([levers(true), levers(false)]).toEqual([1, 0]);
  });
});
