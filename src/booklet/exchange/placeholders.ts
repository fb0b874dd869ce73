/** What the booklet puts in the place of `{{name}}`: an example for the translator. */
const examples: Readonly<Record<string, string>> = {
  blank: '1124 × 624 mm',
  caption: 'Lay the frame on the panel.',
  check: 'The tab lies flat on the panel.',
  count: '12',
  figure: '72.1 mm',
  font: 'Noto Sans',
  holes: '8',
  item: 'Low shelf',
  length: '637 mm',
  letter: 'A',
  letters: 'A: Width, B: Depth',
  licence: 'SIL Open Font License 1.1',
  limit: '65 mm',
  load: '30 kg',
  name: 'Standard',
  number: '7',
  overall: '1124 × 624 × 1500 mm',
  parts: '2 long tubes and 1 panel',
  piece: 'Post',
  pieces: 'Post of 1500 mm, Long tube of 1000 mm',
  reviewer: 'A. Reader',
  revision: '3',
  side: 'front side',
  sides: '540 × 300 mm',
  size: 'Standard',
  thickness: '80 mm',
  time: '8 h 50 min',
  value: '8',
};

/** Characters that a placeholder counts for, where that is not its example's length: a side may come with an article. */
const lengths: Readonly<Record<string, number>> = { side: 14 };

export type Part = { readonly text: string } | { readonly placeholder: string };

/** A text cut at its placeholders, in order; together the parts give the text again. */
export function partsOf(text: string): readonly Part[] {
  const parts: Part[] = [];
  let from = 0;
  for (const match of text.matchAll(/\{\{(.+?)\}\}/g)) {
    if (match.index > from) parts.push({ text: text.slice(from, match.index) });
    parts.push({ placeholder: match[1] ?? '' });
    from = match.index + match[0].length;
  }
  if (from < text.length) parts.push({ text: text.slice(from) });
  return parts;
}

/** Names of the placeholders in a text, each once, in the order of the text. */
export const placeholdersOf = (text: string): readonly string[] =>
  [...new Set(partsOf(text).flatMap((part) => ('placeholder' in part ? [part.placeholder] : [])))];

export const asWritten = (placeholder: string): string => `{{${placeholder}}}`;

export const exampleOf = (placeholder: string): string => examples[placeholder] ?? placeholder;

/** Characters (Unicode code points) that a placeholder counts for in a limited text. */
export const placeholderLength = (placeholder: string): number => lengths[placeholder] ?? [...exampleOf(placeholder)].length;

/** Length of a text in Unicode code points, its placeholders counted as what they stand for. */
export const textLength = (text: string): number =>
  partsOf(text).reduce((sum, part) => sum + ('placeholder' in part ? placeholderLength(part.placeholder) : [...part.text].length), 0);
