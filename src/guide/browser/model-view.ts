import type { PackedSolids, PackedStand } from '../data.ts';
import type { Finger } from './fingers.ts';
import { axesOf, enlarged, eyeAt, turned, type Eye } from './model/eye.ts';
import { extent, facesAndLines, type Drawn } from './model/lines.ts';
import { playedAt, standingAt, type Standing } from './model/moments.ts';
import { newPainter, type Paints } from './model/painter.ts';
import { placed, type Vec } from './model/pose.ts';
import { unpackMesh } from './model/unpack.ts';
import type { NearView } from './near-view.ts';

/** The models of the steps, each made ready when it is first looked at. */
export interface ModelViews {
  readonly show: (stand: PackedStand, stage: HTMLElement, label: string) => NearView;
}

const LIGHT: Paints = { paper: [1, 1, 1], ink: [0, 0, 0], body: [0.985, 0.985, 0.98], fresh: [0.72, 0.77, 0.81] };
const DARK: Paints = { paper: [0.078, 0.09, 0.1], ink: [0.96, 0.96, 0.94], body: [0.22, 0.25, 0.27], fresh: [0.34, 0.44, 0.53] };

const NOTHING: Drawn = { faces: new Float32Array(0), lines: new Float32Array(0), box: [] };

/** A finger's way across the stage's shorter side turns the work by so much, rad. */
const HALF_TURN = Math.PI;
/** More pixels than this a point are not seen, but cost time. */
const FINEST = 2;

/** Null where there is no WebGL. `lost` is called when the phone takes it away. */
export function modelView(solids: PackedSolids, dark: () => boolean, lost: () => void): ModelViews | null {
  if (!('WebGLRenderingContext' in window)) return null;
  const canvas = document.createElement('canvas');
  const painter = newPainter(canvas);
  if (painter === null) return null;
  canvas.setAttribute('role', 'img');
  canvas.addEventListener('webglcontextlost', lost);
  const ready = new Map<number, Drawn>();
  const drawnOf = (mesh: number): Drawn => {
    const packed = solids.meshes[mesh];
    const drawn = ready.get(mesh) || (packed === undefined ? NOTHING : facesAndLines(unpackMesh(packed)));
    ready.set(mesh, drawn);
    return drawn;
  };

  const show = (stand: PackedStand, stage: HTMLElement, label: string): NearView => {
    canvas.setAttribute('aria-label', label);
    canvas.setAttribute('aria-busy', 'false');
    const { middle, radius } = reach(standingAt(solids, stand, 1), drawnOf);
    const whole = stand.before.some((moment) => moment.whole !== undefined);
    const first = eyeAt(stand.towardsEye);
    let eye: Eye = first;
    let share = 1;
    let begun = 0;
    let asked = 0;

    const paint = (now: number): void => {
      asked = 0;
      if (begun > 0) {
        const played = playedAt(stand, now - begun);
        share = played.share;
        if (played.isOver) rest();
      }
      fillStage(canvas, stage);
      const standing = standingAt(solids, stand, share);
      const bodies = standing.map(({ mesh, pose, fresh }) => ({ drawn: drawnOf(mesh), pose, fresh }));
      // Work that is turned as a whole also moves aside: the eye follows it.
      const shown = share < 1 && whole ? reach(standing, drawnOf).middle : middle;
      painter.paint(bodies, { eye, axes: axesOf(eye), middle: shown, radius, paints: dark() ? DARK : LIGHT });
      if (begun > 0) again();
    };
    const rest = (): void => {
      begun = 0;
      canvas.setAttribute('aria-busy', 'false');
    };
    const again = (): void => {
      if (asked === 0) asked = requestAnimationFrame(paint);
    };
    const look = (next: Eye): void => {
      eye = next;
      again();
    };
    /** Half the stage's shorter side, px: there the work's radius ends. */
    const half = (): number => Math.min(stage.clientWidth, stage.clientHeight) / 2 || 1;
    const share2 = ({ x, y }: Finger): [number, number] => [(x - stage.clientWidth / 2) / half(), (stage.clientHeight / 2 - y) / half()];
    return {
      element: canvas,
      push: (x, y) => { look(turned(eye, (x * HALF_TURN) / (2 * half()), (y * HALF_TURN) / (2 * half()))); },
      enlarge: (about, factor, by) => { look(enlarged(eye, factor, share2(about), [by.x / half(), -by.y / half()])); },
      begin: () => { look(first); },
      settle: () => undefined,
      reset: () => { look(first); },
      play: stand.before.length === 0 ? null : () => {
        begun = performance.now();
        canvas.setAttribute('aria-busy', 'true');
        again();
      },
      leave: () => {
        cancelAnimationFrame(asked);
        rest();
      },
    };
  };
  return { show };
}

function fillStage(canvas: HTMLCanvasElement, stage: HTMLElement): void {
  const density = Math.min(FINEST, window.devicePixelRatio || 1);
  const [width, height] = [Math.round(stage.clientWidth * density), Math.round(stage.clientHeight * density)];
  if (canvas.width !== width) canvas.width = width;
  if (canvas.height !== height) canvas.height = height;
}

/** The middle of all bodies, and how far their corners reach from it, mm. */
function reach(bodies: readonly Standing[], drawnOf: (mesh: number) => Drawn): { readonly middle: Vec; readonly radius: number } {
  const corners: Vec[] = [];
  bodies.forEach(({ mesh, pose }) => { drawnOf(mesh).box.forEach((corner) => { corners.push(placed(pose, corner)); }); });
  const flat: number[] = [];
  corners.forEach((corner) => { flat.push(corner[0], corner[1], corner[2]); });
  const [least, most] = extent(flat);
  const middle = least.map((value, axis) => (value + (most[axis] || 0)) / 2) as unknown as Vec;
  const radius = corners.reduce((longest, corner) => Math.max(longest, Math.hypot(corner[0] - middle[0], corner[1] - middle[1], corner[2] - middle[2])), 1);
  return { middle, radius };
}
