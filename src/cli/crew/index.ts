export { openCrew, type Crew } from './crew.ts';
export type * from './types.ts';
