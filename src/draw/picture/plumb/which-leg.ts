import { tell, STANDARD_VIEW, type Plumb } from '../../../scene/index.ts';
import { plus, times, type Vec2 } from '../../../model/index.ts';
import type { Box } from '../../types.ts';
import { plumbLine } from '../../flat/plumb-line.ts';
import type { Colour } from '../../kit/colours.ts';
import { boundsOf, fitInto, onPaper, type Fit } from '../../kit/fit.ts';
import { capHeights } from '../../kit/lettering.ts';
import { area, circle, figureOnGround, line, outline, ringedNumeral, type Mark } from '../../kit/marks.ts';
import { haloOf, pens } from '../../kit/pens.ts';
import type { LineDrawer } from '../line-drawer.ts';
import { elevationMarks, elevationOf, onPlane } from '../elevation.ts';

/** Room beside and over the item, mm of paper; under it that of a number. */
const ROOM = { aside: 1, above: 4 } as const;
/** The strings are so far from the leg on paper at least, the straightedge's ends so far beyond and so high, and its inner ends so far behind the leg, the weights so much smaller than usual, mm of paper. */
const APART = 7;
const BEYOND = 3;
const BEHIND = 6;
const SMALL = { high: 2, size: 0.75 } as const;
/** The middle of a number under its string, its radius, mm of paper. */
const UNDER = 5;
const RADIUS = 4.2;

/** One leg is looked at: told so high up it, as a share of its height, so far beside it, and how wide that is, mm of paper. */
const COUNT = { high: 0.45, off: 11, wide: 9 } as const;

/** The whole item, the leg that is looked at tinted, and on which sides of it the string hangs, first on one and then on the other, each with its number. */
export function whichLeg({ bodies, leg, top, floor, sides }: Plumb, box: Box, draw: LineDrawer): readonly Mark[] {
  const whole = elevationOf(bodies, STANDARD_VIEW, draw);
  const { min, max } = whole.drawing.bounds;
  const onSide = (fit: Pick<Fit, 'scale'>, { out, face, off, low }: Plumb['sides'][number]) => {
    const size = Math.hypot(...onPlane(whole, out)) * fit.scale;
    const at = (height: number, far: number): Vec2 => onPlane(whole, plus([leg.at[0], leg.at[1], height], times(out, far)));
    const far = Math.max(face + off, APART / size);
    const ends: readonly [Vec2, Vec2] = [at(top, -BEHIND / size), at(top, far + BEYOND / size)];
    return { ends, hung: at(top, far), low: at(low, far)[1], foot: Math.min(at(low, far)[1], at(floor, far)[1]) };
  };
  const legAt = (share: number): Vec2 => onPlane(whole, [leg.at[0], leg.at[1], floor + share * (top - floor)]);
  const room = { x: box.x + ROOM.aside, y: box.y + ROOM.above, width: box.width - 2 * ROOM.aside, height: box.height - ROOM.above - UNDER - RADIUS - 1 };
  // What is as large on paper whatever the scale takes up more of the plane the smaller that is.
  const fit = [0, 1, 2].reduce((last) => {
    const places = sides.flatMap((side) => {
      const { ends, hung: [x], foot } = onSide(last, side);
      const wide = RADIUS / last.scale;
      return [...ends, [x - wide, foot] as const, [x + wide, foot] as const];
    });
    const told = legAt(COUNT.high);
    return fitInto(boundsOf([min, max, ...places, [told[0] + (COUNT.off + COUNT.wide) / last.scale, told[1]]]), room, 1, [0.5, 0.5]);
  }, fitInto({ min, max }, room, 1, [0.5, 0.5]));
  const [legX, legY] = onPaper(fit, legAt(COUNT.high));
  return [
    ...elevationMarks(whole, fit),
    ...sides.map((side, index) => ({ side, index })).toReversed().flatMap(({ side, index }): readonly Mark[] => {
      const colour = index === 0 ? 'ink' : 'faded';
      const { ends: [from, to], hung, low, foot } = onSide(fit, side);
      const [[x, y], [, tip], [, under]] = [onPaper(fit, hung), onPaper(fit, [0, low]), onPaper(fit, [0, foot])];
      return [
        ...edgeOn(onPaper(fit, from), onPaper(fit, to), colour), ...plumbLine(x, y, tip, { ...SMALL, colour }),
        ringedNumeral(tell.number(index + 1), [x, under + UNDER], capHeights.order),
      ];
    }),
    line(haloOf(pens.leader.width), [legX, legY], [legX + COUNT.off, legY]), line(pens.leader, [legX, legY], [legX + COUNT.off, legY]), circle([legX, legY], 0.9, pens.edge, 'white'),
    figureOnGround(tell.times(1), [legX + COUNT.off + COUNT.wide / 2 + 0.6, legY], capHeights.count),
  ];
}

/** A straightedge, from one end to the other, along its lower edge. */
function edgeOn([fromX, fromY]: Vec2, [toX, toY]: Vec2, colour: Colour): readonly Mark[] {
  const ring: readonly Vec2[] = [[fromX, fromY], [toX, toY], [toX, toY - SMALL.high], [fromX, fromY - SMALL.high]];
  return [line(haloOf(SMALL.high), [fromX, fromY - SMALL.high / 2], [toX, toY - SMALL.high / 2]), area('white', ring), outline({ ...pens.cut, colour, width: 0.4 }, ring)];
}
