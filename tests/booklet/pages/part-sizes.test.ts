import { describe, expect, it } from 'vitest';
import { countKey, countsBySize, sizeLineCount, sizeLines, sizeText } from '../../../src/booklet/pages/part-sizes.ts';
import { sheets } from '../../../src/booklet/pages/sheet.ts';
import { languagesIn, loadWords, splitIsolates, type Words } from '../../../src/booklet/words/index.ts';
import { textWidth } from '../../../src/draw/kit/lettering.ts';
import type { Model, Part } from '../../../src/model/index.ts';
import { varietyOf } from '../../../src/parts/varieties.ts';
import { everySize, modelOf } from '../../support/items.ts';
import { localesOnDisk } from './rack-booklet.ts';

const locales = localesOnDisk();
const languages: readonly Words[] = languagesIn(locales).map((lang) => loadWords(locales, lang));
const plain = (text: string): string => splitIsolates(text).map((piece) => piece.text).join('');

/** Height of the capitals of the type that a step's margin writes sizes in: 10.5 pt, mm. */
const CAP = 10.5 * (25.4 / 72) * 0.714;

describe('the size of a part in a step’s margin', () => {
  it('has both sides of a flat panel, thickness and length of a cable, each figure on a line of its own where it has three digits', () => {
    const [words] = languages;
    if (words === undefined) throw new Error('no language');
    const lines = (size: readonly number[], isRound?: true): readonly string[] => sizeLines(words, { size, ...(isRound ? { isRound } : {}) }).map(plain).map((line) => line.replaceAll('\u00a0', ' '));
    expect(lines([792, 239])).toEqual(['792 ×', '239 mm']);
    expect(lines([4, 1680], true)).toEqual(['Ø4 ×', '1680 mm']);
    expect(lines([6, 58], true)).toEqual(['Ø6 × 58 mm']);
    expect(lines([1500])).toEqual(['1500 mm']);
    expect(lines([])).toEqual([]);
  });

  it('says on its lines what it says on one, in every language, and no line is wider than the margin', () => {
    for (const { item, size } of everySize) {
      const model = modelOf(item, size);
      for (const counted of countsBySize(model, model.parts.map(({ id }) => id))) {
        for (const words of languages) {
          const lines = sizeLines(words, counted).map(plain);
          expect(lines).toHaveLength(sizeLineCount(counted));
          expect(lines.join('\u00a0')).toBe(plain(sizeText(words, counted) ?? ''));
          for (const line of lines) expect([line, textWidth(line.replaceAll('\u00a0', ' '), CAP, 400) <= sheets.a4.margin]).toEqual([line, true]);
        }
      }
    }
  });
});

/** What makes a part another than one of its kind: its length and outline, its pattern, or what it is. */
function madeAs({ plates, patterns }: Model, { id, kind, shape }: Part): string {
  const holding = (lists: readonly { readonly partIds: readonly string[] }[]): number => lists.findIndex(({ partIds }) => partIds.includes(id));
  if (kind === 'flat-panel') return `flat panel ${holding(plates)}`;
  if (kind === 'panel') return `pattern ${holding(patterns)}`;
  return shape.form === 'tube' ? `${shape.outside} ${shape.length.toFixed(1)}` : shape.form === 'cable' ? `${shape.diameter} ${shape.length.toFixed(0)}` : shape.form;
}

it.each(everySize)('two different parts of one kind have another size, letter or picture: $name', ({ item, size }) => {
  const model = modelOf(item, size);
  const told = model.parts.map((part) => {
    const [counted] = countsBySize(model, [part.id]);
    return { told: `${part.kind} ${varietyOf(model, part.kind, [part.id])} ${counted === undefined ? '' : countKey(counted)}`, made: madeAs(model, part) };
  });
  const makes = new Map<string, ReadonlySet<string>>();
  for (const each of told) makes.set(each.told, new Set([...(makes.get(each.told) ?? []), each.made]));
  expect([...makes].filter(([, made]) => made.size > 1).map(([name, made]) => [name, ...made])).toEqual([]);
});
