import type { FlatPattern, Vec2 } from '../../model/index.ts';
import type { Box } from '../types.ts';
import { creasedSection, cutSection, halfCutSection, sectionMarks } from './glyphs.ts';
import type { Mark } from '../kit/marks.ts';
import { line } from '../kit/marks.ts';
import { flapOn } from './panel-lines.ts';
import type { Pen } from '../kit/pens.ts';
import { pens } from '../kit/pens.ts';
import type { Fit } from '../kit/fit.ts';
import { fitToScale } from '../kit/fit.ts';

/** Length of a line sample: two full periods of the longest pattern. */
const sampleLength = 24;

/**
 * What the lines mean, without words: a sample of each line beside a section of what is done there:
 * cut through, creased and folded up, cut half through and turned back. Rows from top to bottom of the box.
 */
export function legendMarks(pattern: FlatPattern, box: Box): readonly Mark[] {
  const flap = flapOn(pattern, 'left');
  const reach = pattern.thickness * 2.2;
  const rows: readonly { readonly pen: Pen; readonly rings: readonly (readonly Vec2[])[] }[] = [
    { pen: pens.cut, rings: cutSection(pattern, reach, pattern.thickness / 2) },
    { pen: pens.crease, rings: [creasedSection(pattern, reach, flap.creaseAngle)] },
    { pen: pens.halfCut, rings: [halfCutSection(pattern, reach, flap.turnBack)] },
  ];
  const height = box.height / rows.length;
  return rows.flatMap(({ pen, rings }, index) => {
    const row: Box = { x: box.x, y: box.y + index * height, width: box.width, height };
    const y = row.y + height / 2;
    const view = glyphView(rings.flat(), { x: row.x + sampleLength + 4, y: row.y + 1, width: row.width - sampleLength - 4, height: height - 2 });
    return [
      line(pen, [row.x, y], [row.x + sampleLength, y]),
      { mark: 'view' as const, name: `legend-${pen.name}`, scale: view.scale, marks: rings.flatMap((ring) => sectionMarks(view, ring, false)) },
    ];
  });
}

/** A view that fits a section into a box. */
export function glyphView(points: readonly Vec2[], box: Box): Fit {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return fitToScale({ min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] }, box, true);
}
