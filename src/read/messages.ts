import type { Measured } from './units.ts';

/** A measure in words, with an example of how it is written. */
const measuredWords: Readonly<Record<Measured, readonly [string, string]>> = {
  length: ['a length', '1000 mm'],
  angle: ['an angle', '45 deg'],
  force: ['a force', '60 kN'],
  mass: ['a mass', '0.18 kg'],
  stress: ['a stress or modulus', '17 GPa'],
  density: ['a density', '160 kg/m^3'],
};

const orNearest = (nearest: string | null): string => (nearest === null ? '' : `${nearest}? `);
const oneOf = (names: readonly string[]): string => (names.length === 0 ? 'there is none yet' : `one of ${names.join(', ')}`);

/** Every text of this room that a person may read: the remedies, in plain words, one place to change them. */
export const messages = {
  found: 'found',
  wouldBeRight: 'would be right',
  nothing: 'nothing',
  aSection: 'a section',
  aList: 'a list',

  measured: (m: Measured) => measuredWords[m][0],
  withUnit: (m: Measured) => `${measuredWords[m][0]} with its unit, for example ${measuredWords[m][1]}`,
  notThisMeasure: (m: Measured, is: Measured) => `${measuredWords[m][0]}, for example ${measuredWords[m][1]}, not ${measuredWords[is][0]}`,
  knownUnit: (m: Measured, units: readonly string[]) => `${measuredWords[m][0]} in ${units.join(', ')}`,
  anyKnownUnit: 'a number with a unit of length, angle, force or mass, for example 1000 mm, 45 deg, 60 kN, 0.18 kg',
  aboveZero: (m: Measured) => `${measuredWords[m][0]} above zero`,
  zeroOrMore: (m: Measured) => `${measuredWords[m][0]} of zero or more`,
  upTo: (m: Measured, most: string) => `${measuredWords[m][0]} above zero and up to ${most}`,
  decimalPoint: 'a point before the decimals and none between thousands, for example 12.5 mm',
  finite: 'a number a machine can hold',
  share: 'a number from 0 to 1 without a unit, for example 0.7',
  shareAboveZero: 'a number above 0 and up to 1 without a unit, for example 0.7',
  wholeFromOne: 'a whole number from 1 up, for example 1',

  noFile: 'a file that is there',
  tooLong: (most: number) => `a file of at most ${most} characters`,
  tooDeep: (most: number) => `at most ${most} sections inside one another`,
  yaml: (code: string, told: string) =>
    yamlRemedies[code] ?? `YAML 1.2: a name, a colon, a space and the value, indented with spaces (the parser says: ${told})`,
  noAlias: 'the value written out; anchors, aliases and merges are not used here',
  noTag: 'the value without a tag',
  plainName: 'a name in plain letters before the colon',
  reservedName: 'another name; this one is kept for the machine',

  section: (names: readonly string[]) => `a section with ${names.join(', ')}`,
  namedSection: 'a section with a name and a colon on each line',
  entries: (most: number) => `at most ${most} lines`,
  list: 'a list, each entry on a line that begins with a dash',
  unknownField: (nearest: string | null, known: readonly string[]) => `${orNearest(nearest)}${oneOf(known)}`,
  kind: (kind: string) => `kind: ${kind}`,
  fileName: 'a name in small letters, digits and hyphens, for example stall-kit',
  expressionName: 'a small letter, then small letters, digits or _, for example shelf_depth (a hyphen would mean minus)',
  takenName: 'a name that is not a unit, a function or index',
  sameNameTwice: 'a name not yet used by a parameter',
  purpose: 'a sentence that says what the value sets',
  yesOrNo: 'true or false',
  nameLike: (file: string) => `${file}, as the file or folder is called`,
  noKit: (nearest: string | null, known: readonly string[]) => `the name of a kit file; ${orNearest(nearest)}${oneOf(known)}`,

  range: 'least and most with their units, for example 500 mm to 1100 mm, or plain numbers, for example 2 to 5',
  rangeOneMeasure: 'both ends of one kind, for example 500 mm to 1100 mm',
  rangeOrder: (least: string, most: string) => `the smaller value first: ${most} to ${least}`,
  rangeWhole: 'whole numbers without a unit at both ends, for example 2 to 5, or no whole: true',
  notNegative: 'zero or more',
  atLeastOne: (what: string) => `at least one ${what}`,

  quantity: 'a number with its unit, for example 1000 mm, or a plain number for a count',
  unknownParameter: (nearest: string | null, known: readonly string[]) => `a parameter of this item: ${orNearest(nearest)}${oneOf(known)}`,
  missingParameter: (range: string) => `a value for every parameter: ${range}`,
  plainWithin: (text: string) => `a number without a unit within ${text}`,
  withinRange: (text: string) => `a value within ${text}`,
  wholeWithin: (text: string) => `a whole number within ${text}`,

  expression: 'an expression of numbers with units, names, + - * / ^ and brackets, for example height - 2 * lowest',
  expressionStopped: (character: number) => `an expression that goes on after character ${character}, for example height - 2 * lowest`,
  expressionLong: (most: number) => `an expression of at most ${most} characters`,
  expressionDeep: (most: number) => `at most ${most} brackets or operators inside one another; give a part of it a name under expressions`,
  expressionCharacter: (character: string, place: number) => `an expression without ${character} at character ${place}; letters, digits, . , + - * / ^ and round brackets are used`,
  expressionPart: 'numbers, names, + - * / ^, brackets and the functions min, max, floor, ceil, round, abs, sqrt, sin, cos, tan',
  timesSign: (units: readonly string[]) =>
    `a sign between the two, for example 2 * width, or a plain number right before one of the units ${units.join(', ')}, for example 3 mm`,
  unknownFunction: (nearest: string | null, known: readonly string[]) => `a known function: ${orNearest(nearest)}${oneOf(known)}`,
  argumentCount: (name: string, count: string) => `${name} with ${count}`,
  oneValue: 'one value in its brackets',
  twoToTen: 'two to ten values in its brackets',
  unknownName: (name: string, nearest: string | null, known: readonly string[]) => `a known name in place of ${name}: ${orNearest(nearest)}${oneOf(known)}`,
  unitAlone: (name: string) => `a number before the unit ${name}, for example 3 ${name}`,
  cycle: (names: readonly string[]) => `expressions that do not need one another in a ring (${names.join(' needs ')})`,
  sameDimension: (sign: string, left: string, right: string) =>
    `the same kind of value on both sides of ${sign}; here ${left} meets ${right}${plainWithMeasured(left, right)}`,
  sameDimensionArguments: (name: string, left: string, right: string) => `values of one kind in ${name}; here ${left} meets ${right}${plainWithMeasured(left, right)}`,
  plainArgument: (name: string, is: string) => `a number without a unit in ${name}, not ${is}; divide first, for example ${name}(width / 1 mm) * 1 mm`,
  angleArgument: (name: string, is: string) => `an angle in ${name}, for example ${name}(45 deg), not ${is}`,
  evenPower: (is: string) => `a plain number or a square, for example sqrt(width^2 + depth^2), not ${is}`,
  exponentPlain: 'an exponent without a unit',
  exponentWhole: 'a whole exponent from -4 to 4 written as a number, because the base has a unit',
  resultDimension: (wanted: string, is: string) => `an expression that gives ${wanted}, not ${is}`,
  aQuantity: 'a length, an angle, a force, a mass or a plain number',
  resultInstead: (wanted: string, is: string) => `an expression that gives ${wanted}, not ${is}${plainWithMeasured(wanted, is)}`,
  gives: (text: string, result: string) => `${text}, which gives ${result}`,
  inSize: (text: string, size: string) => `${text} in size ${size}`,
  noNumber: 'no number',
  finiteResult: 'a result that is a number: no division by zero, no root of less than zero',
  positiveResult: 'a length above zero',
  countResult: (most: number) => `a whole number from 1 to ${most}`,

  pieceKind: 'is: deck or is: post',
  pieceName: (what: string, nearest: string | null, known: readonly string[]) => `the name of ${what}: ${orNearest(nearest)}${oneOf(known)}`,
  aDeck: 'a deck piece',
  aPost: 'a post piece',
  postGoesThrough: (deck: string) => `${deck}, the deck the post goes through`,
  connection: 'pin and to, or brace and faces',
  face: 'one of back, left, right, front',
  faces: 'a list of faces, each once, for example [back, left, right]',
  orderKey: 'a kind of work, with a side when it has one, for example wrap-side:left',
  orderReason: 'the reason, in a sentence that can be printed',
  orderTwoKinds: 'two different kinds of work',
  orderRing: (keys: readonly string[]) => `wishes that do not run in a ring (${keys.join(' before ')})`,

  kitRule: {
    skins: 'less than half the panel thickness: two skins and a core between them',
    wall: 'less than half the outside diameter of the tube',
    bore: 'more than the outside diameter of the tube, so that the post slides through',
    sleeve: 'more than the bore',
    socket: 'more than the outside diameter of the tube, so that the tube goes in',
    stop: 'at least half the bore, so that a pushed-in tube leaves the way of the post free',
    endPlay: 'less than the socket depth',
    studReach: 'more than half the sleeve diameter and the stud head together',
    studHead: 'more than the stud diameter, so that a cable loop stays on',
    pinHeightLow: 'at least half the socket diameter and half the pin together, so that the pin passes below the sockets',
    pinHeightHigh: 'less than the sleeve below the deck tubes, with half the pin to spare',
    panelPinHead: 'more than the diameter of the pin',
    panelPinShort: 'more than the panel thickness, so that the pin reaches the middle part',
    panelPinLong: 'at most two panel thicknesses, so that the point stays inside',
    jointPinHead: 'more than the diameter of the pin',
    jointPinThick: 'less than the inside diameter of the tube',
    jointPinLong: 'more than the sleeve diameter and the wing nut together',
    tab: 'more than pin-edge and half the pin together: the pins must stand in the tab',
    tabCorner: 'less than the tab',
    pinEnd: 'at least half the head of the panel pin',
    pinPitch: 'more than the head of the panel pin',
  },
} as const;

function plainWithMeasured(left: string, right: string): string {
  const plain = ['a count', 'a ratio'];
  return plain.includes(left) !== plain.includes(right) ? '; give the number its unit, for example 1 mm' : '';
}

/** Remedies for what the YAML library can find, by its error code. */
const yamlRemedies: Readonly<Record<string, string>> = {
  DUPLICATE_KEY: 'each name once in its section',
  TAB_AS_INDENT: 'spaces for the indent, no tabs',
  BAD_INDENT: 'the same indent for all lines of a section',
  MULTIPLE_DOCS: 'one document in a file, without --- in the middle',
  MISSING_CHAR: 'the sign or the closing quote or bracket that is missing here',
  MULTILINE_IMPLICIT_KEY: 'a name and a colon on one line',
  UNEXPECTED_TOKEN: 'a name, a colon, a space and the value',
  BLOCK_AS_IMPLICIT_KEY: 'all lines of a section indented alike, and a section inside it on lines of its own',
};
