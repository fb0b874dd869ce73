import { cableEnds, type PartKind } from '../../model/index.ts';
import type { Kit, Stock } from '../../read/index.ts';
import { COUNTED_KINDS, PARTS } from '../../parts/facts.ts';
import { cordsFor } from '../cords.ts';
import type { Counted, KitsNeeded, OrderLine } from './types.ts';

/** Joints, pins, nuts and cables of an order against what was counted. Of a cable as it was delivered several pieces are cut where it is long enough. */
export function countedParts(lines: readonly OrderLine[], stock: Stock | null): readonly Counted[] {
  const plain = COUNTED_KINDS.map(({ kind, counted }): Counted => {
    const needed = lines.reduce((sum, { model, count }) => sum + count * model.parts.filter((part) => part.kind === kind).length, 0);
    const there = stock === null ? null : stock[counted];
    return { kind, needed, there, short: there === null ? needed : Math.max(0, needed - there) };
  });
  return [...plain, cables(lines, stock)];
}

/**
 * Whole cables: every piece wanted is cut from the shortest cable or rest that reaches with its loops and knots, the longest
 * first, so that none is wasted on a short one. What nothing reaches for comes from further cables as a kit has them.
 */
function cables(lines: readonly OrderLine[], stock: Stock | null): Counted {
  const wanted = lines.flatMap(({ model, count }) => model.parts.flatMap(({ shape }) =>
    (shape.form === 'cable' ? Array.from({ length: count }, () => cableEnds(shape.length).cut) : []))).sort((a, b) => b - a);
  const whole = Math.max(0, ...lines.map(({ model }) => model.kit.cable.length));
  if (stock === null) return { kind: 'cable', needed: cordsFor(wanted, whole), there: null, short: cordsFor(wanted, whole) };
  const left = stock.cables.flatMap(({ length, count }) => Array.from({ length: count }, () => ({ rest: length, isTaken: false })));
  const unserved = wanted.filter((length) => {
    const [taken] = left.filter(({ rest }) => rest >= length).sort((a, b) => a.rest - b.rest);
    if (taken === undefined) return true;
    taken.rest -= length;
    taken.isTaken = true;
    return false;
  });
  const short = cordsFor(unserved, whole);
  return { kind: 'cable', needed: left.filter(({ isTaken }) => isTaken).length + short, there: left.length, short };
}

/** Whole kits that make up for what is short: as many as the part that runs out first asks for. */
export function kitsNeeded({ contents }: Kit, panels: number, tubes: number, counted: readonly Counted[]): KitsNeeded {
  const short = [{ kind: 'panel' as const, needed: panels }, { kind: 'tube' as const, needed: tubes }, ...counted.map((each) => ({ kind: each.kind, needed: each.short }))];
  const parts = short.map(({ kind, needed }) => ({ kind, needed, kits: contents === undefined ? null : Math.ceil(needed / heldOf(contents, kind)) }));
  return { kits: contents === undefined ? null : Math.max(0, ...parts.map(({ kits }) => kits ?? 0)), parts };
}

/** How many of a kind a whole kit holds. */
function heldOf(contents: NonNullable<Kit['contents']>, kind: PartKind | 'tube'): number {
  if (kind === 'tube') return contents.tubes;
  const { stock } = PARTS[kind];
  if ('untold' in stock) throw new RangeError(`a kit does not tell how many parts of the kind ${kind} it has`);
  return contents['counted' in stock ? stock.counted : 'oneOf' in stock ? stock.oneOf : stock.cutFrom];
}
