/** Every name a finding can have: the keys under `findings` in the locale files. */
export const findingNames = [
  'stock-panel', 'stock-tube', 'stock-cable',
  'crease-angle', 'tab-pins', 'tab-edge', 'pin-length', 'pins-apart', 'tabs-apart', 'opposite-tabs',
  'tube-bending', 'tube-deflection', 'panel-sag', 'panel-skin', 'panel-core',
  'post-buckling', 'pin-shear', 'pin-bearing', 'bracing', 'sway', 'cable-pull',
  'wall-height', 'tip-test', 'slenderness', 'tip-empty', 'tip-loaded', 'tip-angle',
] as const;

export type FindingName = (typeof findingNames)[number];
