import { defaultsOf } from '../base/fields';
import type { Decision } from '../vocabulary/field';
import type { Job, Plan, StockBook, Tools } from '../vocabulary/job';
import { jobFields, runFields, toolFields, unitFields } from './fields';
import { cuttingFields } from './fields-cutting';
import { carryFields, fitFields } from './fields-making';
import { FIXINGS } from './fixings';
import { FORMAT, type RoomWords, VERSION } from './schema';
import { CUTTERS, STOCK_ITEMS } from './stock';

/** The stock book of a new job. */
export const startingStock: StockBook = { items: STOCK_ITEMS, fixings: FIXINGS };

/** The tools of a new job. */
export const startingTools: Tools = { ...defaultsOf(toolFields), cutters: CUTTERS };

/** A straight counter from a wall on the left to a free end. */
const startingPlan: Plan = {
  runs: [{ length: runFields.length.default, over: 'frame', deflectionDeg: 0, through: 'this' }],
  leftEnd: { kind: 'wall' },
  rightEnd: { kind: 'free' },
};

/** A job to begin with: every decision at its default, nothing surveyed. */
export function newJob(name: string, rooms: readonly RoomWords[]): Job {
  const elements: Record<string, Readonly<Record<string, Decision>>> = {};
  for (const room of rooms) elements[room.kind] = defaultsOf(room.fields);
  return {
    format: FORMAT,
    version: VERSION,
    name,
    maker: { name: '' },
    client: { name: '', contact: '' },
    site: { address: '', notes: '' },
    units: jobFields.units.default,
    survey: { walls: [], levels: [] },
    carry: defaultsOf(carryFields),
    fit: defaultsOf(fitFields),
    unit: {
      name: 'Counter',
      plan: startingPlan,
      height: unitFields.height.default,
      depth: unitFields.depth.default,
      elements,
      joins: { by: 'least' },
      openings: [],
      bays: [],
    },
    stock: startingStock,
    tools: startingTools,
    cutting: defaultsOf(cuttingFields),
  };
}
