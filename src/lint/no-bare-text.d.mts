import type { Rule } from 'eslint';

/** Text on a page comes from the locale files. */
export declare const noBareText: Rule.RuleModule;
