import { placed, unit } from '../../model/index.ts';
import { middleLoadMoment } from '../formulas/beam.ts';
import { faceStress } from '../formulas/sandwich.ts';
import { judge } from '../judge.ts';
import { tubeOf } from './bars.ts';
import { barsUnder, panelsOf, reachUnder, rulesAt, wayOf, type FoundPanel } from './bearings.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import { backPush } from './standing.ts';
import { alongLine } from './vectors.ts';

/** Panels that somebody leans on, with the bars that carry them. */
export const backsOf = ({ model, skeleton }: StructureCase): readonly FoundPanel[] =>
  model.places.filter(({ use }) => use === 'backrest').flatMap((place) => panelsOf(skeleton, place));

/** Bending stress of a bar behind a backrest, N/mm²: half the push over the panel's breadth, hinged at its joints, drilled (see `backrest-tube`). */
export const backBars: StructureCheck = (given) => worst(backsOf(given).flatMap(({ part }) => barsUnder(given.skeleton, part.id).map((bar) => {
  const { kind, drilledModulus } = tubeOf(given, bar);
  const { factor } = rulesAt(given.skeleton, given.limits, { use: 'backrest' });
  const breadth = part.shape.form === 'plate' ? part.shape.width : 0;
  return judge({
    name: 'backrest-tube', figure: middleLoadMoment(backPush(given) / 2, reachUnder(bar, part), breadth) / drilledModulus, limit: (kind.bendingStrength * kind.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `P (L / 4 − c / 8) / W of the drilled tube (C); ${given.limits.backrestShare.source}; ${given.limits.seatTest.source}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`, parts: [bar.id],
  });
})));

/** Stress in the skins of a backrest, N/mm²: a strip from bar to bar under the whole push. */
export const backPanels: StructureCheck = (given) => worst(backsOf(given).flatMap(({ part }) => {
  const [low, high] = barsUnder(given.skeleton, part.id);
  if (low === undefined || high === undefined || part.shape.form !== 'plate') return [];
  const { panel } = given.model.kit;
  const { factor } = rulesAt(given.skeleton, given.limits, { use: 'backrest' });
  const span = Math.abs(alongLine(placed(part.pose, [0, 0, 0]), unit(wayOf(part, [0, 1, 0])), high.from) - alongLine(placed(part.pose, [0, 0, 0]), unit(wayOf(part, [0, 1, 0])), low.from));
  const strip = { span, width: part.shape.width, skin: panel.skin, faceDistance: panel.thickness - panel.skin, skinModulus: panel.skinModulus * panel.usedStockFactor, coreShearModulus: panel.coreShearModulus * panel.usedStockFactor };
  return [judge({
    name: 'backrest-panel', figure: faceStress(backPush(given), strip), limit: (panel.skinStrength * panel.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `thin-face sandwich strip (C); ${given.limits.backrestShare.source}; ${given.limits.seatTest.source}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`, parts: [part.id],
  })];
}));
