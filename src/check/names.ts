/** Every name a finding can have: the keys under `findings` in the locale files. */
export const findingNames = [
  'stock-panel', 'stock-plate', 'stock-tube', 'stock-cable',
  'crease-angle', 'tab-pins', 'tab-edge', 'pin-length', 'hole-depth', 'pins-apart', 'tabs-apart', 'opposite-tabs',
  'joints-apart', 'post-reach',
  'tube-bending', 'tube-deflection', 'panel-sag', 'panel-skin', 'panel-core', 'pin-skin', 'long-term-sag',
  'post-buckling', 'post-bending', 'pin-shear', 'pin-bearing', 'backrest-tube', 'backrest-panel',
  'bracing', 'sway', 'cable-pull', 'edge-sag', 'adult-edge', 'guard-push', 'joint-test', 'use-load', 'castor-load', 'wall-hold',
  'wall-height', 'tip-test', 'tip-scope', 'slenderness', 'tip-empty', 'tip-loaded', 'tip-angle', 'tip-edge', 'tip-back',
  'raised-bed', 'one-bed', 'bed-cord', 'guard-sides', 'guard-height', 'guard-end', 'guard-opening', 'guard-slat',
  'mattress-gap', 'mattress-held', 'castor-brake', 'lid-holds', 'lid-gap', 'lid-vent', 'lid-lift', 'finger-gap', 'limb-gap', 'snag-point', 'tube-ends', 'size-mark', 'local-codes',
] as const;

export type FindingName = (typeof findingNames)[number];
