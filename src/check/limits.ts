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
  testFactor: { value: 1.5, unit: '1', source: ours('under a short test load, over the used-stock factor; the test load is itself over the use') },
  tubeDeflectionRatio: { value: 200, unit: '1', source: `span / 200, ${practice}` },
  testDeflectionRatio: { value: 60, unit: '1', source: ours('span / 60 under a short test load') },
  panelSagRatio: { value: 50, unit: '1', source: ours('span / 50: a soft panel may be seen to sag') },
  testSagRatio: { value: 20, unit: '1', source: ours('span / 20 under a short test load') },
  pinMaterialFactor: { value: 1.25, unit: '1', source: 'γ_M2 of EN 1993-1-8 (R2)' },
  pinLoadFactor: { value: 1.5, unit: '1', source: ours('1.5 on the load of a steel pin') },
  cornerShare: { value: 0.375, unit: '1', source: ours('a load a quarter of the depth off the middle: two corners share three quarters of every deck') },
  skinPoisson: { value: 0.3, unit: '1', source: ours('Poisson’s ratio of the skins') },

  seatTest: { value: 1300, unit: 'N', source: ours('1300 N spread over the seat, 1.2 times a person of 110 kg (no printed value found)') },
  adultSeat: { value: 460, unit: 'mm', source: 'size mark 6 of EN 1729-1 (R2); body mass as height^2.5 (our default)' },
  backrestShare: { value: 0.35, unit: '1', source: ours('on the backrest 0.35 of the seat’s test load (no printed value found)') },
  tableTest: { value: 300, unit: 'N', source: ours('300 N spread over the table top: books and leaning arms, nobody sits on it (no printed value found)') },
  bedTest: { value: 600, unit: 'N', source: ours('600 N spread over the bed: 1.2 times a child of 50 kg (no printed value found)') },
  testOverUse: { value: 1.2, unit: '1', source: ours('a test load is 1.2 times the heaviest use') },

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
  storageHeight: { value: 686, unit: 'mm', source: 'scope of ASTM F2057-23 (R)' },
  storageMass: { value: 13.6, unit: 'kg', source: 'scope of ASTM F2057-23 (R)' },
  storageVolume: { value: 90.6, unit: 'dm³', source: 'scope of ASTM F2057-23 (R)' },
  tippingForce: { value: 100, unit: 'N', source: ours('a pull at the top under 100 N must not tip it') },
  touchForce: { value: 20, unit: 'N', source: ours('a push of 20 N at the top must not tip it, as sideways in EN 1022 (R2)') },
  tippingAngle: { value: (10 * Math.PI) / 180, unit: 'rad', source: ours('stands on a slope of 10°') },
  loadForward: { value: 0.25, unit: '1', source: ours('a load stands a quarter of the depth towards the front') },
  slenderness: { value: 4, unit: '1', source: `height at most 4 times the depth, ${practice}` },

  edgeLoad: { value: 600, unit: 'N', source: 'EN 1022 (R2)' },
  edgeInset: { value: 60, unit: 'mm', source: 'EN 1022 (R2)' },
  edgePush: { value: 20, unit: 'N', source: 'EN 1022 (R2)' },
  backPushHigh: { value: 80, unit: 'N', source: 'EN 1022 (M)' },
  backPushSlope: { value: 0.2857, unit: 'N/mm', source: 'EN 1022 (M)' },
  backPushZero: { value: 1000, unit: 'mm', source: 'EN 1022 (M)' },
  backPushSeat: { value: 720, unit: 'mm', source: 'EN 1022 (M)' },
  backPushReach: { value: 300, unit: 'mm', source: 'EN 1022 (M)' },

  fingerLeast: { value: 7, unit: 'mm', source: 'EN 747-1 (R2)' },
  fingerMost: { value: 12, unit: 'mm', source: 'EN 747-1 (R2)' },
  guardEnd: { value: 5.6, unit: 'mm', source: '16 CFR 1213.3 and 1513 (R)' },
  guardHeight: { value: 127, unit: 'mm', source: '16 CFR 1213/1513 (R2)' },
  wedgeWidth: { value: 89, unit: 'mm', source: 'wedge block of 16 CFR 1213/1513, its breadth (M)' },
  sphere: { value: 230, unit: 'mm', source: '16 CFR 1213.4 and 1513.4 (R)' },
  slatLeast: { value: 45, unit: 'mm', source: 'EN 716 (M)' },
  slatMost: { value: 65, unit: 'mm', source: 'EN 716 (M)' },
  mattressPlay: { value: 10, unit: 'mm', source: ours('the mattress is 10 mm shorter than the long tubes and in the middle') },
  approvals: { value: 1, unit: '1', source: 'local codes and licensed practice rule for children’s furniture; this report does not replace them (our default)' },
} as const satisfies Record<string, Limit>;

/** The table with any values changed; names, and so the checks, stay the same. */
export type Limits = { readonly [name in keyof typeof defaultLimits]: Limit };
