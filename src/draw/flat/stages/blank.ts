import type { FlatPattern, Vec2 } from '../../../model/index.ts';
import { hatching } from '../clip.ts';
import { runningDimension, runningReach } from '../dimension.ts';
import { capHeights, lengthText } from '../lettering.ts';
import type { Mark } from '../marks.ts';
import { area, line, outline } from '../marks.ts';
import { earlier, ink, panelTint, pens } from '../pens.ts';
import type { Paper } from '../svg.ts';
import type { View } from '../view.ts';
import { allOnPaper, boxOnPaper, fitView, onPaper } from '../view.ts';
import { mainBox } from './layout.ts';

const cap = capHeights.step;
const dimensionGap = 6;
/** The cut lines run out past the stock's edge to their order numerals. */
const pastEdge = 4;
const orderRoom = pastEdge + 2 * capHeights.order + 1;
const hatchPitch = 3;

/** The blank's two cuts on the stock panel, measured from its lower left corner; what is left over is hatched. */
export function blankStage(pattern: FlatPattern, stock: Vec2, paper: Paper): readonly Mark[] {
  const blank = onStock(pattern.blank, stock);
  const reach = runningReach([lengthText(blank[1])], cap);
  const extent = { least: [0, 0], most: stock } as const;
  const view = fitView(extent, mainBox(paper, 0, {
    left: dimensionGap + reach, right: orderRoom, top: orderRoom, bottom: dimensionGap + runningReach(['0'], cap),
  }));
  const box = boxOnPaper(view, extent);
  return [
    { mark: 'view', name: 'stock', scale: view.scale, marks: stockMarks(view, blank, stock) },
    ...cuts(view, blank, stock),
    ...runningDimension({
      axis: 'x', datum: box.x, line: box.y + box.height + dimensionGap, feature: box.y + box.height, cap,
      stations: [{ at: onPaper(view, blank)[0], text: lengthText(blank[0]) }],
    }),
    ...runningDimension({
      axis: 'y', datum: box.y + box.height, line: box.x - dimensionGap, feature: box.x, cap,
      stations: [{ at: onPaper(view, blank)[1], text: lengthText(blank[1]) }],
    }),
  ];
}

/** The blank's sides along the stock's, turned by a quarter when only that fits. */
function onStock(blank: Vec2, stock: Vec2): Vec2 {
  const fits = (sides: Vec2) => sides[0] <= stock[0] + 1e-9 && sides[1] <= stock[1] + 1e-9;
  const turned: Vec2 = [blank[1], blank[0]];
  if (fits(blank)) return blank;
  if (fits(turned)) return turned;
  throw new RangeError(`The blank of ${blank[0].toFixed(1)} × ${blank[1].toFixed(1)} mm does not fit on the stock panel of ${stock[0]} × ${stock[1]} mm; make the item smaller or take a larger panel.`);
}

function stockMarks(view: View, [x, y]: Vec2, stock: Vec2): readonly Mark[] {
  const right = allOnPaper(view, [[x, 0], [stock[0], 0], stock, [x, stock[1]]]);
  const top = allOnPaper(view, [[0, y], [x, y], [x, stock[1]], [0, stock[1]]]);
  return [
    area(panelTint, allOnPaper(view, [[0, 0], [x, 0], [x, y], [0, y]])),
    ...[right, top].flatMap((ring) => hatching(ring, hatchPitch).map(([from, to]) => line(earlier(pens.edge), from, to))),
    outline(earlier(pens.cut), allOnPaper(view, [[0, 0], [stock[0], 0], stock, [0, stock[1]]])),
    outline(pens.cut, allOnPaper(view, [[0, 0], [x, 0], [x, y], [0, y]])),
  ];
}

/** First right across the stock, then along what is left: each cut runs from edge to edge. */
function cuts(view: View, [x, y]: Vec2, stock: Vec2): readonly Mark[] {
  const order = (text: string, centre: Vec2): Mark => ({ mark: 'order', text, centre, cap: capHeights.order, pen: { ...pens.edge, colour: ink } });
  const top = onPaper(view, [x, stock[1]]);
  const corner = onPaper(view, [x, y]);
  const right = onPaper(view, [stock[0], y]);
  const left = onPaper(view, [0, y]);
  const radius = capHeights.order * 0.95;
  return [
    line(pens.cut, onPaper(view, [x, 0]), [top[0], top[1] - pastEdge]),
    order('1', [top[0], top[1] - pastEdge - radius]),
    line(pens.cut, left, corner),
    line({ ...pens.edge, colour: ink }, corner, [right[0] + pastEdge, right[1]]),
    order('2', [right[0] + pastEdge + radius, right[1]]),
  ];
}
