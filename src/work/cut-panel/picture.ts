import { body, bold, box, cutOnBoardPicture, knife, platePunched, plateSheet, plateTraced, ring, thin, tint, together, white, withPattern, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';

const hole = (x: number, y: number): Ink => ring(x, y, 2.2, thin, white);

/** A rectangle with its holes, cut from the corner of a sheet. */
const pictogram: Ink = together(
  body(box(2.5, 9, 43, 36)),
  body(box(2.5, 24, 27, 21), tint, bold),
  ...[9, 23].flatMap((x) => [30, 39].map((y) => hole(x, y))),
  knife(30, 23.5, -62, 21, 4.4),
);

export const picture: WorkPicture = {
  pictogram,
  flat: withPattern('round', ({ model, plan, papers }, { detail }) => (detail.on === 'plates' ? [plateSheet(model, detail.index, papers.bench, false, plan), cutOnBoardPicture(papers.bench), ...platePunched(model, detail.index, papers.bench.width)] : []), plateTraced),
};
