// Plain JavaScript, because it runs before TypeScript can be read.

/** One `import` of the bundle, as esbuild sets it: at the start of a line, `names` over several lines where they are many. */
const IMPORT = /^import (?:(?<names>[^"]*?) from )?"(?<from>[^"]+)";$/gm;
const EXPORT = /^export \{\n(?<names>[^}]*)\};$/gm;
const DYNAMIC = /\bimport\("(?<from>[^"]+)"\)/g;

/**
 * A module of the bundle as a script: V8 keeps the compiled code of scripts, of modules Node 20 lets it keep none. The
 * script is a function that is given what is imported and `load`, and returns what is exported. Nobody sees an exported
 * variable change after its module has run; `tests/cli/program.test.ts` proves that none does.
 * @param {string} text the module, all of it ASCII
 * @param {readonly { path: string, kind: string }[]} imports what it imports, as esbuild tells it
 * @returns {{ script: string, needs: string[] }} what it needs before it runs is named in the order in which it is to run
 * @throws {Error} where what is found is not what esbuild tells
 */
export function scriptOf(text, imports) {
  const needs = [];
  const lazily = [];
  const taken = [];
  const inside = text
    .replace(IMPORT, (_, names, from) => {
      if (!needs.includes(from)) needs.push(from);
      if (names !== undefined) taken.push(bindings(names, `given[${needs.indexOf(from)}]`));
      return '';
    })
    .replace(DYNAMIC, (_, from) => { lazily.push(from); return `load(${JSON.stringify(from)})`; });
  const given = [];
  const body = inside.replace(EXPORT, (_, names) => { given.push(...listed(names).map(({ name, as }) => `${as}: ${name}`)); return ''; });
  const told = (kind) => [...new Set(imports.filter((each) => each.kind === kind).map(({ path }) => path))].sort();
  if (String(told('import-statement')) !== String([...needs].sort()) || String(told('dynamic-import')) !== String([...new Set(lazily)].sort())) {
    throw new Error(`imports found: ${[...needs, ...lazily].join(', ')}; told: ${imports.map(({ path }) => path).join(', ')}`);
  }
  return { needs, script: `(async (given, load, require) => {"use strict";${taken.join('')}\n${body}\nreturn { ${given.join(', ')} };\n})` };
}

/** `import` and `export` list names alike: `one, two as three`. */
const listed = (names) => names.split(',').map((each) => each.trim()).filter((each) => each !== '').map((each) => {
  const [name, as = name] = each.split(' as ');
  return { name, as };
});

/** The names that an import binds, taken from the module's exports; a variable each, so that reading one costs no look-up. */
function bindings(names, source) {
  const [, whole] = /^\* as (\S+)$/.exec(names) ?? [];
  if (whole !== undefined) return `const ${whole} = ${source};`;
  const [, usual, rest = ''] = /^([^{},\s]+)?,?\s*(?:\{([^}]*)\})?$/.exec(names) ?? [names];
  const all = [...(usual === undefined ? [] : [{ name: 'default', as: usual }]), ...listed(rest)];
  return `const { ${all.map(({ name, as }) => `${name}: ${as}`).join(', ')} } = ${source};`;
}
