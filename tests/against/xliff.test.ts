// XLIFF 2.1, OASIS Standard, 13 February 2018: constraints of its elements and modules (R: prose and schemas of the
// committee's drafts of 2.1 in a second copy; names with # are the standard's anchors, K and F the rules of its Schematron).
import { SaxesParser, type SaxesTagNS } from 'saxes';
import { describe, expect, it } from 'vitest';
import { exportWords, type ReferencePicture } from '../../src/booklet/exchange/index.ts';
import { localesOnDisk } from '../booklet/pages/rack-booklet.ts';

const CORE = 'urn:oasis:names:tc:xliff:document:2.0';
const RES = 'urn:oasis:names:tc:xliff:resourcedata:2.0';
const SLR = 'urn:oasis:names:tc:xliff:sizerestriction:2.0';

interface Node {
  readonly name: string;
  readonly ns: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Node[];
  readonly up: Node | null;
  text: string;
}

/** A reader of its own, without what the product knows of XLIFF. */
function tree(xml: string): Node {
  const root: Node = { name: '', ns: '', attributes: {}, children: [], up: null, text: '' };
  let open = root;
  const parser = new SaxesParser({ xmlns: true });
  const attributes = (tag: SaxesTagNS): Record<string, string> => Object.fromEntries(Object.values(tag.attributes).map(({ name, value }) => [name, value]));
  parser.on('error', (error) => { throw error; });
  parser.on('opentag', (tag) => {
    const node: Node = { name: tag.local, ns: tag.uri, attributes: attributes(tag), children: [], up: open, text: '' };
    open.children.push(node);
    open = node;
  });
  parser.on('text', (text) => { open.text += text; });
  parser.on('closetag', () => { open = open.up ?? root; });
  parser.write(xml).close();
  const [xliff] = root.children;
  if (xliff === undefined) throw new Error('no root');
  return xliff;
}

const all = (node: Node): readonly Node[] => [node, ...node.children.flatMap(all)];
const named = (node: Node, name: string, ns = CORE): readonly Node[] => all(node).filter((each) => each.name === name && each.ns === ns);
const ids = (nodes: readonly Node[]): readonly string[] => nodes.map(({ attributes }) => attributes['id'] ?? '');
const expectUnique = (values: readonly string[]): void => { expect(values).toEqual([...new Set(values)]); };

const pictures = ['action-brace', 'step-brace', 'sign-sharp', 'part-post', 'check-mark', 'tool-saw', 'lettered'].map((id): ReferencePicture => ({ id, shows: 'it', svg: '<svg/>' }));
const locales = localesOnDisk();
const fresh = Object.fromEntries(Object.entries(locales).filter(([path]) => path.startsWith('en/')));
const samples = [
  ['fr', tree(exportWords(locales, 'fr', pictures, 'fr-pictures').xliff)],
  ['ar', tree(exportWords(locales, 'ar', pictures, 'ar-pictures').xliff)],
  ['uk', tree(exportWords(fresh, 'uk', pictures, 'uk-pictures').xliff)],
] as const;

