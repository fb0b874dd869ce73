import type { ReactNode } from 'react';

interface TicksProps {
  readonly legend: string;
  readonly choices: readonly { readonly value: string; readonly text: string; readonly lang?: string }[];
  readonly ticked: ReadonlySet<string>;
  readonly onTick: (value: string) => void;
  /** What stands below the choices. */
  readonly children?: ReactNode;
}

/** Choices of which any number can be ticked. */
export function Ticks({ legend, choices, ticked, onTick, children }: TicksProps): ReactNode {
  return (
    <fieldset>
      <legend>{legend}</legend>
      {choices.map(({ value, text, lang }) => (
        <label className="tick" key={value}><input type="checkbox" value={value} checked={ticked.has(value)} onChange={() => { onTick(value); }} /> <span {...(lang === undefined ? {} : { lang })}>{text}</span></label>
      ))}
      {children}
    </fieldset>
  );
}
