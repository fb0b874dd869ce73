import type { Kit, PanelKind } from '../../read/index.ts';
import type { PanelHole, PunchedFace, Vec2 } from '../types.ts';

type Pinned = Pick<Kit, 'panelPin'>;

/** A hole right through, for a panel pin's shank. */
export const tabHole = ({ panelPin }: Pinned, at: Vec2): PanelHole => ({ at, diameter: panelPin.diameter, depth: null, face: 'drawn' });

/** The hole under a tab: the pin has passed the tab's thickness when it comes here, and goes in as deep as it is longer than that. */
export const baseHole = ({ panelPin }: Pinned, { thickness }: Pick<PanelKind, 'thickness'>, at: Vec2, face: PunchedFace): PanelHole =>
  ({ at, diameter: panelPin.diameter, depth: panelPin.length - thickness, face });
