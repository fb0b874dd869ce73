import { useEffect, useId, useRef, useState, type ReactNode } from 'react';
import { laidFor, PAPERS, PUBLICATIONS, sheetSize, type BookletEdition, type Paper as PaperName } from '../../../booklet/index.ts';
import { bookletsOffered } from '../../paper-groups.ts';
import { nameOr, useWords } from '../words.tsx';
import type { PlannedStep, Subject } from '../workers/messages.ts';
import { Paper } from './lengths.tsx';
import type { Planner } from './use-planner.ts';
import { usePrinter, type Pages } from './use-printer.ts';

/** CSS pixels in a millimetre: 96 to the inch. */
const PIXELS_PER_MM = 96 / 25.4;

/** The papers whose pictures are drawn here. */
const PAPERS_SHOWN = PUBLICATIONS.words.papers.filter((paper) => PAPERS[paper].format === 'page');

interface PrintedProps {
  readonly subject: Subject | null;
  readonly locales: Readonly<Record<string, string>>;
  readonly languages: readonly { readonly lang: string; readonly name: string }[];
  readonly planner: Planner;
  readonly now: PlannedStep | undefined;
}

/** The picture of the step that is looked at and, when asked for, its whole page as the booklet would print it. */
export function Printed({ subject, locales, languages, planner, now }: PrintedProps): ReactNode {
  const words = useWords();
  const id = useId();
  const [isOpen, setOpen] = useState(false);
  const [lang, setLang] = useState(words.lang);
  const [edition, setEdition] = useState<BookletEdition>('words');
  const [paper, setPaper] = useState<PaperName>('a4');
  const { pages, share, told } = usePrinter(isOpen, subject, locales, { lang, edition, paper });
  const { picture } = planner;
  const drawings = now !== undefined && picture?.number === now.step.number ? picture.drawings : [];
  return (
    <>
      {now === undefined && <p>{words.t('page.printed.choose')}</p>}
      {drawings.map((drawing, index) => <Paper key={index} drawing={drawing} name={now?.alt ?? ''} />)}
      <details onToggle={(event) => { setOpen(event.currentTarget.open); }}>
        <summary>{words.t('page.printed.whole')}</summary>
        <div className="wishes">
          <label htmlFor={`${id}-lang`}>{words.t('page.printed.language')}</label>
          <select id={`${id}-lang`} value={lang} onChange={(event) => { setLang(event.target.value); }}>
            {languages.map((each) => <option key={each.lang} value={each.lang} lang={each.lang}>{each.name}</option>)}
          </select>
          <label htmlFor={`${id}-edition`}>{words.t('page.make.editions')}</label>
          <select id={`${id}-edition`} value={edition} onChange={(event) => { setEdition(event.target.value as BookletEdition); }}>
            {bookletsOffered.map(({ name }) => <option key={name} value={name}>{nameOr(words, `page.editions.${name}`, name)}</option>)}
          </select>
          <label htmlFor={`${id}-paper`}>{words.t('page.make.papers')}</label>
          <select id={`${id}-paper`} value={paper} onChange={(event) => { setPaper(event.target.value as PaperName); }}>
            {PAPERS_SHOWN.map((each) => <option key={each} value={each}>{nameOr(words, `page.papers.${each}`, each)}</option>)}
          </select>
        </div>
        {told !== null && <pre className="told" role="alert" lang="en" dir="ltr">{told}</pre>}
        {isOpen && told === null && (share === null || share < 1) && (
          <p role="status"><progress aria-label={words.t('page.printed.drawing')} {...(share === null ? {} : { value: share })} /> {words.t('page.printed.drawing')}</p>
        )}
        {isOpen && pages !== null && <PageSheet pages={pages} step={now?.step.number ?? null} />}
      </details>
    </>
  );
}

/** What is left of the paper round pages that are laid out for more than one. */
function whiteRound({ paper, edition }: Pages): string {
  const sheet = sheetSize(laidFor(PUBLICATIONS[edition], paper));
  return `${(PAPERS[paper].height - sheet.height) / 2}mm ${(PAPERS[paper].width - sheet.width) / 2}mm`;
}

/** One page of the booklet: that of the step, or the cover. Nothing runs in the frame; it only keeps the page's style apart. */
function PageSheet({ pages, step }: { readonly pages: Pages; readonly step: number | null }): ReactNode {
  const words = useWords();
  const frame = useRef<HTMLIFrameElement>(null);
  const holder = useRef<HTMLDivElement>(null);
  const [loaded, setLoaded] = useState(0);
  const [scale, setScale] = useState(0.5);
  const { width, height } = PAPERS[pages.paper];
  useEffect(() => {
    const sheets = [...frame.current?.contentDocument?.querySelectorAll<HTMLElement>('.page') ?? []];
    // Every step has one numeral, in the order of the steps.
    const numerals = [...frame.current?.contentDocument?.querySelectorAll('.band .numeral') ?? []];
    const shown = (step === null ? null : numerals[step - 1]?.closest('.page')) ?? sheets[0];
    for (const sheet of sheets) sheet.style.display = sheet === shown ? '' : 'none';
  }, [step, loaded, pages]);
  useEffect(() => {
    const element = holder.current;
    if (element === null) return undefined;
    const watch = new ResizeObserver(() => { setScale(element.clientWidth / (width * PIXELS_PER_MM)); });
    watch.observe(element);
    return () => { watch.disconnect(); };
  }, [width]);
  return (
    <div className="sheet-holder" ref={holder} style={{ aspectRatio: `${width} / ${height}` }}>
      <iframe ref={frame} title={words.t('page.printed.page')} sandbox="allow-same-origin" tabIndex={-1}
        style={{ width: `${width}mm`, height: `${height}mm`, transform: `scale(${scale})` }} onLoad={() => { setLoaded((count) => count + 1); }}
        srcDoc={`<!doctype html><html lang="${pages.lang}" dir="${pages.dir}"><head><meta charset="utf-8"><title>.</title><link rel="stylesheet" href="/fonts.css"><style>${pages.css} html { padding: ${whiteRound(pages)} } html { background: #fff; overflow: hidden }</style></head><body>${pages.html}</body></html>`} />
    </div>
  );
}

