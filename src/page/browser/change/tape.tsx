import { useRef, type CSSProperties, type PointerEvent, type ReactNode } from 'react';

interface TapeProps {
  readonly label: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly value: number;
  readonly said: string;
  readonly style: CSSProperties;
  readonly onChange: (value: number) => void;
}

/** A finger slides along only when it goes so far across, px, and further across than up or down: else it scrolls the page. */
const FAR = 8;

interface Touch {
  readonly x: number;
  readonly y: number;
  readonly isSliding: boolean;
}

/** A measuring tape to slide along. A finger that scrolls the page over it, or only taps it, changes nothing. */
export function Tape({ label, least, most, step, value, said, style, onChange }: TapeProps): ReactNode {
  const touch = useRef<Touch | null>(null);
  const down = ({ pointerType, clientX, clientY }: PointerEvent): void => {
    touch.current = pointerType === 'touch' ? { x: clientX, y: clientY, isSliding: false } : null;
  };
  const move = ({ clientX, clientY }: PointerEvent): void => {
    const from = touch.current;
    if (from === null || from.isSliding) return;
    const across = Math.abs(clientX - from.x);
    if (across > FAR && across > Math.abs(clientY - from.y)) touch.current = { ...from, isSliding: true };
  };
  return (
    <input type="range" aria-label={label} min={least} max={most} step={step} value={value} aria-valuetext={said} style={style}
      onPointerDown={down} onPointerMove={move}
      onKeyDown={() => { touch.current = null; }}
      onChange={(event) => { if (touch.current === null || touch.current.isSliding) onChange(Number(event.target.value)); }} />
  );
}
