import type { Working } from './item-values.ts';
import { messages } from './messages.ts';
import type { Face, PanelPiece } from './types.ts';

/** A panel between the middles of its lowest and its highest tube over the floor, mm. */
export interface PanelRise {
  readonly panel: PanelPiece;
  readonly low: number;
  readonly high: number;
}

/** The middle of a deck's tubes over the floor, mm. */
export interface DeckHeight {
  readonly deck: string;
  readonly height: number;
}

/** Tells panels with a deck between their tubes, which fills the inside of the sides, and those that lie on tubes another one of the side covers. */
export function panelRoomFaults({ source, size, faults }: Working, panels: readonly PanelRise[], decks: readonly DeckHeight[]): void {
  panels.forEach((one, index) => {
    const { panel, low, high } = one;
    const between = decks.find(({ height }) => height > low && height < high);
    if (between !== undefined) faults.push(source.fault(['pieces', panel.name, 'to'], messages.noDeckBetween(between.deck), messages.inSize(panel.to, size)));
    const earlier = panels.slice(0, index).find((other) => meet(one, other));
    if (earlier !== undefined) faults.push(source.fault(['pieces', panel.name, 'on'], messages.sideTaken(earlier.panel.name), messages.inSize(panel.on.join(', '), size)));
  });
}

function meet(one: PanelRise, other: PanelRise): boolean {
  const sides: readonly Face[] = other.panel.on;
  return one.panel.on.some((side) => sides.includes(side)) && one.low <= other.high && other.low <= one.high;
}
