import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundle, modulesOf, type Module } from '../../src/cli/program/bundle.mjs';
import { scriptOf } from '../../src/cli/program/script-of.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** The variables that a module exports. */
const exportedIn = (text: string): readonly string[] => (/^export \{\n([^}]*)\};$/m.exec(text)?.[1] ?? '').split(',').map((each) => each.trim().split(' as ')[0] ?? '').filter((name) => name !== '');

/** Those of them that are written to elsewhere than at the start of a line of the module itself; esbuild gives no other variable such a name. */
const WRITTEN = /(?<![.\w$])([A-Za-z_$][\w$]*)\s*(?:=(?![=>])|(?:\*\*|<<|>>>?|&&|\|\||\?\?|[-+*/%&|^])=|\+\+|--)|(?:\+\+|--)([A-Za-z_$][\w$]*)/g;
function changedIn(text: string): readonly string[] {
  const exported = new Set(exportedIn(text));
  return [...text.matchAll(WRITTEN)].flatMap(({ 1: before, 2: after, index }) => {
    const name = before ?? after ?? '';
    const line = text.slice(text.lastIndexOf('\n', index) + 1, index + name.length);
    return exported.has(name) && line.replace(/^(?:var|let|const) /, '') !== name ? [name] : [];
  });
}

describe('the bundled program', () => {
  let home = '';
  let modules: readonly Module[] = [];
  beforeAll(async () => {
    home = mkdtempSync(join(tmpdir(), 'foldwright-program-'));
    modules = await modulesOf(root, join(home, 'program'), 'mark');
    await bundle(root, join(home, 'program'), 'mark');
  });
  afterAll(() => { rmSync(home, { recursive: true, force: true }); });

  it('has a script of every module, with its compiled code, which V8 takes', () => {
    const program = join(home, 'program');
    expect(existsSync(join(program, 'main.js')) && existsSync(join(program, 'thread.js'))).toBe(true);
    const scripts = readdirSync(program).filter((name) => name.endsWith('.js'));
    expect([...scripts].sort()).toEqual(modules.map(({ name }) => name).sort());
    const refused = scripts.filter((name) => {
      const filename = join(program, name);
      return new Script(readFileSync(filename, 'latin1'), { filename, cachedData: readFileSync(`${filename}.code`) }).cachedDataRejected;
    });
    expect(refused).toEqual([]);
  });

  it('exports no variable that changes after its module has run', () => {
    expect(modules.flatMap(({ text }) => exportedIn(text)).length).toBeGreaterThan(100);
    expect(modules.flatMap(({ text }) => changedIn(text))).toEqual([]);
    expect(changedIn('var one = 1;\nvar two = 2;\nfunction f() {\n  two = 3;\n}\nexport {\n  one,\n  two\n};\n')).toEqual(['two']);
  });

  it('has no module that needs itself', () => {
    const needs = new Map(modules.map(({ name, imports }) => [`./${name}`, imports.filter(({ kind }) => kind === 'import-statement').map(({ path }) => path)]));
    const reached = (from: string, seen: ReadonlySet<string>): boolean => seen.has(from) || (needs.get(from) ?? []).some((path) => reached(path, new Set([...seen, from])));
    expect([...needs.keys()].filter((name) => reached(name, new Set()))).toEqual([]);
  });
});

describe('a module as a script', () => {
  const imports = [{ path: './a.js', kind: 'import-statement' }, { path: 'node:fs', kind: 'import-statement' }, { path: './late.js', kind: 'dynamic-import' }];
  const text = 'import whole, {\n  one,\n  two as second\n} from "./a.js";\nimport * as files from "node:fs";\nvar three = async () => [whole, one, second, files, await import("./late.js")];\nexport {\n  three,\n  one as first\n};\n';

  it('takes what it is given, loads what it asks for later, and returns what it exports', async () => {
    const { needs, script } = scriptOf(text, imports);
    expect(needs).toEqual(['./a.js', 'node:fs']);
    const made = new Script(script).runInThisContext() as (given: readonly unknown[], load: (name: string) => Promise<unknown>) => Promise<{ readonly three: () => Promise<unknown>; readonly first: unknown }>;
    const { three, first } = await made([{ default: 'whole', one: 1, two: 2 }, 'files'], (name) => Promise.resolve(`loaded ${name}`));
    expect(first).toBe(1);
    expect(await three()).toEqual(['whole', 1, 2, 'files', 'loaded ./late.js']);
  });

  it('is refused where an import was not found as it is told', () => {
    expect(() => scriptOf(text, imports.slice(1))).toThrow('imports found');
    expect(() => scriptOf(text, [...imports, { path: './more.js', kind: 'dynamic-import' }])).toThrow('imports found');
  });
});
