export { checkModel } from './check-model.ts';
export { defaultLimits } from './limits.ts';
export { findingNames } from './names.ts';
export { findingText } from './text.ts';
export type { Advice, Finding, Report } from './types.ts';
