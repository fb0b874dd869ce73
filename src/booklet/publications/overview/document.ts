import { overviewPage } from '../../posters/index.ts';
import { editionCopies, type CopiesOfEdition } from '../edition-copies.ts';
import { overview } from './facts.ts';

export const overviewCopies: CopiesOfEdition = (asked) => editionCopies(overview, overviewPage, asked);
