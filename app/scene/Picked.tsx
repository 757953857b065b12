import { useMemo } from 'react';
import type { Vec3 } from '../../src/vocabulary/geometry';
import type { Part } from '../../src/vocabulary/part';
import { assemble } from './assembly';
import { useHeapGeometry, useLineGeometry } from './Heaps';
import { chalk, chalkLine } from './materials';

/** Drawn after everything else; measuring lines come after that again. */
export const LAST = 10;

/** The part that is picked out: chalked over, outlined through whatever hides it. `by`: how far it is drawn from its place. */
export function Picked({ part, by }: { part: Part; by: Vec3 | null }) {
  const assembly = useMemo(() => assemble([part], 'finished', { shift: by && (() => by) }), [part, by]);
  const geometry = useHeapGeometry(assembly.heaps[0]!);
  const outline = useLineGeometry(assembly.edges);
  return (
    <>
      <mesh geometry={geometry} material={chalk} renderOrder={LAST} />
      <lineSegments geometry={outline} material={chalkLine} renderOrder={LAST + 1} />
    </>
  );
}

/** Parts outlined through whatever hides them. */
export function Outlined({ parts }: { parts: readonly Part[] }) {
  const { edges } = useMemo(() => assemble(parts, 'finished'), [parts]);
  return <lineSegments geometry={useLineGeometry(edges)} material={chalkLine} renderOrder={LAST} />;
}
