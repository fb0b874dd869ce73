export { exportWords, type Exported } from './export-words.ts';
export { importWords, type Imported } from './import-words.ts';
export { languageFault } from './new-language.ts';
export type { ReferencePicture } from './picture-references.ts';
export { textLength } from './placeholders.ts';
export { lengthLimit } from './limits.ts';
