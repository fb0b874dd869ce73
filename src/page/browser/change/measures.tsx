import { useId, useRef, type CSSProperties, type ReactNode } from 'react';
import { lengthName, Spoken } from '../../../booklet/index.ts';
import type { Item, Parameter, Use } from '../../../read/index.ts';
import type { NamedLength } from '../../../model/index.ts';
import { parameterWords, useWords } from '../words.tsx';
import type { Driver } from '../workers/messages.ts';
import { Figure } from './figure.tsx';
import { Tape } from './tape.tsx';
import { scaleOf, savedValue, shown, valueOf, type Draft } from './values.ts';

/** A lettered length of the finished item and the measure that sets it. */
export interface Finished {
  readonly length: NamedLength;
  readonly driver: Driver;
}

interface MeasuresProps {
  readonly item: Item;
  readonly size: string;
  readonly draft: Draft;
  readonly finished: readonly Finished[];
  /** A value in base units; changes of one stroke are undone together. */
  readonly onChange: (name: string, value: number, stroke: number) => void;
  /** Whether what stands in a measure's field is not allowed. */
  readonly onRefused: (name: string, isRefused: boolean) => void;
}

/** A field for each measure that the size sets, and beside it one for the finished length that follows from it. */
export function Measures({ item, size, draft, finished, onChange, onRefused }: MeasuresProps): ReactNode {
  const stroke = useRef(0);
  const begin = (): void => { stroke.current += 1; };
  return (
    <div className="measures" onPointerDown={begin} onFocus={begin}>
      {item.parameters.map((parameter) => (
        <Measure key={`${item.name} ${size} ${parameter.name}`} item={item.name} parameter={parameter} value={valueOf(item, size, draft, parameter.name).value} use={item.use}
          saved={savedValue(item, size, parameter.name).value} finished={finished.filter(({ driver }) => driver.parameter === parameter.name)}
          onChange={(value) => { onChange(parameter.name, value, stroke.current); }} onRefused={(field, isRefused) => { onRefused(`${parameter.name} ${field}`, isRefused); }} />
      ))}
    </div>
  );
}

interface MeasureProps {
  readonly item: string;
  readonly parameter: Parameter;
  /** In base units, as are the other two. */
  readonly value: number;
  readonly saved: number;
  readonly use: Use;
  readonly finished: readonly Finished[];
  readonly onChange: (value: number) => void;
  readonly onRefused: (field: string, isRefused: boolean) => void;
}

/** Name and purpose, a figure with its unit, and the range as a tape to slide along. Its label and purpose are in the reader's language where the locale files have them. */
function Measure({ item, parameter, value, saved, use, finished, onChange, onRefused }: MeasureProps): ReactNode {
  const words = useWords();
  const id = useId();
  const { label, purpose, fromFile } = parameterWords(words, item, parameter);
  const own = fromFile ? { lang: 'en', dir: 'ltr' } : {};
  const scale = scaleOf(parameter);
  const figure = (base: number): number => shown({ value: base, dimension: parameter.least.dimension }, scale);
  const [least, most] = [figure(parameter.least.value), figure(parameter.most.value)];
  const toBase = (typed: number): number => typed / scale.perBase;
  const end = (at: number): string => words.measure(at, scale.unit === '' ? '1' : scale.unit, 2);
  return (
    <div className={value === saved ? 'measure' : 'measure changed'}>
      <label className="measure-name" htmlFor={`${id}-figure`} title={parameter.name} {...own}>{label}</label>
      <span className="measure-figure" dir="ltr">
        <Figure id={`${id}-figure`} value={figure(value)} least={least} most={most} whole={parameter.whole} said={end} describedBy={`${id}-purpose ${id}-range`} onRefused={(isRefused) => { onRefused('', isRefused); }} onChange={(typed) => { onChange(toBase(typed)); }} />
        <span className="unit">{scale.unit}</span>
      </span>
      <button type="button" className="back" disabled={value === saved} onClick={() => { onChange(saved); }}>
        {words.t('page.measures.back')} <span className="said-only">{words.t('page.measures.back-of', { name: label, value: end(figure(saved)) })}</span>
      </button>
      <div className="tape">
        <Tape label={words.t('page.measures.slide', { name: label })} least={least} most={most} step={scale.step} value={figure(value)}
          said={`${figure(value)} ${scale.unit}`} style={{ '--ticks': ticks(most - least, scale.step) } as CSSProperties} onChange={(at) => { onChange(toBase(at)); }} />
        <span className="ends" id={`${id}-range`}>
          <span className="said-only">{words.t('page.measures.range', { least: end(least), most: end(most) })}</span>
          <span aria-hidden="true">{end(least)}</span><span aria-hidden="true">{end(most)}</span>
        </span>
      </div>
      {finished.map((each) => (
        <FinishedLength key={each.length.letter} finished={each} use={use} value={value} parameter={parameter} onChange={onChange} onRefused={(isRefused) => { onRefused(each.length.letter, isRefused); }} />
      ))}
      <p className="purpose" id={`${id}-purpose`} {...own}><Spoken text={purpose} /></p>
    </div>
  );
}

/** Divisions of the tape: one a step where these are few, else about twenty. */
const ticks = (range: number, step: number): number => (range / step <= 20 ? Math.max(1, Math.round(range / step)) : 20);

interface FinishedLengthProps extends Omit<MeasureProps, 'item' | 'saved' | 'finished' | 'onRefused'> {
  readonly finished: Finished;
  readonly onRefused: (isRefused: boolean) => void;
}

/** The finished length that follows from a measure; typed here, it sets the measure. */
function FinishedLength({ finished: { length, driver }, use, value, parameter, onChange, onRefused }: FinishedLengthProps): ReactNode {
  const words = useWords();
  const id = useId();
  const rounded = (mm: number): number => Math.round(mm * 100) / 100;
  const at = (of: number): number => length.value + (of - value) * driver.slope;
  const [one, other] = [rounded(at(parameter.least.value)), rounded(at(parameter.most.value))];
  return (
    <>
      <label className="finished-name" htmlFor={`${id}-finished`}><span className="label letter" dir="ltr">{length.letter}</span> {words.t('page.measures.finished', { name: lengthName({ words, model: { use } }, length) })}</label>
      <span className="measure-figure" dir="ltr">
        <Figure id={`${id}-finished`} value={rounded(length.value)} least={Math.min(one, other)} most={Math.max(one, other)} whole={false} said={(mm) => words.measure(mm, 'mm', 2)} describedBy={undefined} onRefused={onRefused}
          onChange={(typed) => { onChange(rounded(value + (typed - length.value) / driver.slope)); }} />
        <span className="unit">mm</span>
      </span>
    </>
  );
}
