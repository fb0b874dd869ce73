import { FaultError, faultLine } from '../read/index.ts';

/** What the user reads when a command fails: one line a fault, no trace. */
export function failure(error: unknown): string {
  if (error instanceof FaultError) return error.faults.map(faultLine).join('\n');
  return `foldwright: ${error instanceof Error ? error.message : String(error)}`;
}
