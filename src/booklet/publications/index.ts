export { COPIES, copiesOfEditions } from './documents.ts';
export type { Binding, EditionCopy, SizeToPublish } from './edition-copies.ts';
export type { Copy, PrintedCopy, Sharing, WrittenCopy } from './copies.ts';
export { comesOn, EDITION_PAPERS, EDITIONS, laidFor, PUBLICATIONS, type BookletEdition } from './facts.ts';
export { shortMark } from './short-mark.ts';
export { nameOf, type LanguageSet } from './language-set.ts';
export type { Edition, Publication } from './types.ts';
export type { ChangedPicture, SizeChange } from './change-sheets/document.ts';
export type { PackContent } from './workshop-pack/document.ts';
