// Plain JavaScript, because what starts the command asks for it before TypeScript can be read.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * A hash of all code that makes results: this package's own, the lock file for that of others, and Node.
 * @param {string} root folder of the package
 * @returns {string} 64 hexadecimal digits
 */
export function codeMark(root) {
  const hash = createHash('sha256').update(`${process.version} ${process.arch} ${process.env.NODE_ENV === 'production'}`);
  const files = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort();
  for (const path of [...files, join(root, 'package-lock.json')]) {
    const text = readFileSync(path);
    hash.update(`\0${path.slice(root.length)}\0${text.length}\0`).update(text);
  }
  return hash.digest('hex');
}
