import type { FlatPattern } from '../../../src/model/index.ts';
import { flatPattern } from '../../../src/model/index.ts';
import type { Kit } from '../../../src/read/index.ts';

/** The stall kit of steps/kits/stall-kit.yaml as plain numbers, with a tube and a panel of choice (mm). */
export function kitWith({ tube = 28, thickness = 9 }: { readonly tube?: number; readonly thickness?: number } = {}): Kit {
  return {
    name: 'stall-kit',
    panel: {
      length: 1500, width: 1000, thickness, skin: 0.8, neutralLayer: 1, tightestCrease: Math.PI / 4, density: 1.6e-7,
      skinModulus: 1200, skinStrength: 20, coreShearModulus: 4, coreShearStrength: 0.35, usedStockFactor: 0.6,
    },
    tube: { outsideDiameter: tube, wall: 2.5, length: 2000, density: 1.9e-6, modulus: 17000, bendingStrength: 170, bearingStrength: 90, usedStockFactor: 0.7 },
    joint: {
      sleeveDiameter: tube + 10, sleeveAbove: 22, sleeveBelow: 52, bore: tube + 0.6, socketDiameter: tube + 10, socketDepth: 50, stop: 20,
      endPlay: 2, studDiameter: 10, studReach: 42, studHeadDiameter: 18, studHead: 4, pinHeight: 36, mass: 0.18,
    },
    panelPin: { diameter: 5, length: 17, headDiameter: 16, headHeight: 3 },
    jointPin: { diameter: 6, length: 58, headDiameter: 14, headHeight: 4, strength: 240, wingSpan: 30, nutHeight: 10 },
    cable: { diameter: 4, length: 3000, stiffness: 60000, strength: 2000 },
    catalogue: { joints: [], tubes: [], panels: [], fittings: [] },
    practice: {
      insideGap: 3, wrapClearance: 0.5, turnBack: Math.PI / 4, tab: 45, pinEdge: 15, punching: 'flat', pinEnd: 25, pinPitch: 300, notchGap: 4,
      notchRadius: 6, tabCorner: 12, sawKerf: 1, knifeKerf: 0,
    },
  };
}

/** The pattern of a deck whose long and short tubes have the given lengths (mm). */
export function patternFor(width: number, depth: number, kit: Kit = kitWith()): FlatPattern {
  return flatPattern(kit, [width / 2 + kit.joint.stop, depth / 2 + kit.joint.stop]);
}
