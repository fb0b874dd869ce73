import { tubeSection, type PartKind, type Side } from '../../model/index.ts';
import { coreShear, crossingShares, faceStress, give, middleFaceStress, middleGive, punchingShear, type Strip } from '../formulas/sandwich.ts';
import { edgePull } from '../formulas/pull.ts';
import { meanLineLoadDeflection } from '../formulas/beam.ts';
import { partsOf } from '../parts.ts';
import { rulesOf } from '../rules.ts';
import type { Case } from '../types.ts';

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
  /** N sideways on each of the two tubes, from the sagging panel. */
  readonly tubePull: number;
  readonly strips: readonly LoadedStrip[];
  /** Of the panel's middle, mm. */
  readonly sag: number;
}

export function deckOf(given: Case): Deck {
  const { model } = given;
  const [x, y] = model.pattern.axes;
  const strips = evenStrips(given);
  const [first] = strips;
  const sag = first ? first.load * give(first.strip) : 0;
  const tubeSpan = 2 * Math.max(x, y);
  return {
    tubeSpan,
    bearers: x >= y ? 'long-tube' : 'short-tube',
    tubePull: Math.max(...strips.map(({ strip }) => (strip.span <= tubeSpan ? pullOf(given, strip, sag, tubeSpan) : 0))),
    strips, sag,
  };
}

/** A load on one half of a strip bends it 9/8 as much as an even one, and comes three quarters to one end (statics). */
const [HALF_MOMENT, HALF_SHEAR] = [9 / 8, 3 / 2];

/** Greatest stress in a skin of either strip, N/mm²: the load on one half of the deck, or all in one place in its middle. */
export function skinStress(given: Case): number {
  const { pad } = rulesOf(given);
  return Math.max(
    ...deckOf(given).strips.map(({ strip, load }) => HALF_MOMENT * faceStress(load, strip)),
    ...padStrips(given).map(({ strip, load }) => middleFaceStress(load, strip, pad.value) + faceStress(panelWeight(given) / 2, strip)),
  );
}

/** Greatest shear in the core of either strip, or round a load in one place, N/mm². */
export function coreStress(given: Case): number {
  const { pad } = rulesOf(given);
  return Math.max(
    ...deckOf(given).strips.map(({ strip, load }) => HALF_SHEAR * coreShear(load, strip)),
    ...padStrips(given).flatMap(({ strip, load }) => [coreShear(load, strip), punchingShear(given.load, strip, pad.value)]),
  );
}

/** The strips under a load in one place in their middles, no wider than the load spreads over. */
function padStrips(given: Case): readonly LoadedStrip[] {
  const { pad } = rulesOf(given);
  const strips = stripsOf(given).map((strip) => ({ ...strip, width: Math.min(strip.width, pad.value + given.limits.spread.value * strip.span) }));
  const shares = crossingShares(strips.map((strip) => middleGive(strip, pad.value)));
  return strips.map((strip, index) => ({ strip, load: given.load * (shares[index] ?? 0) }));
}

/** Modulus of the tube with the used-stock factor, N/mm². */
export const tubeModulus = ({ model: { kit: { tube } } }: Pick<Case, 'model'>): number => tube.modulus * tube.usedStockFactor;

/** Second moment of the tube, mm⁴. */
export const tubeSecond = ({ model: { kit } }: Pick<Case, 'model'>): number => tubeSection(kit).secondMoment;

/** The strip from the front tube to the back one, then the one from left to right. */
function stripsOf({ model: { kit: { panel }, pattern } }: Case): readonly Strip[] {
  const strip = (end: Side, span: number): Strip => ({
    span,
    width: pattern.flaps.filter(({ side }) => side === end).reduce((sum, { from, to }) => sum + to - from, 0),
    skin: panel.skin,
    faceDistance: panel.thickness - panel.skin,
    skinModulus: panel.skinModulus * panel.usedStockFactor,
    coreShearModulus: panel.coreShearModulus * panel.usedStockFactor,
  });
  return [strip('front', 2 * pattern.axes[1]), strip('left', 2 * pattern.axes[0])];
}

function evenStrips(given: Case): readonly LoadedStrip[] {
  const strips = stripsOf(given);
  const load = given.load + panelWeight(given);
  const shares = crossingShares(strips.map(give));
  return strips.map((strip, index) => ({ strip, load: load * (shares[index] ?? 0) }));
}

function panelWeight({ model, limits }: Case): number {
  return Math.max(0, ...partsOf(model, 'panel').map((panel) => panel.mass)) * limits.gravity.value;
}

/** N with which the sagging panel pulls on each side's tube: front and back, then left and right. */
export function edgePulls(given: Case): readonly [number, number] {
  const { strips, sag } = deckOf(given);
  const [x, y] = given.model.pattern.axes;
  const pull = (index: number, tubeSpan: number): number => strips.slice(index, index + 1).reduce((_, { strip }) => pullOf(given, strip, sag, tubeSpan), 0);
  return [pull(0, 2 * x), pull(1, 2 * y)];
}

/** A fresh panel pulls harder than a worn one, so its modulus is taken without the used-stock factor. */
function pullOf(given: Case, strip: Strip, sag: number, tubeSpan: number): number {
  const panelGive = strip.span / (given.model.kit.panel.skinModulus * 2 * strip.skin * strip.width);
  const tubeGive = meanLineLoadDeflection(1 / tubeSpan, tubeSpan, tubeModulus(given), tubeSecond(given));
  return edgePull(sag, strip.span, panelGive, tubeGive);
}
