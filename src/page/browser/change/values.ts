import { dimensionedText, type Item, type Parameter, type Quantity } from '../../../read/index.ts';

/** Values of a size that differ from the file's, by parameter, in base units. */
export type Draft = Readonly<Record<string, Quantity>>;

/** The value of a parameter as the draft or else the file has it. */
export function valueOf(item: Item, size: string, draft: Draft, name: string): Quantity {
  return draft[name] ?? savedValue(item, size, name);
}

export function savedValue(item: Item, size: string, name: string): Quantity {
  return item.sizes.find((each) => each.name === size)?.values[name] ?? { value: 0, dimension: 'ratio' };
}

/** The draft with another value; without the parameter where the value is the file's again. */
export function withValue(item: Item, size: string, draft: Draft, name: string, value: number): Draft {
  const saved = savedValue(item, size, name);
  const others = Object.fromEntries(Object.entries(draft).filter(([other]) => other !== name));
  return value === saved.value ? others : { ...others, [name]: { value, dimension: saved.dimension } };
}

/** Each value as it would stand in the file. */
export const textsOf = (draft: Draft): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(draft).map(([name, quantity]) => [name, dimensionedText(quantity)]));

/** How a value of a dimension is shown and typed: its unit, how many of it make the base unit, and the slider's step. */
export interface Scale {
  readonly unit: string;
  readonly perBase: number;
  readonly step: number;
}

export function scaleOf({ least, whole }: Parameter): Scale {
  switch (least.dimension) {
    case 'length': return { unit: 'mm', perBase: 1, step: 1 };
    case 'angle': return { unit: '°', perBase: 180 / Math.PI, step: 0.5 };
    case 'force': return { unit: 'N', perBase: 1, step: 1 };
    case 'mass': return { unit: 'kg', perBase: 1, step: 0.1 };
    case 'count': return { unit: '', perBase: 1, step: 1 };
    case 'ratio': return { unit: '', perBase: 1, step: whole ? 1 : 0.01 };
  }
}

/** A shown figure without the noughts of its reckoning. */
export const shown = (quantity: Quantity, { perBase }: Scale): number => Number((quantity.value * perBase).toFixed(2));
