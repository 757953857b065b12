import { newJob } from '../../src/flow';
import type { Job, Run } from '../../src/vocabulary/job';

/** Each run of the long unit, mm on the frame line: twelve of them are 30 m. */
const RUN = 2500;

/** A way in that takes sections of a bay or two. */
const CARRY = { people: 3, vanLength: 3000 };

/**
 * A unit of `count` runs that winds along a room without meeting itself: canted corners now to one side, now to the other. Twelve
 * runs are 30 m: about 1500 parts of the front alone (`front`), in one piece; 2000 with what stands behind and in the fewest sections.
 */
export function unitOf(count: number, front = false): Job {
  const job = newJob(`${count} runs`);
  const turns = [45, -45, -45, 45];
  const runs = Array.from(
    { length: count },
    (_, i): Run => ({ length: RUN, over: 'frame', deflectionDeg: turns[i % 4], through: i % 2 ? 'next' : 'this' }),
  );
  const { pillar, panel } = job.unit.elements;
  const elements = {
    ...job.unit.elements,
    pillar: { ...pillar, pitch: 560 },
    panel: { ...panel, rows: 2 },
    ...(front ? { carcass: { ...job.unit.elements.carcass, build: false } } : {}),
  };
  return {
    ...job,
    carry: { ...job.carry, ...CARRY },
    unit: {
      ...job.unit,
      plan: { runs, leftEnd: { kind: 'wall' }, rightEnd: { kind: 'return', length: 500 } },
      elements,
      joins: { by: front ? 'none' : 'least' },
    },
  };
}
