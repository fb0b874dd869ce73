import type { Drawn } from './lines.ts';
import type { Axes, Eye } from './eye.ts';
import { turnedBack, type Pose, type Vec } from './pose.ts';

/** A colour as shares of red, green, blue. */
export type Colour = readonly [number, number, number];

export interface Paints {
  readonly paper: Colour;
  readonly ink: Colour;
  readonly body: Colour;
  readonly fresh: Colour;
}

/** A body ready to paint. */
export interface Placed {
  readonly drawn: Drawn;
  readonly pose: Pose;
  readonly fresh: boolean;
}

export interface Shot {
  readonly eye: Eye;
  readonly axes: Axes;
  /** What stands in the middle of the picture, mm, and how far the work reaches from there. */
  readonly middle: Vec;
  readonly radius: number;
  readonly paints: Paints;
}

const FACES = `attribute vec3 place;attribute vec3 normal;uniform mat4 fit;uniform vec3 light;varying float bright;
void main(){bright=.74+.26*max(0.,dot(normal,light));gl_Position=fit*vec4(place,1.);}`;
const FACE = 'precision mediump float;uniform vec3 colour;varying float bright;void main(){gl_FragColor=vec4(colour*bright,1.);}';
/** A line between two round faces is an outline where one of them faces the eye and the other does not; elsewhere it is thrown out of the picture. */
const LINES = `attribute vec3 place;attribute vec3 one;attribute vec3 other;attribute float crease;uniform mat4 fit;uniform vec3 eye;uniform vec2 nudge;
void main(){float f=dot(one,eye);float g=dot(other,eye);bool seen=crease>.5?max(f,g)>0.:f*g<=0.;gl_Position=seen?fit*vec4(place,1.)+vec4(nudge,-.0006,0.):vec4(2.,2.,2.,1.);}`;
const LINE = 'precision mediump float;uniform vec3 colour;void main(){gl_FragColor=vec4(colour,1.);}';

export interface Painter {
  readonly paint: (bodies: readonly Placed[], shot: Shot) => void;
}

/** Paints with WebGL 1, which phones had long before WebGL 2; null where there is none. */
export function newPainter(canvas: HTMLCanvasElement): Painter | null {
  const gl = canvas.getContext('webgl', { antialias: true, alpha: false }) as WebGLRenderingContext | null;
  if (gl === null) return null;
  const faces = program(gl, FACES, FACE);
  const lines = program(gl, LINES, LINE);
  if (faces === null || lines === null) return null;
  const buffers = new Map<Float32Array, WebGLBuffer | null>();
  const bound = (numbers: Float32Array): void => {
    const known = buffers.get(numbers);
    const buffer = known === undefined ? gl.createBuffer() : known;
    gl.bindBuffer(gl.ARRAY_BUFFER, buffer);
    if (known === undefined) gl.bufferData(gl.ARRAY_BUFFER, numbers, gl.STATIC_DRAW);
    buffers.set(numbers, buffer);
  };
  const attributes = (used: WebGLProgram, parts: readonly (readonly [name: string, size: number])[]): void => {
    const stride = 4 * parts.reduce((sum, [, size]) => sum + size, 0);
    let offset = 0;
    for (const [name, size] of parts) {
      const place = gl.getAttribLocation(used, name);
      gl.enableVertexAttribArray(place);
      gl.vertexAttribPointer(place, size, gl.FLOAT, false, stride, offset);
      offset += 4 * size;
    }
  };
  const uniform = (used: WebGLProgram, name: string): WebGLUniformLocation | null => gl.getUniformLocation(used, name);

  const paint = (bodies: readonly Placed[], shot: Shot): void => {
    const { eye, axes, paints: { paper, ink, body, fresh } } = shot;
    gl.viewport(0, 0, canvas.width, canvas.height);
    gl.clearColor(paper[0], paper[1], paper[2], 1);
    gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
    gl.enable(gl.DEPTH_TEST);
    gl.enable(gl.CULL_FACE);
    gl.enable(gl.POLYGON_OFFSET_FILL);
    gl.polygonOffset(1, 1);
    gl.useProgram(faces);
    for (const { drawn, pose, fresh: isFresh } of bodies) {
      bound(drawn.faces);
      attributes(faces, [['place', 3], ['normal', 3]]);
      gl.uniformMatrix4fv(uniform(faces, 'fit'), false, fitted(pose, shot, canvas));
      gl.uniform3fv(uniform(faces, 'light'), turnedBack(pose, lightFrom(axes)) as unknown as number[]);
      gl.uniform3fv(uniform(faces, 'colour'), (isFresh ? fresh : body) as unknown as number[]);
      gl.drawArrays(gl.TRIANGLES, 0, drawn.faces.length / 6);
    }
    gl.useProgram(lines);
    gl.uniform3fv(uniform(lines, 'colour'), ink as unknown as number[]);
    for (const [x, y] of nudges(window.devicePixelRatio || 1, eye)) {
      gl.uniform2f(uniform(lines, 'nudge'), (2 * x) / canvas.width, (2 * y) / canvas.height);
      for (const { drawn, pose } of bodies) {
        bound(drawn.lines);
        attributes(lines, [['place', 3], ['one', 3], ['other', 3], ['crease', 1]]);
        gl.uniformMatrix4fv(uniform(lines, 'fit'), false, fitted(pose, shot, canvas));
        gl.uniform3fv(uniform(lines, 'eye'), turnedBack(pose, axes.towards) as unknown as number[]);
        gl.drawArrays(gl.LINES, 0, drawn.lines.length / 10);
      }
    }
  };
  return { paint };
}

