import { Canvas } from '@react-three/fiber';
import { useCallback, useMemo, useRef, useState } from 'react';
import type { Design } from '../../src/vocabulary/design';
import type { BuildStage } from '../../src/vocabulary/part';
import { figure } from '../shell/format';
import { useApp, useDesign } from '../store/hooks';
import { assemble, boxOf } from './assembly';
import { Guard, hasWebGL, NoPicture } from './Guard';
import type { Measure } from './measures';
import './scene.css';
import { partsUpTo } from './surface';
import { useTally } from './tally';
import { World } from './World';

/** The unit in three dimensions, as finished, as clad or as framed. */
export function Scene() {
  const design = useDesign();
  const mode = useApp((state) => state.view.mode);
  const selected = useApp((state) => state.view.selected);
  const measured = useApp((state) => state.view.showDimensions);
  const select = useApp((state) => state.select);
  const host = useRef<HTMLElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const [able] = useState(hasWebGL);
  const { units, tools } = design.job;

  const assembly = useMemo(() => assemble(partsUpTo(design.parts, mode), mode), [design, mode]);
  const box = useMemo(() => boxOf(design.parts), [design]);
  const picked = useMemo(() => design.parts.find((part) => part.mark === selected), [design, selected]);
  const format = useCallback((mm: number) => figure(mm, { units, tools }), [units, tools]);
  const words = useCallback(
    ({ mm, over, name }: Measure) => (over === undefined ? format(mm) : `${name}: ${format(mm)} over ${over}`),
    [format],
  );
  const pick = useCallback(
    (mark: string) => select(mark, design.parts.find((part) => part.mark === mark)?.run),
    [select, design],
  );
  useTally(() => host.current?.querySelector('canvas'));

  return (
    <section className="scene" aria-label="View of the unit" ref={host}>
      {!able && <NoPicture />}
      {able && box === null && <p className="scene-message">Nothing to show yet: the job makes no parts.</p>}
      {able && box && (
        <Guard>
          <Canvas
            frameloop="demand"
            flat
            dpr={[1, 2]}
            shadows="percentage"
            camera={{ up: [0, 0, 1], position: [0, -5000, 2000], near: 10, far: 50_000 }}
            onPointerMissed={() => select(null)}
          >
            <World
              assembly={assembly}
              box={box}
              rod={design.rod}
              plan={design.job.unit.plan}
              picked={picked}
              measured={measured}
              format={words}
              sheet={sheet}
              summary={summaryOf(design, mode, format)}
              onPick={pick}
            />
          </Canvas>
        </Guard>
      )}
      <div className="scene-figures" ref={sheet} aria-hidden="true" />
    </section>
  );
}

const STAGE: Readonly<Record<BuildStage, string>> = {
  framed: 'as framed',
  clad: 'as clad',
  finished: 'finished',
};

/** The picture in words, for those who can't see it. */
function summaryOf(design: Design, mode: BuildStage, format: (mm: number) => string): string {
  const { overall } = design.totals;
  const shown = partsUpTo(design.parts, mode).length;
  const size = [overall.length, overall.depth, overall.height].map(format).join(' × ');
  return `${design.job.unit.name}, ${STAGE[mode]}: ${shown} parts, ${size} over all (length, depth, height).`;
}

export default Scene;
