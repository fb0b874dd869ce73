import { placed, type CutPattern, type PatternFlap, type Vec2 } from '../../model/index.ts';
import { panelKinds, type PanelKind } from '../../read/index.ts';
import { gapBetween } from '../fit/folded-tab.ts';
import { bestFit } from '../fit/stock-panel.ts';
import { judge } from '../judge.ts';
import { distance, partsOf } from '../parts.ts';
import type { Finding } from '../types.ts';
import { worst, type StructureCase, type StructureCheck } from './case.ts';

const kindOf = ({ model: { kit } }: StructureCase, { panel }: CutPattern): PanelKind => {
  const kinds = panelKinds(kit);
  const [usual] = kinds;
  const kind = kinds.find(({ name }) => name === panel) ?? usual;
  if (kind === undefined) throw new Error('a kit has a panel');
  return kind;
};

/** Every pattern against the panel as delivered, laid whichever way leaves more over; the tightest of those that are folded, and of those that are not. */
export const stockPatterns: StructureCheck = (given) => (['stock-panel', 'stock-plate'] as const).flatMap((name) => worst(
  given.model.patterns.filter(({ form }) => (form === 'flat') === (name === 'stock-plate')).map((pattern) => {
    const kind = kindOf(given, pattern);
    const best = bestFit([pattern.max[0] - pattern.min[0], pattern.max[1] - pattern.min[1]], [kind.length, kind.width]);
    return judge({
      name, figure: best.needed, limit: best.there, bound: 'most', unit: 'mm',
      source: `panel of ${given.model.kit.name} as delivered, either way round`, parts: pattern.partIds,
    });
  }),
));

/** The sharpest crease of any flap or wall. */
export const creases: StructureCheck = (given) => worst(given.model.patterns.flatMap((pattern) => {
  const turns = pattern.flaps.flatMap(({ bends, lugs }) => [...bends, ...lugs.flatMap((lug) => lug.bends)]).filter(({ is }) => is === 'crease').map(({ turn }) => Math.abs(turn));
  return turns.length === 0 ? [] : [judge({
    name: 'crease-angle', figure: Math.max(...turns), limit: kindOf(given, pattern).tightestCrease, bound: 'most', unit: 'rad',
    source: `tightest crease of the panel of ${given.model.kit.name}`, parts: pattern.partIds,
  })];
}));

/** Distance of a flap's half-cut from its root, mm; null where it has none. */
const halfCutOf = ({ bends }: PatternFlap): number | null => bends.find(({ is }) => is === 'half-cut')?.at ?? null;

interface Tab { readonly pattern: CutPattern; readonly flap: PatternFlap; readonly cut: number }

const tabsOf = ({ model }: StructureCase): readonly Tab[] => model.patterns.flatMap((pattern) => pattern.flaps.flatMap((flap) => {
  const cut = halfCutOf(flap);
  return cut === null || flap.pins.length === 0 ? [] : [{ pattern, flap, cut }];
}));

/** Pin line and half a pin head inside the half-cut (see `tab-pins`). */
export const tabLengths: StructureCheck = (given) => worst(tabsOf(given).map(({ pattern, flap, cut }) => judge({
  name: 'tab-pins', figure: flap.edge - cut, limit: flap.edge - flap.pinLine + given.model.kit.panelPin.headDiameter / 2, bound: 'least', unit: 'mm',
  source: 'geometry: pin line and half a pin head inside the half-cut (C)', parts: pattern.partIds,
})));

/** No head hangs over the tab's edge, its end or the snip of its corner. */
export const tabEdges: StructureCheck = (given) => worst(tabsOf(given).map(({ pattern, flap }) => judge({
  name: 'tab-edge', figure: Math.min(...pinToEdges(flap)), limit: given.model.kit.panelPin.headDiameter / 2, bound: 'least', unit: 'mm',
  source: 'geometry: half a pin head inside the tab (C)', parts: pattern.partIds,
})));

function pinToEdges({ edge, pinLine, pins, strips, corner }: PatternFlap): readonly number[] {
  const { start = 0, end = 0 } = strips.at(-1) ?? {};
  return pins.map((pin) => {
    const [fromEdge, fromEnd] = [edge - pinLine, Math.min(pin - start, end - pin)];
    return Math.min(fromEdge, fromEnd, (fromEdge + fromEnd - corner) / Math.SQRT2);
  });
}

