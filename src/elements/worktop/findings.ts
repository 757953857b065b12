import { leftOf, tenth } from '../../base/tenth';
import type { Carcass } from '../../vocabulary/carcass';
import type { Finding } from '../../vocabulary/finding';
import type { Rod, RodRun } from '../../vocabulary/rod';
import { lengthsOf } from './outline';

export const tooBig = (run: RodRun, way: 'long' | 'deep', value: number, limit: number, leftOn = 0): Finding => ({
  severity: 'warn',
  rule: way === 'long' ? 'worktop-longer-than-stock' : 'worktop-deeper-than-stock',
  subject: { run: run.id, path: '/unit/elements/worktop/of' },
  value,
  limit,
  message: `The worktop behind run ${run.id} is ${tenth(value)} mm ${way}${leftOn > 0 ? ` with the ${tenth(leftOn)} mm left on to be scribed` : ''}; the stuff chosen is ${tenth(limit)} mm ${way === 'long' ? 'long' : 'wide'}.`,
  source: 'stock sizes from the stock book',
  remedy:
    way === 'long' ? 'It needs a joint over a cross frame, or longer stock.' : 'Make it less deep, or of wider stuff.',
});

/** Where nothing of a worktop is made behind a run, and behind inside corners, where the worktops of two runs part. */
export const leftOpen = (rod: Rod, carcass: Carcass): readonly Finding[] =>
  rod.runs.flatMap((run) =>
    run.jobIndex === null || !run.sound ? [] : [...gapsIn(rod, run, carcass), ...insideCorner(rod, run, carcass)],
  );

/** Between the lengths, and beside the first and the last, along the front edge of the worktop. */
function gapsIn(rod: Rod, run: RodRun, { front }: Carcass): readonly Finding[] {
  // At an outside corner the runs' worktops meet on the corner's own line; a return stands in front of none.
  const corner = (end: RodRun['left']): number =>
    end.kind === 'corner' && end.deflectionDeg > 0 ? (end.toReturn ? -front : -front * end.grows) : 0;
  const from = Math.max(corner(run.left), run.left.kind === 'corner' ? run.left.frameAt : 0);
  const to = run.length - Math.max(corner(run.right), run.right.kind === 'corner' ? run.length - run.right.frameAt : 0);
  const made = lengthsOf(rod, run).map(({ left, right }) => [
    left.x + front * left.perOut,
    right.x + front * right.perOut,
  ]);
  const edges = [from, ...made.flat(), to];
  return edges.flatMap((start, i): Finding[] => {
    const end = edges[i + 1];
    if (i % 2 === 1 || end === undefined || end - start < LEAST_GAP) return [];
    return [
      {
        severity: 'warn',
        rule: 'worktop-left-open',
        subject: { run: run.id, path: '/unit/elements/worktop/height' },
        value: end - start,
        limit: LEAST_GAP,
        message: `Behind run ${run.id} no worktop is made from ${tenth(start)} to ${tenth(end)} mm, a length of ${leftOf(end - start)}: no two cross frames stand there to carry it.`,
        source: 'geometry of the carcass',
        remedy: `${run.joins.length > 0 ? 'Move the join or the pillar, or lengthen the run,' : 'Lengthen the run'} so that cross frames have room there; or carry a piece of worktop there by hand.`,
      },
    ];
  });
}

/** A gap that a fitted worktop never has, mm; less is a joint (common practice, no source). */
const LEAST_GAP = 5;

function insideCorner(rod: Rod, run: RodRun, { front, worktop }: Carcass): readonly Finding[] {
  const { right } = run;
  const next = rod.runs.find((r) => r.id === right.neighbour);
  if (!worktop || right.kind !== 'corner' || right.deflectionDeg >= 0 || !next) return [];
  if (run.crossLines.length === 0 || next.crossLines.length === 0) return [];
  const deep = front - worktop.edge;
  return [
    {
      severity: 'note',
      rule: 'worktop-corner-open',
      subject: { run: run.id, path: '/unit/elements/worktop/height' },
      value: deep,
      message: `Behind the inside corner of runs ${run.id} and ${next.id} their worktops part: the piece between them, ${tenth(deep)} mm deep each way, is not made.`,
      source: 'geometry of the corner',
      remedy:
        'Make a corner piece to a template on site, on a post and bearers of its own, jointed to both worktops; or leave the corner open.',
    },
  ];
}
