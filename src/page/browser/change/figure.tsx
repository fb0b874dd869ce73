import { useEffect, useId, useRef, useState, type ReactNode } from 'react';
import { Spoken } from '../../../booklet/index.ts';
import { useWords } from '../words.tsx';

interface FigureProps {
  readonly id: string;
  readonly name?: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly whole: boolean;
  /** A figure as it is told, with its unit. */
  readonly said: (figure: number) => string;
  readonly describedBy: string | undefined;
  readonly onChange: (typed: number) => void;
  readonly onRefused: (isRefused: boolean) => void;
}

type Fault = 'none' | 'outside' | 'whole';

/** A figure that may be half typed: it counts only when it is allowed. One that is not stays in the field, and what is wrong with it is told in words. */
export function Figure({ id, name, value, least, most, whole, said, describedBy, onChange, onRefused }: FigureProps): ReactNode {
  const words = useWords();
  const told = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [isLeft, setLeft] = useState(false);
  const faultOf = (text: string): Fault | null => {
    const figure = Number(text);
    if (text.trim() === '' || Number.isNaN(figure)) return 'none';
    if (figure < least || figure > most) return 'outside';
    return whole && !Number.isInteger(figure) ? 'whole' : null;
  };
  const fault = typed === null ? null : faultOf(typed);
  const isRefused = fault !== null;
  // A value set in another way (slide, undo, another field) takes the place of what was typed.
  const shownValue = useRef(value);
  useEffect(() => {
    if (shownValue.current !== value) setTyped((before) => (before !== null && Number(before) === value ? before : null));
    shownValue.current = value;
  }, [value]);
  const refuse = useRef(onRefused);
  useEffect(() => { refuse.current = onRefused; });
  useEffect(() => {
    refuse.current(isRefused);
    return () => { if (isRefused) refuse.current(false); };
  }, [isRefused]);
  const text = typed ?? String(value);
  return (
    <>
      <input id={id} name={name} type="number" inputMode="decimal" min={least} max={most} step="any" value={text} aria-describedby={[describedBy, isRefused ? told : undefined].filter(Boolean).join(' ') || undefined} aria-invalid={isRefused}
        onChange={(event) => {
          setLeft(false);
          setTyped(event.target.value);
          if (faultOf(event.target.value) === null) onChange(Number(event.target.value));
        }}
        onBlur={() => {
          setLeft(true);
          if (fault === null) setTyped(null);
        }} />
      {fault !== null && (
        <span className="refused" id={told} {...(isLeft ? { role: 'alert' } : {})}>
          <Spoken text={words.t(`page.measures.${fault}`, { typed: text, least: said(least), most: said(most), value: said(value) })} />
        </span>
      )}
    </>
  );
}
