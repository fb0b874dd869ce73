import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';

export interface BuildOptions {
  readonly size?: readonly string[];
  readonly lang?: readonly string[];
  readonly edition?: readonly string[];
  readonly paper?: readonly string[];
  readonly out: string;
  readonly cache?: string | boolean;
  readonly despiteFindings?: boolean;
}

/** Booklets that are being made in a process of their own. */
export interface Build {
  /** Breaks it off where it still goes; what it has written is whole. */
  readonly stop: () => Promise<void>;
}

const program = fileURLToPath(new URL('./foldwright.mjs', import.meta.url));

/** Starts `make`, which tells its files and its mistakes itself. */
export function startBuild(name: string, options: BuildOptions): Build {
  const child = spawn(process.execPath, [program, ...argumentsOf(name, options)], { stdio: ['ignore', 'inherit', 'inherit'] });
  const gone = once(child, 'exit').catch(() => undefined);
  return {
    stop: async () => {
      if (child.exitCode === null && child.signalCode === null) child.kill();
      await gone;
    },
  };
}

function argumentsOf(name: string, { out, cache, despiteFindings, ...lists }: BuildOptions): readonly string[] {
  const listed = (['size', 'lang', 'edition', 'paper'] as const).flatMap((option) => { const asked = lists[option]; return asked === undefined ? [] : [`--${option}`, ...asked]; });
  return ['make', name, ...listed, '--out', out,
    ...(typeof cache === 'string' ? ['--cache', cache] : []), ...(cache === false ? ['--no-cache'] : []), ...(despiteFindings === true ? ['--despite-findings'] : [])];
}
