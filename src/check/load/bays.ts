import { placed, type Model, type Part, type Vec3 } from '../../model/index.ts';
import type { Face } from '../../read/index.ts';
import { nearestLevel, tubeLevels } from '../levels.ts';
import { partsOf } from '../parts.ts';
import { planMiddle } from '../stand/backrest.ts';
import { pinnedPlates } from '../stand/stand-input.ts';

/** A face between two heights that holds both ways: crossed cables, at least one for each, or a flat panel. */
interface Wall {
  readonly face: Face;
  readonly by: 'cables' | 'plate';
  readonly low: number;
  readonly high: number;
}

/** The room between two levels that cables or flat panels hold; heights of the tubes in mm. */
export interface Bay {
  readonly by: Wall['by'];
  readonly low: number;
  readonly high: number;
  readonly faces: readonly Face[];
}

interface Stay extends Pick<Wall, 'face' | 'low' | 'high'> {
  readonly rises: 'up' | 'down';
}

/** The held bays from the lowest up, read from where cables and plates really end. */
export function baysOf(model: Model): readonly Bay[] {
  const walls = [...cableWalls(model), ...plateWalls(model)];
  const spans = [...new Set(walls.map(spanOf))];
  return spans.map((span) => {
    const inBay = walls.filter((wall) => spanOf(wall) === span);
    const [first] = inBay;
    return { by: first?.by ?? 'cables', low: first?.low ?? 0, high: first?.high ?? 0, faces: [...new Set(inBay.map(({ face }) => face))] };
  }).toSorted((a, b) => a.low - b.low || a.high - b.high);
}

const spanOf = ({ by, low, high }: Wall): string => `${by} ${low} ${high}`;

/** Crossed cables on a face; a single slant holds one way only and counts for nothing. */
function cableWalls(model: Model): readonly Wall[] {
  const middle = planMiddle(model);
  const levels = tubeLevels(model);
  const stays = partsOf(model, 'cable').flatMap((part) => stayOf(part, middle, levels));
  return stays.filter((stay) => stays.some((other) => isCrossed(stay, other))).map((stay) => ({ ...stay, by: 'cables' }));
}

const isCrossed = (a: Stay, b: Stay): boolean => a.face === b.face && a.low === b.low && a.high === b.high && a.rises !== b.rises;

function stayOf({ shape, pose }: Part, middle: readonly [number, number], levels: readonly number[]): readonly Stay[] {
  if (shape.form !== 'cable') return [];
  const [lower, upper] = [placed(pose, [0, 0, 0]), placed(pose, [shape.length, 0, 0])].toSorted((a, b) => a[2] - b[2]);
  if (!lower || !upper) return [];
  const along = Math.abs(upper[0] - lower[0]) > Math.abs(upper[1] - lower[1]) ? 0 : 1;
  const at = (height: number): number => levels[nearestLevel(levels, height)] ?? height;
  return [{
    face: faceAt([(lower[0] + upper[0]) / 2, (lower[1] + upper[1]) / 2, 0], middle, along === 0 ? 1 : 0),
    low: at(lower[2]), high: at(upper[2]), rises: upper[along] > lower[along] ? 'up' : 'down',
  }];
}

function plateWalls(model: Model): readonly Wall[] {
  const middle = planMiddle(model);
  return pinnedPlates(model).flatMap(({ plate, tubes }) => {
    const [low, high] = tubes.map(({ tube }) => placed(tube.pose, [0, 0, 0])[2]);
    const at = placed(plate.pose, [0, 0, 0]);
    const across = Math.abs(at[0] - middle[0]) > Math.abs(at[1] - middle[1]) ? 0 : 1;
    return low === undefined || high === undefined ? [] : [{ face: faceAt(at, middle, across), by: 'plate' as const, low, high }];
  });
}

function faceAt(at: Vec3, middle: readonly [number, number], across: 0 | 1): Face {
  const offset = at[across] - middle[across];
  if (across === 1) return offset < 0 ? 'front' : 'back';
  return offset < 0 ? 'left' : 'right';
}
