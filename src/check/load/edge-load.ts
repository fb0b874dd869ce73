import { tubeSection } from '../../model/index.ts';
import { middleLoadDeflection, middleLoadMoment } from '../formulas/beam.ts';
import { judge } from '../judge.ts';
import { rulesOf } from '../rules.ts';
import type { Case, Check } from '../types.ts';
import { tubeModulus, tubeSecond } from './deck.ts';
import { openEdges, overhangOf, type OpenEdge } from './edges.ts';
import { nearShare } from './standings.ts';

/** A table's and a bed's edges are leaned on and sat on; a seat is judged at its own load, and a shelf's edge is nobody's seat. */
const edgesOf = (given: Case): readonly OpenEdge[] => (given.model.use === 'table' || given.model.use === 'bed' ? openEdges(given) : []);

/** Sag of an open edge's tube under a child who kneels on it, mm: P (8 L³ − 4 L c² + c³) / 384 E I. */
export const edgeSag: Check = (given) => {
  const { leanLoad, leanStretch, edgeInset } = given.limits;
  const { tubeRatio } = rulesOf(given);
  const inside = edgeInset.value - overhangOf(given);
  const judged = edgesOf(given).map(({ span, across, parts }) => judge({
    name: 'edge-sag', limit: span / tubeRatio.value, bound: 'most', unit: 'mm', parts,
    figure: middleLoadDeflection(leanLoad.value * nearShare(inside, across), span, leanStretch.value, tubeModulus(given), tubeSecond(given)),
    source: `P (8 L³ − 4 L c² + c³) / 384 E I (C); ${leanLoad.source}; ${tubeRatio.source}`,
  }));
  return judged.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
};

/** Stress in an open edge's tube under an adult who sits on it, N/mm²: P (L / 4 − c / 8) / W. It may sag; it must not break. */
export const adultEdge: Check = (given) => {
  const { kit: { tube } } = given.model;
  const { adultLoad, adultStretch, padInset } = given.limits;
  const { factor } = rulesOf(given);
  const inside = padInset.value - overhangOf(given);
  const modulus = tubeSection(given.model.kit).sectionModulus;
  const judged = edgesOf(given).map(({ span, across, parts }) => judge({
    name: 'adult-edge', limit: (tube.bendingStrength * tube.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²', parts,
    figure: middleLoadMoment(adultLoad.value * nearShare(inside, across), span, adultStretch.value) / modulus,
    source: `P (L / 4 − c / 8) / W (C); ${adultLoad.source}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
  }));
  return judged.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
};
