import type { ThreeEvent } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry } from 'three';
import { type Assembly, type Heap, markAt } from './assembly';
import { edgeLine, materialFor } from './materials';

/** A press that wanders further than this, in pixels, was a turn of the view and not a click. */
const CLICK_PX = 4;

/** Heap data as a geometry, thrown away when the heap is replaced. */
export function useHeapGeometry(heap: Heap): BufferGeometry {
  const geometry = useMemo(() => {
    const made = new BufferGeometry();
    made.setAttribute('position', new BufferAttribute(heap.positions, 3));
    made.setAttribute('normal', new BufferAttribute(heap.normals, 3));
    made.setAttribute('uv', new BufferAttribute(heap.grain, 2));
    made.setAttribute('color', new BufferAttribute(heap.tones, 3, true));
    return made;
  }, [heap]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  return geometry;
}

/** Pairs of points as a geometry for lines. */
export function useLineGeometry(points: Float32Array): BufferGeometry {
  const geometry = useMemo(() => {
    const made = new BufferGeometry();
    made.setAttribute('position', new BufferAttribute(points, 3));
    return made;
  }, [points]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  return geometry;
}

function HeapMesh({ heap, onPick }: { heap: Heap; onPick: (mark: string) => void }) {
  const geometry = useHeapGeometry(heap);
  const pick = (event: ThreeEvent<MouseEvent>): void => {
    event.stopPropagation();
    if (event.delta > CLICK_PX || event.faceIndex == null) return;
    const mark = markAt(heap, event.faceIndex);
    if (mark !== null) onPick(mark);
  };
  // biome-ignore lint/a11y/noStaticElementInteractions: a mesh is no element of the page; parts are reached by keyboard on the rod
  return <mesh geometry={geometry} material={materialFor(heap.surface)} castShadow receiveShadow onClick={pick} />;
}

/** The unit itself: one mesh for each surface, and all its sharp edges as one set of lines. */
export function Heaps({ assembly, onPick }: { assembly: Assembly; onPick: (mark: string) => void }) {
  const edges = useLineGeometry(assembly.edges);
  return (
    <>
      {assembly.heaps.map((heap) => (
        <HeapMesh key={heap.surface} heap={heap} onPick={onPick} />
      ))}
      <lineSegments geometry={edges} material={edgeLine} />
    </>
  );
}
