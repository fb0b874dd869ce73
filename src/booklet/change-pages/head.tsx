import type { ReactNode } from 'react';
import { Spoken } from '../pages/spoken.tsx';
import { isolate, isolateName } from '../words/index.ts';
import { ranges } from './ranges.ts';
import { saidSize } from './said.ts';
import type { ChangePagesInput, Reprint } from './types.ts';

/** Which print this is about, which it replaces, and the pages to print again. */
export function Head({ input }: { readonly input: ChangePagesInput }): ReactNode {
  const { words, contentMark, earlierMark } = input;
  return (
    <>
      <h1 className="chapter">{words.t('changes.title')}</h1>
      <dl className="prints">
        <div><dt>{words.t('booklet.colophon.item')}</dt><dd>{saidSize(input)}</dd></div>
        <div><dt>{words.t('booklet.colophon.mark')}</dt><dd><Spoken text={isolate(contentMark)} /></dd></div>
        {earlierMark !== null && <div><dt>{words.t('booklet.colophon.replaces')}</dt><dd><Spoken text={isolate(earlierMark)} /></dd></div>}
      </dl>
    </>
  );
}

/** The texts of a row of the pages to print again: which booklet, on which papers and in which languages, and its pages of all. */
export function reprintCells({ words }: ChangePagesInput, { edition, paper, langs, pages, pageCount }: Reprint): readonly string[] {
  const all = Object.entries(words.tags);
  // In every language the same: then none is named.
  const names = langs.length === all.length ? [] : all.filter(([, tag]) => langs.includes(tag)).map(([name]) => isolateName(name));
  const where = [words.t(`page.editions.${edition}`), ...(paper === null ? [] : [words.t(`page.papers.${paper}`)]), ...names].join(' · ');
  return [isolate(`${ranges(pages)}\u00a0/\u00a0${words.number(pageCount)}`), where];
}