describe.each(samples)('the exported words (%s) are an XLIFF 2.1 document', (lang, xliff) => {
  const files = named(xliff, 'file');
  const units = named(xliff, 'unit');

  it('#xliff: version and source language are required, the target language where there are targets (F1)', () => {
    expect([xliff.name, xliff.ns]).toEqual(['xliff', CORE]);
    expect(xliff.attributes).toMatchObject({ version: '2.1', srcLang: 'en', trgLang: lang });
    expect(xliff.children.map(({ name }) => name)).toEqual(files.map(() => 'file'));
  });

  it('#id: files are unique in the document, groups and units in their file (K1, K2, K3), all of them NMTOKENs', () => {
    expect(units.length).toBeGreaterThan(200);
    expectUnique(ids(files));
    for (const file of files) for (const name of ['group', 'unit']) expectUnique(ids(named(file, name)));
    for (const id of [...ids(files), ...ids(named(xliff, 'group')), ...ids(units), ...ids(named(xliff, 'ph')), ...ids(named(xliff, 'data'))]) expect(id).toMatch(/^[\w.:-]+$/);
  });

  it('#file, #group, #unit: modules first, then notes, original data, and units or segments, of which there is one at least (F3)', () => {
    const rank = ({ ns, name }: Node): number => (ns === CORE ? ['notes', 'originalData'].indexOf(name) + 1 || 3 : 0);
    for (const node of [...files, ...named(xliff, 'group'), ...units]) {
      const ranks = node.children.map(rank);
      expect(ranks).toEqual([...ranks].sort());
      expect(ranks.at(-1)).toBe(3);
    }
    for (const unit of units) expect(unit.children.filter(({ name }) => name === 'segment')).toHaveLength(1);
  });

  it('#group: type is of an own authority', () => {
    for (const group of named(xliff, 'group')) expect(group.attributes['type']).toMatch(/^(?!xlf:)[^\s:]+:[^\s:]+$/);
  });

  it('#segment, #state: a source, then a target in all states but the first (F29)', () => {
    for (const segment of named(xliff, 'segment')) {
      const parts = segment.children.map(({ name }) => name);
      expect(parts).toEqual(segment.attributes['state'] === 'initial' ? ['source'] : ['source', 'target']);
      expect(['initial', 'translated', 'reviewed', 'final']).toContain(segment.attributes['state']);
    }
    expect(new Set(named(xliff, 'segment').map(({ attributes }) => attributes['state']))).toEqual(new Set([lang === 'uk' ? 'initial' : 'translated']));
  });

  it('#id: inline codes are unique in source and in target, and the same code has the same id in both (K6S, K6T)', () => {
    for (const unit of units) {
      const [source = [], target = []] = ['source', 'target'].map((name) => named(unit, name).flatMap((each) => named(each, 'ph')));
      expectUnique(ids(source));
      expectUnique(ids(target));
      const data = new Map(source.map(({ attributes }) => [attributes['id'], attributes['dataRef']]));
      for (const { attributes } of target) expect([undefined, attributes['dataRef']]).toContain(data.get(attributes['id']));
    }
  });

  it('#dataref, #ph: each code refers to original data of its unit, whose ids are unique (K5C, F15), and is empty', () => {
    expect(named(xliff, 'ph').length).toBeGreaterThan(50);
    for (const unit of units) {
      const data = named(unit, 'data');
      expectUnique(ids(data));
      for (const code of named(unit, 'ph')) {
        expect(ids(data)).toContain(code.attributes['dataRef']);
        expect([code.children.length, code.text]).toEqual([0, '']);
      }
    }
    for (const { text } of named(xliff, 'data')) expect(text).toMatch(/^\{\{\w+\}\}$/);
  });

  it('#subtype: xlf:var is of the type ui (F8); nothing that is fixed in order may be copied or deleted (F10)', () => {
    for (const { attributes } of named(xliff, 'ph')) {
      expect([attributes['type'], attributes['subType']]).toEqual(['ui', 'xlf:var']);
      expect(attributes['canReorder']).toBeUndefined();
    }
  });

  it('#editinghints: a code that must not be deleted stands in the target too (F20, F20W)', () => {
    for (const segment of named(xliff, 'segment')) {
      const [source, target] = segment.children;
      const kept = (source === undefined ? [] : named(source, 'ph')).filter(({ attributes }) => attributes['canDelete'] === 'no');
      if (target !== undefined) expect(ids(named(target, 'ph'))).toEqual(expect.arrayContaining([...ids(kept)]));
    }
  });

  it('#srcdir, #trgdir, #xml_space: directions by language, white space as it stands', () => {
    for (const { attributes } of files) expect(attributes).toMatchObject({ srcDir: 'ltr', trgDir: lang === 'ar' ? 'rtl' : 'ltr', 'xml:space': 'preserve' });
  });

  it('#resourceData_module: each reference has its item in the file; items are unique, with a MIME type and an empty source (res1, res2, res3, res7)', () => {
    expect(named(xliff, 'resourceItemRef', RES).length).toBeGreaterThan(pictures.length);
    for (const file of files) {
      const items = named(file, 'resourceItem', RES);
      expectUnique(ids(items));
      for (const item of items) {
        expect(item.attributes).toMatchObject({ mimeType: 'image/svg+xml', context: 'yes' });
        expect(item.children.map(({ name, ns, attributes, children }) => [name, ns, attributes, children])).toEqual([['source', RES, { href: `${lang}-pictures/${item.attributes['id'] ?? ''}.svg` }, []]]);
      }
      for (const { attributes } of named(file, 'resourceItemRef', RES)) expect(ids(items)).toContain(attributes['ref']);
    }
  });

  it('#size_restriction_module: limits in code points, by the profile that the file names; codes say how much they count', () => {
    const limited = units.filter(({ attributes }) => attributes['slr:sizeRestriction'] !== undefined);
    expect(limited.length).toBeGreaterThan(30);
    for (const file of files) {
      const [profile] = named(file, 'profiles', SLR);
      const limits = limited.filter((unit) => all(file).includes(unit));
      expect(profile?.attributes['generalProfile']).toBe(limits.length === 0 ? undefined : 'xliff:codepoints');
      for (const { attributes } of limits) expect(attributes['slr:sizeRestriction']).toMatch(/^\d+$/);
    }
    for (const unit of limited) {
      for (const { attributes } of named(unit, 'ph')) expect(attributes['slr:sizeInfo']).toMatch(/^\d+$/);
      // The sum of the standard's profile: code points of the text, and for each code what it says.
      for (const target of named(unit, 'target')) {
        const codes = named(target, 'ph').reduce((sum, { attributes }) => sum + Number(attributes['slr:sizeInfo']), 0);
        expect([...target.text].length + codes).toBeLessThanOrEqual(90);
      }
    }
  });
});

describe('a unit for each plural form of the language', () => {
  // Unicode CLDR 48, "Language Plural Rules" (CHECKS "Unicode and CLDR", R/C); Ukrainian from memory.
  it.each([['fr', ['one', 'many', 'other']], ['ar', ['zero', 'one', 'two', 'few', 'many', 'other']], ['uk', ['one', 'few', 'many', 'other']]])('%s', (lang, forms) => {
    const xliff = samples.find(([name]) => name === lang)?.[1];
    const groups = xliff === undefined ? [] : named(xliff, 'group');
    expect(groups.length).toBeGreaterThan(10);
    for (const group of groups) expect(ids(named(group, 'unit'))).toEqual(forms.map((form) => `${group.attributes['id'] ?? ''}_${form}`));
  });
});
