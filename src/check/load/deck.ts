import type { PartKind } from '../../model/index.ts';
import { bendingSag, shearSag, type Strip } from '../formulas/sandwich.ts';
import { secondMoment } from '../formulas/tube-section.ts';
import { edgePull } from '../formulas/pull.ts';
import { meanLineLoadDeflection } from '../formulas/beam.ts';
import { partsOf } from '../parts.ts';
import type { Case } from '../types.ts';
import { deckWeight } from '../weights.ts';

/**
 * How a deck carries, on the safe side: the panel is a strip that spans the short way, and its two tubes
 * the long way from post to post, hinged at their ends. The other two tubes and the grip of the sockets
 * and flaps are left out.
 */
export interface Deck {
  readonly tubeSpan: number;
  readonly bearers: PartKind;
  /** N on each of the two tubes. */
  readonly tubeLoad: number;
  /** N sideways on each of the two tubes, from the sagging panel. */
  readonly tubePull: number;
  /** N on the panel. */
  readonly panelLoad: number;
  readonly strip: Strip;
}

export function deckOf(given: Case): Deck {
  const { model } = given;
  const [x, y] = model.pattern.axes;
  const strip = stripOf(given);
  const panelLoad = given.load + panelWeight(given);
  const tubeSpan = 2 * Math.max(x, y);
  return {
    tubeSpan,
    bearers: x >= y ? 'long-tube' : 'short-tube',
    tubeLoad: (given.load + deckWeight(given)) / 2,
    tubePull: pullOf(given, strip, panelSag(panelLoad, strip), tubeSpan),
    panelLoad,
    strip,
  };
}

/** Modulus of the tube with the used-stock factor, N/mm². */
export const tubeModulus = ({ model: { kit: { tube } } }: Case): number => tube.modulus * tube.usedStockFactor;

/** Second moment of the tube, mm⁴. */
export const tubeSecond = ({ model: { kit: { tube } } }: Case): number =>
  secondMoment(tube.outsideDiameter, tube.outsideDiameter - 2 * tube.wall);

export const panelSag = (load: number, strip: Strip): number => bendingSag(load, strip) + shearSag(load, strip);

function stripOf({ model: { kit: { panel }, pattern } }: Case): Strip {
  return {
    span: 2 * Math.min(...pattern.axes),
    width: 2 * Math.max(...pattern.axes),
    skin: panel.skin,
    faceDistance: panel.thickness - panel.skin,
    skinModulus: panel.skinModulus * panel.usedStockFactor,
    coreShearModulus: panel.coreShearModulus * panel.usedStockFactor,
  };
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
