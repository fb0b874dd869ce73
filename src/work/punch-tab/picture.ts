import { arrow, black, body, panelStrip, pinTrial, stopPicture, stroke, tabPunchPicture, thin, together, white, type Ink, type WorkPicture } from '../../draw/work-kit/index.ts';
import { rowOf } from './row.ts';

/** A punch over a tab that lies on its panel. */
const pictogram: Ink = together(
  panelStrip,
  body('M19.5 5H28.5V22L27.5 32H20.5L19.5 22z', black, thin),
  body('M17 2.5H31V8H17z', black),
  stroke('M24 12V20', thin, white),
  arrow(38, 8, 38, 24),
);

/** The first time how the punch gets its stop, and how hole and pin are tried on waste; wherever it is done where along the tab, how far from its edge and how deep. */
export const picture: WorkPicture = {
  pictogram,
  paper: 'deck',
  once: ({ model: { kit }, papers }) => [stopPicture(kit.panelPin.length, kit.panel.thickness, papers.bench), pinTrial(papers.bench)],
  each: ({ model, papers }, step) => {
    const { panel, panelPin, practice } = model.kit;
    const tab = { thickness: panel.thickness, skin: panel.skin, diameter: panelPin.diameter, fromEdge: practice.pinEdge, depth: panelPin.length };
    return [tabPunchPicture(tab, rowOf(model, step), papers.bench.width)];
  },
};
