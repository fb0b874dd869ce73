import { useId, useMemo, useState, type ReactNode } from 'react';
import { isolate, Spoken } from '../../../booklet/index.ts';
import { filesInMemory, listItems, readItem } from '../../../read/index.ts';
import type { MakeOrder, ProjectTexts } from '../../types.ts';
import { bookletLanguages } from '../change/booklet-languages.ts';
import { itemName, sizeName, useWords } from '../words.tsx';
import { useMaking, type MakingHook } from './use-making.ts';

/** Which booklets: names of everything that is ticked. Sizes as `item/size`. */
interface Wish {
  readonly sizes: ReadonlySet<string>;
  readonly langs: ReadonlySet<string>;
  readonly editions: ReadonlySet<string>;
  readonly papers: ReadonlySet<string>;
  readonly learners: number;
  readonly despiteFindings: boolean;
}

type Ticked = 'sizes' | 'langs' | 'editions' | 'papers';

/** The trainer's side: choose booklets, have them made, take them along. */
export function Makings({ texts }: { readonly texts: ProjectTexts }): ReactNode {
  const words = useWords();
  const making = useMaking();
  const [trouble, setTrouble] = useState<string | null>(null);
  const items = useMemo(() => sizesByItem(texts), [texts]);
  const languages = bookletLanguages(texts.locales);
  const [wish, setWish] = useState<Wish>(() => ({
    sizes: new Set(), langs: new Set([words.lang]), editions: new Set(['words']), papers: new Set(['a4']), learners: 12, despiteFindings: false,
  }));
  const tick = (what: Ticked, name: string): void => { setWish((before) => ({ ...before, [what]: toggled(before[what], name) })); };
  const count = wish.sizes.size * wish.langs.size * wish.editions.size * wish.papers.size;
  const order = orderOf(items, wish);

  return (
    <form className="makings" onSubmit={(event) => {
      event.preventDefault();
      setTrouble(null);
      making.begin(order).catch((error: unknown) => { setTrouble(error instanceof Error ? error.message : String(error)); });
    }}>
      <div className="wishes-columns">
        {items.map(({ item, sizes }) => (
          <Ticks key={item} legend={itemName(words, item)} ticked={wish.sizes} onTick={(name) => { tick('sizes', name); }}
            choices={sizes.map((size) => ({ value: `${item}/${size}`, text: sizeName(words, item, size) }))} />
        ))}
      </div>
      <div className="wishes-columns">
        <Ticks legend={words.t('page.make.languages')} ticked={wish.langs} onTick={(name) => { tick('langs', name); }} choices={languages.map(({ lang, name }) => ({ value: lang, text: name, lang }))} />
        <Ticks legend={words.t('page.make.editions')} ticked={wish.editions} onTick={(name) => { tick('editions', name); }} choices={['words', 'pictures'].map((value) => ({ value, text: words.t(`page.editions.${value}`) }))} />
        <Ticks legend={words.t('page.make.papers')} ticked={wish.papers} onTick={(name) => { tick('papers', name); }} choices={['a4', 'letter'].map((value) => ({ value, text: words.t(`page.papers.${value}`) }))} />
        <Learners learners={wish.learners} onLearners={(learners) => { setWish((before) => ({ ...before, learners })); }} />
      </div>
      <label className="tick"><input type="checkbox" checked={wish.despiteFindings} onChange={() => { setWish((before) => ({ ...before, despiteFindings: !before.despiteFindings })); }} /> {words.t('page.make.despite')}</label>
      <p className="buttons">
        <button type="submit" className="main-button" disabled={count === 0 || making.isGoing}>{words.t('page.make.make', { count })}</button>
        <button type="button" disabled={!making.isGoing} onClick={() => { void making.stop(); }}>{words.t('page.make.stop')}</button>
      </p>
      {trouble !== null && <pre className="told" role="alert" lang="en" dir="ltr">{trouble}</pre>}
      <Progress making={making} />
    </form>
  );
}

