import type { ReactNode } from 'react';
import { bandsOf, partingOf, type Band, type Fit } from './bands.ts';
import { breakPages, type FittedPage } from './break-pages.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { FinishedBand } from './finished-band.tsx';
import { RunBand } from './run-band.tsx';
import { sheets } from './sheet.ts';
import { StepBand } from './step-band.tsx';
import type { BookletInput } from './types.ts';

/** White that a band may get beyond its own, mm: more would tear the page apart. On a narrow page a band often stands alone. */
const mostWhite = 21;
const mostNarrowWhite = 48;

/** The steps, band under band; the first page has the chapter's heading. */
export function steps(input: BookletInput): readonly ReactNode[] {
  const { narrow } = sheets[input.paper];
  return fewestPages(input).map((page, index) => (
    <div className="steps" key={index}>
      {index === 0 && <div className="main"><ChapterHeading input={input} name="steps" /></div>}
      {page.entries.map((band, place) => <AnyBand key={place} input={input} band={band} fit={fitOf(page, narrow ? mostNarrowWhite : mostWhite)} />)}
    </div>
  ));
}

/** The bands on pages. */
function fewestPages(input: BookletInput): readonly FittedPage<Band>[] {
  const room = pageRoom(input);
  return breakPages(bandsOf(input), room, room - headingHeight(input, 'steps'), sheets[input.paper].leastScale, partingOf(input));
}

/** What is left over on a page is spread among its steps. */
function fitOf({ entries, scale, white }: FittedPage<Band>, most: number): Fit {
  const share = white / Math.max(1, entries.filter((band) => band.kind === 'step').length);
  return { scale, white: Math.min(most, Math.floor(share * 2) / 2) };
}

function AnyBand({ input, band, fit }: { readonly input: BookletInput; readonly band: Band; readonly fit: Fit }): ReactNode {
  switch (band.kind) {
    case 'step': return <StepBand input={input} band={band} fit={fit} />;
    case 'run': return <RunBand input={input} band={band} fit={fit} />;
    case 'finished': return <FinishedBand input={input} band={band} fit={fit} />;
  }
}
