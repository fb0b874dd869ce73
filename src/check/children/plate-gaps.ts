import { placed, type Model, type Part } from '../../model/index.ts';
import { sleevePairs } from '../fit/joints-apart.ts';
import { partsOf } from '../parts.ts';
import { pinnedPlates } from '../stand/stand-input.ts';

/** An opening that fingers or limbs may reach into: its narrow and its long side, mm, and the parts round it. */
export interface Gap {
  readonly what: string;
  readonly narrow: number;
  readonly long: number;
  readonly parts: readonly string[];
}

/** A flat panel seen square on: `across` along its tubes, z up; through which way its thickness runs. */
interface Facing {
  readonly plate: Part;
  readonly axis: 0 | 1;
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
  /** Its faces, nearest to the item's middle last. */
  readonly outer: number;
  readonly inner: number;
  readonly low: number;
  readonly high: number;
}

/** Every flat panel with its edges in the item's coordinates. */
export function facingPlates(model: Model): readonly Facing[] {
  return pinnedPlates(model).flatMap(({ plate, tubes }) => {
    const { shape, pose } = plate;
    if (shape.form !== 'plate') return [];
    const corners = [-1, 1].flatMap((x) => [-1, 1].flatMap((y) => [0, shape.thickness].map((z) => placed(pose, [(x * shape.width) / 2, (y * shape.height) / 2, z]))));
    const range = (index: 0 | 1 | 2): readonly [number, number] => [Math.min(...corners.map((at) => at[index])), Math.max(...corners.map((at) => at[index]))];
    const axis = range(0)[1] - range(0)[0] > range(1)[1] - range(1)[0] ? 0 : 1;
    const through = range(axis === 0 ? 1 : 0);
    const [outer, inner] = Math.abs(through[0]) > Math.abs(through[1]) ? through : [through[1], through[0]];
    const heights = tubes.map(({ tube }) => placed(tube.pose, [0, 0, 0])[2]);
    return [{
      plate, axis, from: range(axis)[0], to: range(axis)[1], bottom: range(2)[0], top: range(2)[1],
      outer, inner, low: Math.min(...heights), high: Math.max(...heights),
    }];
  });
}

/** The openings round the flat panels: to the posts, to the sockets, to the deck under them, round a corner to the next panel. */
export function plateGaps(model: Model): readonly Gap[] {
  const plates = facingPlates(model);
  return [
    ...plates.flatMap((facing) => [...besidePost(model, facing), ...besideSocket(model, facing), ...overDeck(model, facing)]),
    ...roundCorners(plates),
  ];
}

/** The grooves between the sleeves of neighbouring joints on a post. */
export function sleeveGaps(model: Model): readonly Gap[] {
  const { joint, tube } = model.kit;
  const depth = (joint.sleeveDiameter - tube.outsideDiameter) / 2;
  return sleevePairs(model).map(({ gap, ids }) => ({ what: 'sleeve and sleeve', narrow: gap, long: Math.max(gap, depth), parts: ids }));
}

/** Where the posts' middles stand along an axis, mm. */
const postsAlong = (model: Model, axis: 0 | 1): readonly number[] => partsOf(model, 'post').map((post) => placed(post.pose, [0, 0, 0])[axis]);

/** Between the panel's upright edge, the post and the two tubes. */
function besidePost(model: Model, { plate, axis, from, to, low, high }: Facing): readonly Gap[] {
  const { kit: { tube, joint } } = model;
  const posts = postsAlong(model, axis);
  const outermost = [Math.min(...posts) - from, to - Math.max(...posts)].map((reach) => -reach - tube.outsideDiameter / 2);
  return [sided('panel and post', Math.min(...outermost), high - low - joint.socketDiameter, [plate.id])];
}

/** Between the panel's upright edge and the end of the joint's socket, straight along the tube. */
function besideSocket(model: Model, { plate, axis, from, to }: Facing): readonly Gap[] {
  const { joint } = model.kit;
  const reach = joint.stop + joint.socketDepth;
  const posts = postsAlong(model, axis);
  return [sided('panel and socket', Math.min(from - Math.min(...posts), Math.max(...posts) - to) - reach, joint.socketDiameter, [plate.id])];
}

/** Between the panel's lower edge and the upper face of the highest deck under it. */
function overDeck(model: Model, { plate, from, to, bottom }: Facing): readonly Gap[] {
  const under = model.deckTops.filter((top) => top <= bottom);
  return under.length === 0 ? [] : [sided('panel and deck', bottom - Math.max(...under), to - from, [plate.id])];
}

/** Between the upright edges of two panels that meet at a post. */
function roundCorners(plates: readonly Facing[]): readonly Gap[] {
  return plates.flatMap((one, index) => plates.slice(index + 1).filter((other) => other.axis !== one.axis && other.low < one.high && one.low < other.high)
    .map((other) => {
      const across = nearestEnd(one, other.inner) - other.inner;
      const along = nearestEnd(other, one.inner) - one.inner;
      return sided('panel and panel', Math.hypot(across, along), Math.min(one.high, other.high) - Math.max(one.low, other.low), [one.plate.id, other.plate.id]);
    }));
}

const nearestEnd = ({ from, to }: Facing, at: number): number => (Math.abs(from - at) < Math.abs(to - at) ? from : to);

const sided = (what: string, a: number, b: number, parts: readonly string[]): Gap =>
  ({ what, narrow: Math.min(a, b), long: Math.max(a, b), parts });
