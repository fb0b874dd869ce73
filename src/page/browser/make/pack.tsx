import { useId, useState, type ReactNode } from 'react';
import { PUBLICATIONS } from '../../../booklet/index.ts';
import type { PackOrder } from '../../types.ts';
import { itemName, sizeName, useWords } from '../words.tsx';

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
/** Pieces of a size until a number is put in. */
const USUAL_PIECES = 1;

/** The workshop pack: how many of each ticked size are built, in which language, from when. */
export function Pack({ sizes, learners, papers, languages, isGoing, onMake }: PackProps): ReactNode {
  const words = useWords();
  const [counts, setCounts] = useState<Readonly<Record<string, number>>>({});
  const [lang, setLang] = useState(words.lang);
  const [start, setStart] = useState('08:30');
  const id = useId();
  const countOf = ({ item, size }: TickedSize): number => counts[`${item}/${size}`] ?? USUAL_PIECES;
  const whole = PUBLICATIONS['workshop-pack'].papers.filter((paper) => papers.has(paper));
  const order: PackOrder = {
    what: 'pack', learners, lang, start,
    pieces: sizes.map((each) => ({ ...each, count: countOf(each) })),
    papers: whole.length > 0 ? whole : ['a4'],
  };
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
              <input type="number" min={1} max={MOST_PIECES} step={1} value={countOf(each)} data-size={`${each.item}/${each.size}`}
                onChange={({ target }) => { setCounts((before) => ({ ...before, [`${each.item}/${each.size}`]: Math.min(MOST_PIECES, Math.max(1, Math.round(Number(target.value)) || 1)) })); }} />
            </label>
          ))}
        </fieldset>
        <div className="field">
          <label htmlFor={`${id}-lang`}><b>{words.t('page.printed.language')}</b></label>
          <select id={`${id}-lang`} value={lang} onChange={({ target }) => { setLang(target.value); }}>
            {languages.map((each) => <option key={each.lang} value={each.lang} lang={each.lang}>{each.name}</option>)}
          </select>
        </div>
        <div className="field">
          <label htmlFor={`${id}-start`}><b>{words.t('pack.facts.start')}</b></label>
          <input id={`${id}-start`} type="time" value={start} onChange={({ target }) => { setStart(target.value); }} />
        </div>
      </div>
      <p className="buttons">
        <button type="button" className="pack-button" disabled={sizes.length === 0 || start === '' || isGoing} onClick={() => { onMake(order); }}>{words.t('page.pack.make')}</button>
      </p>
    </section>
  );
}
