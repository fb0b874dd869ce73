import type { ReactNode } from 'react';

interface TicksProps {
  readonly legend: string;
  readonly choices: readonly { readonly value: string; readonly text: string; readonly lang?: string }[];
  readonly ticked: ReadonlySet<string>;
  readonly onTick: (value: string) => void;
  /** Set in columns. */
  readonly isLong?: boolean;
  /** What stands below the choices. */
  readonly children?: ReactNode;
}

/** Choices of which any number can be ticked. */
export function Ticks({ legend, choices, ticked, onTick, isLong = false, children }: TicksProps): ReactNode {
  return (
    <fieldset className={isLong ? 'long' : undefined}>
      <legend>{legend}</legend>
      <div className="choices">{choices.map(({ value, text, lang }) => (
        <label className="tick" key={value}><input type="checkbox" value={value} checked={ticked.has(value)} onChange={() => { onTick(value); }} /> <span {...(lang === undefined ? {} : { lang })}>{text}</span></label>
      ))}</div>
      {children}
    </fieldset>
  );
}

/** With a name that was not among them, or without one that was. */
export const toggled = (names: ReadonlySet<string>, name: string): ReadonlySet<string> =>
  (names.has(name) ? new Set([...names].filter((other) => other !== name)) : new Set([...names, name]));
