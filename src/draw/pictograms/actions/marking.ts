import { body, box, stroke, straight, together, type Ink } from '../ink.ts';
import { panelPlan, pencil } from '../motifs.ts';

/** The inside rectangle, first line on the panel. */
export const markInside: Ink = together(
  panelPlan(2.5, 10, 43, 35),
  stroke('M28 19H11V36H37V30', 3),
  pencil(28, 19.5, -42, 21, 4.2),
);

/** Lines side by side along one edge. */
export const markCreases: Ink = together(
  panelPlan(2.5, 10, 43, 35),
  stroke(`${straight(8.5, 14, 8.5, 41)}${straight(15, 14, 15, 41)}${straight(21.5, 14, 21.5, 41)}${straight(28, 22, 28, 41)}`, 2.5),
  pencil(28, 22, -49, 22.5, 4.2),
);

/** A corner marked off square. */
export const markNotches: Ink = together(
  panelPlan(2.5, 10, 43, 35),
  stroke('M4 31H16V43.5M32 43.5V31H44', 3),
  pencil(17, 30, -45, 29, 4.2),
);

/** Places for the decks measured off along the posts that lie side by side. */
export const markPosts: Ink = together(
  body(box(2.5, 36, 43, 8.5)),
  body(box(2.5, 23, 43, 8.5)),
  stroke(`${straight(12, 19.5, 12, 46.5)}${straight(29, 19.5, 29, 46.5)}`, 3),
  pencil(29, 20, -62, 18, 4),
);
