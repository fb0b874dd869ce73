import type { PlacedConnection } from './connections.ts';
import { dimensionedText } from './dimensioned-text.ts';
import { valueThat, workOut } from './item-values.ts';
import type { Names, Working } from './item-values.ts';
import { limits } from './limits.ts';
import { messages } from './messages.ts';
import type { NamedExpression } from './named-expressions.ts';
import { panelRoomFaults, type PanelRise } from './panel-room.ts';
import { pointName } from './piece-names.ts';
import type { PlacedExpression } from './placed-expressions.ts';
import type { ReadPiece } from './pieces.ts';
import { sleeveFaults } from './sleeves.ts';
import type { Level } from './sleeves.ts';
import type { Face, Fault, Kit, PanelPiece, Piece, Quantity } from './types.ts';
import { quoted } from './yaml-source.ts';
import type { FieldPath, YamlSource } from './yaml-source.ts';

/** Middles of the lowest and the highest tubes of a deck or frame over the floor, in mm. */
interface Reach {
  readonly low: number;
  readonly high: number;
}

/** Lengths of one field that must be the same in all decks and frames: the first one, and the piece that has it. */
type Shared = Map<'width' | 'depth', { readonly piece: string; readonly value: number }>;

const positive = (value: number): boolean => value > 0;

/** Works out every expression for one size and tells those that give nothing, or nothing that can be built. */
export function sizeFaults(
  source: YamlSource, kit: Kit | null, size: { readonly name: string; readonly values: Names },
  expressions: readonly NamedExpression[], pieces: readonly ReadPiece[], connections: readonly PlacedConnection[],
): readonly Fault[] {
  const working: Working = { source, size: size.name, names: { ...size.values }, faults: [] };
  workOut(working, expressions);
  const reaches = new Map<string, Reach>();
  const shared: Shared = new Map();
  const levels: Level[] = [];
  const decks = new Set(pieces.flatMap(({ piece }) => (piece.is === 'deck' ? [piece.name] : [])));
  for (const read of pieces) {
    const { piece, expressions: written } = read;
    for (const [field, placed] of Object.entries(written)) {
      if (field !== 'count' && field !== 'top' && field !== 'level') sizeOfPiece(working, shared, piece.name, field, placed);
    }
    const heights = heightsOf(working, written);
    if (heights === null) continue;
    const under = piece.is === 'deck' ? axisUnderTop(kit) : 0;
    if (piece.is === 'deck') working.names[pointName(piece.name, 'top')] = length(Math.min(...heights));
    if (under === null) continue;
    const reach = { low: Math.min(...heights) - under, high: Math.max(...heights) - under };
    const placed = written['top'] ?? written['level'];
    if (placed !== undefined) levels.push(...heights.map((height) => ({ piece: piece.name, height: height - under, sides: sidesOf(piece), placed })));
    working.names[pointName(piece.name, 'level')] = length(reach.low);
    working.names[pointName(piece.name, 'high')] = length(reach.high);
    reaches.set(piece.name, reach);
  }
  // What hangs on pieces that stand in each other is not told as well: it comes right with them.
  if (kit !== null) for (const name of sleeveFaults(working, kit, levels)) reaches.delete(name);
  const panels = pieces.flatMap(({ piece }) => (piece.is === 'panel' ? panelRises(working, piece, reaches) : []));
  panelRoomFaults(working, panels, levels.filter(({ piece }) => decks.has(piece)).map(({ piece, height }) => ({ deck: piece, height })));
  for (const placed of connections) braceRises(working, placed, reaches);
  return working.faults;
}

const sidesOf = (piece: Piece): readonly Face[] => (piece.is === 'frame' ? piece.sides : ['back', 'left', 'right', 'front']);

/**
 * How far a deck's tubes lie below its upper face, in mm: half a tube, the air round it, the panel's thickness.
 * Null without a kit. The model works this out for itself; here it serves only to check values while reading.
 */
function axisUnderTop(kit: Kit | null): number | null {
  return kit === null ? null : kit.tube.outsideDiameter / 2 + kit.practice.wrapClearance + kit.panel.thickness;
}

function length(value: number): Quantity {
  return { value, dimension: 'length' };
}

/** A length above zero; widths and depths are the same in all decks and frames. */
function sizeOfPiece(working: Working, shared: Shared, piece: string, field: string, placed: PlacedExpression): void {
  const value = valueThat(working, placed, messages.positiveResult, positive);
  if (value === null || (field !== 'width' && field !== 'depth')) return;
  const first = shared.get(field);
  if (first === undefined) shared.set(field, { piece, value });
  else valueThat(working, placed, messages.samePosts(dimensionedText(length(first.value)), first.piece), (other) => Math.abs(other - first.value) < SAME);
}

/** Lengths nearer to each other than this are the same, in mm: a rounding error, far below any saw cut. */
const SAME = 1e-6;

/** The values of `top` or `level` of a piece, one for each that is repeated; null when there is none or one of them cannot be built. */
function heightsOf(working: Working, { count, top, level }: ReadPiece['expressions']): readonly number[] | null {
  const height = top ?? level;
  if (count === undefined || height === undefined) return null;
  const buildable = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= limits.pieceCount;
  const howMany = valueThat(working, count, messages.countResult(limits.pieceCount), buildable);
  const heights: number[] = [];
  for (let place = 0; place < (howMany ?? 1); place += 1) {
    const value = valueThat(working, height, messages.positiveResult, positive, { index: { value: place, dimension: 'count' } });
    if (value === null) return null;
    heights.push(value);
  }
  return howMany === null ? null : heights;
}

/** A panel goes up from the lowest tube of one piece to the highest of another; nothing when it does not. */
function panelRises(working: Working, panel: PanelPiece, reaches: ReadonlyMap<string, Reach>): readonly PanelRise[] {
  const { name, from, to } = panel;
  const [low, high] = [reaches.get(from), reaches.get(to)];
  riseFault(working, ['pieces', name, 'to'], low, high, to, messages.higherThan(from));
  return low === undefined || high === undefined || high.high <= low.low ? [] : [{ panel, low: low.low, high: high.high }];
}

function braceRises(working: Working, { place, connection }: PlacedConnection, reaches: ReadonlyMap<string, Reach>): void {
  if (connection.kind !== 'brace') return;
  const { piece, to } = connection;
  if (to === piece) return;
  const field = to === null ? 'brace' : 'to';
  riseFault(working, ['connections', place, field], reaches.get(piece), reaches.get(to ?? piece), to ?? piece, messages.braceUp);
}

function riseFault({ source, size, faults }: Working, path: FieldPath, from: Reach | undefined, to: Reach | undefined, found: string, remedy: string): void {
  if (from === undefined || to === undefined || to.high > from.low) return;
  faults.push(source.fault(path, remedy, messages.inSize(quoted(found), size)));
}
