import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import type { BookletPages } from '../pages/index.ts';
import { pageStyle } from '../pages/style.ts';
import { sheets } from '../pages/sheet.ts';
import { countPage } from './count-page.tsx';
import { panelPage } from './panel-page.tsx';
import { surveyStyle } from './style.ts';
import { tubePage } from './tube-page.tsx';
import type { SurveyInput } from './types.ts';

/** Sheets to count stock by, filled in by hand: what is only counted, tubes and cables with their damage, panels to draw damage on. */
export function surveyPages(input: SurveyInput): BookletPages {
  const contents = [countPage(input), tubePage(input), panelPage(input)];
  return {
    html: contents.map((content, index) => renderToStaticMarkup(<SurveyPage key={index} input={input}>{content}</SurveyPage>)).join('\n'),
    css: `${pageStyle([input.words], input.paper)}\n${surveyStyle}`,
    title: input.words.t('cutting.survey.title'),
    dir: input.words.about.direction,
    pageCount: contents.length,
  };
}

/** A sheet of exact size, wide: the boxes take all of it. */
function SurveyPage({ input: { paper }, children }: { readonly input: SurveyInput; readonly children: ReactNode }): ReactNode {
  const { width, height } = sheets[paper];
  return <section className="page survey" style={{ width: `${width}mm`, height: `${height}mm`, padding: '10mm 12mm' }}>{children}</section>;
}
