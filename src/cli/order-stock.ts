import type { KitStock } from '../booklet/index.ts';
import { planTubes } from '../cut/index.ts';
import type { Model, PartKind } from '../model/index.ts';

/** A model and how many of it are built. */
export interface OrderedModel {
  readonly model: Model;
  readonly count: number;
}

/** Parts that come in one piece from a kit, in the order in which they are listed. */
const wholeParts: readonly PartKind[] = ['joint', 'cable', 'panel-pin', 'joint-pin', 'wing-nut'];

/**
 * The one place that asks what stock an order takes: each piece's tubes cut from tubes of its own, panels as many as
 * hold the blanks side by side. A plan over the whole order can only need fewer.
 */
export function stockFor(order: readonly OrderedModel[]): readonly KitStock[] {
  const kits = [...new Set(order.map(({ model }) => model.kit.name))];
  return kits.map((kit) => stockOfKit(kit, order.filter(({ model }) => model.kit.name === kit)));
}

function stockOfKit(kit: string, order: readonly OrderedModel[]): KitStock {
  const [first] = order;
  if (first === undefined) return { kit, rows: [] };
  const { tube, panel } = first.model.kit;
  const total = (of: (model: Model) => number): number => order.reduce((sum, { model, count }) => sum + count * of(model), 0);
  const panels = order.reduce((sum, line) => sum + panelsFor(line), 0);
  const parts = wholeParts.map((kind) => ({ kind, size: [], count: total(({ parts: all }) => all.filter((part) => part.kind === kind).length) }));
  return {
    kit,
    rows: [
      { kind: 'tube', size: [tube.length], count: total((model) => planTubes(model).tubesUsed) },
      { kind: 'panel-stock', size: [panel.length, panel.width], count: panels },
      ...parts.filter(({ count }) => count > 0),
    ],
  };
}

/** Stock panels for the blanks of all decks and for each kind of flat panel, each from panels of its own. */
function panelsFor({ model, count }: OrderedModel): number {
  const decks = model.parts.filter((part) => part.kind === 'panel').length;
  const plates = model.plates.map(({ width, height, partIds }) => wholePanels(model, [width, height], count * partIds.length));
  return wholePanels(model, model.pattern.blank, count * decks) + plates.reduce((sum, each) => sum + each, 0);
}

/** As many pieces as stand in rows on a stock panel, all the same way round. Checks have shown that at least one does. */
function wholePanels({ kit: { panel } }: Model, [a, b]: readonly [number, number], pieces: number): number {
  if (pieces === 0) return 0;
  const inRows = (length: number, width: number): number => Math.floor(panel.length / length + 1e-9) * Math.floor(panel.width / width + 1e-9);
  return Math.ceil(pieces / Math.max(1, inRows(a, b), inRows(b, a)));
}
