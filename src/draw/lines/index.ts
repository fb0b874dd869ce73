export { newLineCaches } from './caches.ts';
export { lineDrawing } from './lineDrawing.ts';
