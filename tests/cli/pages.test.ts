import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildModel } from '../../src/model/index.ts';
import { planItem } from '../../src/plan/index.ts';
import { rackWith, solids } from '../support/rack.ts';
import { newWorkshop, type Workshop } from './workshop.ts';

const project = fileURLToPath(new URL('../../', import.meta.url));
const text = (path: string): string => readFileSync(join(project, path), 'utf8');
const pages = ['README.md', 'booklets/README.md', 'steps/README.md', 'locales/README.md'];
/** The first page and all that it sends on to. */
const readme = pages.map(text).join('\n');

/** Names of all fields that a JSON Schema knows, at any depth. */
function fieldsOf(schema: unknown): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const own = 'properties' in schema && typeof schema.properties === 'object' && schema.properties !== null ? Object.keys(schema.properties) : [];
  return [...own, ...Object.values(schema).flatMap(fieldsOf)];
}

let shop: Workshop;
beforeAll(() => { shop = newWorkshop(); });
afterAll(() => { shop.close(); });

/** The anchor of a heading: small letters, blanks as dashes, no other signs (common practice, no source). */
const anchorOf = (heading: string): string => heading.toLowerCase().replaceAll(/[^\p{L}\p{N} -]/gu, '').replaceAll(' ', '-');

describe('README.md', () => {
  it('says what it is, two commands and five minutes on a page, and sends on to the rest', () => {
    const front = text('README.md');
    expect(front.split('\n').length).toBeLessThan(90);
    for (const page of pages.slice(1)) expect(front).toContain(`](${page})`);
  });

  it.each([...pages, 'DEVELOPERS.md'])('has no link in %s that leads nowhere', (page) => {
    const links = [...text(page).matchAll(/\]\(([^)\s]+)\)/g)].map(([, link]) => link ?? '').filter((link) => !/^https?:/.test(link));
    const lost = links.filter((link) => {
      const [path = '', anchor] = link.split('#');
      const target = path === '' ? page : join(dirname(page), path);
      if (!existsSync(join(project, target))) return true;
      return anchor !== undefined && ![...text(target).matchAll(/^#+ (.*)$/gm)].some(([, heading]) => anchorOf(heading ?? '') === anchor);
    });
    expect(lost).toEqual([]);
  });

  it.each(['steps/schemas/item.schema.json', 'steps/schemas/kit.schema.json', 'steps/schemas/stock.schema.json'])('names every field of %s', (path) => {
    const fields = [...new Set(fieldsOf(JSON.parse(text(path))))];
    expect(fields.length).toBeGreaterThan(10);
    expect(fields.filter((field) => !new RegExp(`\\b${field}\\b`).test(readme))).toEqual([]);
  });

  it('names every command and option of the help, and no other', async () => {
    const commands = [...(await shop.ask(['--help'])).out.matchAll(/^ {2}(\w+) (?:\[|<| {2})/gm)].flatMap(([, name]) => (name === undefined || name === 'help' ? [] : [name]));
    const table = readme.split('| command | does |')[1]?.split('\n\n')[0] ?? '';
    expect(new Set(commands)).toEqual(new Set([...table.matchAll(/^\| `(\w+)/gm)].map(([, name]) => name)));
    expect(commands).toContain('make');
    const helped = [...commands.map((command) => [command]), ['words', 'export'], ['words', 'import'], ['stock', 'export'], ['stock', 'import'], ['stock', 'sheet']];
    const helps = await Promise.all(helped.map(async (command) => (await shop.ask([...command, '--help'])).out));
    const options = new Set(helps.flatMap((help) => help.match(/--[a-z-]+/g) ?? []).filter((option) => option !== '--help'));
    for (const command of commands) expect(readme).toMatch(new RegExp(`^\\| \`${command}\\b`, 'm'));
    expect([...options].sort()).toEqual([...new Set(readme.match(/(?<=^\| `)--[a-z-]+/gm))].sort());
  });

  it('shows the message that the command gives for the mistake it describes', async () => {
    shop.change('steps/rack/item.yaml', '  standard:\n    width: 1000 mm', '  standard:\n    width: 1200 mm');
    const { told } = await shop.ask(['check', 'rack']);
    expect(told).toMatch(/^steps\/rack\/item\.yaml:/);
    expect(readme).toContain(told);
    shop.change('steps/rack/item.yaml', '  standard:\n    width: 1200 mm', '  standard:\n    width: 1000 mm');
  });

  it('gives a wish for the order that is granted', () => {
    const [, wish = ''] = /```yaml\n(order:\n[^]*?)```/.exec(readme) ?? [];
    const item = rackWith('order: []\n', wish);
    const keys = planItem(buildModel(item, 'low'), item.order, solids).steps.map(({ key }) => key);
    const [{ first, then } = { first: '', then: '' }] = item.order;
    expect(keys).toContain(first);
    expect(keys.indexOf(first)).toBeLessThan(keys.indexOf(then));
    expect(planItem(buildModel(item, 'low'), [], solids).steps.map(({ key }) => key)).not.toEqual(keys);
  });

  // Made again by `npx vitest run tests/cli/pages.test.ts -u`.
  it('shows the picture that the command it names draws today', async () => {
    const [, command = ''] = /as drawn by `npx foldwright ([^`]+)`/.exec(readme) ?? [];
    const { code, told } = await shop.run([...command.split(' '), '--out', 'picture.svg']);
    expect({ code, told }).toEqual({ code: 0, told: '' });
    await expect(shop.read('picture.svg').toString()).toMatchFileSnapshot('../../steps/rack/picture.svg');
  });
});

describe('DEVELOPERS.md', () => {
  it('says of every package why it is used, and of no other', () => {
    const { dependencies, devDependencies } = JSON.parse(text('package.json')) as Readonly<Record<'dependencies' | 'devDependencies', Readonly<Record<string, string>>>>;
    const rows = text('DEVELOPERS.md').split('| package | why |')[1]?.match(/^\| `.*? \|/gm) ?? [];
    const named = rows.flatMap((row) => [...row.matchAll(/`([^`]+)`/g)].map(([, name]) => name ?? ''));
    expect(named.sort()).toEqual([...Object.keys(dependencies), ...Object.keys(devDependencies)].sort());
  });
});
