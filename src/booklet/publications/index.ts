export { COPIES, copiesOfEditions } from './documents.ts';
export type { Asked, Binding, EditionCopy, SizeToPublish } from './edition-copies.ts';
export type { Copy, PrintedCopy, WrittenCopy } from './copies.ts';
export { comesOn, EDITION_PAPERS, EDITIONS, formatOn, PUBLICATIONS, type BookletEdition, type EditionName, type PublicationName } from './facts.ts';
export { shortMark } from './short-mark.ts';
export { nameOf, type Tongues } from './tongues.ts';
export type { CopiesBy, Edition, Publication } from './types.ts';
export type { PackContent } from './workshop-pack/document.ts';
