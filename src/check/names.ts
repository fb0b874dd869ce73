/** Every name a finding can have: the keys under `findings` in the locale files. */
export const findingNames = [
  'stock-panel', 'stock-plate', 'stock-tube', 'stock-cable',
  'crease-angle', 'tab-pins', 'tab-edge', 'pin-length', 'pins-apart', 'tabs-apart', 'opposite-tabs',
  'joints-apart', 'post-reach',
  'tube-bending', 'tube-deflection', 'panel-sag', 'panel-skin', 'panel-core',
  'post-buckling', 'post-bending', 'pin-shear', 'pin-bearing', 'backrest-tube', 'backrest-panel',
  'bracing', 'sway', 'sway-without-cables', 'cable-pull', 'use-load',
  'wall-height', 'tip-test', 'tip-scope', 'slenderness', 'tip-empty', 'tip-loaded', 'tip-angle', 'tip-edge', 'tip-back',
  'guard-height', 'guard-end', 'guard-opening', 'guard-slat', 'mattress-gap', 'finger-gap', 'local-codes',
] as const;

export type FindingName = (typeof findingNames)[number];
