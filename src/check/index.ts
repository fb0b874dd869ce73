export { checkModel } from './check-model.ts';
export { defaultLimits, type Limits } from './limits.ts';
export { scant, SCANT, tightest } from './margins.ts';
export { findingNames, type FindingName } from './names.ts';
export { findingText } from './text.ts';
export { remediesFor, type Remedy } from './remedies.ts';
export type { Advice, Finding, NotApplied, PlaceLoad, Report, Verdict } from './types.ts';