/** A chip may draw lines of one pixel only: fine screens get them twice, side by side, once the work is large enough for it. */
const nudges = (density: number, { scale }: Eye): readonly (readonly [number, number])[] =>
  (density >= 1.5 && scale >= 1 ? [[0, 0], [1, 0], [0, 1]] : [[0, 0]]);

/** From over the left shoulder. */
function lightFrom({ right, up, towards }: Axes): Vec {
  const mixed = [0, 1, 2].map((axis) => 0.55 * (towards[axis] || 0) + 0.7 * (up[axis] || 0) - 0.45 * (right[axis] || 0));
  return mixed as unknown as Vec;
}

/** From a body's coordinates to the picture's, −1 to 1: a parallel view in which the work fits whichever way it is turned. */
function fitted(pose: Pose, { eye, axes: { right, up, towards }, middle, radius }: Shot, { width, height }: HTMLCanvasElement): number[] {
  const short = Math.min(width, height);
  const rows: readonly (readonly [Vec, number, number])[] = [
    [right, (eye.scale * short) / (radius * width), (eye.aside * short) / width],
    [up, (eye.scale * short) / (radius * height), (eye.upward * short) / height],
    [towards, -1 / (4 * radius), 0],
  ];
  const columns: number[] = [];
  for (let column = 0; column < 4; column++) {
    for (const [axis, scale, shift] of rows) {
      let sum = 0;
      for (let row = 0; row < 3; row++) sum += (axis[row] || 0) * ((pose[4 * row + column] || 0) - (column === 3 ? middle[row] || 0 : 0));
      columns.push(sum * scale + (column === 3 ? shift : 0));
    }
    columns.push(column === 3 ? 1 : 0);
  }
  return columns;
}

function program(gl: WebGLRenderingContext, vertex: string, fragment: string): WebGLProgram | null {
  const made = gl.createProgram();
  for (const [kind, source] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]] as const) {
    const shader = gl.createShader(kind);
    if (shader === null || made === null) return null;
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(made, shader);
  }
  gl.linkProgram(made);
  return gl.getProgramParameter(made, gl.LINK_STATUS) ? made : null;
}
