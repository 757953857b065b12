import type { Step } from '../../src/vocabulary/making';

/** Where one stands in the assembly. */
export interface InHand {
  /** The step in hand: the one asked for, or the last where there are fewer. */
  readonly step: Step | undefined;
  readonly index: number;
  /** Marks of what was on before it. */
  readonly before: ReadonlySet<string>;
}

/** The step asked for, and all that earlier steps have put on. */
export function stepsIn(steps: readonly Step[], asked: number): InHand {
  const index = Math.max(0, Math.min(asked, steps.length - 1));
  return { step: steps[index], index, before: new Set(steps.slice(0, index).flatMap(({ parts }) => parts)) };
}

/** Where a step is done, in words. */
export const PLACE: Readonly<Record<Step['place'], string>> = {
  workshop: 'In the workshop',
  'dry fit': 'Dry fit in the workshop',
  site: 'On site',
};
