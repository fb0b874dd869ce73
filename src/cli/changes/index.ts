export { changesCommand, type ChangesOptions } from './changes.ts';
