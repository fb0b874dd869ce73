import type { Mark } from '../../scene/index.ts';
import { tell, type Told } from '../kit/told.ts';

/** What a scene's mark tells. */
export const toldOf = ({ text }: Extract<Mark, { readonly text: string }>): Told => tell.letters(text);
