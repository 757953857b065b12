import { Canvas } from '@react-three/fiber';
import { useCallback, useDeferredValue, useMemo, useRef, useState } from 'react';
import { making } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import { figure, weight } from '../shell/format';
import { useApp, useDesign } from '../store/hooks';
import { isUnitAway } from '../store/view';
import { Guard, hasWebGL, NoPicture } from './Guard';
import { Legend } from './Legend';
import type { Measure } from './measures';
import './scene.css';
import { sectionLabels } from './section-labels';
import { type Shown, stepShown, unitShown } from './shown';
import { useTally } from './tally';
import { World } from './World';

/** The design that is drawn. While nothing is seen of the unit it stays the one that was drawn last. */
function useDrawn(): Design {
  const design = useDesign();
  const away = useApp(({ view }) => isUnitAway(view));
  const [drawn, setDrawn] = useState(design);
  if (away || drawn === design) return drawn;
  setDrawn(design);
  return design;
}

/** What is looked at: the unit so far as it is built, together or drawn apart; or a step of its assembly. */
function useShown(design: Design): Shown {
  const stepping = useApp((state) => state.view.pane === 'assembly');
  const mode = useApp((state) => state.view.mode);
  const site = useApp((state) => state.view.siteShown);
  const step = useApp((state) => state.view.step);
  // The slider comes first; the picture may lag behind it.
  const apart = useDeferredValue(useApp((state) => state.view.apart));
  return useMemo(
    () => (stepping ? stepShown(design, making(design).steps, step) : unitShown(design, mode, apart, site)),
    [design, stepping, mode, site, step, apart],
  );
}

/** The unit in three dimensions, as finished, as clad or as framed, together or drawn apart, or step by step. */
export function Scene() {
  const design = useDrawn();
  const { assembly, box, focus, shift, outlined, words } = useShown(design);
  const selected = useApp((state) => state.view.selected);
  // A step is about what goes on, not about sizes; a part that is picked out has its own all the same.
  const measured = useApp(
    (state) => state.view.showDimensions && (state.view.pane !== 'assembly' || state.view.selected !== null),
  );
  const select = useApp((state) => state.select);
  const host = useRef<HTMLElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const [able] = useState(hasWebGL);
  const { units, tools } = design.job;

  const picked = useMemo(() => design.parts.find((part) => part.mark === selected), [design, selected]);
  const format = useCallback((mm: number) => figure(mm, { units, tools }), [units, tools]);
  const labels = useMemo(
    () => (shift ? sectionLabels(design, shift, ({ id, weightKg }) => `${id}  ${weight(weightKg)}`) : []),
    [design, shift],
  );
  const figures = useCallback(
    ({ mm, over, name, text }: Measure) =>
      text ?? (over === undefined ? format(mm) : `${name}: ${format(mm)} over ${over}`),
    [format],
  );
  const pick = useCallback(
    (mark: string) => select(mark, design.parts.find((part) => part.mark === mark)?.run),
    [select, design],
  );
  useTally(() => host.current?.querySelector('canvas'));
  const size = Object.values(design.totals.overall).map(format).join(' × ');

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
              focus={focus}
              rod={design.rod}
              plan={design.job.unit.plan}
              picked={picked}
              shift={shift}
              labels={labels}
              outlined={outlined}
              measured={measured}
              format={figures}
              sheet={sheet}
              summary={`${design.job.unit.name}, ${words}, ${size} over all (length, depth, height).`}
              onPick={pick}
            />
          </Canvas>
        </Guard>
      )}
      <div className="scene-figures" ref={sheet} aria-hidden="true" />
      <Legend stepping={outlined.length > 0} />
    </section>
  );
}

export default Scene;
