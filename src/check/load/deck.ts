import type { PartKind, Side } from '../../model/index.ts';
import { coreShear, crossingShares, faceStress, give, type Strip } from '../formulas/sandwich.ts';
import { secondMoment } from '../formulas/tube-section.ts';
import { edgePull } from '../formulas/pull.ts';
import { meanLineLoadDeflection } from '../formulas/beam.ts';
import { partsOf } from '../parts.ts';
import type { Case } from '../types.ts';
import { deckWeight } from '../weights.ts';

/** One of the two strips of panel that cross in the middle of a deck, and what it carries. */
export interface LoadedStrip {
  readonly strip: Strip;
  /** N spread over it. */
  readonly load: number;
}

/**
 * How a deck carries, on the safe side: the panel is two strips that cross in its middle, each as wide as the flaps
 * at its ends and hinged there; the two long tubes take all of it from post to post, hinged at their ends. The
 * panel's twisting, the other two tubes and the grip of sockets and flaps are left out.
 */
export interface Deck {
  readonly tubeSpan: number;
  readonly bearers: PartKind;
  /** N on each of the two tubes. */
  readonly tubeLoad: number;
  /** N sideways on each of the two tubes, from the sagging panel. */
  readonly tubePull: number;
  readonly strips: readonly LoadedStrip[];
  /** Of the panel's middle, mm. */
  readonly sag: number;
}

export function deckOf(given: Case): Deck {
  const { model } = given;
  const [x, y] = model.pattern.axes;
  const strips = stripsOf(given);
  const [first] = strips;
  const sag = first ? first.load * give(first.strip) : 0;
  const tubeSpan = 2 * Math.max(x, y);
  return {
    tubeSpan,
    bearers: x >= y ? 'long-tube' : 'short-tube',
    tubeLoad: (given.load + deckWeight(given)) / 2,
    tubePull: Math.max(...strips.map(({ strip }) => (strip.span <= tubeSpan ? pullOf(given, strip, sag, tubeSpan) : 0))),
    strips, sag,
  };
}

/** Greatest stress in a skin of either strip, N/mm². */
export const skinStress = ({ strips }: Deck): number => Math.max(...strips.map(({ strip, load }) => faceStress(load, strip)));

/** Greatest shear in the core of either strip, N/mm². */
export const coreStress = ({ strips }: Deck): number => Math.max(...strips.map(({ strip, load }) => coreShear(load, strip)));

/** Modulus of the tube with the used-stock factor, N/mm². */
export const tubeModulus = ({ model: { kit: { tube } } }: Pick<Case, 'model'>): number => tube.modulus * tube.usedStockFactor;

/** Second moment of the tube, mm⁴. */
export const tubeSecond = ({ model: { kit: { tube } } }: Pick<Case, 'model'>): number =>
  secondMoment(tube.outsideDiameter, tube.outsideDiameter - 2 * tube.wall);

function stripsOf(given: Case): readonly LoadedStrip[] {
  const { kit: { panel }, pattern } = given.model;
  const strip = (end: Side, span: number): Strip => ({
    span,
    width: pattern.flaps.filter(({ side }) => side === end).reduce((sum, { from, to }) => sum + to - from, 0),
    skin: panel.skin,
    faceDistance: panel.thickness - panel.skin,
    skinModulus: panel.skinModulus * panel.usedStockFactor,
    coreShearModulus: panel.coreShearModulus * panel.usedStockFactor,
  });
  const strips = [strip('front', 2 * pattern.axes[1]), strip('left', 2 * pattern.axes[0])];
  const load = given.load + panelWeight(given);
  const shares = crossingShares(strips);
  return strips.map((each, index) => ({ strip: each, load: load * (shares[index] ?? 0) }));
}

function panelWeight({ model, limits }: Case): number {
  return Math.max(0, ...partsOf(model, 'panel').map((panel) => panel.mass)) * limits.gravity.value;
}

/** A fresh panel pulls harder than a worn one, so its modulus is taken without the used-stock factor. */
function pullOf(given: Case, strip: Strip, sag: number, tubeSpan: number): number {
  const panelGive = strip.span / (given.model.kit.panel.skinModulus * 2 * strip.skin * strip.width);
  const tubeGive = meanLineLoadDeflection(1 / tubeSpan, tubeSpan, tubeModulus(given), tubeSecond(given));
  return edgePull(sag, strip.span, panelGive, tubeGive);
}
