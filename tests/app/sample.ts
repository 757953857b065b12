import { defaultsOf } from '../../src/base/fields';
import { cuttingFields } from '../../src/job/fields-cutting';
import { carryFields, fitFields } from '../../src/job/fields-making';
import type { Job } from '../../src/vocabulary/job';

/** A small job for tests of the app's memory: plain data, not necessarily buildable. */
export const sampleJob = (name = 'Bar'): Job => ({
  format: 'counterwright-job',
  version: 2,
  name,
  maker: { name: '' },
  client: { name: '', contact: '' },
  site: { address: '', notes: '' },
  units: 'mm',
  survey: { walls: [], levels: [] },
  unit: {
    name: 'Counter',
    plan: {
      runs: [
        { length: 3000, over: 'frame', deflectionDeg: 90, through: 'this' },
        { length: 1200, over: 'frame', deflectionDeg: 0, through: 'this' },
      ],
      leftEnd: { kind: 'free' },
      rightEnd: { kind: 'wall' },
    },
    height: 1100,
    depth: 600,
    elements: { pillar: { width: 140 } },
    joins: { by: 'none' },
    openings: [],
    bays: [],
  },
  carry: defaultsOf(carryFields),
  fit: defaultsOf(fitFields),
  stock: { items: [], fixings: [] },
  tools: { sawKerf: 3, mitreSawKerf: 2.4, mostTiltDeg: 47, roundingStep: 0.5, cutters: [] },
  cutting: defaultsOf(cuttingFields),
});
