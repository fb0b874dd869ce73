import { loadSolids, type Solids } from '../../src/model/index.ts';
import { once } from './once.ts';

const kernel = once((_: 'kernel'): Promise<Solids> => loadSolids());

/** The solid kernel, loaded once for all files of a process. It remembers what it has built and tried: parts alike are proven once. */
export const sharedSolids = (): Promise<Solids> => kernel('kernel');
