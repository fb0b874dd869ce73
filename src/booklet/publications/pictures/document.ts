import { bookletPages } from '../../pages/index.ts';
import type { Paper } from '../../papers/index.ts';
import { editionCopies, type CopiesOfEdition, type PagesOf } from '../edition-copies.ts';
import { pictures } from './facts.ts';

const pages: PagesOf<Paper> = (input, paper, _, all) =>
  bookletPages({ ...input, paper, edition: 'pictures', languages: all.map(({ about }) => about.name) });

export const picturesCopies: CopiesOfEdition = (asked) => editionCopies(pictures, pages, asked);
