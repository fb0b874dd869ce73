import type { Kit, PanelKind } from '../../read/index.ts';
import type { PanelHole, PunchedFace, Vec2 } from '../types.ts';

type Pinned = Pick<Kit, 'panelPin' | 'practice'>;

const punchedWhen = ({ practice: { punching } }: Pinned): PanelHole['punched'] => (punching === 'flat' ? 'flat' : 'wrapped');

/** A hole right through, for a panel pin's shank. */
export const tabHole = (kit: Pinned, at: Vec2): PanelHole => ({ at, diameter: kit.panelPin.diameter, depth: null, face: 'drawn', punched: punchedWhen(kit) });

/** The hole under a tab: the pin has passed the tab's thickness when it comes here, and goes in as deep as it is longer than that. */
export const baseHole = (kit: Pinned, { thickness }: Pick<PanelKind, 'thickness'>, at: Vec2, face: PunchedFace): PanelHole =>
  ({ at, diameter: kit.panelPin.diameter, depth: kit.panelPin.length - thickness, face, punched: punchedWhen(kit) });
