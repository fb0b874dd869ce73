// What could hurt somebody, and what the checks must say of it. Each is a small change to an item or to the kit.
import type { FindingName, Verdict } from '../../src/check/index.ts';
import type { Action } from '../../src/plan/index.ts';
import type { Caution, Tool } from '../../src/work/types.ts';

/** A text of a file and what stands there instead. */
export type Swap = readonly [from: string, to: string];

export interface Hazard {
  readonly name: string;
  /** What could happen, to whom. */
  readonly harm: string;
  /** Standard or practice, with its tag: R read, R2 second hand, C computed, M from memory. */
  readonly by: string;
  readonly item: string;
  readonly size: string;
  readonly swaps?: readonly Swap[];
  readonly kit?: readonly Swap[];
  /** The finding and its verdict; the field of the file that is refused and words of the remedy; or the work of the plan that tells it by its sign and its tool. */
  readonly says: readonly [finding: FindingName, verdict: Verdict] | { readonly refused: string; readonly remedy: string } | { readonly step: Action; readonly caution: Caution; readonly tool: Tool };
}

const bed = { item: 'bed', size: 'toddler' } as const;
const chair = (mark: number) => ({ item: 'chair', size: `mark-${mark}` }) as const;
const rack = { item: 'rack', size: 'standard' } as const;
const stool = { item: 'stool', size: 'standard' } as const;
const desk = { item: 'desk', size: 'mark-6' } as const;

const toBunk = (top: string): readonly Swap[] => [['    depth: depth\n    top: base_height', `    depth: depth\n    count: 2\n    top: ${top}`], ['base_top + guard_low', 'base_high + 100 mm + guard_low'], ['base_top + mattress + guard', 'low_guard_level + 180 mm']];

