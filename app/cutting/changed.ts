import { changes } from '../../src/cut';
import { laidOf } from './copies';
import type { Held } from './held';
import { type Cost, number } from './words';

/** Sheets or bars up to which it is said how many pieces have changed places: some ms of work. */
const MOST_WEIGHED = 120;

/** Sheets or bars that are cut already, and of which nothing is wanted any more. */
export const idleOf = ({ shown, locked }: Pick<Held, 'shown' | 'locked'>): readonly number[] =>
  shown ? locked.filter((index) => laidOf(shown.plan)[index]?.pieces.length === 0) : [];

/** What has become of what was cut before the parts changed, in a line; '' where all of it serves. */
export function cutWords(held: Pick<Held, 'shown' | 'locked' | 'unlocked'>): string {
  const idle = idleOf(held);
  if (idle.length === 0)
    return held.unlocked
      ? 'Some of what is cut already is no longer wanted as it is: it is left over, and what is wanted instead is planned.'
      : '';
  const thing = held.shown?.plan.kind === 'sheets' ? 'Sheet' : 'Bar';
  const numbers = idle.map((index) => index + 1).join(', ');
  return idle.length === 1
    ? `${thing} ${numbers} is cut already; nothing on it is wanted any more. It counts with what it cost; what it leaves goes into the rack when the plan is cut.`
    : `${thing}s ${numbers} are cut already; nothing on them is wanted any more. They count with what they cost; what they leave goes into the rack when the plan is cut.`;
}

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
