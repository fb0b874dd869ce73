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

  factorOfSafety: { value: 3, unit: '1', source: ours('on every strength and on buckling, over the used-stock factor: 1.2 for rough handling and 2.5 for glass fibre that breaks under a load of years (EUROCOMP, M)') },
  testFactor: { value: 1.5, unit: '1', source: ours('under a short test load, over the used-stock factor; the test load is itself over the use') },
  tubeDeflectionRatio: { value: 200, unit: '1', source: `span / 200, ${practice}` },
  testDeflectionRatio: { value: 60, unit: '1', source: ours('span / 60 under a short test load') },
  panelSagRatio: { value: 50, unit: '1', source: ours('span / 50: a soft panel may be seen to sag') },
  testSagRatio: { value: 20, unit: '1', source: ours('span / 20 under a short test load') },
  pinMaterialFactor: { value: 1.25, unit: '1', source: 'γ_M2 of EN 1993-1-8 (R2)' },
  pinLoadFactor: { value: 1.5, unit: '1', source: ours('1.5 on the load of a steel pin') },
  tubeShear: { value: 3 / 23, unit: '1', source: 'shear modulus of a pultruded tube, 3 of 23 GPa (M)' },
  cornerShare: { value: 0.375, unit: '1', source: ours('a load a quarter of the depth off the middle: two corners share three quarters of every deck') },
  skinPoisson: { value: 0.3, unit: '1', source: ours('Poisson’s ratio of the skins') },

  brittleFactor: { value: 2, unit: '1', source: ours('a brittle skin keeps a factor of 2 at the load of the use') },
  longTermHours: { value: 87_600, unit: 'h', source: ours('laden for ten years') },
  creepSkin: { value: 0.04, unit: '1', source: 'modulus × t^−n, n of glass fibre in bending, EN 13706 annex (M)' },
  creepCore: { value: 0.1, unit: '1', source: 'modulus × t^−n, n in shear, EN 13706 annex (M)' },
  longTermRatio: { value: 100, unit: '1', source: `span / 100 after years, ${practice}` },
  longTermPanelRatio: { value: 30, unit: '1', source: ours('span / 30 of a panel after years: a soft panel may be seen to sag') },
  pinRest: { value: 3, unit: 'mm', source: ours('a pin ends 3 mm under the face that is sat on, and leaves the outer skin whole') },

  seatBreadth: { value: 500, unit: 'mm', source: ours('a person takes 500 mm of a bench') },
  seatTest: { value: 1300, unit: 'N', source: 'seat load of EN 1728 for adults (M), whatever the height: EN 1022 takes users up to 110 kg (R, abstract)' },
  backrestShare: { value: 0.35, unit: '1', source: ours('on the backrest 0.35 of the seat’s test load (no printed value found)') },
  tableTest: { value: 300, unit: 'N', source: ours('300 N spread over the table top: books and leaning arms (no printed value found)') },
  bedTest: { value: 450, unit: 'N', source: 'twice a child of 50 lb, the heaviest of ASTM F1821 (R, abstract); twice for jumping, our default' },
  seatImpact: { value: 1.3, unit: '1', source: ours('a person who drops into a seat weighs 1.3 times as much') },
  tableImpact: { value: 1.2, unit: '1', source: ours('a test load is 1.2 times the heaviest use') },
  bedImpact: { value: 2, unit: '1', source: ours('a child who jumps weighs twice as much') },

  pad: { value: 200, unit: 'mm', source: 'loading pad of EN 1728, its breadth (M)' },
  padInset: { value: 100, unit: 'mm', source: ours('a person at the edge sits 100 mm inside it') },
  box: { value: 300, unit: 'mm', source: ours('all of the load in one box of 300 mm, at the edge too') },
  spread: { value: 0.6, unit: '1', source: 'a load works on its own breadth and 0.6 of the span, BS 8110-1 3.5.2.2 (M)' },
  oneSided: { value: 0.75, unit: '1', source: ours('the load on one half: three quarters of it on the nearer tube') },
  leanLoad: { value: 600, unit: 'N', source: ours('600 N on 300 mm of an edge: a child kneels on it (no printed value found)') },
  leanStretch: { value: 300, unit: 'mm', source: ours('600 N on 300 mm of an edge') },
  adultLoad: { value: 1000, unit: 'N', source: ours('1000 N on 400 mm of an edge: an adult sits where an adult can sit (no printed value found)') },
  adultStretch: { value: 400, unit: 'mm', source: ours('1000 N on 400 mm of an edge') },
  guardPush: { value: 222, unit: 'N', source: '50 lbf on a guard, ASTM F1821 (M)' },
  storagePush: { value: 100, unit: 'N', source: ours('a person leans on it with 100 N') },
  furniturePush: { value: 200, unit: 'N', source: ours('pushed sideways with 200 N, tables and seats alike (no printed value found)') },

  untestedJoint: { value: 0.75, unit: '1', source: ours('three quarters of the load where nobody has tested the joints') },
  jointFactor: { value: 1.5, unit: '1', source: ours('a tested joint bore 1.5 times what it has to bear') },
  jointSlip: { value: 2, unit: 'mm', source: ours('a tested joint slid at most 2 mm') },

  sideForceShare: { value: 0.015, unit: '1', source: ours('sideways 1.5 % of the weight') },
  sideForceLeast: { value: 30, unit: 'N', source: ours('and 30 N more') },
  driftRatio: { value: 100, unit: '1', source: `height / 100, ${practice}` },
  knot: { value: 0.5, unit: '1', source: `a knot leaves half of a cord's strength, ${practice}` },
  bracedFaces: { value: 3, unit: '1', source: `three faces with crossed cords, ${practice}` },

  bracedBy: { value: 2, unit: '1', source: ours('a frame stands without counting on stiff sockets, which nobody tested') },
  screenDriftRatio: { value: 60, unit: '1', source: 'height / 60: span / 120 of partitions with flexible finishes, a cantilever counted as twice its length, IBC Table 1604.3 (M)' },
  screenFactor: { value: 2.25, unit: '1', source: 'under a short push, over the used-stock factor: 1.5 on a variable load, EN 1990, by 1.5, the least on glass fibre, EUROCOMP (M)' },
  shoulders: { value: 400, unit: 'mm', source: ours('two people sit no nearer than 400 mm from middle to middle') },
  castorBrakes: { value: 2, unit: '1', source: ours('two castors with a brake: about one alone it turns') },
  wallPull: { value: 2, unit: '1', source: ours('one bracket holds twice the pull at the top by itself') },

  lidFactor: { value: 2, unit: '1', source: ours('a stay of a worn kit holds twice the weight of the lid; a lid must hold itself open, ASTM F963 4.27, EN 71-1 4.14 (M)') },
  lidLift: { value: 45, unit: 'N', source: 'a child inside opens it with at most 45 N, ASTM F963 4.27 (M)' },
  hingeLeast: { value: 5, unit: 'mm', source: 'EN 71-1 4.10, gaps at hinges, (M)' },
  hingeMost: { value: 12, unit: 'mm', source: 'EN 71-1 4.10, gaps at hinges, (M)' },
  ventArea: { value: 650, unit: 'mm²', source: '650 mm² on each of two sides of a box that a child can be shut in, ASTM F963 4.27, EN 71-1 4.14 (M)' },

  loadCap: { value: 600, unit: 'N', source: ours('no deck is promised more') },
  loadReserve: { value: 1.05, unit: '1', source: ours('a promised load leaves every check that it works on a twentieth in hand: what is built is never quite what was reckoned') },
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
  touchShare: { value: 1 / 6, unit: '1', source: ours('a push at the top of a sixth of its own weight must not tip it') },
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
  adultSeat: { value: 460, unit: 'mm', source: 'seat of size mark 6, EN 1729-1 (R2); forces for pupils × (seat height of the mark / 460 mm)^2.5 as body mass, our default: EN 1022 lets loads be changed for children (R, abstract)' },
  backPushReach: { value: 300, unit: 'mm', source: 'EN 1022 (M)' },

  bedBase: { value: 599, unit: 'mm', source: 'EN 747-1 asks for guards all round and a ladder from a base of 600 mm (R, abstract): bunks and high beds are not made here' },
  sleepingPlaces: { value: 1, unit: '1', source: ours('one sleeping place: bunks are not made here') },
  guardSides: { value: 3, unit: '1', source: ours('a small child’s bed is guarded on all sides but the one it gets in by') },
  heldSides: { value: 4, unit: '1', source: ours('something holds the mattress from sliding on every side') },
  bedCords: { value: 0, unit: '1', source: ours('no cord on a bed: a child could be caught by it') },

  fingerLeast: { value: 7, unit: 'mm', source: 'EN 747-1 (R)' },
  fingerMost: { value: 12, unit: 'mm', source: 'EN 747-1 (R)' },
  limbLeast: { value: 25, unit: 'mm', source: 'EN 716, arm and leg (M)' },
  limbMost: { value: 45, unit: 'mm', source: 'EN 716, arm and leg (M)' },
  guardEnd: { value: 5.6, unit: 'mm', source: '16 CFR 1213.3 and 1513 (R)' },
  guardHeight: { value: 127, unit: 'mm', source: '16 CFR 1213/1513 (R2)' },
  wedgeWidth: { value: 89, unit: 'mm', source: '3.5 inches, from which a head is caught, CPSC handbook for playgrounds (R)' },
  sphere: { value: 230, unit: 'mm', source: '16 CFR 1213.4 and 1513.4 (R)' },
  slatLeast: { value: 45, unit: 'mm', source: 'EN 716 (M)' },
  slatMost: { value: 65, unit: 'mm', source: 'EN 716 (M)' },
  snag: { value: 10, unit: 'mm', source: 'what stands out on a high bed, EN 747-1 4.1.1 (R, preview), taken for a low one (our default)' },
  standsOut: { value: 10, unit: 'mm', source: ours('what stands out within reach catches clothes, and an eye: for grown people a word of care') },
  openEnds: { value: 0, unit: '1', source: 'no open tube ends, EN 747-1 4.1.1 (R, preview), taken for all (our default); the work caps them where the kit does not say that it has no caps' },
  markTolerance: { value: 10, unit: 'mm', source: '± 10 mm, EN 1729-1 (M)' },
  approvals: { value: 1, unit: '1', source: 'local codes and licensed practice rule, for children’s furniture above all; this report does not replace them (our default)' },
} as const satisfies Record<string, Limit>;

/** The table with any values changed; names, and so the checks, stay the same. */
export type Limits = { readonly [name in keyof typeof defaultLimits]: Limit };
