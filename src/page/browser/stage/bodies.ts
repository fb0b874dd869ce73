import { BufferAttribute, BufferGeometry, Group, LineBasicMaterial, LineSegments, Mesh, MeshLambertMaterial } from 'three';
import type { Geometry, Packet, ShownBody } from '../workers/messages.ts';
import type { ShapeStore } from '../workers/shape-store.ts';
import type { Palette } from './palette.ts';

type Face = keyof Palette['faces'];

interface Shape {
  readonly faces: BufferGeometry;
  readonly edges: BufferGeometry;
}

interface Placed {
  readonly mesh: Mesh<BufferGeometry, MeshLambertMaterial>;
  readonly lines: LineSegments<BufferGeometry, LineBasicMaterial>;
  body: ShownBody;
}

/** Bodies as three.js objects, kept from packet to packet: a new packet swaps buffers and poses and nothing else. */
export interface Bodies {
  readonly group: Group;
  show(packet: Packet, store: ShapeStore): void;
  /** Faces of parts that are to be told from the others, by part. */
  tint(tints: ReadonlyMap<string, Face>): void;
  paint(palette: Palette): void;
  dispose(): void;
}

export function newBodies(palette: Palette): Bodies {
  const group = new Group();
  const shapes = new Map<string, Shape>();
  const placed = new Map<string, Placed>();
  const line = new LineBasicMaterial({ color: palette.line });
  // Faces lie a little behind their edges, so that the edges are whole.
  const materials = new Map((Object.entries(palette.faces) as [Face, number][]).map(([face, color]) =>
    [face, new MeshLambertMaterial({ color, flatShading: true, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 })]));
  let tinted: ReadonlyMap<string, Face> = new Map();

  const shapeOf = (key: string, store: ShapeStore): Shape | null => {
    const geometry = store.shape(key);
    const shape = shapes.get(key) ?? (geometry === undefined ? null : newShape(geometry));
    if (shape !== null) shapes.set(key, shape);
    return shape;
  };
  const paintBody = ({ mesh, body }: Placed): void => {
    const material = materials.get((body.partId === null ? undefined : tinted.get(body.partId)) ?? body.look);
    if (material !== undefined) mesh.material = material;
  };
  const place = (body: ShownBody, shape: Shape): void => {
    const known = placed.get(body.id) ?? newPlaced(body, shape, group, line);
    placed.set(body.id, known);
    known.body = body;
    for (const object of [known.mesh, known.lines]) object.matrix.fromArray([...body.pose]);
    known.mesh.geometry = shape.faces;
    known.lines.geometry = shape.edges;
    paintBody(known);
  };

  return {
    group,
    show: ({ bodies }, store) => {
      const ids = new Set(bodies.map(({ id }) => id));
      for (const [id, { mesh, lines }] of placed) {
        if (ids.has(id)) continue;
        group.remove(mesh, lines);
        placed.delete(id);
      }
      for (const body of bodies) {
        const shape = shapeOf(body.geometry, store);
        if (shape !== null) place(body, shape);
      }
      letGo(shapes, new Set(bodies.map(({ geometry }) => geometry)));
    },
    tint: (tints) => {
      tinted = tints;
      for (const each of placed.values()) paintBody(each);
    },
    paint: (colours) => {
      line.color.set(colours.line);
      for (const [face, material] of materials) material.color.set(colours.faces[face]);
    },
    dispose: () => {
      letGo(shapes, new Set());
      line.dispose();
      for (const material of materials.values()) material.dispose();
    },
  };
}

function newPlaced(body: ShownBody, shape: Shape, group: Group, line: LineBasicMaterial): Placed {
  const placed = { mesh: new Mesh(shape.faces, new MeshLambertMaterial()), lines: new LineSegments(shape.edges, line), body };
  for (const object of [placed.mesh, placed.lines]) object.matrixAutoUpdate = false;
  group.add(placed.mesh, placed.lines);
  return placed;
}

const newShape = ({ positions, triangles, edges }: Geometry): Shape => ({
  faces: new BufferGeometry().setAttribute('position', new BufferAttribute(positions, 3)).setIndex(new BufferAttribute(triangles, 1)),
  edges: new BufferGeometry().setAttribute('position', new BufferAttribute(edges, 3)),
});

/** Shapes that are shown no longer leave the graphics memory; the store still has them. */
function letGo(shapes: Map<string, Shape>, used: ReadonlySet<string>): void {
  for (const [key, { faces, edges }] of shapes) {
    if (used.has(key)) continue;
    faces.dispose();
    edges.dispose();
    shapes.delete(key);
  }
}
