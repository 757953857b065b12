import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useRef } from 'react';
import type { PerspectiveCamera } from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import type { RodRun } from '../../src/vocabulary/rod';
import { app } from '../store/app';
import type { Look } from '../store/view';
import type { Box } from './assembly';
import { roomStand, type Standpoint, standFor } from './standpoint';

interface Props {
  readonly box: Box;
  readonly runs: readonly RodRun[];
}

/** The run a look is square on to: the one on the rod, else the first. */
function currentRun(runs: readonly RodRun[]): RodRun | undefined {
  const chosen = app.getState().view.run;
  return runs.find((run) => run.id === chosen) ?? runs[0];
}

function present(camera: PerspectiveCamera, controls: OrbitControls): Standpoint {
  const { position: p } = camera;
  const { target: t } = controls;
  return { position: [p.x, p.y, p.z], target: [t.x, t.y, t.z], fovDeg: camera.fov };
}

/**
 * The viewer's place: turned, drawn nearer and shifted with the pointer, or moved to a look that is asked for. All of it
 * goes past React: turning the view draws a frame and nothing else. Until the viewer is moved by hand, the unit is kept
 * in view when it or the window changes.
 */
export function Orbit({ box, runs }: Props) {
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const canvas = useThree((state) => state.gl.domElement);
  const invalidate = useThree((state) => state.invalidate);
  const { width, height } = useThree((state) => state.size);
  const controls = useRef<OrbitControls | null>(null);
  const held = useRef<Look | null>('room');
  const scene = useRef({ box, runs, aspect: width / height });
  scene.current = { box, runs, aspect: width / height };

  useLayoutEffect(() => {
    camera.up.set(0, 0, 1);
    const made = new OrbitControls(camera, canvas);
    made.zoomToCursor = true;
    made.maxPolarAngle = Math.PI * 0.98;
    const draw = (): void => invalidate();
    const letGo = (): void => {
      held.current = null;
    };
    made.addEventListener('change', draw);
    made.addEventListener('start', letGo);
    controls.current = made;

    let serial = app.getState().view.camera.serial;
    const listen = app.subscribe(({ view }) => {
      if (view.camera.serial === serial) return;
      serial = view.camera.serial;
      if (view.camera.request === null) return;
      held.current = view.camera.request;
      stand(camera, made, held.current, scene.current);
      invalidate();
    });
    return () => {
      listen();
      made.removeEventListener('change', draw);
      made.removeEventListener('start', letGo);
      made.dispose();
      controls.current = null;
    };
  }, [camera, canvas, invalidate]);

  useEffect(() => {
    if (!controls.current || held.current === null) return;
    stand(camera, controls.current, held.current, { box, runs, aspect: width / height });
    invalidate();
  }, [camera, box, runs, width, height, invalidate]);

  return null;
}

/** Moves the camera and its point of rest. */
function stand(
  camera: PerspectiveCamera,
  controls: OrbitControls,
  look: Look,
  { box, runs, aspect }: Props & { readonly aspect: number },
): void {
  const run = currentRun(runs);
  const first = runs.find(({ jobIndex }) => jobIndex === 0) ?? runs[0];
  // No picture while the view is put away behind another pane.
  if (!run || !first || !(aspect > 0 && Number.isFinite(aspect))) return;
  const to =
    look === 'room'
      ? roomStand(runs, box, aspect)
      : standFor(look, { run, first }, box, aspect, present(camera, controls));
  camera.fov = to.fovDeg;
  camera.position.set(...to.position);
  controls.target.set(...to.target);
  camera.updateProjectionMatrix();
  controls.update();
}
