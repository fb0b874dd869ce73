export { exportWords } from './export-words.ts';
export { importWords } from './import-words.ts';
export type { ReferencePicture } from './picture-references.ts';
export { textLength } from './placeholders.ts';
export { lengthLimit } from './limits.ts';
