import type { Rule } from 'eslint';

/** Ids and keys are compared and looked up, never taken apart. */
export declare const opaqueNames: Rule.RuleModule;
