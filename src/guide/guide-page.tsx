import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { itemAndSize } from '../booklet/index.ts';
import type { GuideData } from './data.ts';
import { glyphStore } from './glyph-store.ts';
import { beforePage, checksPage, partsPage, startPage } from './pages/chapters.tsx';
import type { GuidePage, Maker } from './pages/page.ts';
import { Corner, Foot, NearPanel, Overview, Unproved, WordsPanel } from './pages/panels.tsx';
import { stepPageId, stepPages } from './pages/steps.tsx';
import { usePage } from './pages/use.tsx';
import { phraseBook } from './phrases.ts';
import { policy } from './policy.ts';
import { packSolids } from './solids/pack-solids.ts';
import { guideStyle } from './style.ts';
import type { GuideInput } from './types.ts';

/**
 * The guide as one HTML page that needs nothing beside it: every picture, word and model inside. Without a script it
 * shows all pages one under the other; the script shows them one by one.
 * Throws where a picture, a word or a pictogram is missing.
 */
export function guidePage(input: GuideInput): string {
  const { tellings: [base] } = input;
  const book = phraseBook(input.tellings);
  const store = glyphStore();
  const maker: Maker = {
    base,
    say: book.say,
    keep: store.keep,
    pictures: input.pictures,
  };
  const languages = input.tellings.map(({ words: { lang, about } }) => ({ tag: lang, name: about.name, direction: about.direction, textScale: about.textScale }));
  const pages = pagesOf(maker, languages);
  const body = renderToStaticMarkup(<Body maker={maker} pages={pages} languages={languages} />);
  const data: GuideData = {
    memory: `${base.model.item}/${base.model.size}/${base.contentMark}`,
    languages,
    texts: book.texts(),
    solids: packSolids(base, input.solids, stepPageId),
  };
  return documentOf({ base, body, symbols: store.symbols(), data, script: input.script });
}

const pagesOf = (maker: Maker, languages: GuideData['languages']): readonly GuidePage[] =>
  [startPage(maker, languages), beforePage(maker), partsPage(maker), ...stepPages(maker), checksPage(maker), usePage(maker)];

interface BodyProps {
  readonly maker: Maker;
  readonly pages: readonly GuidePage[];
  readonly languages: GuideData['languages'];
}

function Body({ maker, pages, languages }: BodyProps): ReactNode {
  return (
    <>
      <Corner maker={maker} />
      <Overview maker={maker} pages={pages} />
      <main id="pages" tabIndex={0}>
        {pages.map(({ id, label, times, isStep, content }) => (
          <section key={id} id={id} className={isStep ? 'page step' : 'page'} aria-label={label.text} data-label={label.number} {...(times === undefined ? {} : { 'data-times': times })}>
            {maker.base.despiteFindings && <Unproved maker={maker} />}
            {content}
          </section>
        ))}
      </main>
      <Foot maker={maker} />
      <WordsPanel maker={maker} languages={languages} />
      <NearPanel maker={maker} />
      <p id="spoken" className="heard scripted" role="status" aria-live="polite" />
    </>
  );
}

interface Parts {
  readonly base: GuideInput['tellings'][0];
  readonly body: string;
  readonly symbols: string;
  readonly data: GuideData;
  readonly script: string;
}

function documentOf({ base, body, symbols, data, script }: Parts): string {
  const { words: { lang, about } } = base;
  return `<!doctype html>
<html lang="${lang}" dir="${about.direction}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy(script, guideStyle)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${renderToStaticMarkup(itemAndSize(base))}</title>
<style>${guideStyle}</style>
</head>
<body>
<svg class="store" aria-hidden="true" width="0" height="0">${symbols}</svg>
${body}
<script type="application/json" id="data">${JSON.stringify(data).replaceAll('<', '\\u003c')}</script>
<script>${script}</script>
</body>
</html>
`;
}
