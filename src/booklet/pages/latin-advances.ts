/** Advance widths of Noto Sans Regular in 1/1000 em, from the font's hmtx table, rounded up within a group. */
const groups: readonly (readonly [width: number, letters: string])[] = [
  [270, 'ijlJ .,;:!\'’·'], [372, 'Ift()[]/-²³¹'], [413, 'r'], [480, 'cçszî'], [534, 'kvxyFL'], [573, '0123456789×+=<>≤≥°aàâeéèêESTYZ'],
  [622, 'bdghnopquôûùKPRVX'], [650, 'ABC'], [786, 'DGHNOQUw'], [946, 'mMWœ%…Φ'],
];
const advances: ReadonlyMap<string, number> = new Map(groups.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)));
/** Letters that are not listed: accented ones, Greek, signs. */
const other = 665;

/** Width of a character in Noto Sans, in em. */
export function latinAdvance(character: string): number {
  return (advances.get(character) ?? other) / 1000;
}
