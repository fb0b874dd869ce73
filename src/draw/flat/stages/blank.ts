import type { Vec2 } from '../../../model/index.ts';
import { runningDimension, runningReach, type Station } from '../../kit/dimension.ts';
import { capHeights } from '../../kit/lettering.ts';
import type { Mark } from '../../kit/marks.ts';
import { onStock, orderRoom, stockCuts, stockMarks, WASTE, type Kept } from '../on-stock.ts';
import type { Paper } from '../../kit/svg.ts';
import { boxOnPaper, fitToScale, onPaper, type Fit } from '../../kit/fit.ts';
import { mainBox } from './layout.ts';
import { tell } from '../../../scene/index.ts';

const cap = capHeights.step;
const dimensionGap = 6;

/** The blank's two cuts on the stock panel, measured from its lower left corner, and how large that is; of what is left over, waste is hatched. */
export function blankStage(sides: Vec2, stock: Vec2, paper: Paper, kept: Kept = WASTE): readonly Mark[] {
  const blank = onStock('blank', sides, stock);
  const reach = runningReach([blank, stock].map((each) => tell.mm(each[1])), cap);
  const extent = { min: [0, 0], max: stock } as const;
  const view = fitToScale(extent, mainBox(paper, 0, {
    left: dimensionGap + reach, right: orderRoom, top: orderRoom, bottom: dimensionGap + runningReach([tell.mm(0)], cap),
  }));
  const box = boxOnPaper(view, extent);
  return [
    { mark: 'view', name: 'stock', scale: view.scale, marks: stockMarks(view, blank, stock, kept) },
    ...stockCuts(view, blank, stock),
    ...runningDimension({
      axis: 'x', datum: box.x, line: box.y + box.height + dimensionGap, feature: box.y + box.height, cap,
      stations: stationsOf(view, blank, stock, 0),
    }),
    ...runningDimension({
      axis: 'y', datum: box.y + box.height, line: box.x - dimensionGap, feature: box.x, cap,
      stations: stationsOf(view, blank, stock, 1),
    }),
  ];
}

/** Where the cut runs, and where the stock ends, unless that is where it is cut. */
function stationsOf(view: Fit, blank: Vec2, stock: Vec2, side: 0 | 1): readonly Station[] {
  const lengths = stock[side] - blank[side] > 0.5 ? [blank, stock] : [blank];
  return lengths.map((each) => ({ at: onPaper(view, each)[side], told: tell.mm(each[side]) }));
}
