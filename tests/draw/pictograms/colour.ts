/** sRGB colour arithmetic: IEC 61966-2-1, as written out in WCAG 2.1 "relative luminance" (from memory). */

const linear = (hex: string): readonly [number, number, number] => {
  const long = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit).join('') : hex.slice(1);
  const channel = (i: number): number => {
    const value = parseInt(long.slice(i * 2, i * 2 + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(0), channel(1), channel(2)];
};

/** 0 black … 1 white. */
export const luminance = (hex: string): number => {
  const [r, g, b] = linear(hex);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** ISO/IEC Guide 37 (R in CHECKS): (lighter − darker) / lighter. */
export const luminanceContrast = (one: string, other: string): number => {
  const [a, b] = [luminance(one), luminance(other)];
  return Math.abs(a - b) / Math.max(a, b);
};

/** CIE 1931 x, y. */
export const chromaticity = (hex: string): readonly [number, number] => {
  const [r, g, b] = linear(hex);
  const [x, y, z] = [0.4124 * r + 0.3576 * g + 0.1805 * b, luminance(hex), 0.0193 * r + 0.1192 * g + 0.9505 * b];
  return [x / (x + y + z), y / (x + y + z)];
};
