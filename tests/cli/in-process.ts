import { foldwright } from '../../src/cli/command.ts';

/** What a call wrote, and what it ended with. */
export interface Said {
  readonly code: number;
  readonly out: string;
  readonly told: string;
}

type Write = typeof process.stdout.write;

/** Calls wait for one another: folder, variables and streams are the process's, and there is one of each. */
let last: Promise<unknown> = Promise.resolve();

/** Calls the command in this process, in a folder and with further variables, as if it were one of its own. */
export function said(args: readonly string[], folder: string, env: Readonly<Record<string, string>>): Promise<Said> {
  const mine = last.then(() => saidNow(args, folder, env));
  last = mine.catch(() => undefined);
  return mine;
}

async function saidNow(args: readonly string[], folder: string, env: Readonly<Record<string, string>>): Promise<Said> {
  const was = { folder: process.cwd(), env: { ...process.env }, out: process.stdout.write, told: process.stderr.write };
  const pieces = { out: '', told: '' };
  const kept = (where: keyof typeof pieces): Write => ((piece: string | Uint8Array) => {
    pieces[where] += typeof piece === 'string' ? piece : Buffer.from(piece).toString();
    return true;
  });
  try {
    process.chdir(folder);
    Object.assign(process.env, env);
    process.stdout.write = kept('out');
    process.stderr.write = kept('told');
    return { code: await foldwright(args), ...pieces };
  } finally {
    process.stdout.write = was.out;
    process.stderr.write = was.told;
    for (const name of Object.keys(env)) {
      const before = was.env[name];
      if (before === undefined) Reflect.deleteProperty(process.env, name);
      else process.env[name] = before;
    }
    process.chdir(was.folder);
  }
}
