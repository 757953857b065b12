import { useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect, useMemo } from 'react';
import { PerspectiveCamera } from 'three';
import { add, scale, sub } from '../../src/base/vec';
import type { Plan } from '../../src/vocabulary/job';
import type { Part } from '../../src/vocabulary/part';
import type { Rod } from '../../src/vocabulary/rod';
import type { Shift } from './apart';
import type { Assembly, Box } from './assembly';
import { Daylight } from './Daylight';
import { Heaps } from './Heaps';
import { Measured } from './Measured';
import { edgeLine, floorLine, measureLine } from './materials';
import { boxWith, type Measure, measuresOf, measuresOfRod } from './measures';
import { Orbit } from './Orbit';
import { Outlined, Picked } from './Picked';
import { shifted } from './section-labels';
import { facing } from './standpoint';
import { useTally } from './tally';

interface Props {
  readonly assembly: Assembly;
  readonly box: Box;
  /** What is looked at, when it is not all of it. */
  readonly focus: Box | null;
  readonly rod: Rod;
  readonly plan: Plan;
  readonly picked: Part | undefined;
  /** Where parts are drawn instead of where they belong. */
  readonly shift: Shift | null;
  /** What is written over the sections of a unit drawn apart. */
  readonly labels: readonly Measure[];
  readonly outlined: readonly Part[];
  readonly measured: boolean;
  readonly format: (measure: Measure) => string;
  readonly sheet: RefObject<HTMLDivElement | null>;
  readonly summary: string;
  readonly onPick: (mark: string) => void;
}

/** Everything inside the picture. */
export function World(props: Props) {
  const { assembly, box, focus, rod, plan, picked, shift, labels, outlined, measured, format, sheet, summary, onPick } =
    props;
  const canvas = useThree((state) => state.gl.domElement);
  useTally(() => canvas);
  useEffect(() => {
    canvas.setAttribute('role', 'img');
    canvas.setAttribute('aria-label', summary);
  }, [canvas, summary]);
  useRedrawWhenRestored();

  const face = useMemo(() => facing(rod.runs), [rod]);
  const whole = useMemo(() => measuresOfRod(rod, plan), [rod, plan]);
  const by = useMemo(() => (picked && shift ? shift(picked) : null), [picked, shift]);
  const measures = useMemo(() => {
    if (picked) return [...(measured ? shifted(measuresOf(picked), by ?? [0, 0, 0]) : []), ...labels];
    // The unit's own sizes are of the unit as it stands together.
    return shift ? labels : measured ? whole : [];
  }, [picked, by, shift, labels, measured, whole]);
  const seen = useMemo(
    () => focus ?? boxWith(box, shift ? labels : measured ? whole : []),
    [focus, box, shift, labels, measured, whole],
  );

  return (
    <>
      <Daylight box={box} face={face} assembly={assembly} />
      <Heaps assembly={assembly} onPick={onPick} />
      {picked && <Picked part={picked} by={by} />}
      {outlined.length > 0 && <Outlined parts={outlined} />}
      {measures.length > 0 && (
        <Measured
          measures={measures}
          material={picked || shift ? measureLine : floorLine}
          format={format}
          sheet={sheet}
        />
      )}
      <Orbit box={seen} runs={rod.runs} />
      <Frame box={box} />
    </>
  );
}

/** A picture that the browser took away and gave back is drawn again, with its shadow, without waiting for a change. */
function useRedrawWhenRestored(): void {
  const gl = useThree((state) => state.gl);
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    const redraw = (): void => {
      gl.shadowMap.needsUpdate = true;
      invalidate();
    };
    gl.domElement.addEventListener('webglcontextrestored', redraw);
    return () => gl.domElement.removeEventListener('webglcontextrestored', redraw);
  }, [gl, invalidate]);
}

/** Draws the picture, with the depth of view closed in on the unit, and notes how many draw calls it took. */
function Frame({ box }: { box: Box }) {
  useFrame(({ gl, scene, camera, size }) => {
    if (camera instanceof PerspectiveCamera) {
      closeIn(camera, box);
      edgeLine.opacity = edgeOpacity(
        size.height / (2 * Math.tan((camera.fov * Math.PI) / 360) * distanceTo(camera, box)),
      );
    }
    gl.info.autoReset = false;
    gl.info.reset();
    gl.render(scene, camera);
    gl.domElement.dataset.calls = String(gl.info.render.calls);
    gl.domElement.dataset.triangles = String(gl.info.render.triangles);
  }, 1);
  return null;
}

/** Nearer and further limits as tight as the floor allows: depth is told apart by ever fewer steps the further off it lies. */
function closeIn(camera: PerspectiveCamera, box: Box): void {
  const radius = Math.hypot(...sub(box.max, box.min)) / 2;
  const distance = distanceTo(camera, box);
  const near = Math.max(distance - 2 * radius, radius / 200);
  const far = distance + 8 * radius;
  if (camera.near === near && camera.far === far) return;
  camera.near = near;
  camera.far = far;
  camera.updateProjectionMatrix();
}

/** How far the viewer stands from the middle of a box, mm. */
function distanceTo(camera: PerspectiveCamera, box: Box): number {
  const { x, y, z } = camera.position;
  return Math.hypot(...sub([x, y, z], scale(add(box.min, box.max), 0.5)));
}

/** Lines keep their width on the screen however small the unit is drawn, so from afar they are drawn fainter (by eye). */
const edgeOpacity = (pixelsPerMm: number): number => Math.max(0.14, Math.min(0.36, 1.6 * pixelsPerMm));
