import { useCallback, useEffect, useMemo, useState, useSyncExternalStore, type ReactNode } from 'react';
import { loadWords } from '../../booklet/index.ts';
import type { ProjectTexts } from '../types.ts';
import { askTexts } from './asking.ts';
import { bookletLanguages } from './change/booklet-languages.ts';
import { Changing } from './change/changing.tsx';
import { useChanges, type Place } from './change/use-changes.ts';
import { useSaving } from './change/use-saving.ts';
import { Makings } from './make/makings.tsx';
import { ServerNews } from './server-news.tsx';
import { useAlive } from './use-alive.ts';
import { chosenLanguage, WordsContext } from './words.tsx';

const KEPT_LANGUAGE = 'foldwright.language';

/** The whole page: its language, and its two sides, one for who changes an item and one for who makes booklets. */
export function App(): ReactNode {
  const [texts, setTexts] = useState<ProjectTexts | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const read = useCallback(async (): Promise<void> => {
    try {
      setTexts(await askTexts());
      setTrouble(null);
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
  }, []);
  useEffect(() => { void read(); }, [read]);
  if (trouble !== null && texts === null) return <main><pre role="alert">{trouble}</pre></main>;
  return texts === null ? <main aria-busy="true" /> : <Sides texts={texts} onTexts={setTexts} onRead={read} />;
}

interface SidesProps {
  readonly texts: ProjectTexts;
  readonly onTexts: (texts: ProjectTexts) => void;
  readonly onRead: () => Promise<void>;
}

function Sides({ texts, onTexts, onRead }: SidesProps): ReactNode {
  const known = useMemo(() => bookletLanguages(texts.locales), [texts]);
  const [lang, setLang] = useState(() => chosenLanguage(known.map((each) => each.lang), [localStorage.getItem(KEPT_LANGUAGE) ?? '', ...navigator.languages]));
  const words = useMemo(() => loadWords(texts.locales, lang), [texts, lang]);
  const side = useSyncExternalStore(onHash, () => (location.hash === '#make' ? 'make' : 'change'));
  const [changes, order] = useChanges();
  const aliveness = useAlive(texts.marks);
  const saved = useCallback((place: Place) => { order({ order: 'saved', place }); }, [order]);
  const saving = useSaving({ texts, changes, onTexts, onSaved: saved });
  useEffect(() => {
    Object.assign(document.documentElement, { lang, dir: words.about.direction });
    document.title = `${words.t(`page.sides.${side}`)} · foldwright`;
    localStorage.setItem(KEPT_LANGUAGE, lang);
  }, [lang, words, side]);
  return (
    <WordsContext value={words}>
      <button type="button" className="skip" onClick={() => { document.getElementById('content')?.focus(); }}>{words.t('page.skip')}</button>
      <header className="top">
        <p className="maker" translate="no">foldwright</p>
        <label className="language"><span className="said-only">{words.t('page.language')}</span>
          <select value={lang} onChange={(event) => { setLang(event.target.value); }}>
            {known.map((each) => <option key={each.lang} value={each.lang} lang={each.lang}>{each.name}</option>)}
          </select>
        </label>
        <nav aria-label={words.t('page.sides.name')}>
          {(['change', 'make'] as const).map((each) => <a key={each} href={`#${each}`} aria-current={each === side ? 'page' : undefined}>{words.t(`page.sides.${each}`)}</a>)}
        </nav>
      </header>
      <main id="content" tabIndex={-1}>
        <h1 className={side === 'change' ? 'said-only' : ''}>{words.t(`page.sides.${side}`)}</h1>
        <ServerNews aliveness={aliveness} marks={texts.marks} mayChange={texts.mayChange} onRead={onRead} />
        <div hidden={side !== 'change'}><Changing texts={texts} changes={changes} saving={saving} returns={aliveness.returns} onOrder={order} onRead={onRead} onTrouble={aliveness.ask} /></div>
        {side === 'make' && <p className="lead">{words.t('page.make.lead')}</p>}
        <div hidden={side !== 'make'}><Makings texts={texts} saving={saving} aliveness={aliveness} /></div>
      </main>
      {words.review === null && !words.about.source && <footer>{words.t('booklet.colophon.draft')}</footer>}
    </WordsContext>
  );
}

function onHash(changed: () => void): () => void {
  addEventListener('hashchange', changed);
  return () => { removeEventListener('hashchange', changed); };
}
