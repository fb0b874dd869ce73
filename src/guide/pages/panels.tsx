import type { ReactNode } from 'react';
import { controlGlyphs } from './control-glyphs.ts';
import type { GuidePage, Maker } from './page.ts';
import { Mark, Said } from './said.tsx';

/** Names of the controls: keys under `guide` in the locale files, and of their pictures. */
type Control = keyof typeof controlGlyphs;

interface ControlButtonProps {
  readonly maker: Maker;
  readonly id: string;
  readonly glyph: Control;
  /** Key under `guide`; the picture's name unless given. */
  readonly says?: string;
  /** Points along the reading direction. */
  readonly along?: boolean;
}

/** A button with a pictogram and no words. */
function ControlButton({ maker, id, glyph, says = glyph, along = false }: ControlButtonProps): ReactNode {
  const label = maker.say(({ words }) => words.t(`guide.${says}`));
  return (
    <button type="button" id={id} aria-label={label.text} data-label={label.number}>
      <Mark maker={maker} glyph={controlGlyphs[glyph]} className={along ? 'along' : ''} />
    </button>
  );
}

/** How far through the pages, and under it the row of large buttons: back, closer, done, turn, on. */
export function Foot({ maker }: { readonly maker: Maker }): ReactNode {
  const done = maker.say(({ words }) => words.t('guide.done'));
  return (
    <footer className="foot scripted">
      <div className="place" role="img"><span className="bar"><span className="reached" /></span><bdi dir="ltr" className="pages-of" /></div>
      <ControlButton maker={maker} id="previous" glyph="previous" along />
      <ControlButton maker={maker} id="closer" glyph="closer" />
      <button type="button" id="tick" aria-pressed="false">
        <span className="heard" data-say={done.number}>{done.text}</span>
        <span className="box"><Mark maker={maker} glyph={controlGlyphs.box} /><Mark maker={maker} glyph={controlGlyphs.tick} className="ticked" /></span>
        <span className="say" aria-hidden="true" data-say={done.number}>{done.text}</span>
        <bdi dir="ltr" className="tally" />
      </button>
      <ControlButton maker={maker} id="turn" glyph="turn" />
      <ControlButton maker={maker} id="next" glyph="next" along />
    </footer>
  );
}

/** The two buttons in the upper corner: all pages; language and look. */
export function Corner({ maker }: { readonly maker: Maker }): ReactNode {
  return (
    <header className="corner scripted">
      <ControlButton maker={maker} id="open-all" glyph="all" says="all" />
      <ControlButton maker={maker} id="open-words" glyph="words" />
    </header>
  );
}

/** All pages at a glance, group by group. Without a script it stands before the pages as their contents. */
export function Overview({ maker, pages }: { readonly maker: Maker; readonly pages: readonly GuidePage[] }): ReactNode {
  const label = maker.say(({ words }) => words.t('guide.all'));
  const groups = pages.reduce<readonly (readonly GuidePage[])[]>((found, page) => {
    const last = found.at(-1);
    return last?.[0]?.group === page.group ? [...found.slice(0, -1), [...last, page]] : [...found, [page]];
  }, []);
  return (
    <nav id="all" className="panel" aria-label={label.text} data-label={label.number}>
      <Leave maker={maker} />
      {groups.map((group) => (
        <ul key={group[0]?.id} className={group[0]?.group.startsWith('run-') ? 'run' : ''}>
          {group.map((page) => <li key={page.id}><OverviewEntry maker={maker} page={page} /></li>)}
        </ul>
      ))}
    </nav>
  );
}

function OverviewEntry({ maker, page: { id, label, sign } }: { readonly maker: Maker; readonly page: GuidePage }): ReactNode {
  return (
    <a href={`#${id}`} aria-label={label.text} data-label={label.number}>
      {'numeral' in sign ? <bdi dir="ltr">{sign.numeral}</bdi> : <Mark maker={maker} glyph={sign.glyph} />}
      <Mark maker={maker} glyph={controlGlyphs.tick} className="ticked" />
    </a>
  );
}

/** No words, every language by its own name, and how the page looks. */
export function WordsPanel({ maker, languages }: { readonly maker: Maker; readonly languages: readonly { readonly tag: string; readonly name: string; readonly direction: string }[] }): ReactNode {
  const label = maker.say(({ words }) => words.t('guide.words'));
  const none = maker.say(({ words }) => words.t('guide.no-words'));
  return (
    <section id="words" className="panel scripted" role="dialog" aria-modal="true" aria-label={label.text} data-label={label.number} hidden>
      <Leave maker={maker} />
      <div className="looks">
        <ControlButton maker={maker} id="smaller-words" glyph="small-text" says="smaller-words" />
        <ControlButton maker={maker} id="larger-words" glyph="large-text" says="larger-words" />
        <ControlButton maker={maker} id="light" glyph="light" />
      </div>
      <div className="languages">
        <button type="button" data-language="" aria-label={none.text} data-label={none.number}><Mark maker={maker} glyph={controlGlyphs['no-words']} /></button>
        {languages.map(({ tag, name, direction }, index) => (
          <button type="button" key={tag} data-language={index} lang={tag} dir={direction}>{name}</button>
        ))}
      </div>
    </section>
  );
}

/** One drawing large, or the model to turn. */
export function NearPanel({ maker }: { readonly maker: Maker }): ReactNode {
  const label = maker.say(({ words }) => words.t('guide.closer'));
  return (
    <section id="near" className="panel scripted" role="dialog" aria-modal="true" aria-label={label.text} data-label={label.number} hidden>
      <Leave maker={maker} />
      <div id="stage" />
      <div className="looks">
        <ControlButton maker={maker} id="smaller" glyph="smaller" />
        <ControlButton maker={maker} id="play" glyph="play" />
        <ControlButton maker={maker} id="larger" glyph="larger" />
      </div>
    </section>
  );
}

function Leave({ maker }: { readonly maker: Maker }): ReactNode {
  const label = maker.say(({ words }) => words.t('guide.leave'));
  return (
    <button type="button" className="leave scripted" aria-label={label.text} data-label={label.number}>
      <Mark maker={maker} glyph={controlGlyphs.leave} className="along" />
    </button>
  );
}

/** On every page of a guide that is made although a check failed. */
export function Unproved({ maker }: { readonly maker: Maker }): ReactNode {
  const label = maker.say(({ words }) => words.t('booklet.despite-findings'));
  return <p className="unproved"><Mark maker={maker} glyph={maker.base.glyphs.plain('unproved')} label={label} /><Said as="span" phrase={label} /></p>;
}
