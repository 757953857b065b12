import { useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect, useMemo } from 'react';
import { type LineBasicMaterial, Vector3 } from 'three';
import { useLineGeometry } from './Heaps';
import { isReadable, type Measure } from './measures';
import { LAST } from './Picked';

/** Turn in the frame: the picture is drawn in turn 1, and only then is the camera settled. */
const AFTER_DRAWING = 2;

interface MeasuredProps {
  readonly measures: readonly Measure[];
  readonly material: LineBasicMaterial;
  readonly format: (measure: Measure) => string;
  /** Where the figures are put, over the picture. */
  readonly sheet: RefObject<HTMLDivElement | null>;
}

/** Sizes: lines in the picture, and figures over it which follow the view without React. */
export function Measured({ measures, material, format, sheet }: MeasuredProps) {
  const lines = useMemo(() => new Float32Array(measures.flatMap((measure) => measure.lines.flat(2))), [measures]);
  const geometry = useLineGeometry(lines);
  const figures = useFigures(measures, format, sheet);
  const spot = useMemo(() => new Vector3(), []);

  useFrame(({ camera, size }) => {
    for (const { measure, element, half } of figures.current) {
      const shown = isReadable(measure, [camera.position.x, camera.position.y, camera.position.z]);
      element.style.visibility = shown ? 'visible' : 'hidden';
      if (!shown) continue;
      spot.set(...measure.label).project(camera);
      const x = within(((spot.x + 1) / 2) * size.width, half.x, size.width);
      const y = within(((1 - spot.y) / 2) * size.height, half.y, size.height);
      element.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) translate(-50%, -50%)`;
    }
  }, AFTER_DRAWING);
  return <lineSegments geometry={geometry} material={material} renderOrder={LAST + 2} />;
}

/** A figure whose place is in the picture is kept in it whole; one whose place has left it goes too. */
function within(at: number, half: number, size: number): number {
  return at < 0 || at > size ? at : Math.max(half, Math.min(size - half, at));
}

interface Figure {
  readonly measure: Measure;
  readonly element: HTMLElement;
  /** Half its width and height, px. */
  readonly half: { readonly x: number; readonly y: number };
}

function useFigures(
  measures: readonly Measure[],
  format: (measure: Measure) => string,
  sheet: RefObject<HTMLDivElement | null>,
): { readonly current: readonly Figure[] } {
  const invalidate = useThree((state) => state.invalidate);
  const figures = useMemo<{ current: readonly Figure[] }>(() => ({ current: [] }), []);
  useEffect(() => {
    const host = sheet.current;
    if (!host) return;
    figures.current = measures.map((measure) => {
      const element = host.ownerDocument.createElement('span');
      element.className = 'scene-figure';
      element.textContent = format(measure);
      host.append(element);
      return { measure, element, half: { x: element.offsetWidth / 2, y: element.offsetHeight / 2 } };
    });
    invalidate();
    return () => {
      for (const { element } of figures.current) element.remove();
      figures.current = [];
    };
  }, [measures, format, sheet, figures, invalidate]);
  return figures;
}
