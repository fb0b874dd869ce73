import type { Model } from '../../model/index.ts';
import type { Stock } from '../../read/index.ts';
import type { Edges } from '../sheets/index.ts';
import type { Solver } from '../solver.ts';
import { countedParts, kitsNeeded } from './counted.ts';
import { panelPieces, tubePieces } from './needs.ts';
import { planPanelPieces } from './plan-panels.ts';
import { planTubePieces } from './plan-tubes.ts';
import type { CutOrder, OrderLine } from './types.ts';

/**
 * Plans the cutting of a mixed order from a counted stock, and from whole kits for what it lacks; without a stock
 * from whole kits alone. Panels are cut from edge to edge unless any `edges` will do. `known` are the items that off-cuts may serve. Throws a RangeError when the lines are of
 * different kits or a piece is larger than any stock.
 */
export function planOrder(lines: readonly OrderLine[], stock: Stock | null, known: readonly Model[], solver: Solver, edges: Edges = 'straight'): CutOrder {
  const kit = lines[0]?.model.kit;
  if (kit === undefined) throw new RangeError('an order of nothing');
  const other = lines.find(({ model }) => model.kit.name !== (stock?.kit ?? kit.name));
  if (other !== undefined) throw new RangeError(`${other.model.item} is built from the kit ${other.model.kit.name}, not ${stock?.kit ?? kit.name}: plan each kit's items apart`);
  const tubes = tubePieces(lines);
  const panels = panelPieces(lines, tubes.length);
  const sawn = planTubePieces(tubes, kit, stock, known, solver);
  const cut = planPanelPieces(panels, kit, stock, known, solver, edges);
  const counted = countedParts(lines, stock);
  return {
    kit, lines, stock: stock?.name ?? null,
    tubePieces: tubes, tubes: sawn.sheets, tubeThrift: sawn.thrift,
    panelPieces: panels, panels: cut.sheets, panelThrift: cut.thrift,
    counted, kits: kitsNeeded(kit, cut.thrift.fromKits, sawn.thrift.fromKits, counted),
  };
}