const sleeping: readonly Hazard[] = [
  { name: 'bunk', ...bed, harm: 'a child falls 1.1 m out of the open side of an upper bunk', by: 'EN 747-1 from a base of 600 mm (R, abstract)', swaps: toBunk('220 mm + index * 900 mm'), says: ['raised-bed', 'fail'] },
  { name: 'high bed', ...bed, harm: 'a child falls from a base at 700 mm without guards all round or a ladder', by: 'EN 747-1 (R, abstract); 16 CFR 1213.2 from 760 mm (R)', swaps: [['    range: 150 mm to 250 mm', '    range: 150 mm to 900 mm'], ['base_height: 170 mm', 'base_height: 700 mm']], says: ['raised-bed', 'fail'] },
  { name: 'low bunk', ...bed, harm: 'a child on the lower of two low bases is caught under the upper one', by: 'our default', swaps: toBunk('170 mm + index * 300 mm'), says: ['one-bed', 'fail'] },
  { name: 'bed for a baby', ...bed, harm: 'a baby is caught or falls: a cot has its own rules', by: 'common practice, no source', swaps: [['for: small-children', 'for: babies']], says: { refused: 'for', remedy: 'small-children' } },
  { name: 'bed for adults', ...bed, harm: 'an adult breaks a bed reckoned for a child', by: 'our default', swaps: [['for: small-children', 'for: adults']], says: { refused: 'for', remedy: 'cots for babies, bunks and beds for older people' } },
  { name: 'bed without its mattress', ...bed, harm: 'guards are judged without the mattress that a child stands on', by: 'our default', swaps: [[/mattress:\n(?: {2}.*\n){3}/.source, '']], says: { refused: 'mattress', remedy: 'the mattress that the bed is made for' } },
  { name: 'mattress by another name', ...bed, harm: 'the name of a parameter silences the checks of a guard', by: 'our default', swaps: [['  mattress:\n    range', '  padding:\n    range']], says: { refused: 'mattress.thickness', remedy: 'a known name in place of mattress' } },
  { name: 'thick mattress', ...bed, harm: 'a child rolls over a guard that a thick mattress has made low', by: '16 CFR 1213/1513, 127 mm (R2)', swaps: [['thickness: mattress', 'thickness: mattress + 40 mm']], says: ['guard-height', 'fail'] },
  { name: 'a guard left out', ...bed, harm: 'a child rolls out over an open long side', by: '16 CFR 1213/1513, 127 mm (R2)', swaps: [['    on: [front, back, left]', '    on: [back, left]']], says: ['guard-height', 'fail'] },
  { name: 'two guards left out', ...bed, harm: 'a child rolls out over two open sides', by: 'our default', swaps: [['    on: [front, back, left]', '    on: left']], says: ['guard-sides', 'fail'] },
  { name: 'gap at the end of a guard', ...bed, harm: 'a finger is caught between guard and post', by: '16 CFR 1213.3, 5.6 mm (R)', kit: [['end-play: 2 mm', 'end-play: 6 mm']], says: ['guard-end', 'fail'] },
  { name: 'finger gap between joints', ...bed, harm: 'a child’s finger is caught in a gap of 9.5 mm', by: 'EN 747-1, none from 7 to 12 mm (R)', swaps: [['guard_low: 55 mm', 'guard_low: 60 mm'], ['guard: 150 mm', 'guard: 170 mm']], says: ['finger-gap', 'fail'] },
  { name: 'limb gap under a guard', ...bed, harm: 'a child’s leg is caught under a guard 32 mm over the base', by: 'EN 716, none from 25 to 45 mm (M)', swaps: [['guard_low: 55 mm', 'guard_low: 64 mm'], ['guard: 150 mm', 'guard: 170 mm']], says: ['limb-gap', 'caution'] },
  { name: 'head gap beside a guard', ...bed, harm: 'a child’s head is caught beside a guard', by: 'CPSC handbook, none from 89 to 229 mm (R)', kit: [['notch-gap: 4 mm', 'notch-gap: 40 mm']], says: ['guard-opening', 'caution'] },
  { name: 'opening wider than between slats', ...bed, harm: 'a child’s body slips between guard and post', by: 'EN 716, 45 to 65 mm (M)', says: ['guard-slat', 'caution'] },
  { name: 'mattress too short', ...bed, harm: 'a hand or face goes down between mattress and guard', by: 'EN 747-1 (R)', swaps: [['length: width - 10 mm', 'length: width - 20 mm']], says: ['mattress-gap', 'fail'] },
  { name: 'mattress too narrow', ...bed, harm: 'a face goes down between mattress and long guard', by: 'EN 747-1 (R)', swaps: [['width: depth - 10 mm', 'width: depth - 60 mm']], says: ['mattress-gap', 'fail'] },
  { name: 'mattress too large', ...bed, harm: 'a mattress bows up and lowers the guard', by: 'geometry (C)', swaps: [['length: width - 10 mm', 'length: width + 10 mm']], says: ['mattress-gap', 'fail'] },
  { name: 'mattress that slides', item: 'open-front-bed', size: 'toddler', harm: 'a mattress slides out at the open front with the child on it', by: 'our default', says: ['mattress-held', 'fail'] },
  { name: 'an adult on the long edge', item: 'open-front-bed', size: 'toddler', harm: 'an adult sits down on the long edge of a child’s bed and its tube breaks', by: 'our default: 1000 N on 400 mm; beam (C)', says: ['adult-edge', 'fail'] },
  { name: 'a child kneels on the long edge', item: 'open-front-bed', size: 'toddler', harm: 'a child tips out where a long edge sags 42 mm', by: 'our default: 600 N on 300 mm; beam (C)', says: ['edge-sag', 'fail'] },
  { name: 'cables on a bed', ...bed, harm: 'a cable catches a child’s neck', by: 'our default; loops over 127 mm, CPSC handbook (R)', swaps: [['order: []', ''], ['\n# No cables', '  - brace: base\n    to: guard\n    faces: [back]\norder: []\n\n# No cables']], says: ['bed-cord', 'fail'] },
  { name: 'a guard that gives way', ...bed, harm: 'somebody leans on a guard and it breaks', by: '50 lbf, ASTM F1821 (M)', kit: [['bending-strength: 240 MPa', 'bending-strength: 60 MPa']], says: ['guard-push', 'fail'] },
  { name: 'studs that catch', ...bed, harm: 'clothes or a cord catch on a stud and strangle a child', by: 'EN 747-1 4.1.1 (R, preview)', says: ['snag-point', 'caution'] },
  { name: 'sockets that catch', ...bed, harm: 'caps cover the studs, and clothes catch on the empty sockets at the way in', by: 'EN 747-1 4.1.1 (R, preview)', kit: [['contents:', 'caps:\n  tube-ends: true\n  studs: true\ncontents:']], says: ['snag-point', 'caution'] },
  { name: 'studs under caps', ...desk, harm: 'none: cables and caps cover what stands out', by: 'EN 747-1 4.1.1 (R, preview)', swaps: [['sides: [left, right, back]', 'sides: [left, right, back, front]']], kit: [['contents:', 'caps:\n  tube-ends: true\n  studs: true\ncontents:']], says: ['snag-point', 'pass'] },
  { name: 'a bed that sways', ...bed, harm: 'the open end of a bed leans under a child’s hold', by: 'height / 100, common practice, no source', swaps: [['  sill-panel:\n    is: panel\n    on: right\n    from: low-guard\n    to: sill\n', '']], says: ['sway', 'fail'] },
  { name: 'a child who jumps', ...bed, harm: 'a long tube breaks or sags under a child who jumps', by: 'twice 50 lb, ASTM F1821 (R, abstract)', kit: [['modulus: 23 GPa', 'modulus: 17 GPa']], swaps: [['    range: 700 mm to 980 mm', '    range: 700 mm to 1100 mm'], ['width: 900 mm', 'width: 1040 mm']], says: ['use-load', 'fail'] },
];

