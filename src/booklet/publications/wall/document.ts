import { wallPages } from '../../posters/index.ts';
import { editionCopies, type CopiesOfEdition } from '../edition-copies.ts';
import { wall } from './facts.ts';

export const wallCopies: CopiesOfEdition = (asked) => editionCopies(wall, wallPages, asked);
