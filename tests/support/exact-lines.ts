import init, { type OpenCascadeInstance } from 'replicad-opencascadejs';
import type { Vec3 } from '../../src/model/index.ts';

/** A box along the axes: its sides and its middle, mm. */
export interface Block {
  readonly sides: Vec3;
  readonly middle: Vec3;
}

/** Shelves of bars and plates on four posts, with studs on each plate; no two blocks touch. */
export function shelvesOfBlocks(shelves: number): readonly Block[] {
  const height = shelves * 300 + 100;
  const posts = [-450, 450].flatMap((x) => [-200, 200].map((y): Block => ({ sides: [28, 28, height], middle: [x, y, height / 2] })));
  const levels = Array.from({ length: shelves }, (_, shelf): readonly Block[] => {
    const z = 120 + shelf * 300;
    return [
      ...[-200, 200].map((y): Block => ({ sides: [870, 26, 26], middle: [0, y, z] })),
      ...[-450, 450].map((x): Block => ({ sides: [26, 370, 26], middle: [x, 0, z] })),
      { sides: [860, 360, 9], middle: [0, 0, z - 20] },
      ...[-150, 150].flatMap((y) => [-300, -180, -60, 60, 180, 300].map((x): Block => ({ sides: [14, 12, 20], middle: [x, y, z] }))),
    ];
  });
  return [...posts, ...levels.flat()];
}

export const exactKernel = (): Promise<OpenCascadeInstance> => init();

/** Length of all visible edges of the blocks seen from `towardsEye`, mm, by the exact hidden-line removal of a geometry kernel. */
export function exactVisibleLength(kernel: OpenCascadeInstance, blocks: readonly Block[], [x, y, z]: Vec3): number {
  const hidden = new kernel.HLRBRep_Algo();
  for (const { sides, middle } of blocks) {
    const end = (way: -1 | 1): [number, number, number] => [middle[0] + (way * sides[0]) / 2, middle[1] + (way * sides[1]) / 2, middle[2] + (way * sides[2]) / 2];
    hidden.Add(new kernel.BRepPrimAPI_MakeBox(new kernel.gp_Pnt(...end(-1)), new kernel.gp_Pnt(...end(1))).Shape(), 0);
  }
  hidden.Projector(new kernel.HLRAlgo_Projector(new kernel.gp_Ax2(new kernel.gp_Pnt(0, 0, 0), new kernel.gp_Dir(x, y, z))));
  hidden.Update();
  hidden.Hide();
  const visible = new kernel.HLRBRep_HLRToShape(hidden).VCompound();
  kernel.BRepLib.BuildCurves3d(visible);
  const length = new kernel.GProp_GProps();
  kernel.BRepGProp.LinearProperties(visible, length, false, false);
  return length.Mass();
}