/** Outline of a tab folded flat on the inner face, in the panel's own coordinates (see `folded-tab`). */
function foldedOutline({ model: { kit } }: StructureCase, { flap, pattern, cut }: Tab): readonly Vec2[] {
  const back = Math.abs(flap.bends.find(({ is }) => is === 'half-cut')?.turn ?? Math.PI / 4);
  const radius = kit.tube.outsideDiameter / 2 + kit.practice.wrapClearance;
  const hinge = flap.root - radius / Math.tan(back / 2) - pattern.thickness * Math.tan(back / 2);
  const edge = hinge - (flap.edge - cut);
  const { start = 0, end = 0 } = flap.strips.at(-1) ?? {};
  const outline: readonly Vec2[] = [[start, hinge], [end, hinge], [end, edge + flap.corner], [end - flap.corner, edge], [start + flap.corner, edge], [start, edge + flap.corner]];
  return outline.map(([along, out]): Vec2 => {
    switch (flap.side) {
      case 'left': return [-out, along];
      case 'right': return [out, along];
      case 'front': return [along, -out];
      case 'back': return [along, out];
    }
  });
}

const OPPOSITE = { left: 'right', right: 'left', front: 'back', back: 'front' } as const;

/** Folded tabs of neighbouring and of opposite sides stay apart. A tray's lie outside on its walls. */
export const tabGaps: StructureCheck = (given) => (['tabs-apart', 'opposite-tabs'] as const).flatMap((name) => worst(given.model.patterns.filter(({ form }) => form === 'wrapped').flatMap((pattern) => {
  const tabs = tabsOf(given).filter((tab) => tab.pattern === pattern);
  return tabs.flatMap((a, index) => tabs.slice(index + 1).filter((b) => (OPPOSITE[a.flap.side] === b.flap.side) === (name === 'opposite-tabs')).map((b) => judge({
    name, figure: gapBetween(foldedOutline(given, a), foldedOutline(given, b)), limit: given.limits.tabGap.value, bound: 'least', unit: 'mm',
    source: `geometry of the folded tabs (C); ${given.limits.tabGap.source}`, parts: pattern.partIds,
  })));
})));

/** Heads of the pins of one panel, and wing nuts on one flat panel, stay out of each other's way. */
export const pinGaps: StructureCheck = (given) => {
  const { model } = given;
  const { panelPin, jointPin } = model.kit;
  const panelOf = (pin: string): string | undefined => model.connections.flatMap((held) => (held.is === 'panel-pin' && held.pin === pin ? [held.panel] : []))[0];
  const pins = partsOf(model, 'panel-pin').map((pin) => ({ id: pin.id, panel: panelOf(pin.id), at: placed(pin.pose, [0, 0, 0]) }));
  const heads = pins.flatMap((a, index) => pins.slice(index + 1).filter((b) => a.panel !== undefined && a.panel === b.panel).map((b) => ({ apart: distance(a.at, b.at), ids: [a.id, b.id] })));
  const closest = heads.toSorted((a, b) => a.apart - b.apart)[0];
  const wings = model.plates.filter(({ partIds }) => model.connections.some((held) => held.is === 'pin' && partIds.includes(held.holds[0] ?? '')));
  return worst([
    ...(closest ? [judge({ name: 'pins-apart', figure: closest.apart, limit: panelPin.headDiameter, bound: 'least', unit: 'mm', source: 'geometry: diameter of the pin head (C)', parts: closest.ids })] : []),
    ...wings.flatMap(({ holes, partIds }): readonly Finding[] => {
      const apart = holes.flatMap((one, index) => holes.slice(index + 1).map((other) => Math.hypot(one.at[0] - other.at[0], one.at[1] - other.at[1])));
      return apart.length === 0 ? [] : [judge({ name: 'pins-apart', figure: Math.min(...apart), limit: jointPin.wingSpan, bound: 'least', unit: 'mm', source: 'geometry: span of the wing nut, which must turn (C)', parts: partIds })];
    }),
  ]);
};

/** The pin through a tab ends in the panel under it, well under the face that is used (see `pin-length`). */
export const pinLengths: StructureCheck = (given) => worst(given.model.patterns.filter(({ flaps }) => flaps.some(({ pins }) => pins.length > 0)).map((pattern) => judge({
  name: 'pin-length', figure: given.model.kit.panelPin.length, limit: 2 * pattern.thickness - Math.max(given.limits.pinRest.value, pattern.skin), bound: 'most', unit: 'mm',
  source: `geometry: two thicknesses less what stays over the point (C); ${given.limits.pinRest.source}`, parts: pattern.partIds,
})));
