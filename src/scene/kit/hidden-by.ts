import { unit, type Vec3 } from '../../model/index.ts';
import type { SceneBody, View } from '../types.ts';
import { boxRound, type Box } from './extent.ts';

/** Of the middle and the corners of its upper side a prop shows so few that it is hidden. */
const FEW = 1;
/** What is no farther before a place than this is at it, mm. */
const AT = 1;

/** Whether other bodies hide a prop. */
export function isPropHidden(prop: SceneBody, bodies: readonly SceneBody[], { towardsEye }: View): boolean {
  const eye = unit(towardsEye);
  const boxes = bodies.filter(({ kind }) => kind !== 'tool').map((body) => boxRound([body]));
  return upperSide(boxRound([prop])).filter((place) => !boxes.some((box) => isBefore(box, place, eye))).length <= FEW;
}

/** Whether one of some bodies, each as large as its box, hides a place. */
export const isHiddenBy = (bodies: readonly SceneBody[], place: Vec3, { towardsEye }: View): boolean => bodies.some((body) => isBefore(boxRound([body]), place, unit(towardsEye)));

const upperSide = ({ min, max }: Box): readonly Vec3[] =>
  [[(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, max[2]], [min[0], min[1], max[2]], [max[0], min[1], max[2]], [max[0], max[1], max[2]], [min[0], max[1], max[2]]];

/** Whether a box stands between a place and the eye. */
function isBefore({ min, max }: Box, place: Vec3, eye: Vec3): boolean {
  const spans = ([0, 1, 2] as const).map((axis): readonly [number, number] => {
    const way = eye[axis];
    if (Math.abs(way) < 1e-9) return place[axis] > min[axis] && place[axis] < max[axis] ? [-Infinity, Infinity] : [Infinity, -Infinity];
    const ends = [(min[axis] - place[axis]) / way, (max[axis] - place[axis]) / way];
    return [Math.min(...ends), Math.max(...ends)];
  });
  const [from, to] = [Math.max(...spans.map(([begin]) => begin)), Math.min(...spans.map(([, end]) => end))];
  return from < to && to > AT;
}
