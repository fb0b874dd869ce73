import type { ReactNode } from 'react';
import { bandsOf, type Band } from './bands.ts';
import { ChapterHeading } from './chapter.tsx';
import { packPages } from './pack.ts';
import { RunBand } from './run-band.tsx';
import { bandRoom, headingHeight, sheets } from './sheet.ts';
import { StepBand } from './step-band.tsx';
import { TurnBand } from './turn-band.tsx';
import type { BookletInput } from './types.ts';

/** The steps, band under band; the first page has the chapter's heading. */
export function steps(input: BookletInput): readonly ReactNode[] {
  const room = bandRoom(sheets[input.paper]);
  return packPages(bandsOf(input), room, room - headingHeight).map((bands, page) => (
    <div className="steps" key={page}>
      {page === 0 && <div className="main"><ChapterHeading input={input} name="steps" /></div>}
      {bands.map((band, place) => <AnyBand key={place} input={input} band={band} />)}
    </div>
  ));
}

function AnyBand({ input, band }: { readonly input: BookletInput; readonly band: Band }): ReactNode {
  switch (band.kind) {
    case 'step': return <StepBand input={input} band={band} />;
    case 'run': return <RunBand input={input} band={band} />;
    case 'turn': return <TurnBand input={input} band={band} />;
  }
}
