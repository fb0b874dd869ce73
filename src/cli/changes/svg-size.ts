/** Size of a picture as its `viewBox` has it, mm of paper; null where it has none. */
export function svgSize(svg: string): { readonly width: number; readonly height: number } | null {
  const [, wide, high] = /^<svg\b[^>]*\sviewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return wide === undefined || high === undefined ? null : { width: Number(wide), height: Number(high) };
}
