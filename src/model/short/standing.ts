import { FaultError, pointName, type DeckPiece, type Face, type FramePiece, type Item, type PanelPiece, type Position, type PostPiece, type Quantity } from '../../read/index.ts';
import { axesFor } from '../deck.ts';
import { chained, moved, turned } from '../pose.ts';
import type { Pose, Vec2 } from '../types.ts';
import { wrapOf } from '../wrap.ts';
import { SIDES } from './corners.ts';

export type Names = Readonly<Record<string, Quantity>>;

/** A deck or frame of a size, at its height. A deck is used the other way up than it is built. */
export interface Standing {
  readonly name: string;
  readonly piece: string;
  readonly kind: 'deck' | 'frame';
  readonly sides: readonly Face[];
  /** Height of the tubes' axes over the floor, mm. */
  readonly level: number;
  /** From its own building pose to the finished item. */
  readonly pose: Pose;
  readonly told: { readonly position: Position; readonly field: string };
}

/** Everything of a short form that stands between its four posts, worked out for a size. */
export interface ShortForm {
  /** Half distances between the posts' axes. */
  readonly axes: Vec2;
  readonly standing: readonly Standing[];
  /** Heights of the decks' upper faces, by piece and from the lowest of each. */
  readonly tops: readonly number[];
  /** Those of the first deck piece. */
  readonly firstTops: readonly number[];
  readonly posts: PostPiece;
  readonly panels: readonly PanelPiece[];
  readonly names: Names;
}

/** Works out the decks and frames in the order of the file; each publishes its named points to those after it. */
export function standingIn(item: Item, given: Names): ShortForm {
  const axes = axesOf(item, given);
  const found = item.pieces.reduce<Found>((done, piece) => (piece.is === 'deck' || piece.is === 'frame' ? withPiece(item, done, piece) : done), { standing: [], tops: [], names: given });
  const posts = item.pieces.find((piece): piece is PostPiece => piece.is === 'post');
  if (posts === undefined) throw missing(item, 'a post');
  const [firstTops] = found.tops;
  if (firstTops === undefined) throw missing(item, 'a deck');
  return {
    axes, standing: found.standing, tops: found.tops.flat(), firstTops, posts, names: found.names,
    panels: item.pieces.filter((piece): piece is PanelPiece => piece.is === 'panel'),
  };
}

interface Found {
  readonly standing: readonly Standing[];
  readonly tops: readonly (readonly number[])[];
  readonly names: Names;
}

const missing = (item: Item, what: string): FaultError => new FaultError([{
  position: { file: item.source.file, line: 1, column: 1 }, field: 'pieces', found: `no ${what.replace(/^an? /, '')}`, remedy: `${what} among the pieces`,
}]);

/** All decks and frames stand between the same posts: the first one tells how far apart these are. */
function axesOf(item: Item, names: Names): Vec2 {
  const piece = item.pieces.find((each) => each.is === 'deck' || each.is === 'frame');
  if (piece?.is !== 'deck' && piece?.is !== 'frame') throw missing(item, 'a deck');
  return axesFor(item.kit, piece.width.evaluate(names).value, piece.depth.evaluate(names).value);
}

const mm = (value: number): Quantity => ({ value, dimension: 'length' });

function withPiece({ kit }: Item, { standing, tops, names }: Found, piece: DeckPiece | FramePiece): Found {
  const height = piece.is === 'deck' ? piece.top : piece.level;
  const heights = Array.from({ length: piece.count.evaluate(names).value }, (_, index) => height.evaluate({ ...names, index: { value: index, dimension: 'count' } }).value);
  const wrap = wrapOf(kit);
  const under = piece.is === 'deck' ? wrap.radius + wrap.thickness : 0;
  const levels = heights.map((each) => each - under);
  const made = levels.map((level, index): Standing => ({
    name: `${piece.name}-${index + 1}`, piece: piece.name, kind: piece.is, level,
    sides: piece.is === 'deck' ? SIDES : piece.sides,
    pose: piece.is === 'deck' ? chained(moved([0, 0, level]), turned([1, 0, 0], Math.PI), moved([0, 0, -wrap.radius])) : moved([0, 0, level]),
    told: { position: height.position, field: `pieces.${piece.name}` },
  }));
  const points = {
    ...(piece.is === 'deck' ? { [pointName(piece.name, 'top')]: mm(Math.min(...heights)) } : {}),
    [pointName(piece.name, 'level')]: mm(Math.min(...levels)),
    [pointName(piece.name, 'high')]: mm(Math.max(...levels)),
  };
  return { standing: [...standing, ...made], tops: piece.is === 'deck' ? [...tops, heights] : tops, names: { ...names, ...points } };
}
