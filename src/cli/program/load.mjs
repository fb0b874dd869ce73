// Plain JavaScript: what starts the command and its threads.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Script } from 'node:vm';

/**
 * Runs a module of the bundled program, after those it needs, each once; its compiled code is read, not made.
 * @param {string} folder of the program, as `bundle.mjs` makes it
 * @param {string} name of the module: `./main.js`, `./thread.js`
 * @returns {Promise<object>} what the module exports, when all of it has run
 */
export function run(folder, name) {
  const needs = JSON.parse(readFileSync(join(folder, 'needs.json'), 'utf8'));
  const require = createRequire(join(folder, 'main.js'));
  const loaded = new Map();
  const load = (wanted) => {
    const known = loaded.get(wanted);
    if (known !== undefined) return known;
    const made = wanted in needs ? started(wanted) : import(wanted);
    loaded.set(wanted, made);
    return made;
  };
  const started = async (wanted) => {
    const given = [];
    for (const need of needs[wanted]) given.push(await load(need));
    const file = join(folder, wanted);
    // All of it is ASCII, which is read quickest like this. Code that was compiled by other switches is compiled again.
    const script = new Script(readFileSync(file, 'latin1'), { filename: file, cachedData: readFileSync(`${file}.code`) });
    return script.runInThisContext()(given, load, require);
  };
  return load(name);
}
