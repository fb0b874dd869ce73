import { CORNER, panelKinds, tubeKinds, type Face, type Item, type PanelKind, type PanelPiece, type TubeKind } from '../../read/index.ts';
import type { Blueprint, PlannedBar, PlannedCable, PlannedJoint, PlannedPanel } from '../structure/types.ts';
import type { Vec3 } from '../types.ts';
import { CORNERS, cornersOf, SIDES, type Corner } from './corners.ts';
import { faceTurn } from './faces.ts';
import type { ShortForm, Standing } from './standing.ts';

/** A face to brace, from the lowest of one piece to the highest of another. */
export interface BracedFace {
  readonly face: Face;
  readonly low: Standing;
  readonly high: Standing;
}

/** What decks, frames, posts and panels are short for: bars between four posts, panels wrapped on them or flat, crossed cables. */
export function shortBlueprint(item: Item, form: ShortForm, braced: readonly BracedFace[]): Blueprint {
  const [tube] = tubeKinds(item.kit);
  const [panel] = panelKinds(item.kit);
  if (tube === undefined || panel === undefined) throw new RangeError('a kit has a tube and a panel');
  return {
    joints: form.standing.flatMap((standing) => jointsOf(form, standing)),
    bars: [...form.standing.flatMap((standing) => tubesOf(form, standing, tube)), ...CORNERS.map((corner) => postAt(form, corner, tube))],
    panels: [...form.standing.filter(({ kind }) => kind === 'deck').map((standing) => deckPanel(standing, panel)), ...form.panels.flatMap((piece) => platesOf(form, piece, panel))],
    cables: braced.flatMap((brace) => cablesOn(form, brace)),
    fittings: [],
    isLenient: true,
    jointAt: (at) => ({ id: `joint ${at.join(' ')}`, place: { at: 'point', point: '' } }),
  };
}

/** A deck is turned over about its long side: its own front comes to stand behind. */
const behind = ({ kind }: Standing): 1 | -1 => (kind === 'deck' ? -1 : 1);

const own = ({ name }: Standing, id: string): string => `${name}/${id}`;

const jointsOf = ({ axes }: ShortForm, standing: Standing): readonly PlannedJoint[] => cornersOf(standing.sides).map(({ name, x, y, sx, sy }) => ({
  at: [sx * axes[0], behind(standing) * sy * axes[1], standing.level], kind: CORNER, id: own(standing, `joint-${name}`), place: { at: 'corner', corner: { x, y } }, group: standing.name,
}));

export const isLong = (side: Face): boolean => side === 'front' || side === 'back';

export const tubeId = (standing: Standing, side: Face): string => own(standing, `${isLong(side) ? 'long' : 'short'}-tube-${side}`);

/** The tubes of a deck or frame, from left to right and, as they are built, from front to back. */
function tubesOf({ axes: [x, y] }: ShortForm, standing: Standing, tube: TubeKind): readonly PlannedBar[] {
  const turn = behind(standing);
  return SIDES.filter((side) => standing.sides.includes(side)).map((side): PlannedBar => {
    const sign = side === 'left' || side === 'front' ? -1 : 1;
    const [from, to]: readonly [Vec3, Vec3] = isLong(side)
      ? [[-x, turn * sign * y, standing.level], [x, turn * sign * y, standing.level]]
      : [[sign * x, -turn * y, standing.level], [sign * x, turn * y, standing.level]];
    return {
      id: tubeId(standing, side), kind: isLong(side) ? 'long-tube' : 'short-tube', place: { at: 'side', side }, group: standing.name, told: standing.told,
      from, to, through: [], tube, pinned: true, side: isLong(side) ? [0, turn, 0] : [-1, 0, 0], pins: () => ({ pin: '', nut: '', place: { at: 'base' } }),
    };
  });
}

/** A post through every joint that stands at its corner. */
function postAt({ axes, standing, posts, names }: ShortForm, { name, x, y, sx, sy }: Corner, tube: TubeKind): PlannedBar {
  const length = sy < 0 ? posts.front : posts.back;
  const at = (height: number): Vec3 => [sx * axes[0], sy * axes[1], height];
  const through = standing.filter((each) => cornersOf(each.sides).some((corner) => corner.sx === sx && behind(each) * corner.sy === sy));
  const corner = { x, y };
  return {
    id: `post-${name}`, kind: 'post', place: { at: 'corner', corner }, group: null, told: { position: length.position, field: `pieces.${posts.name}` },
    from: at(0), to: at(length.evaluate(names).value), through: through.map(({ level }) => at(level)), tube, pinned: true, side: [0, 1, 0],
    pins: (index) => ({ pin: `joint-pin-${name}-${index}`, nut: `wing-nut-${name}-${index}`, place: { at: 'sleeve', corner, index } }),
  };
}

/** The panel of a deck: flaps are called by the side they are on while the deck is built. */
function deckPanel(standing: Standing, panel: PanelKind): PlannedPanel {
  const loop = SIDES.map((side) => tubeId(standing, side));
  return {
    id: own(standing, 'panel'), kind: 'panel', place: { at: 'base' }, group: standing.name, told: standing.told, panel, face: [0, 0, 1], is: 'wrapped', loop, wrap: loop,
    pins: (flap, index) => {
      const side = SIDES.find((each) => each === flap) ?? 'left';
      return { id: own(standing, `panel-pin-${flap}-${index}`), nut: '', place: { at: 'tab', side, index } };
    },
  };
}

export const lowestOf = (standing: readonly Standing[], piece: string): Standing | undefined =>
  standing.filter((each) => each.piece === piece).sort((a, b) => a.level - b.level)[0];

export const highestOf = (standing: readonly Standing[], piece: string): Standing | undefined =>
  standing.filter((each) => each.piece === piece).sort((a, b) => b.level - a.level)[0];

export const plateId = (piece: PanelPiece, face: Face): string => `${piece.name}-${face}`;

/** A flat panel from the lowest tube of one piece to the highest of another, on the inner side of each of its sides. */
function platesOf({ axes, standing }: ShortForm, piece: PanelPiece, panel: PanelKind): readonly PlannedPanel[] {
  const [low, high] = [lowestOf(standing, piece.from), highestOf(standing, piece.to)];
  if (low === undefined || high === undefined) return [];
  return piece.on.map((face): PlannedPanel => {
    const id = plateId(piece, face);
    return {
      id, kind: 'flat-panel', place: { at: 'side', side: face }, group: null, told: low.told, panel, face: faceTurn(face, axes).inwards,
      is: 'flat', on: [tubeId(low, face), tubeId(high, face)], pinned: true, length: null, over: null, lift: 0,
      pins: (bar, index) => {
        const tube = bar === '1' ? 'low' : 'high';
        return { id: `joint-pin-${id}-${index}-${tube}`, nut: `wing-nut-${id}-${index}-${tube}`, place: { at: 'plate', plate: id, tube, index } };
      },
    };
  });
}

/** Two crossed cables between the corners of a face. */
function cablesOn({ axes }: ShortForm, { face, low, high }: BracedFace): readonly PlannedCable[] {
  const { across, outwards, halfSpan, out } = faceTurn(face, axes);
  const corner = (way: number, height: number): Vec3 => [across[0] * way * halfSpan + outwards[0] * out, across[1] * way * halfSpan + outwards[1] * out, height];
  return [1, -1].map((rising, place) => ({
    id: `cable-${face}-${place + 1}`, kind: 'cable', place: { at: 'face', face, index: place + 1 }, group: null, told: low.told,
    from: corner(-rising, low.level), to: corner(rising, high.level), face: outwards,
  }));
}
