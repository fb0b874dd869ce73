import type { JointPorts, Vec2, Vec3 } from '../../model/index.ts';
import type { SceneBody, View } from '../../scene/index.ts';
import type { DrawnPicture } from '../types.ts';
import { portSection, SECTION, type Fitted } from '../flat/port-sections.ts';
import { STUD_FIXED, studFixed } from '../flat/stud-fixed.ts';
import { fitInto, onPaper } from '../kit/fit.ts';
import { circle, line, type Mark } from '../kit/marks.ts';
import { haloOf, pens, plainPens } from '../kit/pens.ts';
import { toPicture } from '../kit/svg.ts';
import { paperGround } from './compose.ts';
import { fills } from './fills.ts';
import type { LineDrawer } from './line-drawer.ts';
import { paintsOf } from './looks.ts';
import { planeOf, project } from './plane.ts';
import { strokes } from './strokes.ts';

/** A port with its mouth or head in the scene, mm. */
export interface PortPlace {
  readonly port: JointPorts['ports'][number];
  readonly at: Vec3;
}

/** Room of the joint, and the white between it and the sections, mm of paper. */
const JOINT = { width: 52, gap: 12 } as const;

/** A stud's section has no mouth before it: its line goes on to it so far, mm of paper. */
const STUD_SECTION = 18;

/** A joint as it lies, and beside it each sort of its openings cut lengthwise, joined to where it is: which lets a tube through, in which it ends, and how a cord lies on a stud. */
export function composeJointGuide(bodies: readonly SceneBody[], view: View, places: readonly PortPlace[], fitted: Fitted, lineDrawing: LineDrawer): DrawnPicture {
  const drawing = lineDrawing(bodies, view);
  const rowsHigh = Math.max(2, places.length) * SECTION.high;
  // Where a stud's row shows its cord, that nobody turns it has a row of its own.
  const isToldApart = fitted.hasCords && places.some(({ port }) => port.is === 'stud');
  const height = rowsHigh + (isToldApart ? STUD_FIXED.height : 0);
  const plane = planeOf(view);
  const fit = fitInto(drawing.bounds, { x: 1, y: 2, width: JOINT.width, height: rowsHigh - 4 }, 1, [0.5, 0.5]);
  const paints = paintsOf(bodies);
  const onSheet = places.map((place) => ({ ...place, from: onPaper(fit, project(plane, place.at)) })).toSorted((a, b) => a.from[1] - b.from[1]);
  const left = JOINT.width + JOINT.gap;
  const rows = onSheet.map(({ port, from }, row): { readonly from: Vec2; readonly to: Vec2; readonly marks: readonly Mark[] } => {
    const middle: Vec2 = [left + 5, (row + 0.5) * SECTION.high];
    return { from, to: [port.is === 'stud' ? left + STUD_SECTION : left - 1, middle[1]], marks: portSection(port, fitted, middle) };
  });
  const paper = { width: left + 10 + SECTION.wide, height };
  return toPicture(paper, [
    paperGround(paper), ...fills(drawing, paints, fit), ...strokes(drawing, paints, fit, plainPens),
    ...rows.flatMap(({ from, to }) => [line(haloOf(pens.leader.width), from, to), line(pens.leader, from, to), circle(from, 0.9, pens.edge, 'white')]),
    ...rows.flatMap(({ marks }) => marks), ...(isToldApart ? studFixed([left + STUD_SECTION + 4, rowsHigh]) : []),
  ]);
}
