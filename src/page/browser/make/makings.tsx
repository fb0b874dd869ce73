import { useEffect, useId, useMemo, useState, type ReactNode } from 'react';
import { Spoken } from '../../../booklet/index.ts';
import { filesInMemory, listItems, readItem } from '../../../read/index.ts';
import { bookletsOfSize, canBeStitched, directionsOf, editionsOffered, papersOffered } from '../../paper-groups.ts';
import type { BookletOrder, MakeOrder, ProjectTexts } from '../../types.ts';
import { bookletLanguages } from '../change/booklet-languages.ts';
import { Figure } from '../change/figure.tsx';
import type { SavingHook } from '../change/use-saving.ts';
import type { Aliveness } from '../use-alive.ts';
import { itemName, sizeName, useWords } from '../words.tsx';
import { Pack } from './pack.tsx';
import { Progress } from './progress.tsx';
import { keptWish, keepWish, type Wish } from './kept-wish.ts';
import { Ticks, toggled } from './ticks.tsx';
import { UnsavedFirst } from './unsaved-first.tsx';
import { useMaking } from './use-making.ts';

/** As many languages as a page has room for, one beside the other. */
const canStandBeside = (langs: ReadonlySet<string>): boolean => langs.size === 2 || langs.size === 3;

type Ticked = 'sizes' | 'langs' | 'editions' | 'papers';

interface MakingsProps {
  readonly texts: ProjectTexts;
  readonly saving: SavingHook;
  readonly aliveness: Pick<Aliveness, 'returns' | 'begun'>;
}

/** The trainer's side: choose booklets, have them made, take them along. */
export function Makings({ texts, saving, aliveness }: MakingsProps): ReactNode {
  const words = useWords();
  const making = useMaking(aliveness);
  const [trouble, setTrouble] = useState<string | null>(null);
  const items = useMemo(() => sizesByItem(texts), [texts]);
  const languages = useMemo(() => bookletLanguages(texts.locales), [texts]);
  const [wish, setWish] = useState<Wish>(() => keptWish(words.lang, items));
  const [isRefused, setRefused] = useState(false);
  useEffect(() => { keepWish(wish); }, [wish]);
  const tick = (what: Ticked, name: string): void => { setWish((before) => ({ ...before, [what]: toggled(before[what], name) })); };
  const order = orderOf(items, wish);
  const count = wish.sizes.size * bookletsOfSize(order, directionsOf(texts.locales, order.langs));
  const hasHalf = [...wish.papers].some(canBeStitched);
  const begin = (wanted: MakeOrder): void => {
    setTrouble(null);
    making.begin(wanted).catch((error: unknown) => { setTrouble(error instanceof Error ? error.message : String(error)); });
  };

  return (
    <form className="makings" onSubmit={(event) => {
      event.preventDefault();
      begin(order);
    }}>
      <div className="wishes-columns">
        {items.map(({ item, sizes }) => (
          <Ticks key={item} legend={itemName(words, item)} ticked={wish.sizes} onTick={(name) => { tick('sizes', name); }}
            choices={sizes.map((size) => ({ value: `${item}/${size}`, text: sizeName(words, item, size) }))} />
        ))}
      </div>
      <div className="wishes-columns">
        <Ticks legend={words.t('page.make.languages')} isLong ticked={wish.langs} onTick={(name) => { tick('langs', name); }} choices={languages.map(({ lang, name }) => ({ value: lang, text: name, lang }))}>
          <label className="tick"><input type="checkbox" name="beside" disabled={!canStandBeside(wish.langs)} checked={wish.beside && canStandBeside(wish.langs)} onChange={() => { setWish((before) => ({ ...before, beside: !before.beside })); }} /> {words.t('page.make.beside')}</label>
          <button type="button" className="all-languages" disabled={wish.langs.size === languages.length} onClick={() => { setWish((before) => ({ ...before, langs: new Set(languages.map(({ lang }) => lang)) })); }}>{words.t('page.make.all')}</button>
        </Ticks>
        <Ticks legend={words.t('page.make.editions')} ticked={wish.editions} onTick={(name) => { tick('editions', name); }} choices={editionsOffered.map(({ name }) => ({ value: name, text: words.t(`page.editions.${name}`) }))} />
        <Ticks legend={words.t('page.make.papers')} ticked={wish.papers} onTick={(name) => { tick('papers', name); }} choices={papersOffered.map((value) => ({ value, text: words.t(`page.papers.${value}`) }))}>
          <label className="tick"><input type="checkbox" name="stitched" disabled={!hasHalf} checked={wish.stitched && hasHalf} onChange={() => { setWish((before) => ({ ...before, stitched: !before.stitched })); }} /> {words.t('page.make.stitched')}</label>
        </Ticks>
        <Learners learners={wish.learners} onRefused={setRefused} onLearners={(learners) => { setWish((before) => ({ ...before, learners })); }} />
      </div>
      <label className="tick"><input type="checkbox" checked={wish.despiteFindings} onChange={() => { setWish((before) => ({ ...before, despiteFindings: !before.despiteFindings })); }} /> {words.t('page.make.despite')}</label>
      {texts.mayChange && <UnsavedFirst saving={saving} />}
      <p className="buttons">
        <button type="submit" className="main-button" disabled={count === 0 || isRefused || making.isGoing || !texts.mayChange}>{words.t('page.make.make', { count })}</button>
      </p>
      <Pack sizes={order.items.flatMap(({ item, sizes }) => sizes.map((size) => ({ item, size })))} learners={wish.learners} papers={wish.papers} languages={languages} isGoing={making.isGoing || isRefused || !texts.mayChange} onMake={begin} />
      {trouble !== null && <pre className="told" role="alert" lang="en" dir="ltr">{trouble}</pre>}
      <Progress making={making} mayStop={texts.mayChange} />
    </form>
  );
}

/** Learners work in pairs, and each pair has one booklet: common practice, no source. */
const A_PAIR = 2;
/** As many as the command takes. */
const MOST_LEARNERS = 200;

interface LearnersProps {
  readonly learners: number;
  readonly onLearners: (learners: number) => void;
  readonly onRefused: (isRefused: boolean) => void;
}

function Learners({ learners, onLearners, onRefused }: LearnersProps): ReactNode {
  const words = useWords();
  const id = useId();
  return (
    <fieldset>
      <legend>{words.t('page.make.learners')}</legend>
      <label className="said-only" htmlFor={id}>{words.t('page.make.learners')}</label>
      <Figure id={id} value={learners} least={1} most={MOST_LEARNERS} whole said={(each) => words.number(each)} describedBy={undefined} onRefused={onRefused} onChange={onLearners} />
      <p><Spoken text={words.t('page.make.copies', { count: Math.ceil(learners / A_PAIR) })} /></p>
    </fieldset>
  );
}

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

const orderOf = (items: ReturnType<typeof sizesByItem>, wish: Wish): BookletOrder => ({
  what: 'booklets',
  items: items.map(({ item, sizes }) => ({ item, sizes: sizes.filter((size) => wish.sizes.has(`${item}/${size}`)) })).filter(({ sizes }) => sizes.length > 0),
  langs: wish.beside && canStandBeside(wish.langs) ? [[...wish.langs].join('+')] : [...wish.langs],
  editions: [...wish.editions],
  papers: [...wish.papers],
  stitched: wish.stitched && [...wish.papers].some(canBeStitched),
  despiteFindings: wish.despiteFindings,
});
