import type { KitStock } from '../booklet/index.ts';
import type { CutOrder, OrderLine, PanelSheet, Thrift, TubeSheet } from '../cut/index.ts';
import type { CutPlanner } from './supply.ts';

type Row = KitStock['rows'][number];

/** The one place that asks what stock an order takes: what the cut plan of each kit's pieces together takes. */
export function stockFor(order: readonly OrderLine[], plan: CutPlanner): readonly KitStock[] {
  const kits = [...new Set(order.map(({ model }) => model.kit.name))];
  return kits.map((kit) => stockOf(plan(order.filter(({ model }) => model.kit.name === kit))));
}

function stockOf(order: CutOrder): KitStock {
  const { kit, tubes, tubeThrift, panels, panelThrift, counted } = order;
  const fromStock = order.stock !== null;
  const parts = counted.flatMap(({ kind, needed, short }): readonly Row[] => [
    { kind, size: [], count: fromStock ? needed - short : needed, pile: null },
    { kind, size: [], count: fromStock ? short : 0, pile: { from: 'kit' } },
  ]);
  return {
    kit: kit.name,
    rows: [
      ...piles('tube', tubes, ({ length }) => [length], fromStock),
      ...piles('panel-stock', panels, ({ length, width }) => [length, width], fromStock),
      ...parts.filter(({ count }) => count > 0),
    ],
    thrift: [{ kind: 'tube' as const, ...thriftOf(tubeThrift) }, { kind: 'panel-stock' as const, ...thriftOf(panelThrift) }].filter(({ used }) => used > 0),
  };
}

/** Stock pieces of each pile and size together, in the order in which the plan takes them. */
function piles<Sheet extends TubeSheet | PanelSheet>(kind: Row['kind'], sheets: readonly Sheet[], sizeOf: (sheet: Sheet) => readonly number[], fromStock: boolean): readonly Row[] {
  const nameOf = (sheet: Sheet): string => JSON.stringify([sheet.source, sizeOf(sheet)]);
  return [...new Set(sheets.map(nameOf))].flatMap((name) => {
    const alike = sheets.filter((sheet) => nameOf(sheet) === name);
    const [first] = alike;
    if (first === undefined) return [];
    const { source } = first;
    const pile = source.from === 'stock' ? { from: 'stock' as const, name: source.name } : { from: 'kit' as const };
    return [{ kind, size: sizeOf(first), count: alike.reduce((sum, { times }) => sum + times, 0), pile: fromStock ? pile : null }];
  });
}

/** Shares of the stock used: what is left over, and how far the plan may be from the least possible. */
function thriftOf({ used, stock, pieces, leastStock, proven }: Thrift): Omit<KitStock['thrift'][number], 'kind'> & { readonly used: number } {
  return {
    used,
    leftOver: stock === 0 ? 0 : (stock - pieces) / stock,
    aboveLeast: proven || leastStock === 0 ? 0 : (stock - leastStock) / leastStock,
  };
}
