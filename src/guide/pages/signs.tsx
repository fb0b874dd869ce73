import type { ReactNode } from 'react';
import type { Caution } from '../../plan/index.ts';
import type { Maker } from './page.ts';
import { Mark, Said } from './said.tsx';

interface SignsProps {
  readonly maker: Maker;
  readonly cautions: readonly Caution[];
  /** Cautions whose sentence is another than `says`: the key under the caution. */
  readonly sentences?: Partial<Readonly<Record<Caution, string>>>;
}

/** Safety signs, each with its sentence, and the word on local codes, which has no sign. */
export function Signs({ maker, cautions, sentences = {} }: SignsProps): ReactNode {
  const { base: { glyphs }, say } = maker;
  return (
    <>
      <ul className="signs">
        {cautions.map((caution) => (
          <li key={caution}>
            <Mark maker={maker} glyph={glyphs.caution(caution)} kind="sign" label={say(({ words }) => words.t(`cautions.${caution}.sign`))} />
            <Said phrase={say(({ words }) => words.t(`cautions.${caution}.${sentences[caution] ?? 'says'}`))} />
          </li>
        ))}
      </ul>
      <Said className="defer" phrase={say(({ words }) => words.t('booklet.defer'))} />
    </>
  );
}
