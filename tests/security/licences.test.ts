import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const project = fileURLToPath(new URL('../../', import.meta.url));
const readJson = (path: string): unknown => JSON.parse(readFileSync(join(project, path), 'utf8'));

/** A package as the lock file has it. */
interface Locked {
  readonly version?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
  readonly link?: boolean;
}

/**
 * Licences, by their SPDX names, under which all of it may be used, changed and given away, also what lies inside a
 * guide or a booklet: they ask for a notice, not for a source or a fee. Of fonts: the Open Font License 1.1 lets them
 * stand in documents of any licence (OFL 1.1, clause 5; R).
 */
const ALLOWED = ['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'BlueOak-1.0.0', 'Python-2.0', 'PSF-2.0', 'Zlib', 'Unlicense', 'CC0-1.0'];
const FONTS = 'OFL-1.1';
/**
 * The one that asks for more: a library of pixels that the solid kernel's package names for reading textures, which we
 * have none of. It lies there, is loaded by nothing and goes into nothing that is given away.
 */
const LYING_BY = { licence: 'LGPL-3.0-or-later', packages: /^node_modules\/@img\/sharp-/, library: /vips|sharp/ };

const { packages } = readJson('package-lock.json') as { readonly packages: Readonly<Record<string, Locked>> };
/** All packages that somebody who uses the program has: those that it asks for, and those that these ask for. */
const used = Object.entries(packages).filter(([path, { dev, link }]) => path !== '' && dev !== true && link !== true).map(([path]) => path);
/** Some are for other machines than this one, and not there. */
const isThere = (path: string): boolean => existsSync(join(project, path, 'package.json'));
const there = used.filter(isThere);
/** What only tests and lint need: it goes into nothing that is given away. */
const forTests = Object.entries(packages).filter(([path, { dev }]) => path !== '' && dev === true && isThere(path)).map(([path]) => path);
/** Licences that ask for more, of packages that tests alone use. */
const FOR_TESTS = ['MPL-2.0', 'LGPL-2.1-only'];

interface Manifest {
  readonly name: string;
  readonly license?: string | { readonly type: string };
  readonly licenses?: readonly { readonly type: string }[];
}

function licenceOf(path: string): string {
  const { license, licenses } = readJson(`${path}/package.json`) as Manifest;
  return typeof license === 'string' ? license : license?.type ?? licenses?.map(({ type }) => type).join(' OR ') ?? 'none told';
}

/** Whether one of the licences among which may be chosen is allowed (SPDX expressions with OR; AND asks for all). */
const isAllowed = (licence: string, allowed: readonly string[]): boolean =>
  licence.replace(/^\((.*)\)$/, '$1').split(' OR ').some((choice) => choice.split(' AND ').every((each) => allowed.includes(each.trim().replace(/^\((.*)\)$/, '$1'))));

describe('licences', () => {
  it('of all packages that the program uses let it be given away', () => {
    expect(there.length).toBeGreaterThan(60);
    expect(used.filter((path) => !there.includes(path) && packages[path]?.optional !== true)).toEqual([]);
    const wrong = there.filter((path) => !path.startsWith('node_modules/@fontsource/') && !isAllowed(licenceOf(path), LYING_BY.packages.test(path) ? [...ALLOWED, LYING_BY.licence] : ALLOWED));
    expect(wrong.map((path) => `${path}: ${licenceOf(path)}`)).toEqual([]);
  });

  it('that ask for more are of what lies by and is not loaded', () => {
    const told = execFileSync(process.execPath, ['--input-type=module', '-e', 'await import("manifold-3d").then(({ default: start }) => start()); console.log(JSON.stringify(process.report.getReport().sharedObjects))'], { cwd: project, encoding: 'utf8' });
    const libraries = JSON.parse(told) as readonly string[];
    expect(libraries.length).toBeGreaterThan(0);
    expect(libraries.filter((library) => LYING_BY.library.test(library))).toEqual([]);
  });

  it('of all fonts let them stand in booklets and guides of any licence, and come with them', () => {
    const fonts = there.filter((path) => path.startsWith('node_modules/@fontsource/'));
    expect(fonts.length).toBe(6);
    for (const path of fonts) {
      expect([path, licenceOf(path)]).toEqual([path, FONTS]);
      expect(readFileSync(join(project, path, 'LICENSE'), 'utf8')).toContain('SIL OPEN FONT LICENSE Version 1.1');
    }
  });

  it('are told with the text of a licence by all packages that hand on code into the guide', () => {
    // What the guide's script is bundled from: our own few files, and no package.
    const browser = join(project, 'src/guide/browser');
    const imports = readdirSync(browser, { recursive: true, encoding: 'utf8' }).filter((path) => /\.tsx?$/.test(path))
      .flatMap((path) => [...readFileSync(join(browser, path), 'utf8').matchAll(/^import (?!type).*from '([^.][^']*)';$/gm)].map(([, name]) => name));
    expect(imports).toEqual([]);
  });

  it('stand in DEVELOPERS.md as they are', () => {
    const told = readFileSync(join(project, 'DEVELOPERS.md'), 'utf8');
    const all = [...new Set(there.map(licenceOf))].flatMap((licence) => licence.replaceAll(/[()]/g, '').split(/ (?:OR|AND) /)).filter((licence) => [...ALLOWED, FONTS].includes(licence));
    expect([...new Set(all)].filter((licence) => !told.includes(licence))).toEqual([]);
  });

  it('of what tests alone use are told too, by name where they ask for more', () => {
    expect(forTests.length).toBeGreaterThan(60);
    expect(forTests.filter((path) => !isAllowed(licenceOf(path), [...ALLOWED, ...FOR_TESTS])).map((path) => `${path}: ${licenceOf(path)}`)).toEqual([]);
    const [, told = ''] = /^All are under (.*)$/m.exec(readFileSync(join(project, 'DEVELOPERS.md'), 'utf8')) ?? [];
    const more = forTests.filter((path) => !isAllowed(licenceOf(path), ALLOWED) && packages[path]?.optional !== true);
    expect(more.length).toBeGreaterThan(0);
    expect(more.filter((path) => !told.includes(`\`${path.replace(/^.*node_modules\//, '')}\``))).toEqual([]);
  });
});
