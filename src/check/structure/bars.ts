import { tubeKinds, type TubeKind } from '../../read/index.ts';
import { middleLoadDeflection, middleLoadMoment } from '../formulas/beam.ts';
import { judge } from '../judge.ts';
import type { Finding } from '../types.ts';
import { reachUnder, type Bearing, type Pair } from './bearings.ts';
import { testSource } from '../rules.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';
import type { BarLine } from './skeleton.ts';
import { solidOf } from './structure-frame.ts';

/** A load on one bar: how much of it, on what stretch in the middle, over what span, mm; told as in `standings`. */
interface BarLoad {
  readonly bar: BarLine;
  readonly stands: 'even' | 'one-sided' | 'in the middle' | 'at the edge';
  readonly force: number;
  readonly stretch: number;
  readonly span: number;
  readonly sags: boolean;
}

/** What a tube is made of, and its section. */
export interface Tube {
  readonly kind: TubeKind;
  readonly modulus: number;
  readonly second: number;
  /** Of the whole tube and of one with a pin's hole, mm³. */
  readonly sectionModulus: number;
  readonly drilledModulus: number;
}

export function tubeOf({ model: { kit } }: Pick<StructureCase, 'model'>, { outside, inside, part }: BarLine): Tube {
  const kinds = tubeKinds(kit);
  const kind = kinds.find((tube) => Math.abs(tube.outside - outside) < 0.5) ?? kinds[0];
  if (kind === undefined) throw new Error('a kit has a tube');
  const { second } = solidOf(outside, inside, part.shape.form === 'tube' && part.shape.profile === 'square');
  const drilled = second - 2 * kit.jointPin.diameter * kind.wall * ((outside - kind.wall) / 2) ** 2;
  return { kind, modulus: kind.modulus * kind.usedStockFactor, second, sectionModulus: second / (outside / 2), drilledModulus: drilled / (outside / 2) };
}

/** The two longer bars of a panel take all of it; at a shorter edge the short bar takes what stands there. */
function loadsOf(given: StructureCase, bearing: Bearing): readonly BarLoad[] {
  const { pairs, lone, load, rules, panel, overhang } = bearing;
  const longest = Math.max(...pairs.map(({ reach }) => reach));
  const bearers = pairs.filter(({ reach }) => reach > longest - 1).slice(0, 1);
  return [
    ...bearers.flatMap((pair) => pair.bars.flatMap((bar) => evenly(given, bearing, bar))),
    ...pairs.flatMap((pair) => pair.bars.map((bar): BarLoad => ({
      bar, stands: 'at the edge', stretch: rules.pad.value, span: reachUnder(bar, panel), sags: false, force: edgeForce(given, bearing, pair, bar, overhang),
    }))),
    ...lone.map((bar): BarLoad => ({ bar, stands: 'one-sided', force: given.limits.oneSided.value * load, stretch: Infinity, span: reachUnder(bar, panel), sags: true })),
  ];
}

function evenly(given: StructureCase, { placed: spot, rules, panel }: Bearing, bar: BarLine): readonly BarLoad[] {
  const span = reachUnder(bar, panel);
  const load = panelsOn(given, bar).reduce((sum, each) => sum + each.load, 0);
  return [
    { bar, stands: 'even', force: 0.5 * load, stretch: span, span, sags: true },
    { bar, stands: 'one-sided', force: given.limits.oneSided.value * load, stretch: span, span, sags: true },
    { bar, stands: 'in the middle', force: 0.5 * spot, stretch: rules.pad.value, span, sags: false },
  ];
}

/** The panels in use that bear on a bar. */
const panelsOn = ({ bearings }: StructureCase, bar: BarLine): readonly Bearing[] =>
  bearings.filter(({ pairs, lone }) => [...pairs.flatMap(({ bars }) => bars), ...lone].some(({ id }) => id === bar.id));

/** One load inside the edge; on a bar that two panels share, two people sit no nearer to each other than their shoulders let them. */
function edgeForce(given: StructureCase, { placed: spot, rules, place }: Bearing, { strip }: Pair, bar: BarLine, overhang: number): number {
  const share = (inside: number): number => Math.min(1, 1 - inside / strip.span);
  const all = panelsOn(given, bar);
  const alone = spot * share(rules.padInset - (all.length > 1 ? 0 : overhang));
  const apart = place.use === 'seat' ? given.limits.shoulders.value / 2 : rules.padInset;
  return all.length > 1 ? Math.max(alone, all.reduce((sum, each) => sum + each.placed, 0) * share(apart)) : alone;
}

