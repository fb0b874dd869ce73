import { isMadeInside, type Bend, type PatternFlap, type PatternHole, type Pattern, type Side, type Vec2 } from '../../../model/index.ts';

/** A face of a panel: the inner one, which is marked first and bears the sign, or the other. */
export type PanelFace = 'marked' | 'other';

/** The faces in the order of work. */
export const panelFaces: readonly PanelFace[] = ['marked', 'other'];

/**
 * A pattern as it lies on the bench with one face up, turned over left to right for the other: with the bends that are made
 * from that face and the holes that are punched from there, which come from the drawn face then; holes right through are on the marked one.
 */
export function seenFrom(pattern: Pattern, face: PanelFace): Pattern {
  const lying = face === 'marked' ? pattern : mirrored(pattern);
  return {
    ...lying,
    flaps: lying.flaps.map((flap) => ({ ...flap, ...keptBends(flap), lugs: flap.lugs.map((lug) => ({ ...lug, bends: lug.bends.filter(isMadeInside) })) })),
    holes: lying.holes.filter((hole) => (hole.depth === null ? face === 'marked' : hole.face === 'drawn')),
  };
}

function keptBends({ bends, order, wall }: PatternFlap): Pick<PatternFlap, 'bends' | 'order' | 'wall'> {
  const kept = bends.flatMap((bend, place) => (isMadeInside(bend) ? [place] : []));
  return {
    bends: bends.filter(isMadeInside),
    order: order.filter((place) => kept.includes(place)).map((place) => kept.indexOf(place)),
    wall: kept.filter((place) => place < wall).length,
  };
}

const OPPOSITE: Readonly<Record<Side, Side>> = { left: 'right', right: 'left', front: 'front', back: 'back' };

const flipped = ([x, y]: Vec2): Vec2 => [-x, y];
const turnedBack = (bends: readonly Bend[]): readonly Bend[] => bends.map((bend) => ({ ...bend, turn: -bend.turn }));

function mirrored(pattern: Pattern): Pattern {
  const { min, max } = pattern;
  return {
    ...pattern,
    min: [-max[0], min[1]], max: [-min[0], max[1]],
    outline: pattern.outline.map(flipped).reverse(), base: pattern.base.map(flipped).reverse(),
    flaps: pattern.flaps.map(mirroredFlap),
    holes: pattern.holes.map((hole): PatternHole => ({ ...hole, at: flipped(hole.at), face: hole.face === 'drawn' ? 'other' : 'drawn' })),
  };
}

/** What is told along a flap of the front or back runs the other way. */
function mirroredFlap(flap: PatternFlap): PatternFlap {
  const way = flap.side === 'front' || flap.side === 'back' ? -1 : 1;
  return {
    ...flap, side: OPPOSITE[flap.side], bends: turnedBack(flap.bends), pins: flap.pins.map((pin) => way * pin),
    strips: flap.strips.map((strip) => (way > 0 ? strip : { ...strip, start: -strip.end, end: -strip.start })),
    lugs: flap.lugs.map((lug) => ({ ...lug, end: way > 0 ? lug.end : lug.end === 1 ? -1 : 1, bends: turnedBack(lug.bends) })),
  };
}
