import { ownPanels, type OwnPiece, type PanelArea } from '../../cut/index.ts';
import type { Model } from '../../model/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { WASTE, type Kept, type Use } from '../flat/index.ts';

/** What of the rest of a piece the steps cut from later: of the blank of a pattern, or of a flat panel, by its place in the model's list. Of several alike the first says it. */
export function keptOf(model: Model, { steps }: Pick<Plan, 'steps'>, is: OwnPiece['is'], index: number): Kept {
  const sheet = ownPanels(model).find((pieces) => pieces.some((piece) => piece.is === is && piece.index === index)) ?? [];
  const place = sheet.findIndex((piece) => piece.is === is && piece.index === index);
  const piece = sheet[place];
  if (piece === undefined) return WASTE;
  const { from, sides: [x, y] } = piece;
  const useOf = (area: PanelArea): Use => {
    const later = sheet.slice(place + 1).find((each) => isSame(each.from, area));
    if (later === undefined) return 'waste';
    const step = steps.find((each) => cuts(each, later));
    if (later.is === is && later.index === index) return 'next';
    return step?.number ?? 'waste';
  };
  return {
    right: useOf({ at: [from.at[0] + x, from.at[1]], sides: [from.sides[0] - x, from.sides[1]] }),
    above: useOf({ at: [from.at[0], from.at[1] + y], sides: [x, from.sides[1] - y] }),
  };
}

/** Whether a step cuts a piece. */
const cuts = ({ action, detail }: Step, { is, index }: OwnPiece): boolean =>
  (is === 'plate' ? action === 'cut-panel' && detail.on === 'plates' && detail.index === index : action === 'cut-blank' && (detail.on !== 'pattern' || detail.index === index));

const isSame = (one: PanelArea, other: PanelArea): boolean =>
  [one.at[0] - other.at[0], one.at[1] - other.at[1], one.sides[0] - other.sides[0], one.sides[1] - other.sides[1]].every((apart) => Math.abs(apart) < 1e-6);
