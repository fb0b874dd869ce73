export type * from './types.ts';
export { planSheets } from './plan-sheets.ts';
