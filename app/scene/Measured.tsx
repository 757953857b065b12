import { useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect, useMemo } from 'react';
import { type BufferGeometry, type Camera, type LineBasicMaterial, Vector4 } from 'three';
import type { Vec2, Vec3 } from '../../src/vocabulary/geometry';
import { useLineGeometry } from './Heaps';
import { type Label, seenMiddle, spread, type Thrown } from './labels';
import { isReadable, type Measure } from './measures';
import { LAST } from './Picked';

/** Turn in the frame: the picture is drawn in turn 1, and lines without a figure are not to be in it. */
const BEFORE_DRAWING = 0.5;

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

  useFrame(({ camera, size }) => {
    camera.updateMatrixWorld();
    const wanted = figures.current.flatMap((figure) => {
      const at = spotOf(figure.measure, camera, size.width, size.height);
      return at ? [{ figure, at, half: figure.half }] : [];
    });
    const spots = spread(wanted, size.width, size.height);
    const shown = new Map(wanted.flatMap(({ figure }, i) => (spots[i] ? [[figure, spots[i]] as const] : [])));
    for (const figure of figures.current) {
      const spot = shown.get(figure);
      figure.element.style.visibility = spot ? 'visible' : 'hidden';
      if (spot)
        figure.element.style.transform = `translate(${spot[0].toFixed(1)}px, ${spot[1].toFixed(1)}px) translate(-50%, -50%)`;
    }
    drawOnly(geometry, measures, new Set([...shown.keys()].map(({ measure }) => measure)));
  }, BEFORE_DRAWING);
  return <lineSegments geometry={geometry} material={material} renderOrder={LAST + 2} />;
}

const point = new Vector4();

function thrown(at: Vec3, camera: Camera): Thrown {
  point
    .set(...at, 1)
    .applyMatrix4(camera.matrixWorldInverse)
    .applyMatrix4(camera.projectionMatrix);
  return [point.x, point.y, point.w];
}

/** Where a measure's figure wants to be: on the middle of what is seen of its line, where that is worth reading. */
function spotOf(measure: Measure, camera: Camera, width: number, height: number): Vec2 | null {
  const { x, y, z } = camera.position;
  if (!isReadable(measure, [x, y, z])) return null;
  const [from, to] = measure.lines[0]!;
  return seenMiddle(thrown(from, camera), thrown(to, camera), width, height);
}

/** Leaves the lines of those measures in the picture whose figures are shown. */
function drawOnly(geometry: BufferGeometry, measures: readonly Measure[], shown: ReadonlySet<Measure>): void {
  const corners: number[] = [];
  let at = 0;
  for (const measure of measures) {
    const count = 2 * measure.lines.length;
    if (shown.has(measure)) for (let i = 0; i < count; i++) corners.push(at + i);
    at += count;
  }
  const present = geometry.getIndex()?.array;
  if (present?.length === corners.length && corners.every((corner, i) => corner === present[i])) return;
  geometry.setIndex(corners);
}

interface Figure extends Pick<Label, 'half'> {
  readonly measure: Measure;
  readonly element: HTMLElement;
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
    figures.current = measures.map((measure): Figure => {
      const element = host.ownerDocument.createElement('span');
      element.className = 'scene-figure';
      element.textContent = format(measure);
      host.append(element);
      return { measure, element, half: [element.offsetWidth / 2, element.offsetHeight / 2] };
    });
    invalidate();
    return () => {
      for (const { element } of figures.current) element.remove();
      figures.current = [];
    };
  }, [measures, format, sheet, figures, invalidate]);
  return figures;
}