const sitting: readonly Hazard[] = [
  { name: 'a pin’s point under a sitter', ...stool, harm: 'a point 1 mm under the seat pricks whoever sits there', by: 'our default: 3 mm', kit: [['length: 15 mm                # ends', 'length: 17 mm                # ends']], says: ['pin-length', 'fail'] },
  { name: 'a base punched too deep', ...stool, harm: 'a hole for a longer pin leaves 1 mm of the seat over the point, which comes through under a sitter', by: 'our default: 3 mm and the far skin whole', kit: [['length: 15 mm                # ends', 'length: 17 mm                # ends']], says: ['hole-depth', 'fail'] },
  { name: 'pins that tear the skin', ...stool, harm: 'pins wear their holes oval and a wrapped side works loose', by: 'bearing on one skin (C)', swaps: [['    range: 435 mm to 460 mm', '    range: 230 mm to 460 mm'], ['standard:\n    side: 445 mm', 'standard:\n    side: 250 mm']], says: ['pin-skin', 'caution'] },
  { name: 'a seat that breaks in its middle', ...stool, harm: 'a person drops through a small seat: all of the weight on 200 mm', by: 'pad of EN 1728 (M)', swaps: [['    range: 435 mm to 460 mm', '    range: 230 mm to 460 mm'], ['standard:\n    side: 445 mm', 'standard:\n    side: 333 mm']], says: ['panel-skin', 'fail'] },
  { name: 'a seat of weak skins', ...chair(5), harm: 'a brittle skin breaks without a sign before', by: 'our default: factor 2 in use', kit: [['skin-strength: 60 MPa', 'skin-strength: 50 MPa']], says: ['use-load', 'fail'] },
  { name: 'a seat of weak core', ...chair(2), harm: 'a foam core shears and the seat drops', by: 'sandwich (C)', kit: [['core-shear-strength: 0.8 MPa', 'core-shear-strength: 0.5 MPa']], says: ['panel-core', 'fail'] },
  { name: 'a narrow high chair', ...chair(6), harm: 'a chair falls sideways at a touch of 9 N', by: 'our default: a sixth of its weight', swaps: [['  width: depth + wider', '  width: 210 mm + 0 * wider'], ['    range: 270 mm to 350 mm', '    range: 270 mm to 450 mm'], ['    range: 300 mm to 470 mm', '    range: 300 mm to 520 mm'], ['    depth: 350 mm', '    depth: 450 mm'], ['seat_height: 460 mm', 'seat_height: 520 mm']], says: ['tip-empty', 'caution'] },
  ...([[2, 285, 230], [3, 305, 250], [4, 320, 270]] as const).map(([mark, depth, less]): Hazard => ({
    name: `a pupil of mark ${mark} leans back`, ...chair(mark), harm: 'a pupil leans back and the chair falls over', by: 'EN 1022, backwards (M)',
    swaps: [['    range: 270 mm to 350 mm', '    range: 220 mm to 350 mm'], [`depth: ${depth} mm`, `depth: ${less} mm`]], says: ['tip-back', 'caution'],
  })),
  { name: 'a name that switches rules', ...chair(4), size: 'lounge', harm: 'the name of a size takes a school chair out of the children’s checks', by: 'our default', swaps: [['  mark-4:\n', '  lounge:\n']], says: ['local-codes', 'caution'] },
  { name: 'pupils without a size mark', ...chair(4), harm: 'a chair is judged for nobody', by: 'EN 1729-1 (R2)', swaps: [['mark: mark\n', '']], says: { refused: 'mark', remedy: 'the size mark of EN 1729-1' } },
  { name: 'a size mark for adults', ...chair(4), harm: 'a school chair is declared for adults to pass', by: 'our default', swaps: [['for: pupils', 'for: adults']], says: { refused: 'mark', remedy: 'no mark, or for: pupils' } },
  { name: 'a mark that is none', ...chair(4), harm: 'a chair is judged by a size that does not exist', by: 'EN 1729-1 (R2)', swaps: [['mark: mark\n', 'mark: mark + 0.5\n']], says: { refused: 'mark', remedy: 'a whole number from 0 to 7' } },
  { name: 'a mark that is not the height', ...chair(5), harm: 'a child’s feet do not reach the floor', by: 'EN 1729-1 (R2, tolerance M)', swaps: [['    mark: 5', '    mark: 2']], says: ['size-mark', 'caution'] },
  { name: 'a stool held on three sides', ...stool, size: 'high', harm: 'a high stool leans further and further under a heavy person', by: 'height / 100, P-Δ (C)', swaps: [['[back, left, right, front]', '[back, left, right]']], says: ['sway', 'fail'] },
  { name: 'open tube ends', ...stool, harm: 'splinters of sawn glass fibre go into a hand', by: 'EN 747-1 4.1.1 (R, preview)', kit: [['contents:', 'caps:\n  tube-ends: false\n  studs: false\ncontents:']], says: ['tube-ends', 'caution'] },
  { name: 'tube ends under caps', ...stool, harm: 'none: the work caps what is sawn', by: 'EN 747-1 4.1.1 (R, preview)', says: ['tube-ends', 'pass'] },
  { name: 'a backrest that breaks', ...chair(6), harm: 'a person falls backwards through a backrest', by: 'our default: 0.35 of the seat’s load', kit: [['bending-strength: 240 MPa', 'bending-strength: 30 MPa']], says: ['backrest-tube', 'fail'] },
];

