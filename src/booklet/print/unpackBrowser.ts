import { constants, createReadStream, createWriteStream } from 'node:fs';
import { access, chmod, mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { homedir, tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { brotliDecompressSync, createBrotliDecompress } from 'node:zlib';
import { withLock } from './lock.ts';
import { isAlive } from './processes.ts';
import { readTar } from './readTar.ts';
import { MachineFault } from '../../read/machine-fault.ts';

/** The unpacked browser: its program, the folder of libraries it carries, and a font configuration of its own. */
export interface UnpackedBrowser {
  readonly path: string;
  readonly libraries: string;
  readonly fontConfig: string;
}

/**
 * Unpacks the browser of @sparticuz/chromium into a folder that bears its version, once for all
 * runs and processes of this user. The package's own unpacking is not used: it takes any copy that
 * lies in the temporary folder, and two first starts at once collide.
 */
export async function unpackBrowser(env: Readonly<Record<string, string | undefined>>): Promise<UnpackedBrowser> {
  const parcel = dirname(dirname(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium'))));
  const { version } = JSON.parse(await readFile(join(parcel, 'package.json'), 'utf8')) as { version: string };
  const home = await cacheFolder(env);
  const folder = join(home, `chromium-${version}`);
  if (!await exists(folder)) {
    await withLock(`${folder}.lock`, async () => {
      if (!await exists(folder)) await unpackInto(folder, join(parcel, 'bin'));
    });
  }
  return { path: join(folder, 'chromium'), libraries: join(folder, 'lib'), fontConfig: join(folder, 'fonts.conf') };
}

/** The user's cache folder, or where there is none that can be written, a private one among the temporary files. */
async function cacheFolder(env: Readonly<Record<string, string | undefined>>): Promise<string> {
  const own = `foldwright-${process.getuid?.() ?? 'user'}`;
  const wishes = [join(env.XDG_CACHE_HOME || join(homedir(), '.cache'), 'foldwright'), join(tmpdir(), own)];
  for (const folder of wishes) {
    try {
      await mkdir(folder, { recursive: true, mode: 0o700 });
      await access(folder, constants.W_OK);
      // A folder that someone else made under a name everyone can guess is no place for a program to run.
      if ((await stat(folder)).uid === (process.getuid?.() ?? 0)) return folder;
    } catch { /* the next wish */ }
  }
  throw new MachineFault(`the browser cannot be unpacked: neither ${wishes.join(' nor ')} is yours to write; set XDG_CACHE_HOME to a folder that is`);
}

/** Unpacks beside the folder and renames: whoever sees the folder sees all of it. Where another was faster, its copy stays. */
async function unpackInto(folder: string, parcels: string): Promise<void> {
  await sweepUnpackings(folder);
  const work = `${folder}.${process.pid}`;
  await mkdir(join(work, 'lib'), { recursive: true });
  await mkdir(join(work, 'fonts'));
  await unpackProgram(join(parcels, 'chromium.br'), join(work, 'chromium'));
  await unpackFiles(join(parcels, 'al2023.tar.br'), join(work, 'lib'));
  await unpackFiles(join(parcels, 'fonts.tar.br'), join(work, 'fonts'));
  await writeFile(join(work, 'fonts.conf'), fontConfiguration(folder));
  try {
    await rename(work, folder);
  } catch (error) {
    await rm(work, { recursive: true, force: true });
    if (!await exists(folder)) throw error;
  }
}

/** Takes away what this process, and those that are gone, have half unpacked. */
async function sweepUnpackings(folder: string): Promise<void> {
  const start = `${basename(folder)}.`;
  for (const name of await readdir(dirname(folder))) {
    const id = name.startsWith(start) ? Number(name.slice(start.length)) : NaN;
    if (Number.isInteger(id) && (id === process.pid || !isAlive(id))) await rm(join(dirname(folder), name), { recursive: true, force: true });
  }
}

/** Read, unpacked and written in pieces of so many bytes: 197 MB in the usual ones of 16 kB took half as long again. */
const PIECE = 2 ** 20;

async function unpackProgram(parcel: string, program: string): Promise<void> {
  await pipeline(createReadStream(parcel, { highWaterMark: PIECE }), createBrotliDecompress({ chunkSize: PIECE }), createWriteStream(program, { highWaterMark: PIECE }));
  await chmod(program, 0o755);
}

async function unpackFiles(parcel: string, into: string): Promise<void> {
  for (const { name, bytes } of readTar(brotliDecompressSync(await readFile(parcel)))) {
    await writeFile(join(into, basename(name)), bytes, { mode: 0o755 });
  }
}

function fontConfiguration(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${folder}/fonts</dir><cachedir>${folder}/fonts-cache</cachedir></fontconfig>
`;
}

async function exists(path: string): Promise<boolean> {
  return access(path).then(() => true, () => false);
}
