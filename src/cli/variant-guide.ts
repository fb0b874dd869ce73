import { glyphsFrom, type Words } from '../booklet/index.ts';
import * as drawing from '../draw/index.ts';
import { guidePage, guideScript, type GuideInput } from '../guide/index.ts';
import type { Solids } from '../model/index.ts';
import type { Guided } from './crew/types.ts';

/** The phone guide of a size in these languages, as one HTML page. English names the controls first where it is among them. */
export async function variantGuide(guided: Omit<Guided, 'langs'>, languages: readonly Words[], solids: Solids): Promise<string> {
  const { item, model, plan, report, pictures, contentMark, variants } = guided;
  const glyphs = glyphsFrom(drawing);
  const telling = (words: Words): GuideInput['tellings'][0] => ({
    model, plan, report, variants, words, glyphs, contentMark,
    revision: item.revision,
    despiteFindings: report.findings.some((finding) => finding.verdict === 'fail'),
  });
  const [first, ...others] = [...languages].sort((one, other) => Number(other.about.source) - Number(one.about.source)).map(telling);
  if (first === undefined) throw new RangeError('a guide needs one language or more');
  return guidePage({ tellings: [first, ...others], pictures, solids, script: guideScript() });
}
