/** How much longer a shallow sagging strip is than its span, mm: 8/3 · δ² / L (arc of a flat parabola). */
export const sagStretch = (sag: number, span: number): number => (8 / 3) * (sag ** 2 / span);

/**
 * Pull of a sagging panel on its two edge tubes, N: its stretch held back by the panel's own give
 * (mm per N) and by the give of each tube.
 */
export const edgePull = (sag: number, span: number, panelGive: number, tubeGive: number): number =>
  sagStretch(sag, span) / (panelGive + 2 * tubeGive);
