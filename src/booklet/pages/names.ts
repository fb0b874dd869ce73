import type { Model } from '../../model/index.ts';
import type { BookletInput } from './types.ts';

/** The item's name in the booklet's language. */
export function itemName({ words, model }: Pick<BookletInput, 'words' | 'model'>): string {
  return words.t(`items.${model.item}.name`);
}

/** A size variant's name in the booklet's language. */
export function sizeName({ words }: Pick<BookletInput, 'words'>, { item, size }: Model): string {
  return words.t(`items.${item}.sizes.${size}`);
}

/** Item and size in one phrase. */
export function itemAndSize(input: Pick<BookletInput, 'words' | 'model'>): string {
  return input.words.t('booklet.item-and-size', { item: itemName(input), size: sizeName(input, input.model) });
}

/** Width, depth and height over all: the lengths of these names, `1084 × 584 × 1500 mm`. */
export function overall({ model, words }: Pick<BookletInput, 'words' | 'model'>): string {
  const lengths = ['width', 'depth', 'height'].flatMap((name) => model.dimensions.filter((length) => length.name === name));
  return words.measures(lengths.map((length) => Math.round(length.value)), 'mm');
}
