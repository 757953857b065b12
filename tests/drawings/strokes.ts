import type { Drawing, Stroke } from '../../src/vocabulary/drawing';

export type Of<K extends Stroke['kind']> = Extract<Stroke, { kind: K }>;
export const of = <K extends Stroke['kind']>(drawing: Drawing, kind: K): Of<K>[] =>
  drawing.strokes.filter((stroke): stroke is Of<K> => stroke.kind === kind);
export const texts = (strokes: readonly Of<'dimension'>[]): string[] => strokes.map((stroke) => stroke.text);
export const at = (drawing: Drawing, axis: 'horizontal' | 'vertical', offsetMm: number): Of<'dimension'>[] =>
  of(drawing, 'dimension').filter((d) => d.axis === axis && d.offsetMm === offsetMm);
