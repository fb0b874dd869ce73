/** Colours of the model on the screen. */
export interface Palette {
  readonly line: number;
  readonly faces: Readonly<Record<'present' | 'new' | 'pale' | 'drawn' | 'caution' | 'fail' | 'pointed', number>>;
  readonly mark: number;
}

const light: Palette = {
  line: 0x22262a,
  faces: { present: 0xf6f4ee, new: 0x9fc3cf, pale: 0xdcdad4, drawn: 0x22262a, caution: 0xf0c35a, fail: 0xe8897f, pointed: 0x3f93a8 },
  mark: 0x0b5566,
};

const dark: Palette = {
  line: 0x0c0e10,
  faces: { present: 0xd3d0c8, new: 0x6fb1c3, pale: 0x77787a, drawn: 0x0c0e10, caution: 0xe0a93a, fail: 0xe0695e, pointed: 0x4fc0dc },
  mark: 0x8fd3e3,
};

export const paletteFor = (isDark: boolean): Palette => (isDark ? dark : light);