/** Bending stress of the bar that bends most under what it bears, N/mm²: P (L / 4 − c / 8) / W, hinged at its joints. */
export const barBending: StructureCheck = (given) => worst(given.bearings.flatMap((bearing) => loadsOf(given, bearing).map(({ bar, force, span, stretch, stands }) => {
  const { kind, sectionModulus } = tubeOf(given, bar);
  const { factor, pad } = bearing.rules;
  return judge({
    name: 'tube-bending', figure: middleLoadMoment(force, span, Math.min(stretch, span)) / sectionModulus, limit: (kind.bendingStrength * kind.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
    source: `P (L / 4 − c / 8) / W (C), load ${stands}; ${pad.source}${testSource(bearing.rules, bearing.share)}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`, parts: [bar.id],
  });
})));

interface Sag { readonly bearing: Bearing; readonly bar: BarLine; readonly span: number; readonly sag: number; readonly stands: BarLoad['stands'] }

export const sagsOf = (given: StructureCase): readonly Sag[] => given.bearings.flatMap((bearing) => loadsOf(given, bearing).filter(({ sags }) => sags).map(({ bar, force, span, stretch, stands }) => {
  const { modulus, second } = tubeOf(given, bar);
  return { bearing, bar, span, stands, sag: middleLoadDeflection(force, span, Math.min(stretch, span), modulus, second) };
}));

/** Sag of the bar that sags most for its span, mm: 5 w L⁴ / 384 E I, hinged at its joints. */
export const barDeflection: StructureCheck = (given) => worst(sagsOf(given).map(({ bearing, bar, span, sag, stands }) => {
  const { tubeRatio } = bearing.rules;
  return judge({
    name: 'tube-deflection', figure: sag, limit: span / tubeRatio.value, bound: 'most', unit: 'mm',
    source: `5 w L⁴ / 384 E I (C), load ${stands}; ${given.limits.oneSided.source}; ${tubeRatio.source}`, parts: [bar.id],
  });
}));

/** Bars of the highest table's or bed's edges, which nothing guards. */
function openEdges(given: StructureCase): readonly { readonly bearing: Bearing; readonly pair: Pair; readonly bar: BarLine }[] {
  const used = given.bearings.filter(({ place: { use } }) => use === 'table' || use === 'bed');
  return used.flatMap((bearing) => bearing.pairs.flatMap((pair) => pair.bars.filter((bar) => panelsOn(given, bar).length < 2).map((bar) => ({ bearing, pair, bar }))));
}

/** A child kneels on an edge (see `edge-sag`). */
export const edgeSags: StructureCheck = (given) => {
  const { leanLoad, leanStretch, edgeInset } = given.limits;
  return worst(openEdges(given).map(({ bearing, pair, bar }): Finding => {
    const { modulus, second } = tubeOf(given, bar);
    const [span, share] = [reachUnder(bar, bearing.panel), Math.min(1, 1 - (edgeInset.value - bearing.overhang) / pair.strip.span)];
    const { tubeRatio } = bearing.rules;
    return judge({
      name: 'edge-sag', figure: middleLoadDeflection(leanLoad.value * share, span, leanStretch.value, modulus, second), limit: span / tubeRatio.value, bound: 'most', unit: 'mm',
      source: `P (8 L³ − 4 L c² + c³) / 384 E I (C); ${leanLoad.source}; ${tubeRatio.source}`, parts: [bar.id],
    });
  }));
};

/** An adult sits on an edge (see `adult-edge`). */
export const adultEdges: StructureCheck = (given) => {
  const { adultLoad, adultStretch, padInset } = given.limits;
  return worst(openEdges(given).map(({ bearing, pair, bar }): Finding => {
    const { kind, sectionModulus } = tubeOf(given, bar);
    const share = Math.min(1, 1 - (padInset.value - bearing.overhang) / pair.strip.span);
    const { factor } = bearing.rules;
    return judge({
      name: 'adult-edge', figure: middleLoadMoment(adultLoad.value * share, reachUnder(bar, bearing.panel), adultStretch.value) / sectionModulus,
      limit: (kind.bendingStrength * kind.usedStockFactor) / factor.value, bound: 'most', unit: 'N/mm²',
      source: `P (L / 4 − c / 8) / W (C); ${adultLoad.source}; strength of the kit × used-stock factor / ${factor.value}, ${factor.source}`, parts: [bar.id],
    });
  }));
};
