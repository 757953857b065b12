import { changes } from '../../src/cut';
import { laidOf } from './copies';
import type { Held } from './held';
import type { Cost } from './words';

/** Sheets or bars up to which it is said how many pieces have changed places: some ms of work. */
const MOST_WEIGHED = 120;

const number = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** What has changed since the plan that was shown before the last thing that was done, in a line; '' where nothing has. */
export function changeWords({ shown, before }: Pick<Held, 'shown' | 'before'>, costs: Cost): string {
  if (!shown || !before || shown === before || shown.plan.kind !== before.plan.kind) return '';
  // Pieces are told apart by their places in one problem; of two only what they cost and take can be compared.
  const same = shown.batch.problem === before.batch.problem;
  const cost = shown.plan.cost - before.plan.cost;
  const by = laidOf(shown.plan).length - laidOf(before.plan).length;
  // Which sheet is which is weighed pair by pair: of very many it would hold the page up.
  const few = Math.max(laidOf(shown.plan).length, laidOf(before.plan).length) <= MOST_WEIGHED;
  const moved = same && few ? changes(before.plan, shown.plan).moved : 0;
  const thing = shown.plan.kind === 'sheets' ? 'sheet' : 'bar';
  const said = [
    Math.abs(cost) < 0.005 ? '' : `${costs(Math.abs(cost))} ${cost > 0 ? 'more' : 'less'}`,
    by === 0 ? '' : `${number(Math.abs(by), thing)} ${by > 0 ? 'more' : 'fewer'}`,
    moved === 0 ? '' : `${number(moved, 'piece')} on another ${thing}`,
  ].filter(Boolean);
  return said.length === 0 ? '' : `Against the plan that stood before: ${said.join(', ')}.`;
}
