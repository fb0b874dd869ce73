import { BufferAttribute, BufferGeometry, Mesh, MeshBasicMaterial, OrthographicCamera, Scene } from 'three';
import { SVGRenderer } from 'three/addons/renderers/SVGRenderer.js';
import type { Body } from '../../src/draw/types.ts';
import { asMatrix } from '../../src/model/index.ts';

/** As much of a document as the renderer asks for: elements that hold attributes and children. */
class Element {
  readonly style = {};
  readonly attributes = new Map<string, string>();
  readonly childNodes: Element[] = [];
  constructor(readonly name: string) {}
  setAttribute(name: string, value: string): void { this.attributes.set(name, String(value)); }
  appendChild(child: Element): void { this.childNodes.push(child); }
  removeChild(child: Element): void { this.childNodes.splice(this.childNodes.indexOf(child), 1); }
}

/** Draws bodies by three's own SVG renderer, which paints all triangles from back to front and hides no line exactly. Gives the number of its paths. */
export function threeDrawer(bodies: readonly Body[]): () => number {
  Object.assign(globalThis, { document: { createElementNS: (_space: string, name: string) => new Element(name) } });
  const scene = new Scene();
  for (const { mesh, pose } of bodies) {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(Float32Array.from(mesh.positions), 3));
    geometry.setIndex(new BufferAttribute(mesh.triangles, 1));
    const shown = new Mesh(geometry, new MeshBasicMaterial({ color: 0xcccccc }));
    shown.applyMatrix4(asMatrix(pose));
    scene.add(shown);
  }
  const camera = new OrthographicCamera(-2000, 2000, 4000, -1000, 1, 20_000);
  camera.position.set(5000, -8000, 6000);
  camera.up.set(0, 0, 1);
  camera.lookAt(0, 0, 1000);
  const renderer = new SVGRenderer();
  renderer.setSize(800, 1000);
  return () => {
    renderer.render(scene, camera);
    return (renderer.domElement as unknown as Element).childNodes.length;
  };
}
