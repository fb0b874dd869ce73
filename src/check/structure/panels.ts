import type { Limit } from '../limits.ts';
import { edgePull } from '../formulas/pull.ts';
import { meanLineLoadDeflection } from '../formulas/beam.ts';
import { bendingSag, coreShear, crossingShares, faceStress, give, middleFaceStress, middleGive, punchingShear, shearSag, type Strip } from '../formulas/sandwich.ts';
import { judge } from '../judge.ts';
import type { Finding } from '../types.ts';
import { sagsOf, tubeOf } from './bars.ts';
import type { Bearing } from './bearings.ts';
import { testSource } from '../rules.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';

/** A strip of a panel and its share of the load, N (see `deck`). */
interface Laden { readonly strip: Strip; readonly load: number }

/** A load on one half of a strip bends it 9/8 as much as an even one, and comes three quarters to one end (statics). */
const [HALF_MOMENT, HALF_SHEAR] = [9 / 8, 3 / 2];
const MODEL = 'crossing thin-face sandwich strips (C)';

const weightOf = ({ limits }: StructureCase, { panel }: Bearing): number => panel.mass * limits.gravity.value;

function even(given: StructureCase, bearing: Bearing): readonly Laden[] {
  const strips = bearing.pairs.map(({ strip }) => strip);
  const shares = crossingShares(strips.map(give));
  return strips.map((strip, index) => ({ strip, load: (bearing.load + weightOf(given, bearing)) * (shares[index] ?? 0) }));
}

/** All of one load in the middle, on strips no wider than it spreads over. */
function spot(given: StructureCase, { pairs, rules: { pad }, placed }: Bearing): readonly Laden[] {
  const strips = pairs.map(({ strip }) => ({ ...strip, width: Math.min(strip.width, pad.value + given.limits.spread.value * strip.span) }));
  const shares = crossingShares(strips.map((strip) => middleGive(strip, pad.value)));
  return strips.map((strip, index) => ({ strip, load: placed * (shares[index] ?? 0) }));
}

const sagOf = (given: StructureCase, bearing: Bearing): number => { const [first] = even(given, bearing); return first ? first.load * give(first.strip) : 0; };

/** Sag of the middle of the panel that sags most for its span, mm. */
export const panelSags: StructureCheck = (given) => worst(given.bearings.filter(({ pairs }) => pairs.length > 0).map((bearing) => {
  const { panelRatio } = bearing.rules;
  return judge({
    name: 'panel-sag', figure: sagOf(given, bearing), limit: Math.min(...bearing.pairs.map(({ strip }) => strip.span)) / panelRatio.value, bound: 'most', unit: 'mm',
    source: `${MODEL}; ${panelRatio.source}`, parts: [bearing.panel.id],
  });
}));

/** Stress in the skins, N/mm². */
export const panelSkins: StructureCheck = (given) => worst(given.bearings.filter(({ pairs }) => pairs.length > 0).map((bearing) => strength(given, bearing, 'panel-skin', Math.max(
  ...even(given, bearing).map(({ strip, load }) => HALF_MOMENT * faceStress(load, strip)),
  ...spot(given, bearing).map(({ strip, load }) => middleFaceStress(load, strip, bearing.rules.pad.value) + faceStress(weightOf(given, bearing) / 2, strip)),
), bearing.kind.skinStrength, bearing.rules.skinFactor)));

/** Shear in the core at the bars and round a load in one place, N/mm². */
export const panelCores: StructureCheck = (given) => worst(given.bearings.filter(({ pairs }) => pairs.length > 0).map((bearing) => strength(given, bearing, 'panel-core', Math.max(
  ...even(given, bearing).map(({ strip, load }) => HALF_SHEAR * coreShear(load, strip)),
  ...spot(given, bearing).flatMap(({ strip, load }) => [coreShear(load, strip), punchingShear(bearing.placed, strip, bearing.rules.pad.value)]),
), bearing.kind.coreShearStrength, bearing.rules.factor)));

function strength({ limits }: StructureCase, { kind, rules, panel, share }: Bearing, name: 'panel-skin' | 'panel-core', figure: number, full: number, factor: Limit): Finding {
  return judge({
    name, figure, limit: (full * kind.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `${MODEL}, on one half or in one place; ${rules.pad.source}; ${limits.spread.source}${testSource(rules, share)}; strength of the kit × used-stock factor / ${Math.round(factor.value * 100) / 100}, ${factor.source}`, parts: [panel.id],
  });
}

/** Pressure of a wrapped side's pins on one skin, N/mm² (see `pin-skin`); a caution. */
export const pinSkins: StructureCheck = (given) => worst(given.bearings.filter(({ pattern }) => pattern.form === 'wrapped').flatMap((bearing) => {
  const { panelPin } = given.model.kit;
  const { kind, rules: { factor }, pattern, panel, pairs } = bearing;
  const sag = sagOf(given, bearing);
  return pairs.flatMap(({ strip, bars: [bar], reach }) => {
    const tube = tubeOf(given, bar);
    const pins = Math.min(...sidesOf(bearing, strip).map((side) => pattern.flaps.filter((flap) => flap.side === side).reduce((sum, flap) => sum + flap.pins.length, 0)).filter((count) => count > 0));
    if (!Number.isFinite(pins)) return [];
    const pull = edgePull(sag, strip.span, strip.span / (kind.skinModulus * 2 * strip.skin * strip.width), meanLineLoadDeflection(1 / reach, reach, tube.modulus, tube.second));
    return [judge({
      name: 'pin-skin', figure: (0.5 * pull) / pins / (panelPin.diameter * kind.skin), limit: (kind.skinStrength * kind.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
      source: `half of the panel’s pull on its tube, over the tab’s pins and one skin (C); strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`,
      parts: [panel.id], otherwise: 'caution',
    })];
  });
}));

/** The sides of the panel that a strip runs between: those nearer to its span. */
function sidesOf({ pairs }: Bearing, strip: Strip): readonly string[] {
  const own = pairs.findIndex((pair) => pair.strip === strip);
  return own === 0 && pairs.length > 1 ? ['front', 'back'] : pairs.length > 1 ? ['left', 'right'] : ['front', 'back', 'left', 'right'];
}

/** Sag after years of what stands laden, mm (see `long-term-sag`). */
export const yearsOfSag: StructureCheck = (given) => {
  const { longTermHours, creepSkin, creepCore, longTermRatio, longTermPanelRatio } = given.limits;
  const [skin, core] = [longTermHours.value ** creepSkin.value, longTermHours.value ** creepCore.value];
  const stored = ({ place: { use } }: Bearing): boolean => use === 'shelf' || use === 'box';
  const told = [
    ...sagsOf(given).filter(({ bearing }) => stored(bearing)).map(({ bar, sag, span }) => ({ figure: sag * skin, limit: span / longTermRatio.value, parts: [bar.id] })),
    ...given.bearings.filter(stored).flatMap((bearing) => even(given, bearing).map(({ strip, load }) => ({
      figure: bendingSag(load, strip) * skin + shearSag(load, strip) * core, limit: strip.span / longTermPanelRatio.value, parts: [bearing.panel.id],
    }))),
  ];
  return worst(told.map((each) => judge({
    name: 'long-term-sag', ...each, bound: 'most', unit: 'mm',
    source: `${creepSkin.source}; core ${creepCore.source}; ${longTermHours.source}; ${longTermRatio.source}; ${longTermPanelRatio.source}`,
  })));
};
