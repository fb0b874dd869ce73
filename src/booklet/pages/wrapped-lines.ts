/** Advance widths of Noto Sans Regular in 1/1000 em, from the font's hmtx table, rounded up within a group. */
const groups: readonly (readonly [width: number, letters: string])[] = [
  [270, 'ijlJ .,;:!\'’·'], [372, 'Ift()[]/-²³¹'], [413, 'r'], [480, 'cçszî'], [534, 'kvxyFL'], [573, '0123456789×+=<>≤≥°aàâeéèêESTYZ'],
  [622, 'bdghnopquôûùKPRVX'], [650, 'ABC'], [786, 'DGHNOQUw'], [946, 'mMWœ%…Φ'],
];
const advances: ReadonlyMap<string, number> = new Map(groups.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)));
/** Letters that are not listed: accented ones, Greek, signs. */
const other = 665;

/** Lines that a text in Noto Sans takes in `width` mm when it is broken at its spaces. `size` in pt. */
export function wrappedLines(text: string, width: number, size: number): number {
  const room = (width * 1000) / (size * (25.4 / 72));
  const space = widthOf(' ');
  let lines = 1;
  let used = 0;
  for (const word of text.split(' ').map(widthOf)) {
    if (used > 0 && used + space + word > room) { lines += 1; used = word; } else used += (used > 0 ? space : 0) + word;
  }
  return lines;
}

function widthOf(word: string): number {
  return [...word].reduce((sum, letter) => sum + (advances.get(letter) ?? other), 0);
}
