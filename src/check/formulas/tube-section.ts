/** Area of a tube's wall across, mm², from its diameters in mm. */
export const wallArea = (outside: number, inside: number): number =>
  (Math.PI / 4) * (outside ** 2 - inside ** 2);

/** Second moment of area of a tube, mm⁴: π/64 (D⁴ − d⁴). */
export const secondMoment = (outside: number, inside: number): number =>
  (Math.PI / 64) * (outside ** 4 - inside ** 4);

/** Section modulus of a tube, mm³: I / (D/2). */
export const sectionModulus = (outside: number, inside: number): number =>
  secondMoment(outside, inside) / (outside / 2);

/** Section modulus of a tube with a hole right through both walls where it bends most, mm³: the walls' own part at (D − t)/2 left out. */
export const drilledSectionModulus = (outside: number, inside: number, hole: number): number => {
  const wall = (outside - inside) / 2;
  return (secondMoment(outside, inside) - 2 * hole * wall * ((outside - wall) / 2) ** 2) / (outside / 2);
};
