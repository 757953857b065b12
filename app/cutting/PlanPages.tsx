import type { BarProblem, CutProblem, SheetProblem } from '../../src/vocabulary/cut-problem';
import { BAR, BarRow } from './BarRow';
import { calledOn, laidOf } from './copies';
import { cutsAt } from './cuts-at';
import type { Shown } from './held';
import { MARGIN, scaleOf } from './lay';
import { Hatchings, Sheet } from './Sheet';
import { toldCuts } from './steps';
import { type Say, sourceWords } from './words';

/** What a drawing may take on paper, px at 96 to the inch: the width of A4 within its margins, and less than half its height. */
const PAPER = { width: 680, height: 380 };

/** The trim of a stock that is not trimmed as the others are. */
function ownTrim({ trim, stock }: CutProblem, index: number, say: Say): string {
  const own = stock[index]?.trim ?? trim;
  return own === trim ? '' : `; trim ${say(own)}`;
}

/** A plan for the bench: every sheet or bar to scale, and under it its cuts in order. */
export function PlanPages({ shown, say }: { readonly shown: Shown; readonly say: Say }) {
  const { batch, plan, copies } = shown;
  return (
    <div className="plan-pages">
      <svg width="0" height="0" aria-hidden="true">
        <Hatchings on="print" />
      </svg>
      {laidOf(plan).map(({ stock }, index) => {
        const cuts = cutsAt(shown, index);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is known by its place in the plan
          <section key={index}>
            <h3>
              {plan.kind === 'sheets' ? 'Sheet' : 'Bar'} {index + 1} of {laidOf(plan).length}:{' '}
              {sourceWords(batch, stock, say)}
              {ownTrim(batch.problem, stock, say)}
            </h3>
            <Drawing shown={shown} index={index} marks={calledOn(batch, plan, copies, index)} say={say} />
            <ol>
              {(cuts ? toldCuts(cuts, shown, index, say) : []).map(({ number, what, off }) => (
                <li key={number}>
                  {number}. {what} {off ? <small>{off}</small> : null}
                </li>
              ))}
            </ol>
          </section>
        );
      })}
    </div>
  );
}

interface DrawingProps {
  readonly shown: Shown;
  readonly index: number;
  readonly marks: readonly (readonly string[])[];
  readonly say: Say;
}

function Drawing({ shown: { batch, plan }, index, marks, say }: DrawingProps) {
  const common = { marks, made: 0, cuts: [], picked: null, inHand: null, say };
  if (plan.kind === 'sheets') {
    const problem = batch.problem as SheetProblem;
    const sheet = plan.sheets[index];
    const stock = sheet && problem.stock[sheet.stock];
    if (!stock) return null;
    const scale = scaleOf(stock, PAPER);
    return (
      <svg width={stock.length * scale + 2 * MARGIN} height={stock.width * scale + 2 * MARGIN} aria-hidden="true">
        <Sheet
          sheet={sheet}
          stock={stock}
          trim={stock.trim ?? problem.trim}
          scale={scale}
          problem={problem}
          {...common}
        />
      </svg>
    );
  }
  const problem = batch.problem as BarProblem;
  const bar = plan.bars[index];
  const longest = Math.max(1, ...plan.bars.map(({ stock }) => problem.stock[stock]?.length ?? 0));
  const scale = (PAPER.width - 2 * MARGIN) / longest;
  return bar ? (
    <svg width={PAPER.width} height={BAR + 2 * MARGIN} aria-hidden="true">
      <BarRow bar={bar} problem={problem} scale={scale} {...common} />
    </svg>
  ) : null;
}
