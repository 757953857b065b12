import { bayFields } from '../../src/job/fields-making';
import type { BackBay } from '../../src/vocabulary/carcass';
import type { Design } from '../../src/vocabulary/design';
import type { RodRun } from '../../src/vocabulary/rod';
import { app } from '../store/app';
import { sameThing, type Thing } from '../store/view';
import type { LaneBox, Layout } from './layout';
import { Unread } from './Unread';

interface Props {
  readonly made: Design;
  readonly run: RodRun;
  readonly layout: Layout;
  readonly lane: LaneBox;
  readonly inHand: Thing | null;
}

/** What the purpose of a bay is called. */
export const purposeWords = (purpose: string): string =>
  bayFields.purpose.options.find(({ value }) => value === purpose)?.label ?? purpose;

/** The input on the slip for what is behind a bay. */
export const PURPOSE_INPUT = 'rod-bay-purpose';

/** Cross frames behind the run, and the bays between them, which can be taken in hand to say what stands there. */
export function BackBays({ run, layout, lane, inHand }: Props) {
  return (
    <g>
      {run.backBays.map((bay) => (
        <Bay key={bay.index} bay={bay} run={run} layout={layout} lane={lane} inHand={inHand} />
      ))}
      <path
        className="rod-cross-lines"
        d={run.crossLines
          .flatMap(({ from, to }) => [from, to])
          .map((x) => `M${layout.at(x)} ${lane.top}v${lane.height}`)
          .join('')}
      />
    </g>
  );
}

function Bay({ bay, run, layout, lane, inHand }: Omit<Props, 'made'> & { readonly bay: BackBay }) {
  const x = layout.at(bay.from);
  const width = Math.max(1, layout.at(bay.to) - x);
  const words = bay.wish ? purposeWords(bay.wish.purpose) : 'nothing decided';
  const text = bay.wish && layout.widthOf(words) < width ? words : '';
  const drawing = (
    <>
      <rect className="rod-bay" x={x} y={lane.top} width={width} height={lane.height} />
      <text x={x + width / 2} y={lane.top + lane.height / 2 + 4}>
        {text}
      </text>
    </>
  );
  if (bay.bay === undefined || run.jobIndex === null) return <Unread>{drawing}</Unread>;
  const thing = { kind: 'bay', run: run.jobIndex + 1, bay: bay.bay + 1 } as const;
  // Called by the bay of the front that it lies behind, as everywhere.
  const title = `Behind bay ${thing.bay}: ${words}`;
  const take = () => app.getState().take(thing, run.id);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no button element
    <g
      className={sameThing(inHand, thing) ? 'rod-thing rod-in-hand' : 'rod-thing'}
      role="button"
      tabIndex={0}
      aria-label={title}
      aria-pressed={sameThing(inHand, thing)}
      onClick={take}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        event.stopPropagation();
        take();
        // The slip comes with the next drawing.
        requestAnimationFrame(() => document.getElementById(PURPOSE_INPUT)?.focus());
      }}
    >
      <title>{title}</title>
      {drawing}
      <rect
        className="rod-ring"
        x={x + 1}
        y={lane.top - 1}
        width={Math.max(1, width - 2)}
        height={lane.height + 2}
        rx={3}
      />
    </g>
  );
}
