import { memo, type ReactNode } from 'react';
import { isolate, lengthName, Spoken } from '../../../booklet/index.ts';
import { useWords } from '../words.tsx';
import type { Drawing, Shaped } from '../workers/messages.ts';

interface LengthsProps {
  readonly shaped: Shaped;
  /** The same as the file has it. */
  readonly saved: Shaped | null;
}

/** The lettered lengths of the finished item, with what they were before the change. */
export const FinishedSizes = memo(function FinishedSizes({ shaped, saved }: LengthsProps): ReactNode {
  const words = useWords();
  const was = (letter: string): number | undefined => saved?.dimensions.find((each) => each.letter === letter)?.value;
  return (
    <table className="figures">
      <thead>
        <tr><td /><th scope="col">{words.t('page.lengths.length')}</th><th scope="col"><Spoken text={isolate('mm')} /></th><th scope="col">{words.t('page.lengths.was')}</th></tr>
      </thead>
      <tbody>
        {shaped.dimensions.map((length) => (
          <tr key={length.letter}>
            <td><span className="label letter" dir="ltr">{length.letter}</span></td>
            <th scope="row">{lengthName({ words, model: shaped }, length)}</th>
            <Now now={length.value} was={was(length.letter)} />
          </tr>
        ))}
      </tbody>
    </table>
  );
});

/** Tubes to saw, and how the stock tubes are cut. */
export const CutLengths = memo(function CutLengths({ shaped, saved }: LengthsProps): ReactNode {
  const words = useWords();
  const earlier = saved?.tubes ?? [];
  // Tubes have no names of their own: those of a kind are matched by their place in its list.
  const was = (kind: string, place: number): number | undefined => earlier.filter((each) => each.kind === kind)[place]?.length;
  const placeOf = (index: number): number => shaped.tubes.slice(0, index).filter(({ kind }) => kind === shaped.tubes[index]?.kind).length;
  return (
    <>
      <table className="figures">
        <thead>
          <tr><th scope="col">{words.t('page.lengths.piece')}</th><th scope="col">{words.t('booklet.quantity')}</th><th scope="col"><Spoken text={isolate('mm')} /></th><th scope="col">{words.t('page.lengths.was')}</th></tr>
        </thead>
        <tbody>
          {shaped.tubes.map(({ kind, length, count, letter }, index) => (
            <tr key={`${kind} ${length}`}>
              <th scope="row"><b dir="ltr">{letter}</b> {words.t(`parts.${kind}.name`)}</th>
              <td><Spoken text={isolate(words.number(count))} /></td>
              <Now now={length} was={was(kind, placeOf(index))} />
            </tr>
          ))}
        </tbody>
      </table>
      <p>{words.t('page.lengths.stock', { count: shaped.stockTubes.used, length: words.measure(shaped.stockTubes.length, 'mm') })}</p>
      <Paper drawing={shaped.bars} name={words.t('page.lengths.bars')} />
    </>
  );
});

/** The blank's sides and the drawing of the flat panel. */
export const FlatPattern = memo(function FlatPattern({ shaped, saved }: LengthsProps): ReactNode {
  const words = useWords();
  const blank = words.measures(shaped.blank.map((side) => Math.round(side * 10) / 10), 'mm');
  const was = saved === null ? blank : words.measures(saved.blank.map((side) => Math.round(side * 10) / 10), 'mm');
  return (
    <>
      <p className="blank"><Spoken text={words.t('page.lengths.blank', { blank })} />{was !== blank && <> (<Spoken text={words.t('page.lengths.before', { was })} />)</>}</p>
      <Paper drawing={shaped.pattern} name={words.t('booklet.alt.pattern', { blank })} />
      {shaped.plates.map((plate, index) => <Paper key={index} drawing={plate} name={words.t('booklet.chapters.plates')} />)}
    </>
  );
});

/** A length in mm and, where it has changed, what the file has. */
function Now({ now, was }: { readonly now: number; readonly was: number | undefined }): ReactNode {
  const words = useWords();
  const text = words.number(now, 1);
  const before = was === undefined ? text : words.number(was, 1);
  return (
    <>
      <td className={before === text ? 'now' : 'now changed'}><Spoken text={isolate(text)} /></td>
      <td className="was">{before === text ? '' : <Spoken text={isolate(before)} />}</td>
    </>
  );
}

/** A drawing on white paper, as wide as there is room. */
export function Paper({ drawing: { svg }, name }: { readonly drawing: Drawing; readonly name: string }): ReactNode {
  return <div className="paper" role="img" aria-label={name} dangerouslySetInnerHTML={{ __html: svg }} />;
}
