import { useEffect, useId, useState, type CSSProperties, type ReactNode } from 'react';
import { Spoken } from '../../../booklet/index.ts';
import type { Item, Parameter } from '../../../read/index.ts';
import { parameterWords, useWords } from '../words.tsx';
import { scaleOf, savedValue, shown, valueOf, type Draft } from './values.ts';

interface MeasuresProps {
  readonly item: Item;
  readonly size: string;
  readonly draft: Draft;
  readonly onChange: (name: string, value: number) => void;
}

/** A field for each measure that the size sets. */
export function Measures({ item, size, draft, onChange }: MeasuresProps): ReactNode {
  return (
    <div className="measures">
      {item.parameters.map((parameter) => (
        <Measure key={`${item.name} ${size} ${parameter.name}`} item={item.name} parameter={parameter} value={valueOf(item, size, draft, parameter.name).value}
          saved={savedValue(item, size, parameter.name).value} onChange={(value) => { onChange(parameter.name, value); }} />
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
  readonly onChange: (value: number) => void;
}

/** Name and purpose, a figure with its unit, and the range as a tape to slide along. Its label and purpose are in the reader's language where the locale files have them. */
function Measure({ item, parameter, value, saved, onChange }: MeasureProps): ReactNode {
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
        <Figure id={`${id}-figure`} value={figure(value)} least={least} most={most} whole={parameter.whole} describedBy={`${id}-purpose ${id}-range`} onChange={(typed) => { onChange(toBase(typed)); }} />
        <span className="unit">{scale.unit}</span>
      </span>
      <button type="button" className="back" disabled={value === saved} onClick={() => { onChange(saved); }}>
        {words.t('page.measures.back')} <span className="said-only">{words.t('page.measures.back-of', { name: label, value: end(figure(saved)) })}</span>
      </button>
      <div className="tape">
        <input type="range" aria-label={words.t('page.measures.slide', { name: label })} min={least} max={most} step={scale.step} value={figure(value)}
          aria-valuetext={`${figure(value)} ${scale.unit}`} style={{ '--ticks': ticks(most - least, scale.step) } as CSSProperties}
          onChange={(event) => { onChange(toBase(Number(event.target.value))); }} />
        <span className="ends" id={`${id}-range`}>
          <span className="said-only">{words.t('page.measures.range', { least: end(least), most: end(most) })}</span>
          <span aria-hidden="true">{end(least)}</span><span aria-hidden="true">{end(most)}</span>
        </span>
      </div>
      <p className="purpose" id={`${id}-purpose`} {...own}><Spoken text={purpose} /></p>
    </div>
  );
}

/** Divisions of the tape: one a step where these are few, else about twenty. */
const ticks = (range: number, step: number): number => (range / step <= 20 ? Math.max(1, Math.round(range / step)) : 20);

interface FigureProps {
  readonly id: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
  readonly describedBy: string;
  readonly onChange: (typed: number) => void;
}

/** A figure that may be half typed: it counts only when it lies in the range, and is put right when the field is left. */
function Figure({ id, value, least, most, whole, describedBy, onChange }: FigureProps): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  useEffect(() => { setTyped((before) => (before !== null && Number(before) === value ? before : null)); }, [value]);
  const isSound = (text: string): boolean => text.trim() !== '' && Number(text) >= least && Number(text) <= most && (!whole || Number.isInteger(Number(text)));
  const text = typed ?? String(value);
  return (
    <input id={id} type="number" inputMode="decimal" min={least} max={most} step="any" value={text} aria-describedby={describedBy} aria-invalid={!isSound(text)}
      onChange={(event) => {
        setTyped(event.target.value);
        if (isSound(event.target.value)) onChange(Number(event.target.value));
      }}
      onBlur={() => { setTyped(null); }} />
  );
}
