export { codeMark } from './code-mark.mjs';
export { contentHash, keepContent, keptContent } from './contents.ts';
export { keepFolder, keepLimit, KEEP_VARIABLE, LIMIT_VARIABLE } from './folder.ts';
export { nothingKept, openKeep, type KeepSettings } from './keep.ts';
export { keptData, keptLater, readData, writeData } from './kept-data.ts';
export type * from './types.ts';
