import type { Model } from '../../model/index.ts';
import type { Item } from '../../read/index.ts';

/** What tells a size apart from others: `Drawing.of`. */
export const sizeName = ({ item, model }: { readonly item: Pick<Item, 'name'>; readonly model: Pick<Model, 'size'> }): string => `${item.name} ${model.size}`;
