import type { DecisionsOf } from '../../vocabulary/field';
import type { Bench, Made } from '../../vocabulary/room';
import { crossFrame, type Draft, middleRail, sectionsOf } from './cross-frames';
import type { fields } from './fields';
import { cornersOpen, LEAST_TOE, noMiddleRail, toeTooLow } from './findings';
import { frontBearers, rearRails } from './rails';

/** Cross frames, rear rails and the bearers of a worktop, run by run. */
export function parts({ midRail, toeHeight }: DecisionsOf<typeof fields>, { rod, framing }: Bench): Made {
  const { carcass } = rod;
  if (!carcass) return { drafts: [], findings: [] };
  const sections = sectionsOf(carcass);
  const draft: Draft = (run, { code, name, where, holds }, { shape, place }) => ({
    kind: 'carcass',
    code,
    name,
    run: run.id,
    material: carcass.stock,
    finish: 'bare',
    from: 'framed',
    edges: [],
    grooves: [],
    where,
    holds,
    shape,
    place,
  });
  const framed = new Map(framing.map((f) => [f.run, f]));
  const drafts = rod.runs.flatMap((run) => [
    ...run.crossLines.flatMap((line, i) =>
      crossFrame(draft, sections, run, line, carcass, {
        where: `cross frame ${i + 1}`,
        midRail,
        // The bolts are counted once, with the post to the right of the join.
        boltTo: line.why === 'join' && run.crossLines[i - 1]?.why === 'join' && run.crossLines[i - 1].to === line.from,
      }),
    ),
    ...rearRails(draft, sections.rail, run, carcass),
    ...frontBearers(draft, sections.rail, rod, run, framed.get(run.id), carcass),
  ]);
  const stands = drafts.length > 0;
  return {
    drafts,
    findings: [
      ...(stands && toeHeight > 0 && toeHeight < LEAST_TOE ? [toeTooLow(toeHeight)] : []),
      ...(stands && midRail && middleRail(carcass) === undefined ? [noMiddleRail(carcass)] : []),
      ...rod.runs.flatMap((run) => cornersOpen(rod, run, carcass)),
    ],
  };
}
