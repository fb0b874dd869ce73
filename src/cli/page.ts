import { readFileSync } from 'node:fs';
import { openPage, type Workshop } from '../page/index.ts';
import { filesOnDisk, listItems } from '../read/index.ts';
import { localeFiles, writeWhole } from './files.ts';
import { startMaking } from './making.ts';

interface PageCall {
  readonly port: string;
  readonly host: string;
  readonly allowChanges?: boolean;
}

/** Serves the page until the program is told to end. */
export async function pageCommand({ port, host, allowChanges = false }: PageCall): Promise<void> {
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535) throw new Error(`--port ${port}: would be right: a whole number from 0 to 65535`);
  if (listItems(filesOnDisk('.')).length === 0) throw new Error('steps/: no item here; would be right: the command run from the folder that holds steps/ and locales/');
  const page = await openPage({ port: Number(port), host, allowChanges, workshop });
  process.stdout.write(page.urls.map((url) => `${url}\n`).join(''));
  if (page.isShared) process.stderr.write(`foldwright: whoever has this address and reaches this computer can now ${allowChanges ? 'change items and make booklets' : 'look at the items; with --allow-changes also change them and make booklets'}\n`);
  const close = (): void => { void page.close().then(() => process.exit()); };
  process.once('SIGINT', close);
  process.once('SIGTERM', close);
}

const workshop: Workshop = {
  texts: () => ({ files: stepFiles(), locales: localeFiles('locales') }),
  write: writeWhole,
  read: (path) => readFileSync(path),
  make: startMaking,
};

/** The texts of all items and kits. */
function stepFiles(): Readonly<Record<string, string>> {
  const files = filesOnDisk('.');
  const kits = files.list('steps/kits').filter((name) => name.endsWith('.yaml')).map((name) => `steps/kits/${name}`);
  return Object.fromEntries([...listItems(files), ...kits].map((path) => [path, files.text(path) ?? '']));
}