const working: readonly Hazard[] = [
  { name: 'a long desk under a kneeling child', ...desk, harm: 'a child falls where the front edge of a desk sags 42 mm', by: 'our default: 600 N on 300 mm; beam (C)', swaps: [['    range: 550 mm to 650 mm', '    range: 550 mm to 1100 mm'], ['mark-6:\n    mark: 6\n    width: 620 mm', 'mark-6:\n    mark: 6\n    width: 1000 mm']], says: ['edge-sag', 'fail'] },
  { name: 'an adult on a long desk', ...desk, harm: 'an adult sits on a desk and its tube breaks', by: 'our default: 1000 N on 400 mm; beam (C)', swaps: [['    range: 550 mm to 650 mm', '    range: 550 mm to 1100 mm'], ['mark-6:\n    mark: 6\n    width: 620 mm', 'mark-6:\n    mark: 6\n    width: 1000 mm']], says: ['adult-edge', 'fail'] },
  { name: 'a shallow desk', ...desk, harm: 'a desk falls on a child’s feet', by: 'our default: a slope of 10°', swaps: [['    range: 400 mm to 560 mm', '    range: 250 mm to 560 mm'], ['height: 760 mm', 'height: 760 mm'], ['depth: 500 mm\n    height: 760 mm', 'depth: 260 mm\n    height: 760 mm']], says: ['tip-angle', 'caution'] },
  { name: 'posts that bend under a push', ...desk, harm: 'a pushed desk folds up', by: 'our default: 200 N', kit: [['bending-strength: 240 MPa', 'bending-strength: 20 MPa']], says: ['post-bending', 'fail'] },
  { name: 'cables that snap under a push', ...desk, harm: 'a pushed desk folds up', by: 'our default: 200 N', kit: [['strength: 2000 N', 'strength: 100 N']], says: ['cable-pull', 'fail'] },
];

