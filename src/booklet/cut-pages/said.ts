import type { PanelPiece, Serves, Source, TubePiece, Use } from '../../cut/index.ts';
import { isolate } from '../words/index.ts';
import type { CutPagesInput } from './types.ts';

/** Half millimetres are the finest that is marked. */
const rounded = (mm: number): number => Math.round(mm * 2) / 2;

/** A length or two sides with their unit. */
export function sidesOf({ words }: CutPagesInput, sides: readonly number[]): string {
  return sides.length === 1 ? words.measure(rounded(sides[0] ?? 0), 'mm', 1) : isolate(`${sides.map((side) => words.number(rounded(side), 1)).join('\u00a0×\u00a0')}\u00a0mm`);
}

/** An item and its size in one phrase. */
export const itemOf = ({ words }: CutPagesInput, item: string, size: string): string =>
  words.t('booklet.item-and-size', { item: words.t(`items.${item}.name`), size: words.t(`items.${item}.sizes.${size}`) });

/** A part and the item it is of. */
export const partOf = (input: CutPagesInput, { item, size, kind }: Use | Serves): string =>
  input.words.t('cutting.use', { part: input.words.t(`parts.${kind}.name`), item: itemOf(input, item, size) });

/** Where a stock piece comes from. */
export const sourceOf = ({ words }: CutPagesInput, { from, name }: Source): string => (from === 'kit' ? words.t('cutting.from-kit') : isolate(name));

export const tubeSides = ({ length }: TubePiece): readonly number[] => [length];
export const panelSides = ({ width, height }: PanelPiece): readonly number[] => [width, height];

/** A share in per cent with one decimal. */
export const percent = ({ words }: CutPagesInput, share: number): string => words.measure(100 * share, '%', 1);
