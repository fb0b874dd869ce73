import { useId, useState, type ReactNode } from 'react';
import { PUBLICATIONS, Spoken } from '../../../booklet/index.ts';
import type { PackOrder } from '../../types.ts';
import { Figure } from '../change/figure.tsx';
import { itemName, sizeName, useWords } from '../words.tsx';
import { Ticks, toggled } from './ticks.tsx';

/** A size that is ticked. */
interface TickedSize {
  readonly item: string;
  readonly size: string;
}

interface PackProps {
  readonly sizes: readonly TickedSize[];
  readonly learners: number;
  /** Papers ticked for the booklets; the pack takes the whole ones. */
  readonly papers: ReadonlySet<string>;
  readonly languages: readonly { readonly lang: string; readonly name: string }[];
  readonly isGoing: boolean;
  readonly onMake: (order: PackOrder) => void;
}

/** As many as the command takes of one size. */
const MOST_PIECES = 1000;
/** Learners build a piece in pairs: common practice, no source. */
const A_TEAM = 2;
/** More at one piece stand and look on: common practice, no source. */
const MOST_IN_A_TEAM = 4;

/** The workshop pack: how many of each ticked size are built, in which languages, from when. */
export function Pack({ sizes, learners, papers, languages, isGoing, onMake }: PackProps): ReactNode {
  const words = useWords();
  const [counts, setCounts] = useState<Readonly<Record<string, number>>>({});
  const [langs, setLangs] = useState<ReadonlySet<string>>(() => new Set([words.lang]));
  const [start, setStart] = useState('08:30');
  const id = useId();
  /** Pieces of a size until a number is put in: so many that pairs build them. */
  const proposed = Math.min(MOST_PIECES, Math.max(1, Math.ceil(learners / A_TEAM / Math.max(1, sizes.length))));
  const [refused, setRefused] = useState<ReadonlySet<string>>(new Set());
  const refuse = (size: string, isRefused: boolean): void => { setRefused((all) => (all.has(size) === isRefused ? all : new Set(isRefused ? [...all, size] : [...all].filter((each) => each !== size)))); };
  const countOf = ({ item, size }: TickedSize): number => counts[`${item}/${size}`] ?? proposed;
  const whole = PUBLICATIONS['workshop-pack'].papers.filter((paper) => papers.has(paper));
  const order: PackOrder = {
    what: 'pack', learners, start, langs: [...langs],
    pieces: sizes.map((each) => ({ ...each, count: countOf(each) })),
    papers: whole.length > 0 ? whole : ['a4'],
  };
  const all = order.pieces.reduce((sum, { count }) => sum + count, 0);
  const inATeam = all === 0 ? 0 : Math.ceil(learners / all);
  return (
    <section className="pack" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>{words.t('pack.title')}</h2>
      <div className="wishes-columns">
        <fieldset>
          <legend>{words.t('page.pack.pieces')}</legend>
          {sizes.length === 0 && <p>{words.t('page.pack.none')}</p>}
          {sizes.map((each) => (
            <label className="counted" key={`${each.item}/${each.size}`}>
              <span>{words.t('pack.piece', { item: itemName(words, each.item), size: sizeName(words, each.item, each.size) })}</span>
              <Figure id={`${id}-${each.item}-${each.size}`} name={`${each.item}/${each.size}`} value={countOf(each)} least={1} most={MOST_PIECES} whole said={(pieces) => words.number(pieces)} describedBy={undefined}
                onRefused={(isRefused) => { refuse(`${each.item}/${each.size}`, isRefused); }} onChange={(pieces) => { setCounts((before) => ({ ...before, [`${each.item}/${each.size}`]: pieces })); }} />
            </label>
          ))}
        </fieldset>
        <Ticks legend={words.t('page.make.languages')} isLong ticked={langs} onTick={(lang) => { setLangs((before) => toggled(before, lang)); }} choices={languages.map(({ lang, name }) => ({ value: lang, text: name, lang }))} />
        <div className="field">
          <label htmlFor={`${id}-start`}><b>{words.t('pack.facts.start')}</b></label>
          <input id={`${id}-start`} type="time" value={start} onChange={({ target }) => { setStart(target.value); }} />
        </div>
      </div>
      {inATeam > MOST_IN_A_TEAM && <p className="reminder" role="alert"><Spoken text={words.t('page.pack.large', { learners: words.number(learners), pieces: words.number(all), people: words.number(inATeam), wanted: words.number(Math.ceil(learners / A_TEAM)) })} /></p>}
      <p className="buttons">
        <button type="button" className="pack-button" disabled={sizes.length === 0 || langs.size === 0 || refused.size > 0 || start === '' || isGoing} onClick={() => { onMake(order); }}>{words.t('page.pack.make')}</button>
      </p>
    </section>
  );
}
