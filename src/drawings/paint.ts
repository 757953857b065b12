import type { Stroke } from '../vocabulary/drawing';
import type { Seen } from './view';

/**
 * A part as painted on what lies behind it: its silhouette filled, outline wide, arrises narrow (ISO 128-2, visible edges). A hole
 * is outlined; what lies behind it is not shown in it.
 */
export const strokesOf = ({ part, outline, holes, lines }: Seen, fill: 'paper' | 'timber'): readonly Stroke[] => [
  { kind: 'polygon', points: outline, fill, pen: 'wide', part: part.mark },
  ...holes.map((points): Stroke => ({ kind: 'polygon', points, fill: 'none', pen: 'wide', part: part.mark })),
  ...lines.map((points): Stroke => ({ kind: 'line', points, pen: 'narrow', style: 'continuous', part: part.mark })),
];
