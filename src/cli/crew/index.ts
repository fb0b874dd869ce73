export { openCrew, withCrew, type Crew } from './crew.ts';
export { sizeName } from './size-name.ts';
export type * from './types.ts';
