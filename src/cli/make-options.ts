import type { EditionOptions } from './editions-asked.ts';
import type { KeepOptions } from './keeping.ts';

export interface MakeOptions extends EditionOptions, KeepOptions {
  readonly size?: readonly string[];
  readonly out: string;
  /** One of several equal parts of it all, as it was asked for. */
  readonly share?: string;
  /** Prints although a check fails; every page is then stamped. */
  readonly despiteFindings?: boolean;
}
