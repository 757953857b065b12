import { removeJoin, removeOpening } from '../../src/job/edits-making';
import type { Design } from '../../src/vocabulary/design';
import type { RodRun } from '../../src/vocabulary/rod';
import { app } from '../store/app';
import { sameThing, type Thing } from '../store/view';
import { BackBays } from './BackBays';
import type { LaneBox, Layout } from './layout';
import { Movable } from './Movable';
import { foundOf, type JoinOnRod, joinsOn, type OpeningOnRod, openingsOn } from './things';

/** Least size at which a hole is drawn, and at which it can be taken hold of, px. */
const LEAST = 5;
const GRASP = 16;

interface Props {
  readonly made: Design;
  readonly run: RodRun;
  readonly layout: Layout;
  readonly inHand: Thing | null;
  readonly full: (mm: number) => string;
}

const classOf = (base: string, refused: boolean, inHand: boolean): string =>
  [base, refused ? 'rod-refused' : '', inHand ? 'rod-in-hand' : ''].filter(Boolean).join(' ');

/** What stands on the rod besides parts and marks: openings in the skin, joins through all lanes, bays behind. */
export function Things(props: Props) {
  const { made, run, layout } = props;
  const skin = layout.lanes.find(({ strip }) => strip.lane === 'skin') ?? layout.lanes[0];
  const behind = layout.lanes.find(({ strip }) => strip.lane === 'behind');
  return (
    <>
      {behind ? <BackBays {...props} lane={behind} /> : null}
      {joinsOn(made, run).map((join) => (
        <JoinLine key={join.thing ? `hand ${join.thing.index}` : join.id} join={join} {...props} />
      ))}
      {skin
        ? openingsOn(made, run).map((one) => <Hole key={one.thing.index} one={one} lane={skin} {...props} />)
        : null}
    </>
  );
}

function Hole({ one, lane, made, run, layout, inHand, full }: Props & { one: OpeningOnRod; lane: LaneBox }) {
  const { opening, thing } = one;
  const [found] = foundOf(thing, made);
  const left = layout.at(one.from);
  const width = Math.max(LEAST, layout.at(one.to) - left);
  const foot = lane.top + lane.height;
  const tall = Math.max(LEAST, layout.rise(one.high, lane) - layout.rise(one.low, lane));
  const middle = foot - layout.rise((one.low + one.high) / 2, lane);
  const [top, right, x] = [middle - tall / 2, left + width, left + width / 2];
  const grasp = Math.max(GRASP, width);
  const name = opening.name || `Opening ${thing.index + 1}`;
  const up = opening.through === 'top' ? `${full(opening.z)} back, through the top` : `${full(opening.z)} up`;
  return (
    <Movable
      thing={thing}
      run={run.id}
      name={name}
      told={[`${full(opening.x)} along, ${up}`, found?.message].filter(Boolean).join('. ')}
      x={opening.x}
      z={opening.z}
      length={run.length}
      scale={layout.scale}
      className={classOf('rod-thing rod-hole', one.refused, sameThing(inHand, thing))}
      onRemove={() => app.getState().edit(`Remove ${name}`, (job) => removeOpening(job, thing.index))}
    >
      <rect className="rod-reach" x={x - grasp / 2} y={lane.top} width={grasp} height={lane.height} />
      {opening.use === 'pipe' ? (
        <ellipse className="rod-cut" cx={x} cy={middle} rx={width / 2} ry={tall / 2} />
      ) : (
        <path className="rod-cut" d={`M${left} ${top}H${right}V${top + tall}H${left}Z`} />
      )}
      <path className="rod-cross" d={`M${left} ${top}L${right} ${top + tall}M${right} ${top}L${left} ${top + tall}`} />
      <rect
        className="rod-ring"
        x={x - grasp / 2 - 2}
        y={lane.top - 2}
        width={grasp + 4}
        height={lane.height + 4}
        rx={3}
      />
    </Movable>
  );
}

function JoinLine({ join, made, run, layout, inHand, full }: Props & { join: JoinOnRod }) {
  const { thing, id } = join;
  const x = layout.at(join.x);
  const foot = layout.ruler - 2;
  // Over the skin, whose pieces end here: no width is written there, and no mark lies under it.
  const tag = layout.lanes.find(({ strip }) => strip.lane === 'skin')?.widthsAt ?? 10;
  const drawing = (
    <>
      <path className="rod-join-line" d={`M${x - 1.5} 2V${foot}M${x + 1.5} 2V${foot}`} />
      <rect className="rod-tag" x={x - 12} y={tag - 7.5} width={24} height={15} rx={2} />
      <text className="rod-tag-text" x={x} y={tag + 4}>
        {id}
      </text>
    </>
  );
  if (!thing) {
    return (
      // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in this group takes the focus
      <g className="rod-join" aria-hidden="true">
        <title>{`${id} at ${full(join.x)}`}</title>
        {drawing}
      </g>
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
      onRemove={() => app.getState().edit(`Remove ${name}`, (job) => removeJoin(job, thing.index))}
    >
      {drawing}
      <rect className="rod-ring" x={x - 14} y={tag - 9.5} width={28} height={19} rx={3} />
    </Movable>
  );
}