const storing: readonly Hazard[] = [
  { name: 'a tall rack without a wall', ...rack, harm: 'a child pulls a rack over', by: 'our default: 600 mm', says: ['wall-height', 'caution'] },
  { name: 'a slender rack', ...rack, size: 'tall', harm: 'a rack falls over', by: 'height at most 4 times the depth, common practice, no source', swaps: [['    depth: 450 mm', '    depth: 300 mm']], says: ['slenderness', 'caution'] },
  { name: 'a rack on a wall of boards', ...rack, harm: 'a rack comes off a board wall onto a child', by: 'common practice, no source', swaps: [['place: indoors\n', 'place: indoors\nwall: board\n']], says: ['wall-hold', 'caution'] },
  { name: 'a wall of nobody knows what', ...rack, harm: 'a rack is fixed with what the wall does not hold', by: 'common practice, no source', swaps: [['place: indoors\n', 'place: indoors\nwall: clay\n']], says: { refused: 'wall', remedy: 'masonry, timber or board' } },
  { name: 'a cable too short for its knots', ...rack, harm: 'a cable ends in a knot that slips, and the rack folds up', by: 'our default: 850 mm over for loops and tail', kit: [['length: 3000 mm', 'length: 2400 mm']], says: ['stock-cable', 'fail'] },
  { name: 'a knot that breaks its cable', ...rack, size: 'tall', harm: 'a cord breaks in its knot under a push', by: 'half its strength, common practice, no source', kit: [['strength: 2000 N', 'strength: 1200 N']], says: ['cable-pull', 'fail'] },
  { name: 'two braced faces', ...rack, harm: 'a laden rack turns and folds up', by: 'statics (C)', swaps: [['[back, left, right]', '[left, right]']], says: ['bracing', 'fail'] },
  { name: 'a tall rack that leans', ...rack, size: 'tall', harm: 'weight on a leaning rack makes it lean further', by: 'P-Δ (C); height / 100', swaps: [['    width: 900 mm', '    width: 700 mm']], says: ['sway', 'fail'] },
  { name: 'posts too short', ...rack, harm: 'a deck slides off its posts', by: 'geometry (C)', swaps: [['    length: height\n', '    length: height - 80 mm\n']], says: ['post-reach', 'fail'] },
  { name: 'years under load', ...rack, harm: 'a deck sags and slides off after years', by: 'modulus × t^−n, EN 13706 (M)', kit: [['core-shear-modulus: 12 MPa', 'core-shear-modulus: 0.1 MPa']], says: ['long-term-sag', 'fail'] },
  { name: 'a box on a weak panel', ...rack, harm: 'a heavy box breaks through a deck', by: 'sandwich under one box (C)', kit: [['skin-strength: 60 MPa', 'skin-strength: 3 MPa']], says: ['panel-skin', 'fail'] },
  { name: 'a wall torn by its pin', ...rack, harm: 'a deck drops as its pins tear through the posts', by: 'pin bearing, EN 13706 (R2)', kit: [['bearing-strength: 150 MPa', 'bearing-strength: 4 MPa']], says: ['pin-bearing', 'fail'] },
  { name: 'an untested joint', ...rack, harm: 'a joint bears less than was guessed', by: 'our default: three quarters of the load', says: ['joint-test', 'caution'] },
  { name: 'a joint that failed its test', ...stool, harm: 'a joint slides or breaks under a sitter', by: 'our default: 1.5 times', kit: [['contents:', 'joint-test:\n  load: 400 N\n  slip: 1 mm\ncontents:']], says: ['joint-test', 'fail'] },
  { name: 'a joint that slid', ...stool, harm: 'a joint slides down its post', by: 'our default: 2 mm', kit: [['contents:', 'joint-test:\n  load: 4000 N\n  slip: 9 mm\ncontents:']], says: ['joint-test', 'caution'] },
  { name: 'a rack outdoors', ...rack, harm: 'wind throws a rack over', by: 'our default', swaps: [['place: indoors', 'place: outdoors']], says: { refused: 'place', remedy: 'nothing is calculated for wind' } },
  { name: 'no word where it stands', ...rack, harm: 'a rack is judged for a place it does not stand in', by: 'our default', swaps: [['place: indoors\n', '']], says: { refused: 'place', remedy: 'indoors' } },
  { name: 'no word who uses it', ...rack, harm: 'children’s checks are silent where children are', by: 'our default', swaps: [['for: adults\n', '']], says: { refused: 'for', remedy: 'who uses it' } },
  { name: 'a mattress on a rack', ...rack, harm: 'somebody sleeps on a rack', by: 'our default', swaps: [['revision: 1', 'mattress: { length: 800 mm, width: 400 mm, thickness: 80 mm }\nrevision: 1']], says: { refused: 'mattress', remedy: 'only a bed has one' } },
  { name: 'studs at a grown person’s eye', ...rack, harm: 'somebody who bends down beside a rack meets a stud with an eye', by: 'our default: 10 mm', says: ['snag-point', 'caution'] },
  { name: 'a rack under no code', ...rack, harm: 'a rack is taken for approved', by: 'our default: local codes', says: ['local-codes', 'caution'] },
  { name: 'a rack within children’s reach', ...rack, harm: 'clothes catch on a rack’s studs', by: 'EN 747-1 4.1.1 (R, preview)', swaps: [['for: adults', 'for: anyone']], says: ['snag-point', 'caution'] },
];

