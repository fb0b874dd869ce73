import type { KeepOptions } from './keeping.ts';

export interface DrawOptions extends KeepOptions {
  readonly step: string;
  readonly size?: string;
  readonly out?: string;
}

/** A step's pictures, and the name of their file where none is asked for. */
export interface DrawnStep {
  readonly name: string;
  readonly svgs: readonly string[];
}
