import type { BuildStage, Part } from '../../src/vocabulary/part';

/**
 * What a part looks like; what is told apart – fitted on site, going on in the step in hand – is of a colour of its own. Everything of
 * one surface is drawn in one go.
 */
export type Surface = 'paint' | 'board' | 'sawn' | 'oiled' | 'site' | 'now';

const STAGES: readonly BuildStage[] = ['framed', 'clad', 'finished'];

/** The parts that are on the unit when it is built so far. */
export function partsUpTo(parts: readonly Part[], stage: BuildStage): readonly Part[] {
  const reached = STAGES.indexOf(stage);
  return parts.filter((part) => STAGES.indexOf(part.from) <= reached);
}

const SURFACE: Readonly<Record<Part['finish'], Surface>> = { paint: 'paint', bare: 'sawn', oil: 'oiled' };

/** The surface of a part at a stage: paint comes last, so until the unit is finished its board is bare. */
export function surfaceOf(part: Pick<Part, 'finish'>, stage: BuildStage): Surface {
  const surface = SURFACE[part.finish];
  return surface === 'paint' && stage !== 'finished' ? 'board' : surface;
}

/** Colours of what is told apart (chosen by eye, to be known from each other and from wood and paint by lightness too). */
export const TOLD_APART = { site: '#8fb4d6', now: '#e0925f' } as const;

/** What is fitted on site, told apart. */
export const siteSurface = (part: Pick<Part, 'fitted'>): Surface | undefined =>
  part.fitted === 'site' ? 'site' : undefined;
