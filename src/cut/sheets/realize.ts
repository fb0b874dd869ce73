import type { Layout, LayoutNode } from './layout.ts';
import { partLoose } from './part-loose.ts';
import { FINEST } from './raster.ts';
import type { CutPart, Rectangle, SheetPiece, SheetStock } from './types.ts';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A piece may come out this much too large, mm: so narrow a strip cannot be cut off. */
const SLIVER = 0.5;

/**
 * The cuts that part the pieces of a layout on a real panel, kerf between them: what is left over at the right and
 * above is cut off first, as large as it can be had.
 */
export function realized(layout: Layout, pieces: readonly SheetPiece[], stock: SheetStock, kerf: number): CutPart {
  return cutsOf(layout, { x: 0, y: 0, width: stock.width, height: stock.height }, { pieces, kerf });
}

interface Shop {
  readonly pieces: readonly SheetPiece[];
  readonly kerf: number;
}

/** What the pieces of a layout fill of their rectangle, from its lower left corner, mm without the kerf beyond. */
function filled(layout: Layout, shop: Shop): Size {
  const { node } = layout;
  if (node === null) return { width: 0, height: 0 };
  if (node.kind === 'loose') return { width: Math.max(...node.placed.map(({ x, laid }) => (x + laid.width) * FINEST - shop.kerf)), height: Math.max(...node.placed.map(({ y, laid }) => (y + laid.height) * FINEST - shop.kerf)) };
  if (node.kind === 'piece') return pieceSize(node.laid.piece, node.laid.turned, shop);
  const [first, second] = [filled(node.first, shop), filled(node.second, shop)];
  const at = beginsAt(layout, first, shop);
  if (node.axis === 'x') return { width: second.width > 0 ? at + second.width : first.width, height: Math.max(first.height, second.height) };
  return { width: Math.max(first.width, second.width), height: second.height > 0 ? at + second.height : first.height };
}

/** Where the second part begins: a kerf beyond the first, or where a defect holds it. */
function beginsAt({ node }: Layout, first: Size, { kerf }: Shop): number {
  if (node === null || node.kind !== 'cut') return 0;
  if (node.fixed) return node.at * FINEST;
  const reach = node.axis === 'x' ? first.width : first.height;
  return reach === 0 ? 0 : reach + kerf;
}

function pieceSize(piece: number, turned: boolean, { pieces }: Shop): Size {
  const { width, height } = pieces[piece] ?? { width: 0, height: 0 };
  return turned ? { width: height, height: width } : { width, height };
}

function cutsOf(layout: Layout, region: Rectangle, shop: Shop): CutPart {
  const { node } = layout;
  if (node === null) return { part: 'off-cut', region };
  if (node.kind === 'loose') return partLoose(node.placed.map(({ laid, x, y }) => ({ x: region.x + x * FINEST, y: region.y + y * FINEST, ...pieceSize(laid.piece, laid.turned, shop), piece: laid.piece, turned: laid.turned })), region, shop.kerf);
  if (node.kind === 'cut' && node.ends !== undefined) return besideDefect(node, node.ends, region, shop);
  const size = filled(layout, shop);
  const trimmed = trim(layout, region, size, shop);
  if (trimmed !== null) return trimmed;
  if (node.kind === 'piece') return { part: 'piece', lies: { x: region.x, y: region.y, ...size, piece: node.laid.piece, turned: node.laid.turned } };
  const begins = beginsAt(layout, filled(node.first, shop), shop);
  if (begins <= 0) return cutsOf(node.second, region, shop);
  const along = node.axis === 'x' ? 'width' : 'height';
  // Nearer to the edge than a kerf the cut only shaves it.
  const ends = begins - shop.kerf;
  const first: Rectangle = { ...region, [along]: Math.max(0, ends) };
  const second: Rectangle = { ...region, [node.axis]: region[node.axis] + begins, [along]: region[along] - begins };
  if (second[along] <= SLIVER) return cutsOf(node.first, region, shop);
  return { part: 'cut', axis: node.axis, at: region[node.axis] + ends, region, first: cutsOf(node.first, first, shop), second: cutsOf(node.second, second, shop) };
}

/** First the two cuts along a defect that crosses the region, so that no cut runs through it. */
function besideDefect(node: LayoutNode & { readonly kind: 'cut' }, ends: number, region: Rectangle, shop: Shop): CutPart {
  const along = node.axis === 'x' ? 'width' : 'height';
  const [end, begin] = [ends * FINEST - shop.kerf, node.at * FINEST];
  const part = (from: number, to: number): Rectangle => ({ ...region, [node.axis]: region[node.axis] + from, [along]: Math.max(0, to - from) });
  const start = end > SLIVER ? end + shop.kerf : 0;
  const beyond = region[along] - begin > SLIVER ? cutsOf(node.second, part(begin, region[along]), shop) : null;
  const rest: CutPart = beyond === null ? { part: 'off-cut', region: part(start, region[along]) } : {
    part: 'cut', axis: node.axis, at: region[node.axis] + begin - shop.kerf, region: part(start, region[along]),
    first: { part: 'off-cut', region: part(start, begin - shop.kerf) }, second: beyond,
  };
  return start === 0 ? rest : { part: 'cut', axis: node.axis, at: region[node.axis] + end, region, first: cutsOf(node.first, part(0, end), shop), second: rest };
}

/** Cuts off what lies beyond the pieces, the way round that leaves the largest off-cut; null where nothing does. */
function trim(layout: Layout, region: Rectangle, size: Size, shop: Shop): CutPart | null {
  const across = region.width - size.width > SLIVER;
  const up = region.height - size.height > SLIVER;
  if (!across && !up) return null;
  // A strip narrower than the kerf goes to dust.
  const over = { width: Math.max(0, region.width - size.width - shop.kerf), height: Math.max(0, region.height - size.height - shop.kerf) };
  const rightFirst = Math.max(over.width * region.height, size.width * over.height);
  const topFirst = Math.max(over.height * region.width, size.height * over.width);
  const byX = across && (!up || rightFirst >= topFirst);
  const [axis, along] = byX ? ['x', 'width'] as const : ['y', 'height'] as const;
  const at = region[axis] + size[along];
  const off: Rectangle = { ...region, [axis]: at + shop.kerf, [along]: over[along] };
  return { part: 'cut', axis, at, region, first: cutsOf(layout, { ...region, [along]: size[along] }, shop), second: { part: 'off-cut', region: off } };
}