interface TicksProps {
  readonly legend: string;
  readonly choices: readonly { readonly value: string; readonly text: string; readonly lang?: string }[];
  readonly ticked: ReadonlySet<string>;
  readonly onTick: (value: string) => void;
}

function Ticks({ legend, choices, ticked, onTick }: TicksProps): ReactNode {
  return (
    <fieldset>
      <legend>{legend}</legend>
      {choices.map(({ value, text, lang }) => (
        <label className="tick" key={value}><input type="checkbox" value={value} checked={ticked.has(value)} onChange={() => { onTick(value); }} /> <span {...(lang === undefined ? {} : { lang })}>{text}</span></label>
      ))}
    </fieldset>
  );
}

/** Learners work in pairs, and each pair has one booklet: common practice, no source. */
const A_PAIR = 2;

function Learners({ learners, onLearners }: { readonly learners: number; readonly onLearners: (learners: number) => void }): ReactNode {
  const words = useWords();
  const id = useId();
  return (
    <fieldset>
      <legend>{words.t('page.make.learners')}</legend>
      <label className="said-only" htmlFor={id}>{words.t('page.make.learners')}</label>
      <input id={id} type="number" min={1} max={200} step={1} value={learners} onChange={(event) => { onLearners(Math.min(200, Math.max(1, Math.round(Number(event.target.value)) || 1))); }} />
      <p><Spoken text={words.t('page.make.copies', { count: Math.ceil(learners / A_PAIR) })} /></p>
    </fieldset>
  );
}

/** How far it is, and what is ready to be taken. */
function Progress({ making }: { readonly making: MakingHook }): ReactNode {
  const words = useWords();
  const { isGoing, asked, item, begun, share, files, end } = making;
  return (
    <div className="making">
      <p role="status">
        {isGoing && words.t(begun === 0 ? 'page.make.ordering' : 'page.make.going', { item: item === null ? '' : itemName(words, item), done: files.length, all: asked.booklets })}
        {end?.how === 'made' && words.t('page.make.made', { count: files.length })}
        {end?.how === 'stopped' && words.t('page.make.stopped', { count: files.length })}
        {end?.how === 'failed' && words.t('page.make.failed')}
      </p>
      {isGoing && <progress aria-label={words.t('page.make.progress')} {...(begun === 0 ? {} : { value: Math.min(1, (begun - 1 + share) / Math.max(1, asked.sizes)) })} />}
      {end?.how === 'failed' && end.told !== '' && <pre className="told" role="alert" lang="en" dir="ltr">{end.told}</pre>}
      {files.length > 0 && (
        <ul className="made">
          {files.map(({ path, bytes }) => (
            <li key={path}><a href={`/made/${path}`} download dir="ltr">{path.split('/').at(-1)}</a> <Spoken text={isolate(`${words.number(bytes / 1e6, 1)} MB`)} /></li>
          ))}
        </ul>
      )}
    </div>
  );
}

const toggled = (names: ReadonlySet<string>, name: string): ReadonlySet<string> =>
  (names.has(name) ? new Set([...names].filter((other) => other !== name)) : new Set([...names, name]));

/** Items whose files can be read, with their sizes. */
function sizesByItem({ files }: ProjectTexts): readonly { readonly item: string; readonly sizes: readonly string[] }[] {
  const all = filesInMemory(files);
  return listItems(all).flatMap((path) => {
    try {
      const { name, sizes } = readItem(all, path);
      return [{ item: name, sizes: sizes.map((size) => size.name) }];
    } catch {
      return []; // a file with faults is told where its item is changed, and by the command
    }
  });
}

const orderOf = (items: ReturnType<typeof sizesByItem>, wish: Wish): MakeOrder => ({
  items: items.map(({ item, sizes }) => ({ item, sizes: sizes.filter((size) => wish.sizes.has(`${item}/${size}`)) })).filter(({ sizes }) => sizes.length > 0),
  langs: [...wish.langs],
  editions: [...wish.editions],
  papers: [...wish.papers],
  despiteFindings: wish.despiteFindings,
});
