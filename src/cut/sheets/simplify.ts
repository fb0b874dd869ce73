import type { CutPart, Rectangle } from './types.ts';

/** The same pieces with the cuts left out that only part off-cuts from off-cuts. */
export function simplified(part: CutPart): CutPart {
  if (part.part !== 'cut') return part;
  const [first, second] = [simplified(part.first), simplified(part.second)];
  if (first.part === 'off-cut' && second.part === 'off-cut') return { part: 'off-cut', region: part.region };
  // Two off-cuts beside each other, before a piece or after it, are one.
  if (first.part === 'off-cut' && second.part === 'cut' && second.axis === part.axis && second.first.part === 'off-cut') {
    return { ...part, at: second.at, first: { part: 'off-cut', region: upTo(part.region, part.axis, second.at) }, second: second.second };
  }
  if (second.part === 'off-cut' && first.part === 'cut' && first.axis === part.axis && first.second.part === 'off-cut') {
    return { ...part, at: first.at, first: first.first, second: { part: 'off-cut', region: joined(first.second.region, second.region) } };
  }
  return { ...part, first, second };
}

function upTo(region: Rectangle, axis: 'x' | 'y', at: number): Rectangle {
  return axis === 'x' ? { ...region, width: at - region.x } : { ...region, height: at - region.y };
}

function joined(a: Rectangle, b: Rectangle): Rectangle {
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  return { x, y, width: Math.max(a.x + a.width, b.x + b.width) - x, height: Math.max(a.y + a.height, b.y + b.height) - y };
}

/** The cuts seen in a mirror: from the panel's other side (`x`), from its other end (`y`). The kerf stays between the parts. */
export function mirrored(part: CutPart, axis: 'x' | 'y', length: number, kerf: number): CutPart {
  const turned = (region: Rectangle): Rectangle =>
    axis === 'x' ? { ...region, x: length - region.x - region.width } : { ...region, y: length - region.y - region.height };
  switch (part.part) {
    case 'piece': return { part: 'piece', lies: { ...part.lies, ...turned(part.lies) } };
    case 'loose': return { part: 'loose', lies: part.lies.map((lies) => ({ ...lies, ...turned(lies) })), region: turned(part.region) };
    case 'off-cut': return { part: 'off-cut', region: turned(part.region) };
    case 'cut': {
      const [first, second] = [mirrored(part.first, axis, length, kerf), mirrored(part.second, axis, length, kerf)];
      return part.axis === axis
        ? { ...part, at: length - part.at - kerf, region: turned(part.region), first: second, second: first }
        : { ...part, region: turned(part.region), first, second };
    }
  }
}
