import { useMemo } from 'react';
import type { Part } from '../../src/vocabulary/part';
import { assemble } from './assembly';
import { useHeapGeometry, useLineGeometry } from './Heaps';
import { chalk, chalkLine } from './materials';

/** Drawn after everything else; measuring lines come after that again. */
export const LAST = 10;

/** The part that is picked out: chalked over, outlined through whatever hides it. */
export function Picked({ part }: { part: Part }) {
  const assembly = useMemo(() => assemble([part], 'finished'), [part]);
  const geometry = useHeapGeometry(assembly.heaps[0]!);
  const outline = useLineGeometry(assembly.edges);
  return (
    <>
      <mesh geometry={geometry} material={chalk} renderOrder={LAST} />
      <lineSegments geometry={outline} material={chalkLine} renderOrder={LAST + 1} />
    </>
  );
}
