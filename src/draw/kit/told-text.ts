import type { Told } from '../../scene/index.ts';

/** The text of a figure, in Latin numerals: the one place where numbers of drawings become texts. */
export function toldText(told: Told): string {
  switch (told.as) {
    case 'length': return inMillimetres(told.mm);
    case 'measure': return `${inMillimetres(told.mm)} mm`;
    case 'diameter': return `Ø${inMillimetres(told.mm)}`;
    case 'at-most': return `≤ ${inMillimetres(told.mm)}`;
    case 'radius': return `R${inMillimetres(told.mm)}`;
    case 'angle': return `${told.degrees}°`;
    case 'mass': return `${told.kg} kg`;
    case 'volume': return `${told.litres} L`;
    case 'sides': return told.mm.map(inMillimetres).join(' × ');
    case 'times': return `×${told.value}`;
    case 'number': return String(told.value);
    case 'out-of': return `${told.value}/${told.all}`;
    case 'letters': return told.text;
  }
}

/** A length as the worker reads it: whole or half millimetres. */
const inMillimetres = (length: number): string => String(Math.round(length * 2) / 2);
