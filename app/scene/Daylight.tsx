import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { Box3, DirectionalLight, Vector3 } from 'three';
import type { Vec2 } from '../../src/vocabulary/geometry';
import type { Assembly, Box } from './assembly';
import { groundShade } from './materials';

/** Side of the picture that the shadow is worked out on, in points. */
const SHADOW_SIZE = 2048;

/** Free space round the unit in that picture, mm: its soft edge. */
const EDGE = 40;

/** How far to the left and above the light stands, for each step towards the viewer. */
const LEFT = 0.7;
const UP = 1.3;

/**
 * Light from the upper left of somebody who stands before the unit, raking over its mouldings, and the shadow on the floor. The shadow is worked
 * out anew only when what throws it has changed, not when the viewer moves.
 */
export function Daylight({ box, face, assembly }: { box: Box; face: Vec2; assembly: Assembly }) {
  const gl = useThree((state) => state.gl);
  const invalidate = useThree((state) => state.invalidate);
  const light = useMemo(() => {
    const made = new DirectionalLight('#fff4e2', 2.5);
    made.castShadow = true;
    made.shadow.mapSize.set(SHADOW_SIZE, SHADOW_SIZE);
    made.shadow.radius = 3;
    return made;
  }, []);
  useEffect(() => () => light.dispose(), [light]);

  const centre = useMemo(() => new Vector3(...box.min).add(new Vector3(...box.max)).multiplyScalar(0.5), [box]);
  const radius = useMemo(() => new Vector3(...box.max).distanceTo(centre), [box, centre]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: another assembly throws another shadow
  useEffect(() => {
    const [x, y] = face;
    light.position
      .set(x + LEFT * y, y - LEFT * x, UP)
      .setLength(3 * radius)
      .add(centre);
    light.target.position.copy(centre);
    light.updateMatrixWorld();
    light.target.updateMatrixWorld();
    closeRound(light, box);
    light.shadow.normalBias = radius / 1200;
    light.shadow.bias = -0.0004;
    gl.shadowMap.autoUpdate = false;
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [light, box, centre, radius, face, assembly, gl, invalidate]);

  return (
    <>
      {/* A little light off the wall behind, so that the back can be read too; it throws no shadow. */}
      <directionalLight args={['#eef1ff', 0.8]} position={[-face[0], -face[1], 0.25]} />
      <hemisphereLight args={['#f6f7ff', '#c9bba3', 2]} position={[0, 0, 1]} />
      <primitive object={light} />
      <primitive object={light.target} />
      <mesh position={[centre.x, centre.y, Math.min(0, box.min[2]) - 1]} material={groundShade} receiveShadow>
        <planeGeometry args={[12 * radius, 12 * radius]} />
      </mesh>
    </>
  );
}

/** Looks from the light at no more than the box, so that every point of the shadow's picture counts. */
function closeRound(light: DirectionalLight, box: Box): void {
  const lens = light.shadow.camera;
  lens.up.set(0, 0, 1);
  lens.position.copy(light.position);
  lens.lookAt(light.target.position);
  lens.updateMatrixWorld();
  const seen = new Box3(new Vector3(...box.min), new Vector3(...box.max)).applyMatrix4(lens.matrixWorldInverse);
  lens.left = seen.min.x - EDGE;
  lens.right = seen.max.x + EDGE;
  lens.bottom = seen.min.y - EDGE;
  lens.top = seen.max.y + EDGE;
  lens.near = -seen.max.z - EDGE;
  lens.far = -seen.min.z + EDGE;
  lens.updateProjectionMatrix();
}
