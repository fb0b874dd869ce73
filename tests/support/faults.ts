import { FaultError, type Fault } from '../../src/read/index.ts';

/** The faults that reading or building throws; none when it succeeds. Anything else thrown goes on. */
export function faultsOf(read: () => unknown): readonly Fault[] {
  try {
    read();
    return [];
  } catch (error) {
    if (error instanceof FaultError) return error.faults;
    throw error;
  }
}
