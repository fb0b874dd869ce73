import { buildModel, type Model } from '../../src/model/index.ts';
import type { Expression, Face, Item, Kit, Quantity } from '../../src/read/index.ts';

const DEG = Math.PI / 180;

/** The invented market-stall kit, in base units (mm, N, N/mm², rad, kg). */
export const stallKit: Kit = {
  name: 'stall-kit',
  panel: {
    length: 1500, width: 1000, thickness: 9, skin: 0.8, neutralLayer: 1, tightestCrease: 45 * DEG, density: 160e-9,
    skinModulus: 1200, skinStrength: 20, coreShearModulus: 4, coreShearStrength: 0.35, usedStockFactor: 0.6,
  },
  tube: {
    outsideDiameter: 28, wall: 2.5, length: 2000, density: 1900e-9, modulus: 17_000,
    bendingStrength: 170, bearingStrength: 90, usedStockFactor: 0.7,
  },
  joint: {
    sleeveDiameter: 38, sleeveAbove: 22, sleeveBelow: 52, bore: 28.6, socketDiameter: 38, socketDepth: 50, stop: 20,
    endPlay: 2, studDiameter: 10, studReach: 42, studHeadDiameter: 18, studHead: 4, pinHeight: 36, mass: 0.18,
  },
  panelPin: { diameter: 5, length: 15, headDiameter: 16, headHeight: 3 },
  jointPin: { diameter: 6, length: 58, headDiameter: 14, headHeight: 4, strength: 240, wingSpan: 30, nutHeight: 10 },
  cable: { diameter: 4, length: 3000, stiffness: 60_000, strength: 2000 },
  catalogue: { joints: [], tubes: [], panels: [], fittings: [] },
  practice: {
    insideGap: 3, wrapClearance: 0.5, turnBack: 45 * DEG, tab: 45, pinEdge: 15, punching: 'flat', pinEnd: 25, pinPitch: 300, notchGap: 4,
    notchRadius: 6, tabCorner: 12, sawKerf: 1, knifeKerf: 0,
  },
};

interface Rack {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly decks: number;
  readonly lowest: number;
  readonly headroom: number;
  readonly faces: readonly Face[];
  readonly kit: Kit;
}

const standard: Rack = {
  width: 1000, depth: 500, height: 1500, decks: 4, lowest: 150, headroom: 30, faces: ['back', 'left', 'right'], kit: stallKit,
};

/** A rack of the stall kit, standard size but for the changes. */
export const rack = (changes: Partial<Rack> = {}): Model => buildModel(itemOf({ ...standard, ...changes }), 'only');

const nowhere = { file: 'tests/check/rack.ts', line: 1, column: 1 };

const length = (value: number): Quantity => ({ value, dimension: 'length' });

const given = (evaluate: Expression['evaluate']): Expression => ({ text: '', position: nowhere, evaluate });

function itemOf({ width, depth, height, decks, lowest, headroom, faces, kit }: Rack): Item {
  const spacing = (height - lowest - headroom) / (decks - 1);
  return {
    name: 'rack', kit, use: 'storage', declares: { place: 'indoors', wall: 'masonry', people: 'adults', mark: null, mattress: null }, revision: 1, parameters: [], expressions: [], order: [], structures: {},
    sizes: [{ name: 'only', values: {} }],
    pieces: [
      {
        is: 'deck', name: 'deck', width: given(() => length(width)), depth: given(() => length(depth)),
        count: given(() => ({ value: decks, dimension: 'count' })),
        top: given((names) => length(lowest + (names['index']?.value ?? 0) * spacing)),
      },
      { is: 'post', name: 'post', front: given(() => length(height)), back: given(() => length(height)), through: ['deck'] },
    ],
    connections: [{ kind: 'brace', piece: 'deck', to: null, faces, position: nowhere }],
    source: { file: nowhere.file, sha256: '' },
  };
}