const chest = { item: 'chest', size: 'standard' } as const;
const trolley = { item: 'trolley', size: 'standard' } as const;
const bench = { item: 'bench', size: 'standard' } as const;
const screen = { item: 'screen', size: 'standard' } as const;
const leaning = { item: 'leaning-chair', size: 'standard' } as const;
const bays = { item: 'two-bay', size: 'standard' } as const;

/** Items told by points, bars and panels. */
const structures: readonly Hazard[] = [
  { name: 'a lid that falls', ...chest, harm: 'a lid falls on the neck of a child who leans into the box', by: 'ASTM F963 4.27, EN 71-1 4.14 (M)', swaps: [["  stay: { fitting: lid-stay, on: long.1, along: along / 2, panel: lid }\n", '']], says: ['lid-holds', 'fail'] },
  { name: 'a worn lid stay', ...chest, harm: 'a stay that has lost its grip lets the lid fall', by: 'our default: twice the weight', kit: [['grip: 40 N', 'grip: 10 N']], says: ['lid-holds', 'fail'] },
  { name: 'a finger in the hinge', ...chest, harm: 'a finger is crushed between lid and tube as the lid turns', by: 'EN 71-1 4.10 (M)', kit: [['reach: 27 mm', 'reach: 24 mm'], ['reach: 27 mm', 'reach: 24 mm']], says: ['lid-gap', 'fail'] },
  { name: 'a child shut in', ...chest, harm: 'a child shut in a tight box has no air', by: '650 mm² on each of two sides, ASTM F963 4.27, EN 71-1 4.14 (M)', kit: [['reach: 27 mm', 'reach: 24 mm'], ['reach: 27 mm', 'reach: 24 mm']], says: ['lid-vent', 'fail'] },
  { name: 'a lid too stiff to open', ...chest, harm: 'a child inside cannot lift the lid', by: '45 N, ASTM F963 4.27 (M)', kit: [['grip: 40 N', 'grip: 400 N']], says: ['lid-lift', 'fail'] },
  { name: 'a chest under no code', ...chest, harm: 'a toy chest is taken for approved', by: 'our default: local codes', says: ['local-codes', 'caution'] },
  { name: 'a trolley that rolls away', ...trolley, harm: 'a laden trolley rolls into somebody', by: 'our default: two brakes', swaps: [['fitting: braked-castor', 'fitting: castor']], says: ['castor-brake', 'fail'] },
  { name: 'a castor that breaks', ...trolley, harm: 'a castor breaks and hot food comes down', by: 'load of the castor in the kit', kit: [['load: 300 N', 'load: 100 N']], says: ['castor-load', 'fail'] },
  { name: 'a heavy pot at a trolley’s corner', ...trolley, harm: 'one castor breaks under a load that stands over it, the deck below laden too', by: 'load of the castor in the kit; statics of four castors (C)', swaps: [['use: shelf, load: 10 kg', 'use: shelf, load: 15 kg']], says: ['castor-load', 'fail'] },
  { name: 'posts that bow between cables', item: 'two-bay', size: 'tall', harm: 'all posts of a tall shelf bow out together and it falls', by: 'Euler’s load (C)', kit: [['modulus: 23 GPa', 'modulus: 18 GPa']], says: ['post-buckling', 'fail'] },
  { name: 'a wide trolley somebody kneels on', ...trolley, harm: 'the edge of a wide trolley gives way', by: 'our default: 600 N on 300 mm; beam (C)', swaps: [['range: 500 mm to 640 mm', 'range: 500 mm to 900 mm'], ['width: 600 mm', 'width: 800 mm']], says: ['edge-sag', 'fail'] },
  { name: 'a bench with long bays', ...bench, harm: 'a tube breaks under a sitter', by: 'EN 1728 seat load (M); beam (C)', swaps: [['range: 500 mm to 580 mm', 'range: 500 mm to 1000 mm'], ['bay: 570 mm', 'bay: 900 mm']], says: ['tube-deflection', 'fail'] },
  { name: 'two people over one tube', ...bench, harm: 'two people sit side by side over the tube that their seats share, and it breaks', by: 'our default: 400 mm apart; beam (C)', swaps: [['range: 260 mm to 320 mm', 'range: 260 mm to 500 mm'], ['depth: 310 mm', 'depth: 450 mm']], says: ['tube-bending', 'fail'] },
  { name: 'a bench with no brace along it', ...bench, harm: 'a frame whose sockets wear loose folds up lengthwise', by: 'statics of the whole frame (C)', says: ['bracing', 'caution'] },
  { name: 'a bed of points and bars', ...bench, harm: 'a bed is passed though nobody measured its guards', by: 'our default', swaps: [['panel: seat, use: seat', 'panel: seat, use: bed']], says: ['guard-sides', 'fail'] },
  { name: 'a screen that rocks', ...screen, harm: 'a partition on its joints alone falls at a touch', by: 'our default: a sixth of its weight; statics (C)', swaps: [['fitting: foot-cap', 'fitting: end-cap']], says: ['tip-empty', 'caution'] },
  { name: 'a tall screen', ...screen, harm: 'a tall partition whips back and forth', by: 'height / 60, a cantilever by IBC Table 1604.3 (M); frame (C)', swaps: [['range: 800 mm to 1000 mm', 'range: 800 mm to 1200 mm'], ['height: 970 mm', 'height: 1200 mm']], says: ['sway', 'fail'] },
  { name: 'a back that breaks', ...leaning, harm: 'a person falls backwards as the knee’s tube breaks', by: 'our default: 0.35 of the seat’s load; frame (C)', kit: [['bending-strength: 240 MPa', 'bending-strength: 100 MPa']], says: ['post-bending', 'fail'] },
  { name: 'a leaning chair that falls back', ...leaning, harm: 'a person leans back and the chair falls over', by: 'EN 1022, backwards (M)', swaps: [['depth: width ', 'depth: width - 160 mm ']], says: ['tip-back', 'caution'] },
  { name: 'a weak cord round a post in its wall bracket', ...bays, harm: 'a post comes out of the jaws, which are open to the room, and a shelf falls onto whoever pulls at it', by: 'a knot leaves half of a cord, common practice, no source', kit: [['strength: 2000 N', 'strength: 500 N']], says: ['wall-hold', 'fail'] },
  { name: 'a weak wall bracket', ...bays, harm: 'a shelf comes off its wall on whoever pulls at it', by: 'load of the bracket in the kit', kit: [['load: 400 N', 'load: 100 N']], says: ['wall-hold', 'fail'] },
  { name: 'a shelf of two bays off the wall', ...bays, harm: 'a child pulls a shelf over', by: 'our default: 600 mm', says: ['wall-height', 'caution'] },
  { name: 'a shelf of two bays that leans', ...bays, harm: 'a shelf without cables at its back folds sideways', by: 'statics of the whole frame (C)', swaps: [["  back: { for: { x: 0..1, k: 0..1 }, from: c.x+k.1.0, to: c.x+1-k.1.decks-1, face: back }\n", '']], says: ['bracing', 'fail'] },
  { name: 'a hinge through a lid', ...chest, harm: 'barbs of a hinge come through a thin lid into a hand', by: 'our default: 3 mm and the far skin whole', kit: [['thickness: 9 mm', 'thickness: 8 mm']], says: ['hole-depth', 'fail'] },
  { name: 'fingers under a lid that is fitted', ...chest, harm: 'fingers are crushed between lid and tube while hinges are clipped on', by: 'ISO 7010 W024 (R)', says: { step: 'fit-hinge', caution: 'crush', tool: 'hands' } },
  { name: 'a loose work piece', ...stool, harm: 'a panel slips under the straight-edge and the knife runs into a hand', by: 'common practice, no source', says: { step: 'half-cut', caution: 'sharp', tool: 'clamp' } },
  { name: 'a loose panel while its blank is cut', ...chest, harm: 'a panel slips and the knife runs into a hand', by: 'common practice, no source', says: { step: 'cut-blank', caution: 'sharp', tool: 'clamp' } },
  { name: 'a hand behind the bit', ...stool, harm: 'the bit comes out of a tube into the hand that holds it', by: 'ISO 7010 P015 (M)', says: { step: 'drill', caution: 'bit', tool: 'drill' } },
  { name: 'dust of sawn tubes', ...stool, harm: 'glass-fibre dust gets into lungs and eyes', by: 'ISO 7010 M004, M016 (R)', says: { step: 'cut-tubes', caution: 'dust', tool: 'saw' } },
  { name: 'ends filed dry', ...stool, harm: 'fibres of a rough end cut hands, their dust gets into lungs', by: 'ISO 7010 M009, M016 (R)', says: { step: 'cap-ends', caution: 'gloves', tool: 'file' } },
  { name: 'studs within reach on a chair', ...chair(4), harm: 'clothes catch on a stud that holds no cable', by: 'EN 747-1 4.1.1 (R, preview)', says: ['snag-point', 'caution'] },
  { name: 'studs within reach on a bench', ...bench, harm: 'clothes catch on a stud that holds no cable', by: 'EN 747-1 4.1.1 (R, preview)', says: ['snag-point', 'caution'] },
  { name: 'a desk under no code', ...desk, harm: 'a school desk is taken for approved', by: 'our default: local codes', says: ['local-codes', 'caution'] },
  { name: 'a bed under no code', ...bed, harm: 'a child’s bed is taken for approved', by: 'our default: local codes', says: ['local-codes', 'caution'] },
  { name: 'untested joints of a bench', ...bench, harm: 'a joint bears less than was guessed', by: 'our default: three quarters of the load', says: ['joint-test', 'caution'] },
  { name: 'untested joints of a bed', ...bed, harm: 'a joint bears less than was guessed', by: 'our default: three quarters of the load', says: ['joint-test', 'caution'] },
  { name: 'a cap that falls out', ...leaning, harm: 'a cap made for a wider tube falls out and leaves splinters of glass fibre', by: 'geometry (C)', kit: [['diameter: 28 mm\n    thickness: 3 mm\n    plug: 20 mm', 'diameter: 28 mm\n    thickness: 3 mm\n    plug: 20 mm\n    bore: 24 mm']], says: { refused: 'fittings.cap', remedy: 'a fitting of the kit with bore: 22 mm' } },
  { name: 'a load told of a seat', ...bench, harm: 'a bench is believed to carry what its file says, and is tested with something else', by: 'our default', swaps: [['panel: seat, use: seat', 'panel: seat, use: seat, load: 200 kg']], says: { refused: 'places.sitting.load', remedy: 'a seat is tested with the load of its use' } },
  { name: 'a load told of a back', ...leaning, harm: 'a backrest is believed to carry a person who stands on it', by: 'our default', swaps: [['use: backrest', 'use: backrest, load: 80 kg']], says: { refused: 'places.leaning.load', remedy: 'a backrest is tested with the load of its use' } },
  { name: 'a load told of a lid', ...chest, harm: 'somebody stands on a lid that its file calls strong', by: 'our default', swaps: [['panel: lid, use: lid', 'panel: lid, use: lid, load: 100 kg']], says: { refused: 'places.lid.load', remedy: 'a lid is tested with the load of its use' } },
  { name: 'a load told of a screen', ...screen, harm: 'a partition is hung with what it was never reckoned for', by: 'our default', swaps: [['panel: sheet, use: screen', 'panel: sheet, use: screen, load: 20 kg']], says: { refused: 'places.sheet.load', remedy: 'a screen is tested with the load of its use' } },
  { name: 'a deck told as a bed', ...rack, harm: 'somebody sleeps on a deck that is checked as a shelf', by: 'our default', swaps: [['order: []', 'places:\n  berth: { panel: deck, use: bed }\n\norder: []']], says: { refused: 'places.berth.use', remedy: 'it follows from the use of the item' } },
  { name: 'a load told of a deck', ...rack, harm: 'a rack is believed to carry what its file says, and nothing checks it', by: 'our default', swaps: [['order: []', 'places:\n  shelf: { panel: deck, use: shelf, load: 100 kg }\n\norder: []']], says: { refused: 'places.shelf.load', remedy: 'the checks tell what a deck bears' } },
  { name: 'a panel in no place', ...trolley, harm: 'something heavy stands on a deck that nothing checks', by: 'our default', swaps: [['  below: { panel: deck.0, use: shelf, load: 10 kg }', '']], says: { refused: 'panels.deck', remedy: 'a panel without one is checked for nothing' } },
];

export const hazards: readonly Hazard[] = [...sleeping, ...sitting, ...working, ...storing, ...structures];
