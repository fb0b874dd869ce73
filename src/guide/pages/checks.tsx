import type { ReactNode } from 'react';
import type { WorkerCheck } from '../../plan/index.ts';
import type { Maker } from './page.ts';
import { Figure, Mark, Said } from './said.tsx';

/** What the worker looks at: a gauge with its measure, or the right way with a tick and the wrong way with a cross. */
export function Check({ maker, check }: { readonly maker: Maker; readonly check: WorkerCheck }): ReactNode {
  const { base: { glyphs, words }, say } = maker;
  const name = say((telling) => telling.words.t(`checks.${check.name}`));
  if (check.kind === 'measure') {
    return (
      <div className="check">
        <div className="measured"><Mark maker={maker} glyph={glyphs.plain('gauge')} label={name} /><b><Figure text={words.measure(check.value, 'mm', 1)} /></b></div>
        <Said phrase={name} />
      </div>
    );
  }
  const { right, wrong } = glyphs.pair(check.name);
  return (
    <div className="check">
      <div className="pair">
        <div className="way"><Mark maker={maker} glyph={right} label={say(({ words: { t } }) => t('booklet.alt.right', { check: t(`checks.${check.name}`) }))} /><Mark maker={maker} glyph={glyphs.plain('right')} className="verdict" /></div>
        <div className="way"><Mark maker={maker} glyph={wrong} label={say(({ words: { t } }) => t('booklet.alt.wrong', { check: t(`checks.${check.name}`) }))} /><Mark maker={maker} glyph={glyphs.plain('wrong')} className="verdict" /></div>
      </div>
      <Said phrase={name} />
    </div>
  );
}
