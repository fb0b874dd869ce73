import type { Quantity } from './types.ts';

/**
 * A quantity for screens and logs, in Latin digits: `1000 mm`, `45°`, `2000 N`, `0.18 kg`, `4`.
 * At most `digits` decimals (2 unless told), none that are noughts at the end.
 */
export function dimensionedText(quantity: Quantity, digits = 2): string {
  switch (quantity.dimension) {
    case 'length': return `${rounded(quantity.value, digits)} mm`;
    case 'angle': return `${rounded((quantity.value * 180) / Math.PI, digits)}°`;
    case 'force': return `${rounded(quantity.value, digits)} N`;
    case 'mass': return `${rounded(quantity.value, digits)} kg`;
    case 'count':
    case 'ratio': return rounded(quantity.value, digits);
  }
}

/** Fixed decimals without noughts at the end and without a minus before a nought. */
function rounded(value: number, digits: number): string {
  const text = value.toFixed(digits);
  const short = text.includes('e') || !text.includes('.') ? text : text.replace(/\.?0+$/, '');
  return short === '-0' ? '0' : short;
}
