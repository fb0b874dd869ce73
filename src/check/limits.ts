/** A limit or default with its unit and where it comes from. */
export interface Limit {
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

const ours = (why: string): string => `our default: ${why}`;
const practice = 'common practice, no source';

/** Every limit and default of the room. Change a value here, or hand `checkModel` a changed table. */
export const defaultLimits = {
  gravity: { value: 9.80665, unit: 'N/kg', source: 'standard acceleration of free fall, 3rd CGPM 1901 (M)' },

  factorOfSafety: { value: 3, unit: '1', source: ours('on every strength and on buckling, over the used-stock factor; covers creep and rough handling') },
  tubeDeflectionRatio: { value: 200, unit: '1', source: `span / 200, ${practice}` },
  panelSagRatio: { value: 50, unit: '1', source: ours('span / 50: a soft panel may be seen to sag') },
  pinMaterialFactor: { value: 1.25, unit: '1', source: 'γ_M2 of EN 1993-1-8 (R2)' },
  pinLoadFactor: { value: 1.5, unit: '1', source: ours('1.5 on the load of a steel pin') },
  cornerShare: { value: 0.375, unit: '1', source: ours('a load a quarter of the depth off the middle: two corners share three quarters of every deck') },

  sideForceShare: { value: 0.015, unit: '1', source: ours('sideways 1.5 % of the weight') },
  sideForceLeast: { value: 30, unit: 'N', source: ours('and 30 N more') },
  driftRatio: { value: 100, unit: '1', source: `height / 100, ${practice}` },
  bracedFaces: { value: 3, unit: '1', source: `three faces with crossed cables, ${practice}` },

  loadCap: { value: 600, unit: 'N', source: ours('no deck is promised more') },
  loadStep: { value: 10, unit: 'N', source: ours('safe loads are rounded down to 10 N') },
  leastSafeLoad: { value: 50, unit: 'N', source: ours('a deck that bears less is not worth a promise') },
  nominalLoad: { value: 50, unit: 'N', source: ours('findings are told at 50 N where no load is safe') },

  tabGap: { value: 2, unit: 'mm', source: ours('folded tabs stay 2 mm apart') },

  wallHeight: { value: 600, unit: 'mm', source: ours('anything taller is fixed to a wall') },
  tipTestHeight: { value: 600, unit: 'mm', source: 'GB/T 10357.4 (R)' },
  tipTestMoment: { value: 6, unit: 'kg·m', source: 'GB/T 10357.4 (R)' },
  tippingForce: { value: 100, unit: 'N', source: ours('a pull at the top under 100 N must not tip it') },
  tippingAngle: { value: (10 * Math.PI) / 180, unit: 'rad', source: ours('stands on a slope of 10°') },
  loadForward: { value: 0.25, unit: '1', source: ours('a load stands a quarter of the depth towards the front') },
  slenderness: { value: 4, unit: '1', source: `height at most 4 times the depth, ${practice}` },
} as const satisfies Record<string, Limit>;

/** The table with any values changed; names, and so the checks, stay the same. */
export type Limits = { readonly [name in keyof typeof defaultLimits]: Limit };
