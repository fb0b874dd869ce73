import { bookletPages } from '../../pages/index.ts';
import type { Paper } from '../../papers/index.ts';
import { editionCopies, type CopiesOfEdition, type PagesOf } from '../edition-copies.ts';
import { laidFor } from '../facts.ts';
import { words } from './facts.ts';

const pages: PagesOf<Paper> = (input, paper, [, ...alongside], all) =>
  bookletPages({ ...input, paper: laidFor(words, paper), alongside, edition: 'words', languages: all.map(({ about }) => about.name) });

export const wordsCopies: CopiesOfEdition = (asked) => editionCopies(words, pages, asked);
