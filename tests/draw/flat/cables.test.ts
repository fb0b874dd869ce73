import { describe, expect, it } from 'vitest';
import { cableCutMarks, cableCutPicture } from '../../../src/draw/flat/cable/cut-picture.ts';
import { drawnCords } from '../../../src/draw/flat/cable/drawn-together.ts';
import { FRAMES } from '../../../src/draw/flat/cable/frames.ts';
import { endBefore, endBehind, endUnder, HITCHES, hitchCords, hitchesTight, roundOne, secondHitch } from '../../../src/draw/flat/cable/hitches.ts';
import { loopMarks, loopReminder, loopReminderMarks, loopSeries, tyingMarks, tyingReminder, tyingReminderMarks, tyingSeries } from '../../../src/draw/flat/cable/knot-series.ts';
import { laidBack } from '../../../src/draw/flat/cable/knots.ts';
import { wholeCordMarks, wholeCordPicture } from '../../../src/draw/flat/cable/whole-cord.ts';
import { crossingsOf, woven } from '../../../src/draw/flat/cable/woven.ts';
import { doubled, stands } from '../../../src/draw/flat/cable/rope.ts';
import type { DrawnPicture } from '../../../src/draw/index.ts';
import { FORMATS } from '../../../src/draw/formats.ts';
import type { Mark } from '../../../src/draw/kit/marks.ts';
import { bracedFace, cableEnds, cableLoop, cableTest, type Vec2 } from '../../../src/model/index.ts';
import { itemNamed, modelOf } from '../../support/items.ts';
import { linesOf, outside, overlaps, pointsOutside, struckFigures, texts } from './inspect.ts';

const papers = [FORMATS.page.bench, FORMATS.small.bench];

