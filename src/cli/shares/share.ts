/** One of several equal parts of a catalogue, counted from 1. */
export interface Share {
  readonly index: number;
  readonly count: number;
}

type Environment = Readonly<Record<string, string | undefined>>;

/** The variables by which a job of an array hears which one it is; where the first and the last are told too, also of how many. */
interface ArrayOfJobs {
  readonly index: string;
  /** The index of the first job. */
  readonly begins: 0 | 1;
  readonly first?: string;
  readonly last?: string;
}

/** What batch systems and container clusters set; each documents its own. */
const ARRAYS: readonly ArrayOfJobs[] = [
  { index: 'SLURM_ARRAY_TASK_ID', begins: 1, first: 'SLURM_ARRAY_TASK_MIN', last: 'SLURM_ARRAY_TASK_MAX' },
  { index: 'SGE_TASK_ID', begins: 1, first: 'SGE_TASK_FIRST', last: 'SGE_TASK_LAST' },
  { index: 'PBS_ARRAY_INDEX', begins: 1 },
  { index: 'LSB_JOBINDEX', begins: 1 },
  { index: 'JOB_COMPLETION_INDEX', begins: 0 },
];

export const MOST_SHARES = 10_000;
const REMEDY = 'would be right: such as 1/3, 2/3 and 3/3, or array/3 in each job of an array of 3';

/**
 * The share that `--share` asks for: `2/3`; `array/3` takes the 2 from the variable of an array of jobs, `array` the 3
 * too, where all jobs of the array from the first on are told. Throws where it names no share.
 */
export function shareAsked(asked: string, env: Environment): Share {
  const [, which = '', of] = /^(\d{1,6}|array)(?:\/(\d{1,6}))?$/.exec(asked) ?? [];
  if (which === 'array') return shareOfArray(asked, of, env);
  return aShare(asked, Number(which), Number(of));
}

function aShare(told: string, index: number, count: number): Share {
  if (!(count >= 1 && count <= MOST_SHARES && index >= 1 && index <= count)) throw new Error(`--share ${told}: not a share; ${REMEDY}`);
  return { index, count };
}

function shareOfArray(asked: string, of: string | undefined, env: Environment): Share {
  const array = ARRAYS.find(({ index }) => /^\d+$/.test(env[index] ?? ''));
  if (array === undefined) throw new Error(`--share ${asked}: no variable tells which job of an array this is; would be right: one of ${ARRAYS.map(({ index }) => index).join(', ')}, or a share such as 1/3`);
  const index = Number(env[array.index]) + 1 - array.begins;
  return aShare(`${asked} with ${array.index}=${env[array.index] ?? ''}`, index, of === undefined ? countOf(array, env) : Number(of));
}

/** Where one job of an array is run again by itself, the array begins with it: then nothing tells how many there were. */
function countOf({ index, first = '', last = '' }: ArrayOfJobs, env: Environment): number {
  if (env[first] === '1' && /^\d+$/.test(env[last] ?? '')) return Number(env[last]);
  throw new Error(`--share array with ${index}=${env[index] ?? ''}: nothing tells how many shares there are, from 1 on; would be right: array/3 for 3 shares`);
}
