import type { Demands, FrameTimber, Layer } from '../vocabulary/rod';

/** What all the rooms ask of the setting-out, gathered. */
export interface Asked {
  readonly layers: Readonly<Record<string, Layer>>;
  readonly heights: Readonly<Record<string, number>>;
  readonly timber: FrameTimber;
  readonly pillars: NonNullable<Demands['pillars']> | undefined;
  readonly top: NonNullable<Demands['top']>;
  readonly footOverhang: number;
  readonly frameLow: number;
}

/**
 * Gathers the demands in the register's order; a layer lies on one named before it. Offsets are outward from the frame's face.
 * Throws when no room brings the frame's timber, or a layer lies on an unknown one: the register is then wrong, not the job.
 */
export function gather(demands: readonly Demands[]): Asked {
  const timber = demands.find((d) => d.timber)?.timber;
  if (!timber) throw new Error('No room brings the timber of the frame.');
  const layers: Record<string, Layer> = { frame: { name: 'frame', inner: -timber.depth, outer: 0 } };
  for (const { layer } of demands) {
    if (!layer) continue;
    if ('outer' in layer) {
      layers[layer.name] = { name: layer.name, inner: 0, outer: layer.outer };
      continue;
    }
    const under = layers[layer.on ?? 'frame'];
    if (!under) throw new Error(`Layer ${layer.name} lies on ${layer.on}, which no earlier room makes.`);
    layers[layer.name] = { name: layer.name, inner: under.outer, outer: under.outer + layer.thickness };
  }
  return {
    layers,
    timber,
    heights: Object.assign({}, ...demands.map((d) => d.heights ?? {})),
    pillars: demands.find((d) => d.pillars)?.pillars,
    top: demands.find((d) => d.top)?.top ?? { layer: '', thickness: 0, overhang: 0, endOverhang: 0 },
    footOverhang: demands.find((d) => d.footOverhang !== undefined)?.footOverhang ?? 0,
    frameLow: demands.find((d) => d.frameLow !== undefined)?.frameLow ?? 0,
  };
}
