import { chained, jointPorts, type Part, type Pose, type Vec3 } from '../../model/index.ts';
import { axisOf, carried, turnedBy } from '../found/vectors.ts';

/** A level length of a part, under which a block may stand; of two where one is wrapped round the other. */
export interface Carrier {
  readonly parts: readonly string[];
  /** 0 where it lies along x, 1 along y. */
  readonly axis: 0 | 1;
  /** From where to where along that axis, and where across it, mm. */
  readonly from: number;
  readonly to: number;
  readonly across: number;
  /** Height of its underside, mm. */
  readonly under: number;
}

/** What is this near to the lowest of its sort lies as low, mm. */
const AS_LOW = 1;
/** White between a peg's head and what stands beside it, mm. */
const BESIDE_PEG = 5;
/** The cosine from which a bar lies along an axis. */
const ALONG = 0.9999;

/** The lowest level bars of some parts as they lie. */
export const lowBars = (parts: readonly Part[], lying: Pose): readonly Carrier[] => lowest(parts.flatMap(({ id, shape, pose }) => {
  if (shape.form !== 'tube') return [];
  const own = chained(lying, pose);
  return lengthOf(id, carried(own, 0, 0, 0), axisOf(own, 0), [-shape.length / 2, shape.length / 2], shape.outside / 2);
}));

/** The lowest level sleeves and sockets, from beside the pegs of their joints to their ends. */
export const lowSleeves = (parts: readonly Part[], lying: Pose): readonly Carrier[] => lowest(parts.flatMap(({ id, shape, pose }) => {
  const joint = jointPorts(shape);
  if (joint === null) return [];
  const own = chained(lying, pose);
  const head = Math.max(0, ...joint.ports.flatMap((port) => (port.is === 'stud' ? [port.headDiameter / 2] : [])));
  return joint.ports.flatMap((port) => {
    if (port.is === 'stud') return [];
    const ways: readonly (readonly [number, number])[] = port.is === 'sleeve' ? [[head + BESIDE_PEG, port.above], [-port.below, -head - BESIDE_PEG]] : [[head + BESIDE_PEG, port.stop + port.depth]];
    return ways.flatMap((span) => lengthOf(id, carried(own, 0, 0, 0), turnedBy(own, [port.axis[0], port.axis[1], port.axis[2]]), span, joint.outside / 2));
  });
}));

/** A length of a part along a direction, where that is level and along x or y. */
function lengthOf(part: string, middle: Vec3, way: Vec3, [from, to]: readonly [number, number], half: number): readonly Carrier[] {
  const axis = Math.abs(way[0]) > Math.abs(way[1]) ? 0 : 1;
  if (Math.abs(way[axis]) < ALONG || to <= from) return [];
  const ends = [middle[axis] + way[axis] * from, middle[axis] + way[axis] * to];
  return [{ parts: [part], axis, from: Math.min(...ends), to: Math.max(...ends), across: middle[axis === 0 ? 1 : 0], under: middle[2] - half }];
}

function lowest(carriers: readonly Carrier[]): readonly Carrier[] {
  const least = Math.min(...carriers.map(({ under }) => under));
  return carriers.filter(({ under }) => under < least + AS_LOW);
}
