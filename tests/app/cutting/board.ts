import { createCutting } from '../../../app/cutting/store';
import type { Cutters } from '../../../app/effects/cutting';
import { createAppStore } from '../../../app/store/store';
import type { Order } from '../../../app/workers/messages';
import type { AnyCutPlan, CutBatch } from '../../../src/vocabulary/cut-plan';
import { sampleJob } from '../sample';
import { batch, problem } from './plans';

export function board() {
  const orders: Exclude<Order, { say: 'ask' }>[] = [];
  const cutters: Cutters = {
    hire: () => undefined,
    order: (order) => orders.push(order),
    ask: () => Promise.reject(new Error('not here')),
    close: () => undefined,
  };
  const cutting = createCutting(cutters);
  const app = createAppStore(sampleJob());
  const held = (id = 'mdf') => cutting.getState().held[id]!;
  const answer = (
    found: AnyCutPlan | undefined,
    stand: 'first' | 'bettering' | 'done' | 'time' = 'first',
    spent = 0,
    id = 'mdf',
  ) =>
    cutting.hear({
      say: 'plan',
      batch: id,
      revision: held(id).revision,
      stand,
      spent,
      ...(found ? { plan: found } : {}),
    });
  const asked = () => orders.filter((order) => order.say === 'plan');
  return { cutting, app, orders, asked, held, answer };
}

/** The same batch with one piece of a kind fewer. */
export const fewer: CutBatch = {
  ...batch,
  problem: { ...problem, pieces: [{ ...problem.pieces[0]!, quantity: 2 }, problem.pieces[1]!] },
  marks: [[['A1'], ['A2']], [['B1']]],
};
