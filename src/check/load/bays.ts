import { placed, type Model, type Part, type Vec3 } from '../../model/index.ts';
import type { Face } from '../../read/index.ts';
import { tautDiagonalStiffness, type Wall } from '../formulas/rigid-deck.ts';
import { deckLevels, nearestDeck } from '../levels.ts';
import { partsOf } from '../parts.ts';

/** A face of one bay that holds both ways: at least one cable for each. */
export interface BracedWall extends Wall {
  readonly face: Face;
  /** Steepest working cable's run over its length. */
  readonly runShare: number;
  readonly cables: readonly string[];
}

/** The room between two decks that cables join; indices of the decks, heights in mm. */
export interface Bay {
  readonly low: number;
  readonly high: number;
  readonly height: number;
  readonly walls: readonly BracedWall[];
}

interface Stay {
  readonly id: string;
  readonly face: Face;
  readonly low: number;
  readonly high: number;
  readonly length: number;
  readonly run: number;
  readonly rises: 'up' | 'down';
  readonly offset: number;
}

const FACES: readonly Face[] = ['front', 'back', 'left', 'right'];

/** The braced bays from the lowest up, read from where the cables really end. */
export function baysOf(model: Model): readonly Bay[] {
  const stays = staysOf(model);
  const spans = [...new Set(stays.map((stay) => `${stay.low} ${stay.high}`))];
  const levels = deckLevels(model);
  return spans.map((span) => {
    const inBay = stays.filter((stay) => `${stay.low} ${stay.high}` === span);
    const [low, high] = [inBay[0]?.low ?? 0, inBay[0]?.high ?? 0];
    return {
      low, high, height: (levels[high] ?? 0) - (levels[low] ?? 0),
      walls: FACES.flatMap((face) => wallOf(model, face, inBay.filter((stay) => stay.face === face))),
    };
  }).toSorted((a, b) => a.low - b.low || a.high - b.high);
}

/** Middle of the posts in plan, mm. */
export function planMiddle(model: Model): readonly [number, number] {
  const posts = partsOf(model, 'post').map((post) => placed(post.pose, [0, 0, 0]));
  const mean = (axis: 0 | 1): number => posts.reduce((sum, post) => sum + post[axis], 0) / Math.max(1, posts.length);
  return [mean(0), mean(1)];
}

function staysOf(model: Model): readonly Stay[] {
  const middle = planMiddle(model);
  return partsOf(model, 'cable').flatMap((part) => stayOf(model, part, middle));
}

function stayOf(model: Model, part: Part, middle: readonly [number, number]): readonly Stay[] {
  if (part.shape.form !== 'cable') return [];
  const ends = [placed(part.pose, [0, 0, 0]), placed(part.pose, [part.shape.length, 0, 0])].toSorted((a, b) => a[2] - b[2]);
  const [lower, upper] = ends;
  if (!lower || !upper) return [];
  const across = Math.abs(upper[0] - lower[0]) > Math.abs(upper[1] - lower[1]) ? 1 : 0;
  const along = across === 1 ? 0 : 1;
  const offset = (lower[across] + upper[across]) / 2 - middle[across];
  return [{
    id: part.id, face: faceAt(across, offset), offset,
    low: nearestDeck(model, lower[2]), high: nearestDeck(model, upper[2]),
    length: part.shape.length, run: Math.abs(upper[along] - lower[along]),
    rises: risesTowards(lower, upper, along),
  }];
}

const risesTowards = (lower: Vec3, upper: Vec3, along: 0 | 1): 'up' | 'down' =>
  upper[along] > lower[along] ? 'up' : 'down';

function faceAt(across: 0 | 1, offset: number): Face {
  if (across === 1) return offset < 0 ? 'front' : 'back';
  return offset < 0 ? 'left' : 'right';
}

/** Only the taut one of two crossed cables works; of several the slackest answer counts. */
function wallOf(model: Model, face: Face, stays: readonly Stay[]): readonly BracedWall[] {
  const crossed = stays.some((stay) => stay.rises === 'up') && stays.some((stay) => stay.rises === 'down');
  if (!crossed) return [];
  const stiffnesses = stays.map((stay) => tautDiagonalStiffness(model.kit.cable.stiffness, stay.length, stay.run));
  return [{
    face,
    along: face === 'front' || face === 'back' ? 'x' : 'y',
    offset: stays.reduce((sum, stay) => sum + stay.offset, 0) / stays.length,
    stiffness: Math.min(...stiffnesses),
    runShare: Math.min(...stays.map((stay) => stay.run / stay.length)),
    cables: stays.map((stay) => stay.id),
  }];
}
