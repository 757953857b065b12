import { describe, expect, it } from 'vitest';
import { firstBars } from '../../../src/cutting/bars/index';
import { settingsOf } from '../../../src/cutting/set-ups/index';
import { cutBatches } from '../../../src/cutting/take-off/index';
import { design } from '../../../src/flow';
import type { AnyCutPlan, CutBatch } from '../../../src/vocabulary/cut-plan';
import { jobOf } from '../../elements/job-of';
import { planned } from '../by-hand/planned';

/** Two runs round an outside corner, fluted, with blocks that are moulded as strips. */
const made = design(jobOf({ runs: [{ length: 2400, deflectionDeg: 90 }, { length: 1500 }] }));
const { batches } = cutBatches(made, []);

/** Not a good plan: each piece on a sheet of its own. */
function planOf({ problem }: CutBatch): AnyCutPlan {
  if (problem.kind === 'bars') return firstBars(problem);
  const { trim, pieces } = problem;
  const sheets = pieces.flatMap(({ length, width, quantity }, piece) =>
    Array.from({ length: quantity }, () => [
      { kind: 'piece', x: trim, y: trim, length, width, piece, turned: false } as const,
    ]),
  );
  return planned(problem, sheets);
}
const all = batches.map((batch) => ({ batch, plan: planOf(batch) }));
const settings = settingsOf(all, made.parts, { blockKerf: made.job.tools.mitreSawKerf, patience: 0 });
const sorted = (marks: readonly string[]): readonly string[] => [...marks].sort();

describe('the set-ups of a whole counter', () => {
  it('cut off every piece once, and blocks off their strips', () => {
    const cut = [...settings.sheets, ...settings.lengths].flatMap(({ cuts }) => cuts.flatMap(({ marks }) => marks));
    expect(sorted(cut)).toEqual(sorted(batches.flatMap(({ marks }) => marks.flat(2))));
    const strips = settings.profiles.flatMap(({ passes }) => passes.map(({ marks }) => marks));
    const blocks = settings.lengths.flatMap((setUp) => setUp.blocks.flatMap(({ marks }) => marks));
    expect(strips.some((marks) => marks.length > 1)).toBe(true);
    // The last one too: a strip of several is a little longer than its blocks.
    expect(sorted(blocks)).toEqual(sorted(strips.flatMap((marks) => (marks.length > 1 ? marks : []))));
  });

  it('say that what is sawn over size is trimmed, and how much', () => {
    const { job, parts } = made;
    const over = { ...made, job: { ...job, cutting: { ...job.cutting, oversizeOn: 'all', oversize: 4 } } } as const;
    const plans = cutBatches(over, []).batches.map((batch) => ({ batch, plan: planOf(batch) }));
    const trimmed = (said: readonly string[]) => said.filter((words) => words.includes('over on each side'));
    expect(trimmed(settingsOf(plans, parts, { patience: 0 }).cautions)).toEqual([expect.stringMatching(/ 4 mm over/)]);
    expect(trimmed(settings.cautions)).toEqual([]);
  });

  it('run every groove once and mould every edge once', () => {
    const grooves = settings.grooves.flatMap(({ passes }) => passes.map(({ mark, groove }) => `${mark} ${groove}`));
    const own = made.parts.flatMap((part) => part.grooves.map((_, i) => `${part.mark} ${i + 1}`));
    expect(own.length).toBeGreaterThan(0);
    expect(sorted(grooves)).toEqual(sorted(own));
    const moulded = made.parts.filter(({ edges }) => edges.some(({ work }) => work === 'moulded'));
    const passed = settings.profiles.flatMap(({ passes }) => passes.flatMap(({ marks }) => marks));
    expect(sorted(passed)).toEqual(sorted(moulded.map(({ mark }) => mark)));
  });

  it('set every bevel once, the saw seldomer by a third at least', () => {
    const bevels = settings.bevels.flatMap(({ of, passes }) =>
      of === 'edge' ? passes.flatMap(({ marks }) => marks) : [],
    );
    const own = made.parts.flatMap(({ mark, edges }) =>
      edges.flatMap(({ work }) => (work === 'bevelled' ? [mark] : [])),
    );
    expect(own.length).toBeGreaterThan(0);
    expect(sorted(bevels)).toEqual(sorted(own));
    expect(settings.moves).toBeLessThan((settings.movesAsDrawn * 2) / 3);
  });
});
