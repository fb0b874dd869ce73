export { openPage } from './server/open-page.ts';
export type { Making, Workshop } from './server/workshop.ts';
export { runsOfItem } from './paper-groups.ts';
export type * from './types.ts';
