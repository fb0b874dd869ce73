import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync, watch, type FSWatcher } from 'node:fs';
import { dirname, join } from 'node:path';
import { finishedPicture } from '../draw/index.ts';
import { contentHash } from '../keep/index.ts';
import { buildModel, loadSolids } from '../model/index.ts';
import { failure } from './failure.ts';
import { makeFolder, writeTold } from './files.ts';
import { isFileOfItem } from './project-names.ts';
import { chosen, itemsNamed, sizesOf } from './project.ts';
import { startBuild, type Build, type BuildOptions } from './watched-build.ts';

export interface WatchOptions extends BuildOptions {
  readonly size?: readonly string[];
  readonly out: string;
}

/** Saves that come as near to one another as this are one: an editor writes in several goes, ms. */
const TOGETHER = 40;

/** Draws an item anew whenever a text is saved, and makes its booklets in the background, until a signal. A mistake is told, and watching goes on. */
export async function watchCommand(name: string, options: WatchOptions): Promise<void> {
  itemsNamed(name).forEach((item) => { chosen(sizesOf(item), options.size, 'size'); });
  const folders = ['steps', 'locales', ...(isFileOfItem(name) ? [dirname(name)] : [])];
  const watched = watchTexts(folders);
  let build: Build | null = null;
  const ended = firstSignal();
  for (let saved: Saved = 'saved'; saved === 'saved'; saved = await Promise.race([watched.next(), ended])) {
    await build?.stop();
    build = await drawn(name, options) ? startBuild(name, options) : null;
  }
  watched.close();
  await build?.stop();
  process.exit();
}

type Saved = 'saved' | 'ended';

/** The finished item as it is now, in a moment. False where a text is not as it must be, which is told. */
async function drawn(name: string, { size, out }: WatchOptions): Promise<boolean> {
  try {
    const [item] = itemsNamed(name);
    if (item === undefined) return false;
    const sizes = chosen(sizesOf(item), size, 'size');
    const shown = size === undefined ? sizes[1] ?? sizes[0] ?? '' : sizes[0] ?? '';
    const { svg } = finishedPicture(buildModel(item, shown), await loadSolids(), 0);
    makeFolder(join(out, item.name, shown));
    writeTold(join(out, item.name, shown, `${item.name}-${shown}.svg`), svg);
    return true;
  } catch (error) {
    process.stderr.write(`${failure(error).told}\n`);
    return false;
  }
}

async function firstSignal(): Promise<Saved> {
  await Promise.race(['SIGINT', 'SIGTERM', 'SIGHUP'].map((signal) => once(process, signal)));
  return 'ended';
}

interface Watched {
  /** Comes when a text is another than it was when this was last asked, be it saved before or after. */
  readonly next: () => Promise<Saved>;
  readonly close: () => void;
}

/** Folder by folder, so that editors that write beside a file and rename are heard too. */
function watchTexts(folders: readonly string[]): Watched {
  let last = markOf(folders);
  const watchers = new Map<string, FSWatcher>();
  let wake: () => void = () => undefined;
  const listen = (): void => {
    for (const folder of folders.flatMap(foldersIn)) if (!watchers.has(folder)) watchers.set(folder, watch(folder, () => { wake(); }).on('error', () => { watchers.delete(folder); }));
  };
  const heard = (): Promise<void> => new Promise((resolve) => { wake = () => { setTimeout(resolve, TOGETHER); }; });
  listen();
  return {
    next: async () => {
      for (;;) {
        const event = heard();
        listen();
        const now = markOf(folders);
        if (now !== last) {
          last = now;
          return 'saved';
        }
        await event;
      }
    },
    close: () => { for (const one of watchers.values()) one.close(); },
  };
}

const foldersIn = (folder: string): readonly string[] => (existsSync(folder) ? [folder, ...readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isDirectory()).map((entry) => join(entry.parentPath, entry.name))] : []);

/** Of all texts: what was saved without a change is no change. */
function markOf(folders: readonly string[]): string {
  const files = folders.flatMap(foldersIn).flatMap((folder) => readdirSync(folder).filter((file) => /\.(yaml|json)$/.test(file)).map((file) => join(folder, file)));
  return contentHash(files.map((file) => `${file}\0${existsSync(file) ? readFileSync(file, 'utf8') : ''}`).join('\0'));
}
