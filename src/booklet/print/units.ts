/** Points of PDF in a millimetre: 72 to the inch, 25.4 mm to the inch. */
export const POINTS_PER_MM = 72 / 25.4;

/** CSS pixels in a millimetre: 96 to the inch. */
export const PIXELS_PER_MM = 96 / 25.4;
