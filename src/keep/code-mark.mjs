// Plain JavaScript, because what starts the command asks for it before TypeScript can be read.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';

/**
 * A hash of all code that makes results: this package's own, the lock file for that of others, and Node.
 * @param {string} root folder of the package, its path with a `/` at the end
 * @returns {string} 64 hexadecimal digits
 */
export function codeMark(root) {
  const hash = createHash('sha256').update(`${process.version} ${process.arch} ${process.env.NODE_ENV === 'production'}`);
  for (const path of [...filesUnder(`${root}src`).sort(), `${root}package-lock.json`]) {
    const text = readFileSync(path);
    hash.update(`\0${path.slice(root.length)}\0${text.length}\0`).update(text);
  }
  return hash.digest('hex');
}

/** Paths are put together by hand, for every start of the command waits for this. */
const filesUnder = (folder) => readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
  const path = `${folder}/${entry.name}`;
  return entry.isDirectory() ? filesUnder(path) : entry.isFile() ? [path] : [];
});
