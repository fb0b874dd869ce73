import { glyphsFrom, PUBLICATIONS, type Words, type WrittenCopy } from '../booklet/index.ts';
import * as drawing from '../draw/index.ts';
import { guidePage, guideScript, type GuideInput } from '../guide/index.ts';
import { loadSolids, type Model } from '../model/index.ts';
import { contentMark, type Variant } from './record.ts';

/** The phone guide of a size in these languages, as one HTML page. English names the controls first where it is among them. */
export async function variantGuide(variant: Variant, variants: readonly Model[], languages: readonly Words[]): Promise<string> {
  const { item, model, plan, report, pictures } = variant;
  const [mark, glyphs] = [contentMark(variant), glyphsFrom(drawing)];
  const telling = (words: Words): GuideInput['tellings'][0] => ({
    model, plan, report, variants, words, glyphs,
    revision: item.revision,
    contentMark: mark,
    despiteFindings: report.findings.some((finding) => finding.verdict === 'fail'),
  });
  const [first, ...others] = [...languages].sort((one, other) => Number(other.about.source) - Number(one.about.source)).map(telling);
  if (first === undefined) throw new RangeError('a guide needs one language or more');
  return guidePage({ tellings: [first, ...others], pictures, solids: await loadSolids(), script: guideScript() });
}

/** The guide as a copy to publish. */
export const guideCopy = (variant: Variant, variants: readonly Model[], languages: readonly Words[]): WrittenCopy => ({
  made: 'written',
  file: `${variant.item.name}-${variant.model.size}${PUBLICATIONS['phone-guide'].ending}`,
  text: () => variantGuide(variant, variants, languages),
  isTold: true,
});
