import type { Vec2 } from '../../model/index.ts';

/** A number for the file: hundredths of a mm, no needless zeros. */
export function num(value: number): string {
  return hundredths(Math.round(value * 100));
}

function hundredths(value: number): string {
  const text = String(value / 100 || 0);
  return text.replace(/^(-?)0\./, '$1.');
}

/**
 * Path data in mm. Steps are taken between rounded corners, so that rounding does not add up along a
 * line; steps that round to nothing are left out.
 */
export function pathData(points: readonly Vec2[], closed = false): string {
  const corners = points.map(([x, y]) => [Math.round(x * 100), Math.round(y * 100)] as const);
  const first = corners[0];
  if (!first) return '';
  let [x, y] = first;
  let data = `M${hundredths(x)} ${hundredths(y)}`;
  let steps = '';
  for (const [nextX, nextY] of corners.slice(1)) {
    if (nextX === x && nextY === y) continue;
    steps += `${steps ? ' ' : 'l'}${hundredths(nextX - x)} ${hundredths(nextY - y)}`;
    [x, y] = [nextX, nextY];
  }
  if (!steps) return '';
  data += steps.replaceAll(' -', '-');
  return closed ? `${data}z` : data;
}

/** The attributes of an unfilled line with round joins and ends. */
export function lineStyle(width: number, colour: string): string {
  return `fill="none" stroke="${colour}" stroke-width="${num(width)}" stroke-linecap="round" stroke-linejoin="round"`;
}

export function line(points: readonly Vec2[], style: string, closed = false): string {
  const d = pathData(points, closed);
  return d ? `<path d="${d}" ${style}/>` : '';
}

export function circle(centre: Vec2, radius: number, style: string): string {
  return `<circle cx="${num(centre[0])}" cy="${num(centre[1])}" r="${num(radius)}" ${style}/>`;
}

export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** A whole picture, `width` × `height` mm, white. Left to right always: on right-to-left pages figures would turn round. */
export function picture(width: number, height: number, content: readonly string[]): string {
  const [w, h] = [num(width), num(height)];
  const body = [`<path d="M0 0h${w}v${h}h-${w}z" fill="#fff"/>`, ...content].filter((piece) => piece !== '').join('\n');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${w} ${h}" width="${w}mm" height="${h}mm" direction="ltr">\n${body}\n</svg>\n`;
}
