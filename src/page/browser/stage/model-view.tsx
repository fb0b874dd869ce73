import { Canvas, useFrame, useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef, useState, type ReactNode, type RefObject } from 'react';
import type { DirectionalLight, OrthographicCamera } from 'three';
import type { Box3 } from '../../../model/index.ts';
import type { Mark } from '../../../scene/index.ts';
import type { Packet } from '../workers/messages.ts';
import type { ShapeStore } from '../workers/shape-store.ts';
import { useWords } from '../words.tsx';
import { newBodies } from './bodies.ts';
import { aim, BOOKLET_EYE, FRONT_EYE, nearerEye, SIDE_EYE, TOP_EYE, type Eye } from './eye.ts';
import { placeLabels, type PlacedLabel } from './labels.ts';
import { lettersOf, newLines, segmentsOf, setLines } from './lines.ts';
import { paletteFor, type Palette } from './palette.ts';
import { useDark } from './use-dark.ts';
import { useTurning } from './use-turning.ts';

interface ModelViewProps {
  readonly packet: Packet | null;
  /** The meshes of the packet and of those before it. */
  readonly store: ShapeStore;
  readonly marks: readonly Mark[];
  /** What stands beside a mark's letter. */
  readonly figures: ReadonlyMap<string, string>;
  readonly labels: readonly PlacedLabel[];
  readonly tints: ReadonlyMap<string, keyof Palette['faces']>;
  /** What is looked at: when it is another, the whole of it is brought into the view. */
  readonly subject: string;
  /** What a screen reader calls it. */
  readonly name: string;
}

const canDraw = (): boolean => {
  try {
    return document.createElement('canvas').getContext('webgl2') !== null;
  } catch {
    return false;
  }
};

/** The model in three dimensions, turned by pointer, touch or keys; drawn only when something changes. */
export function ModelView({ packet, store, marks, figures, labels, tints, subject, name }: ModelViewProps): ReactNode {
  const words = useWords();
  const place = useRef<HTMLDivElement>(null);
  const holder = useRef<HTMLDivElement>(null);
  const eye = useRef<Eye>(BOOKLET_EYE);
  const redraw = useRef<() => void>(() => undefined);
  const [drawable] = useState(canDraw);
  const look = (change: (eye: Eye) => Eye): void => {
    eye.current = change(eye.current);
    redraw.current();
  };
  useTurning(place, look, BOOKLET_EYE);
  const all = useMemo(() => [...lettersOf(marks, figures), ...labels], [marks, figures, labels]);
  return (
    <div className="view">
      <div className="turnable" ref={place} tabIndex={0} role="application" aria-roledescription={words.t('page.view.kind')} aria-label={`${name}. ${words.t('page.view.keys')}`}>
        {drawable
          ? (
            <Canvas orthographic flat frameloop="demand" dpr={[1, 2]} gl={{ alpha: true, antialias: true }} aria-hidden="true">
              <Drawn packet={packet} store={store} marks={marks} labels={all} tints={tints} subject={subject} eye={eye} holder={holder} redraw={redraw} />
            </Canvas>
          )
          : <p className="no-view">{words.t('page.view.none')}</p>}
        <div className="labels" ref={holder} aria-hidden="true">
          {all.map((label) => <span key={label.key} className={`label ${label.look}`} dir="ltr">{label.text}</span>)}
        </div>
      </div>
      <div className="eyes" role="group" aria-label={words.t('page.view.from')}>
        {([['booklet', BOOKLET_EYE], ['front', FRONT_EYE], ['side', SIDE_EYE], ['top', TOP_EYE]] as const).map(([from, to]) =>
          <button key={from} type="button" onClick={() => { look(() => to); }}>{words.t(`page.view.${from}`)}</button>)}
        <button type="button" onClick={() => { look((now) => nearerEye(now, 1.25)); }}>{words.t('page.view.nearer')}</button>
        <button type="button" onClick={() => { look((now) => nearerEye(now, 0.8)); }}>{words.t('page.view.farther')}</button>
      </div>
    </div>
  );
}

interface DrawnProps extends Omit<ModelViewProps, 'name' | 'figures'> {
  readonly eye: RefObject<Eye>;
  readonly holder: RefObject<HTMLDivElement | null>;
  readonly redraw: RefObject<() => void>;
}

/** What stands in the canvas. Packets go straight into three's buffers; React only hears that there is a new one. */
function Drawn({ packet, store, marks, labels, tints, subject, eye, holder, redraw }: DrawnProps): ReactNode {
  const invalidate = useThree((state) => state.invalidate);
  const palette = paletteFor(useDark());
  const [bodies] = useState(() => newBodies(palette));
  const [lines] = useState(() => newLines(palette.mark));
  const light = useRef<DirectionalLight>(null);
  const seen = useRef<{ readonly subject: string; readonly box: Box3 } | null>(null);

  useEffect(() => () => { bodies.dispose(); }, [bodies]);
  useEffect(() => { redraw.current = () => { invalidate(); }; }, [invalidate, redraw]);
  useEffect(() => {
    if (packet === null) return;
    bodies.show(packet, store);
    seen.current = { subject, box: seen.current?.subject === subject ? kept(seen.current.box, packet.reach) : packet.reach };
    invalidate();
  }, [packet, store, subject, bodies, invalidate]);
  useEffect(() => {
    bodies.tint(tints);
    invalidate();
  }, [tints, bodies, invalidate]);
  useEffect(() => {
    bodies.paint(palette);
    setLines(lines, segmentsOf(marks), palette.mark);
    invalidate();
  }, [palette, marks, bodies, lines, invalidate]);
  useEffect(() => { invalidate(); }, [labels, invalidate]);

  useFrame(({ camera, size }) => {
    if (seen.current === null) return;
    aim(camera as OrthographicCamera, eye.current, seen.current.box, size.width, size.height);
    // The light comes over the reader's left shoulder.
    light.current?.position.set(-0.5, 0.9, 1).applyQuaternion(camera.quaternion);
    if (holder.current !== null) placeLabels(holder.current, labels, camera, size.width, size.height);
  });

  return (
    <>
      <ambientLight intensity={1.7} />
      <directionalLight ref={light} intensity={1.6} />
      <primitive object={bodies.group} />
      <primitive object={lines} />
    </>
  );
}

/** A model that grows or shrinks keeps its scale on the screen, so that the change is seen, until it would leave the view. */
function kept(before: Box3, now: Box3): Box3 {
  const size = ({ min, max }: Box3): number => Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]);
  const isWithin = [0, 1, 2].every((axis) => (now.max[axis] ?? 0) - (now.min[axis] ?? 0) <= 1.05 * ((before.max[axis] ?? 0) - (before.min[axis] ?? 0)) + 1);
  return isWithin && size(now) > 0.55 * size(before) ? before : now;
}
