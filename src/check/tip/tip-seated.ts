import { placed } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf, partsOf } from '../parts.ts';
import { backrestsOf } from '../stand/backrest.ts';
import type { Case, Check } from '../types.ts';
import { markHeights } from '../children/size-mark.ts';
import { centreOf, emptyBody, footing, ways } from './body.ts';

/** An edge to tip over: distances from the posts' middle line inwards to the centre of gravity and to the load, mm. */
interface Edge {
  readonly toCentre: number;
  readonly toLoad: number;
}

/**
 * Balance about the posts, N·m: a load at the edge of the deck, a little inside, and a push outwards at the deck's
 * height against the item's weight and, where it lies inside the posts, the load. The edges are front, sides and, where
 * nobody leans on a backrest, back; the worst counts. EN 1022 for seats; the same for tables and beds, whose printed
 * values were not found.
 */
export const tipEdge: Check = (given) => {
  const { model, limits: { edgeLoad, edgeInset, edgePush } } = given;
  const balances = edgesOf(given).map(({ toCentre, toLoad }) => ({
    holds: emptyBody(given).weight * toCentre + edgeLoad.value * Math.max(0, toLoad),
    tips: edgePush.value * Math.max(...model.deckTops) + edgeLoad.value * Math.max(0, -toLoad),
  }));
  const [worst] = balances.toSorted((a, b) => a.holds / a.tips - b.holds / b.tips);
  if (!worst) return [];
  const own = model.use === 'seat' ? '' : '; made for seats, our default here: no printed value found';
  return [judge({
    name: 'tip-edge', figure: worst.holds / 1000, limit: worst.tips / 1000, bound: 'least', unit: 'N·m',
    source: `${edgeLoad.value} N down ${edgeInset.value} mm inside the edge, ${edgePush.value} N outwards, ${edgeLoad.source}${own}`,
    parts: idsOf(model, 'post'), otherwise: model.use === 'seat' ? 'fail' : 'caution',
  })];
};

function edgesOf(given: Case): readonly Edge[] {
  const { model, limits: { edgeInset } } = given;
  const posts = partsOf(model, 'post').map((post) => placed(post.pose, [0, 0, 0]));
  const centre = centreOf(given);
  const overhang = model.pattern.wrapRadius + model.pattern.thickness;
  return ways.flatMap(([axis, way]): Edge[] => {
    if (axis === 1 && way === 1 && backrestsOf(model).length > 0) return [];
    const line = Math.max(...posts.map((post) => way * post[axis]));
    return [{ toCentre: line - way * centre[axis], toLoad: edgeInset.value - overhang }];
  });
}

/**
 * Balance about the back posts, N·m: a person in the middle of the seat leans back with a push at the top of the
 * backrest, at most so far over the seat (EN 1022: 80 N from a seat height of 720 mm, below it 0.2857 (1000 − H) N (M)).
 * From memory, so never more than a caution.
 */
export const tipBack: Check = (given) => {
  const { model, limits } = given;
  const [backrest] = backrestsOf(model);
  if (!backrest) return [];
  const seat = Math.max(...model.deckTops);
  const height = Math.min(seat + limits.backPushReach.value, Math.max(...backrest.tubes.map((tube) => tube.height)));
  const push = seat >= limits.backPushSeat.value ? limits.backPushHigh.value : limits.backPushSlope.value * (limits.backPushZero.value - seat);
  const share = pupilShare(given);
  const { least, most } = footing(given, 1);
  const holds = emptyBody(given).weight * (most - centreOf(given)[1]) + (share * limits.edgeLoad.value * (most - least)) / 2;
  return [judge({
    name: 'tip-back', figure: holds / 1000, limit: (share * push * height) / 1000, bound: 'least', unit: 'N·m',
    source: `${push.toFixed(0)} N back at the top of the backrest, ${limits.edgeLoad.value} N in the middle of the seat, ${limits.backPushHigh.source}${share < 1 ? `; both × ${share.toFixed(2)}, ${limits.adultSeat.source}` : ''}`,
    parts: idsOf(model, 'post'), otherwise: 'caution',
  })];
};

/** Share of an adult's forces with which a pupil leans back, by the declared size mark; 1 for everybody else. */
function pupilShare({ declared: { mark }, limits: { adultSeat } }: Case): number {
  const seat = mark === null ? undefined : markHeights.seat[mark];
  return seat === undefined ? 1 : Math.min(1, (seat / adultSeat.value) ** 2.5);
}
