import { BackBays } from './BackBays';
import { Holes } from './Holes';
import { JoinLine } from './JoinLine';
import type { ThingProps } from './thing-props';
import { joinsOn } from './things';

/** What stands on the rod besides parts and marks: openings in the skin and in the top, joins through all lanes, bays behind. */
export function Things(props: ThingProps) {
  const { made, run, layout } = props;
  const behind = layout.lanes.find(({ strip }) => strip.lane === 'behind');
  return (
    <>
      {behind ? <BackBays {...props} lane={behind} /> : null}
      {layout.plan ? (
        <rect className="rod-bed rod-plan" x={0} y={layout.plan.top} width={layout.width} height={layout.plan.height} />
      ) : null}
      {joinsOn(made, run).map((join) => (
        <JoinLine key={join.thing ? `hand ${join.thing.index}` : join.id} join={join} {...props} />
      ))}
      <Holes {...props} />
    </>
  );
}
