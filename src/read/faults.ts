import { messages } from './messages.ts';
import { seen } from './seen.ts';
import type { Fault } from './types.ts';

/**
 * One fault as one line:
 * `steps/shelf/item.yaml:42:12 sizes.standard.width: found "1000", would be right: a length with its unit, …`.
 * What the file holds is told as it is, but for signs that would do something to the line.
 */
export function faultLine(fault: Fault): string {
  const { file, line, column } = fault.position;
  const field = fault.field === '' ? '' : ` ${fault.field}`;
  return seen(`${file}:${line}:${column}${field}: ${messages.found} ${fault.found}, ${messages.wouldBeRight}: ${fault.remedy}`);
}

/** Everything wrong with the files read, in the order of file, line and column. */
export class FaultError extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    const sorted = inReadingOrder(faults);
    super(sorted.map(faultLine).join('\n'));
    this.name = 'FaultError';
    this.faults = sorted;
  }
}

function inReadingOrder(faults: readonly Fault[]): Fault[] {
  const unique = new Map(faults.map((fault) => [faultLine(fault), fault]));
  return [...unique.entries()]
    .sort(([lineA, a], [lineB, b]) =>
      compare(a.position.file, b.position.file) ||
      a.position.line - b.position.line ||
      a.position.column - b.position.column ||
      compare(lineA, lineB))
    .map(([, fault]) => fault);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
