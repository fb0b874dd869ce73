import type { Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { boxRound } from '../kit/geometry.ts';
import { capHeight, ink, textSize, white } from './sizes.ts';
import { escaped, num } from './svg.ts';

/** Advance widths of Noto Sans Bold in thousandths of the text height, read from the packaged font. */
const advances: readonly (readonly [number, string])[] = [
  [0, '\u2066\u2067\u2068\u2069\u200e\u200f'],
  [260, ' '], [266, "'"], [281, '.:'], [285, ',;'], [298, 'jl'], [299, 'i'], [320, '-'], [331, 'J'], [339, '()'],
  [387, 'f'], [389, 'I'], [415, '/'], [424, '°'], [434, 't'], [447, 'r'], [479, '"'], [493, 'z'], [500, '–'], [502, 's'],
  [516, 'c'], [549, 'F'], [551, 'S'], [559, 'L'], [560, 'E'], [571, 'vy'], [572, '0123456789×+='], [577, 'T'], [578, 'x'],
  [579, 'Z'], [581, '−'], [597, 'e'], [599, 'a'], [619, 'ø'], [620, 'k'], [621, 'P'], [625, 'o'], [626, 'Y'],
  [632, 'bdgpq'], [642, 'C'], [650, 'Vhnu'], [656, 'R'], [664, 'K'], [665, 'B'], [670, 'X'], [692, 'A'], [724, 'G'],
  [732, 'D'], [756, 'U'], [765, 'H'], [791, 'OQØ'], [813, 'N'], [830, '¼'], [845, '¾'], [856, 'w'], [874, '½'],
  [902, '%'], [943, 'M'], [967, 'W'], [975, 'm'],
];
const advanceOf = new Map(advances.flatMap(([width, signs]) => [...signs].map((sign) => [sign, width] as const)));
/** A sign that is not in the table counts as wide as the text is high. */
const unknownAdvance = 1000;

/** Width of a text on paper, in mm. */
export function textWidth(text: string): number {
  let sum = 0;
  for (const sign of text) sum += advanceOf.get(sign) ?? unknownAdvance;
  return (sum * textSize) / 1000;
}

/** Signs whose ink stays between base line and cap height need no room below. */
const belowBaseLine = /[^0-9A-IK-PR-Zabcdefhiklmnorstuvwxz×+=.\-–−°½¼¾ ]/u;

/** Width and height of the room a text needs with its white rim, in mm. */
export function textRoom(text: string): { readonly width: number; readonly height: number } {
  const below = belowBaseLine.test(text) ? 2 * 0.24 * textSize : 0;
  return { width: textWidth(text) + 1.2, height: capHeight + 1 + below };
}

/** A text with its capitals' middle at `centre` on a white ground, turned by `turn` degrees clockwise. */
export function textAt(text: string, centre: Vec2, turn = 0): string {
  const room = textRoom(text);
  const [x, y] = centre;
  const turned = turn === 0 ? '' : ` transform="rotate(${num(turn)} ${num(x)} ${num(y)})"`;
  const ground = boxRound(centre, room.width, room.height);
  return (
    `<g${turned}><path d="M${num(ground.x)} ${num(ground.y)}h${num(ground.width)}v${num(ground.height)}h${num(-ground.width)}z" fill="${white}"/>` +
    `${bareText(text, centre)}</g>`
  );
}

/** A text with its capitals' middle at `centre`, without a ground. */
export function bareText(text: string, [x, y]: Vec2): string {
  return (
    `<text x="${num(x)}" y="${num(y + capHeight / 2)}" font-family="'Noto Sans'" font-weight="700" font-size="${num(textSize)}" ` +
    `text-anchor="middle" fill="${ink}">${escaped(text)}</text>`
  );
}

/** The upright box round a text turned by `turn` degrees. */
export function turnedBox(text: string, centre: Vec2, turn: number): Box {
  const { width, height } = textRoom(text);
  const [c, s] = [Math.abs(Math.cos((turn * Math.PI) / 180)), Math.abs(Math.sin((turn * Math.PI) / 180))];
  return boxRound(centre, width * c + height * s, width * s + height * c);
}
