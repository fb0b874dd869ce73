export { newLineCaches } from './caches.ts';
export type { LineCaches } from './caches.ts';
export { lineDrawing } from './lineDrawing.ts';
export { strokesToPath } from './strokesToPath.ts';
