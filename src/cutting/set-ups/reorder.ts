import type { AnyCutPlan, BarPlan, SheetPlan } from '../../vocabulary/cut-plan';
import type { BarProblem, CutProblem, SheetProblem } from '../../vocabulary/cut-problem';
import { reorderedBars } from './reorder-bars';
import { reorderedSheets } from './reorder-sheets';
import { barsWork, type PlannedBatch, setUpsOf, sheetWork } from './saws';

/**
 * The same plans with what lies side by side in another order, such that the saws are set less often when their cuts are gathered by setting:
 * strips and pieces within each panel, and pieces with the same ends within each bar. What a sheet or bar holds and leaves, cost and stages
 * stay. Where nothing is gained a plan is given back itself.
 * @param patience as in `settingsOf`
 */
export function reorderTogether(planned: readonly PlannedBatch[], patience?: number): readonly PlannedBatch[] {
  const moved = planned.map(() => undefined as AnyCutPlan | undefined);
  const sheets = planned.flatMap(({ batch: { problem }, plan }, i) =>
    problem.kind === 'sheets' && plan.kind === 'sheets' ? [{ i, problem, plan }] : [],
  );
  const bars = planned.flatMap(({ batch: { problem }, plan }, i) =>
    problem.kind === 'bars' && plan.kind === 'bars' ? [{ i, problem, plan }] : [],
  );
  reorderedSheets(sheets, patience).forEach((plan, k) => {
    moved[sheets[k].i] = plan;
  });
  reorderedBars(bars, patience).forEach((plan, k) => {
    moved[bars[k].i] = plan;
  });
  const after = planned.map((one, i): PlannedBatch => ({ batch: one.batch, plan: moved[i] ?? one.plan }));
  const onSheets = (all: readonly PlannedBatch[]): number => setUpsOf(sheetWork(all), 'panel saw', patience).moves;
  const onBars = (all: readonly PlannedBatch[]): number => setUpsOf(barsWork(all, []), 'mitre saw', patience).moves;
  const gains = {
    sheets: sheets.length > 0 && onSheets(after) < onSheets(planned),
    bars: bars.length > 0 && onBars(after) < onBars(planned),
  };
  return planned.map((one, i) => (gains[one.plan.kind] ? after[i] : one));
}

/** The same of one problem's plan. */
export function reorderForSettings(problem: SheetProblem, plan: SheetPlan): SheetPlan;
export function reorderForSettings(problem: BarProblem, plan: BarPlan): BarPlan;
export function reorderForSettings(problem: CutProblem, plan: AnyCutPlan): AnyCutPlan;
export function reorderForSettings(problem: CutProblem, plan: AnyCutPlan): AnyCutPlan {
  const [{ plan: reordered }] = reorderTogether([{ batch: { id: '', name: '', problem, marks: [], from: [] }, plan }]);
  return reordered;
}
