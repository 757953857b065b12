import { removeJoin } from '../../src/job/edits-making';
import { app } from '../store/app';
import { sameThing } from '../store/view';
import type { Layout } from './layout';
import { Movable } from './Movable';
import { classOf, type ThingProps } from './thing-props';
import { foundOf, type JoinOnRod, snapped } from './things';
import { Unread } from './Unread';

/** How far beside its line a join can be taken hold of, px. */
const BESIDE = 6;

/** The double line of a join from its tag through the lanes, broken where figures are written over them. */
function doubleLine({ plan, lanes }: Layout, x: number, tag: number): string {
  const through = [...(plan ? [plan] : []), ...lanes].map(({ top, height }) => [top - 2, top + height + 2] as const);
  const stem = [tag, plan?.top ?? (lanes[0]?.widthsAt ?? tag) - 6] as const;
  return [stem, ...through].map(([from, to]) => `M${x - 1.5} ${from}V${to}M${x + 1.5} ${from}V${to}`).join('');
}

/** A join through all lanes, with its tag over them. */
export function JoinLine({ join, made, run, layout, inHand, full }: ThingProps & { join: JoinOnRod }) {
  const { thing, id } = join;
  const x = layout.at(join.x);
  const tag = layout.tagsAt;
  const drawing = (
    <>
      <path className="rod-join-line" d={doubleLine(layout, x, tag)} />
      <rect className="rod-tag" x={x - 12} y={tag - 7.5} width={24} height={15} rx={2} />
      <text className="rod-tag-text" x={x} y={tag + 4}>
        {id}
      </text>
    </>
  );
  if (!thing) {
    return (
      <Unread className="rod-join">
        <title>{`${id} at ${full(join.x)}`}</title>
        {drawing}
      </Unread>
    );
  }
  const name = join.refused ? `Join ${thing.index + 1}` : id;
  const [found] = foundOf(thing, made);
  return (
    <Movable
      thing={thing}
      run={run.id}
      name={`Join ${thing.index + 1}`}
      told={[name, full(join.x), found?.message].filter(Boolean).join(', ')}
      x={join.x}
      length={run.length}
      scale={layout.scale}
      className={classOf('rod-thing rod-join', join.refused, sameThing(inHand, thing))}
      snap={(to) => snapped(to, run.pillars)}
      onRemove={() => app.getState().edit(`Remove ${name}`, (job) => removeJoin(job, thing.index))}
    >
      <rect className="rod-reach" x={x - BESIDE} y={tag} width={2 * BESIDE} height={layout.ruler - tag} />
      {drawing}
      <rect className="rod-ring" x={x - 14} y={tag - 9.5} width={28} height={19} rx={3} />
    </Movable>
  );
}
