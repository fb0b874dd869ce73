import { CommanderError } from 'commander';
import { NoOrder } from '../plan/no-order.ts';
import { FaultError, faultLine, MachineFault } from '../read/index.ts';
import { callFault } from './call-fault.ts';
import { EXIT } from './exit-codes.ts';
import { FailedCheck } from './failed-check.ts';

/** How a command that fails ends: what the user reads, one line a fault and no trace, and the exit code. */
export interface Failure {
  readonly told: string;
  readonly code: number;
}

export function failure(error: unknown): Failure {
  if (error instanceof FaultError) return { told: error.faults.map(faultLine).join('\n'), code: EXIT.input };
  if (error instanceof CommanderError) return { told: ours(callFault(error)), code: EXIT.input };
  if (error instanceof FailedCheck || error instanceof NoOrder) return { told: ours(error.message), code: EXIT.finding };
  if (isOfTheDisk(error)) return { told: ours(`${error.path ?? 'the disk'}: cannot be read or written (${error.code ?? ''}); would be right: a file or folder that can be, on a disk with room`), code: EXIT.machine };
  const told = ours(error instanceof Error ? error.message : String(error));
  return { told, code: error instanceof MachineFault || isOfTheProgram(error) ? EXIT.machine : EXIT.input };
}

const ours = (line: string): string => `foldwright: ${line}`;

function isOfTheDisk(error: unknown): error is NodeJS.ErrnoException {
  return error instanceof Error && 'syscall' in error;
}

/** What nobody threw on purpose: no input of the user's can mend it. */
function isOfTheProgram(error: unknown): boolean {
  return !(error instanceof Error) || error instanceof TypeError || error instanceof RangeError || error instanceof ReferenceError;
}
