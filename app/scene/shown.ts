import type { Design } from '../../src/vocabulary/design';
import type { Step } from '../../src/vocabulary/making';
import type { BuildStage, Part } from '../../src/vocabulary/part';
import { stepsIn } from '../assembly/steps';
import { drawnApart, type Shift } from './apart';
import { type Assembly, assemble, type Box, boxOf } from './assembly';
import { partsUpTo, siteSurface } from './surface';

/** What is to be drawn. */
export interface Shown {
  readonly assembly: Assembly;
  readonly box: Box | null;
  /** What is looked at in it; null: all of it. */
  readonly focus: Box | null;
  /** Where parts are drawn instead of where they belong; null for a unit that stands together. */
  readonly shift: Shift | null;
  /** Parts whose outline shows through everything: those of the step in hand. */
  readonly outlined: readonly Part[];
  /** What there is to be seen, in words. */
  readonly words: string;
}

const STAGE: Readonly<Record<BuildStage, string>> = {
  framed: 'as framed',
  clad: 'as clad',
  finished: 'finished',
};

/** The unit so far as it is built; `apart`: how far its sections are drawn apart, 0 to 1; `site`: what is fitted on site told apart. */
export function unitShown(design: Design, mode: BuildStage, apart: number, site: boolean): Shown {
  const shift = drawnApart(design, apart);
  const parts = partsUpTo(design.parts, mode);
  return {
    assembly: assemble(parts, mode, { shift, surface: site ? siteSurface : null }),
    box: boxOf(design.parts, shift),
    focus: null,
    shift,
    outlined: [],
    words: `${STAGE[mode]}${shift ? ', drawn apart' : ''}: ${parts.length} parts`,
  };
}

/**
 * The unit up to a step of its assembly, of bare stuff as it is in the workshop: paint comes after. While a section is being made, it
 * is what is looked at.
 */
export function stepShown(design: Design, steps: readonly Step[], asked: number): Shown {
  const { step, index, before } = stepsIn(steps, asked);
  const marks = new Set(step?.parts);
  const there = design.parts.filter(({ mark }) => before.has(mark) || marks.has(mark));
  return {
    assembly: assemble(there, 'clad', { surface: ({ mark }) => (marks.has(mark) ? 'now' : undefined) }),
    box: boxOf(design.parts),
    focus:
      step?.section === undefined ? null : boxOf(design.parts.filter(({ inSection }) => inSection === step.section)),
    shift: null,
    outlined: there.filter(({ mark }) => marks.has(mark)),
    words: step
      ? `step ${index + 1} of ${steps.length} of the assembly: ${there.length} parts`
      : 'nothing to put together: 0 parts',
  };
}
