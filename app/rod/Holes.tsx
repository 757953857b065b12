import { removeOpening } from '../../src/job/edits-making';
import { app } from '../store/app';
import { sameThing } from '../store/view';
import { type Box, gripsOf, smallestLast } from './grips';
import type { Layout } from './layout';
import { Movable } from './Movable';
import { classOf, type ThingProps } from './thing-props';
import { foundOf, type OpeningOnRod, openingsOn } from './things';

/** Least size at which a hole is drawn, px. */
const LEAST = 5;

/** Where an opening lies on the board: through the top in the plan of it, else in the skin. */
function cutOf(one: OpeningOnRod, layout: Layout): Box {
  const { plan, lanes } = layout;
  const left = layout.at(one.from);
  const width = Math.max(LEAST, layout.at(one.to) - left);
  const lane = lanes.find(({ strip }) => strip.lane === 'skin') ?? lanes[0];
  const inPlan = plan && one.opening.through === 'top' ? plan : null;
  const { top: head, height } = inPlan ?? lane ?? { top: 0, height: 0 };
  const rise = (mm: number): number => inPlan?.rise(mm) ?? (lane ? layout.rise(mm, lane) : 0);
  const [low, high] = [rise(one.low), rise(one.high)];
  const tall = Math.max(LEAST, high - low);
  const top = head + height - (low + high) / 2 - tall / 2;
  return { left, right: left + width, top, bottom: top + tall };
}

/** The openings of a run. */
export function Holes(props: ThingProps) {
  const holes = smallestLast(openingsOn(props.made, props.run));
  const cuts = holes.map((one) => cutOf(one, props.layout));
  const grips = gripsOf(cuts);
  return holes.map((one, i) => <Hole key={one.thing.index} one={one} cut={cuts[i]!} grip={grips[i]!} {...props} />);
}

interface HoleProps extends ThingProps {
  readonly one: OpeningOnRod;
  readonly cut: Box;
  readonly grip: Box;
}

function Hole({ one, cut, grip, made, run, layout, inHand, full }: HoleProps) {
  const { opening, thing } = one;
  const [found] = foundOf(thing, made);
  const { left, right, top, bottom } = cut;
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
      <rect
        className="rod-reach"
        x={grip.left}
        y={grip.top}
        width={grip.right - grip.left}
        height={grip.bottom - grip.top}
      />
      {opening.use === 'pipe' ? (
        <ellipse
          className="rod-cut"
          cx={(left + right) / 2}
          cy={(top + bottom) / 2}
          rx={(right - left) / 2}
          ry={(bottom - top) / 2}
        />
      ) : (
        <path className="rod-cut" d={`M${left} ${top}H${right}V${bottom}H${left}Z`} />
      )}
      <path className="rod-cross" d={`M${left} ${top}L${right} ${bottom}M${right} ${top}L${left} ${bottom}`} />
      <rect
        className="rod-ring"
        x={grip.left - 2}
        y={grip.top - 2}
        width={grip.right - grip.left + 4}
        height={grip.bottom - grip.top + 4}
        rx={3}
      />
    </Movable>
  );
}
