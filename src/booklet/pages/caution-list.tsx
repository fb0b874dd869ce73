import type { ReactNode } from 'react';
import { GlyphMark } from './glyph-mark.tsx';
import type { BookletInput, Caution } from './types.ts';

interface CautionListProps {
  readonly input: BookletInput;
  readonly cautions: readonly Caution[];
  /** Cautions whose sentence is another than `says`: the key under the caution. */
  readonly sentences?: Sentences;
}

export type Sentences = Partial<Readonly<Record<Caution, string>>>;

/** Safety signs; with words, each sign's sentence beside it and the sentence on local codes, which has no sign. */
export function CautionList({ input, cautions, sentences = {} }: CautionListProps): ReactNode {
  const { words, glyphs, edition } = input;
  return (
    <>
      <ul className={`cautions ${edition}`}>
        {cautions.map((caution) => (
          <li key={caution}>
            <GlyphMark glyph={glyphs.caution(caution)} label={words.t(`cautions.${caution}.sign`)} height={edition === 'words' ? 19 : 32} />
            {edition === 'words' && <span>{words.t(`cautions.${caution}.${sentences[caution] ?? 'says'}`)}</span>}
          </li>
        ))}
      </ul>
      {edition === 'words' && <p className="defer">{words.t('booklet.defer')}</p>}
    </>
  );
}