describe('the pictures of cables', () => {
  const rack = modelOf(itemNamed('rack'), 'standard');
  const loop = cableLoop(rack);
  const face = bracedFace(rack, ['cable-back-1', 'cable-back-2']);
  const cable = (length: number, count: number) => ({ count, ...cableEnds(length), loop, test: cableTest(length), face });
  const cables = [cable(1680, 2), cable(1426, 4), cable(570, 2), cable(240, 2)];
  const isClean = (picture: DrawnPicture, marks: readonly Mark[]) => expect([overlaps(picture.labels), outside(picture), pointsOutside(picture), struckFigures(marks)]).toEqual([[], [], [], []]);

  it.each(papers)('tell how long each is measured and cut, on paper of $width by $height', (paper) => {
    for (const [each, cut] of [[cables[0], '2530'], [cables[1], '2280'], [cables[2], '1420'], [cables[3], '1090']] as const) {
      if (each === undefined) throw new Error('no cable');
      const picture = cableCutPicture(each, paper);
      expect(texts(picture)).toEqual([`×${each.count}`, cut, '1', '2', '3', '4']);
      isClean(picture, cableCutMarks(each, paper.width));
      expect(each.cut).toBeGreaterThan(each.length + each.loops[0] + each.loops[1]);
    }
  });

  it.each(papers)('hang each on its upper peg and mark it: the stretches make up what is from peg to peg, all measured from a peg’s middle, on paper of $width by $height', (paper) => {
    for (const each of cables) {
      const picture = wholeCordPicture(each, paper);
      expect(texts(picture)).toEqual([String(each.between), String(each.before), String(each.length), String(FRAMES.hooked), String(FRAMES.marked)]);
      isClean(picture, wholeCordMarks(each, paper.width));
      expect(each.between + each.before).toBe(each.length);
      const circles = wholeCordMarks(each, paper.width).flatMap((mark) => (mark.mark === 'circle' ? [mark] : []));
      const measured = circles.filter(({ fill }) => fill === 'ink').map(({ centre }) => String(centre));
      const heads = circles.filter(({ fill }) => fill === 'panel').map(({ centre }) => String(centre));
      expect([measured[0], measured[2]]).toEqual([...new Set(heads)]);
    }
  });

  it('are drawn by two people with two hands each, the second one at the second cord', () => {
    const box = { x: 0, y: 0, width: 32, height: 40 };
    const palms = (marks: readonly Mark[]): number => marks.filter((mark) => mark.mark === 'area' && mark.fill === 'white' && mark.rings.length === 1 && mark.rings[0]?.length === 6).length;
    const heads = (marks: readonly Mark[]): number => marks.filter((mark) => mark.mark === 'circle' && mark.fill === 'ink').length;
    const drawings = [drawnCords(face, { has: [0], pulls: [0], how: 'first' }, box), drawnCords(face, { has: [0, 1], pulls: [0, 1], how: 'together' }, box)];
    expect([drawings.map(palms), drawings.map(heads)]).toEqual([[4, 4], [1, 2]]);
  });

  it.each(papers)('show each move of both loops, how the end is made fast, and how tight is looked at; every number once and in order, on paper of $width by $height', (paper) => {
    for (const [each, most] of [[cable(1680, 2), '40'], [cable(570, 2), '10']] as const) {
      const loops = loopSeries(each, paper);
      const tying = tyingSeries(each, paper);
      const inside = String(loop.inside);
      expect(loops.map(texts)).toEqual([['5', String(loop.doubled), '6'], ['7', '8'], ['9', inside, String(loop.tail)]]);
      expect(tying.map(texts).filter((each) => each.length > 0)).toEqual([
        ['12', String(each.loop.doubled), '13'], ['14', '15', inside], ['16', '17'], ['18', '10', '17', '10', '17'], ['19', '20'], ['21'], ['22', '19', '21', '23'],
        [String(FRAMES.hung), '5', '9', '1 L', '1 kg'], [String(FRAMES.sag), most, most, String(FRAMES.last), String(FRAMES.drawn)],
      ]);
      for (const [index, picture] of loops.entries()) isClean(picture, loopMarks(each, paper.width)[index]?.marks ?? []);
      for (const [index, picture] of tying.entries()) isClean(picture, tyingMarks(each, paper.width)[index]?.marks ?? []);
      const orders = [cableCutMarks(each, paper.width), ...loopMarks(each, paper.width).map(({ marks }) => marks), wholeCordMarks(each, paper.width), ...tyingMarks(each, paper.width).map(({ marks }) => marks)]
        .flatMap((marks) => marks.flatMap((mark) => (mark.mark === 'order' && mark.told.as === 'number' ? [mark.told.value] : [])));
      // Both cords are hung before they are drawn tight together; the second hitch is tied as the first; where one gives way more, its hitches are undone and it is drawn again.
      const upTo = (last: number): readonly number[] => Array.from({ length: last }, (_, index) => index + 1);
      expect(orders).toEqual([1, 2, 3, 4, ...upTo(FRAMES.drawn).slice(4), ...[1, 2].flatMap(() => [FRAMES.hooked, FRAMES.through]), ...upTo(FRAMES.hitched + 1).slice(FRAMES.drawn), FRAMES.hitch, FRAMES.hitched, FRAMES.last, FRAMES.hung, FRAMES.first, FRAMES.looped, FRAMES.sag, FRAMES.last, FRAMES.drawn]);
    }
  });

  it.each(papers)('tell at a later step where the knots are shown, and its own figures, on paper of $width by $height', (paper) => {
    const each = { ...cable(1426, 2), face: bracedFace(rack, ['cable-left-1', 'cable-left-2']) };
    const [first, rest] = [loopReminder(36, paper), tyingReminder(each, 36, paper)];
    expect([texts(first), texts(rest)]).toEqual([['36', '5', '9'], ['36', '12', '23', '24', '1 L', '1 kg', '25', String(each.test.most), String(each.test.most), String(FRAMES.last), String(FRAMES.drawn)]]);
    isClean(first, loopReminderMarks(36));
    isClean(rest, tyingReminderMarks(each, 36, paper.width));
  });

  it('draw two cords side by side with white between them, as far apart as neither touches the other', () => {
    const [edges, fill, inner, white] = linesOf(woven([doubled(stands([0, 0], [10, 0]))], [])).map(({ pen }) => pen);
    expect([edges?.colour, fill?.colour, inner?.colour, white?.colour]).toEqual(['ink', 'white', 'ink', 'white']);
    expect(white?.width).toBeGreaterThanOrEqual(1);
    const single = linesOf(woven([stands([0, 0], [10, 0])], []))[0]?.pen.width ?? NaN;
    expect((edges?.width ?? NaN) - (white?.width ?? NaN)).toBeCloseTo(2 * single, 6);
  });

  it.each([
    ['behind both cords', endBehind], ['before both', endBefore], ['under its beginning', endUnder], ['round one alone', roundOne], ['in a second hitch', secondHitch], ['when both are home', hitchesTight],
  ])('pull the end of a hitch on along itself, thicker than before: %s', (_, frame) => {
    const lines = linesOf(frame([0, 0]));
    const moving = lines.filter(({ pen }) => pen.colour === 'fresh').map(({ points }) => points);
    const whole = moving.toSorted((one, other) => other.length - one.length)[0] ?? [];
    const [before, end] = whole.slice(-2);
    const pulled = lines.findLast(({ pen, points }) => Math.abs(pen.width - 1.08) < 0.001 && points.length === 2)?.points;
    if (before === undefined || end === undefined || pulled?.[0] === undefined || pulled[1] === undefined) throw new Error('nothing is pulled');
    const angle = ([x, y]: Vec2, [tox, toy]: Vec2): number => Math.atan2(toy - y, tox - x);
    const turned = (one: number, other: number): number => Math.abs(Math.atan2(Math.sin(one - other), Math.cos(one - other)));
    expect(turned(angle(before, end), angle(pulled[0], pulled[1]))).toBeLessThan(0.12);
    // On from the end, no farther off than its black edge and a little white.
    expect(turned(angle(end, pulled[0]), angle(before, end))).toBeLessThan(0.3);
    expect(Math.hypot(pulled[0][0] - end[0], pulled[0][1] - end[1])).toBeLessThan(5);
    const wide = (of: typeof frame): number => Math.max(...linesOf(of([0, 0])).filter(({ pen }) => pen.colour === 'fresh').map(({ pen }) => pen.width));
    expect(wide(frame) / wide(laidBack(100))).toBeGreaterThan(1.8);
  });

  // A diagram whose crossings alternate, and that has none to spare, cannot be laid down with fewer: Kauffman, Murasugi and Thistlethwaite 1987 (M). A turn that does not alternate comes off by itself.
  it.each([['under', 1, 2], ['home', 2, 2], ['second', 2, 2], ['one', 1, 1]] as const)('lay hitches (%s) whose end goes under and over by turns: under what is bound, over it, under its own beginning', (name, hitches, bound) => {
    const cords = hitchCords([0, 0], HITCHES[name]);
    const end = cords.length - 1;
    const met = crossingsOf(cords).flatMap(({ first, second }, index) => {
      const isFirstOver = HITCHES[name].passes[index] === 'o';
      return [{ ...first, passes: isFirstOver ? 'o' : 'u' }, { ...second, passes: isFirstOver ? 'u' : 'o' }].filter(({ strand }) => strand === end);
    }).toSorted((one, other) => one.along - other.along).map(({ passes }) => passes);
    const times = (pass: string, count: number): readonly string[] => Array.from({ length: count }, () => pass);
    // Its own beginning is over what comes out later; then behind and before what is bound.
    const one = ['o', ...times('u', bound), ...times('o', bound), 'u'];
    expect(met).toEqual(Array.from({ length: hitches }, () => one).flat());
  });

  it('breaks the lower cord at each crossing, on either side of the upper one, and asks which is which', () => {
    const cords = [stands([0, 5], [20, 5]), doubled(stands([10, 0], [10, 12], [3, 12], [3, 0]))];
    expect(crossingsOf(cords).map(({ first, second }) => [first.strand, second.strand])).toEqual([[0, 1], [0, 1]]);
    const gaps = linesOf(woven(cords, ['o', 'u'])).filter(({ pen }) => pen.name === 'gap');
    expect(gaps.map(({ points, pen }) => [points.every(([, y]) => y === 5), pen.width])).toEqual([[true, expect.closeTo(4, 6)], [false, expect.closeTo(7.2, 6)]]);
    expect(() => woven(cords, ['o'])).toThrow('2 crossings, but 1');
  });

  it('hang a mass that a litre of water has: 0.998 kg at 20 °C (M, handbook tables of the density of water)', () => {
    expect(Math.abs(cableTest(1680).mass - 0.998)).toBeLessThan(0.01);
  });
});
