import { massCentre } from '../base/solid/mass';
import type { Vec3 } from '../vocabulary/geometry';
import type { Carry, Fit } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Rod } from '../vocabulary/rod';
import type { Join, Section } from '../vocabulary/section';
import { boxOf, piecesIn } from './box';
import { liftingPoints } from './lifting';
import { breachesOf, type Load } from './limits';

/** The sections of a unit, left to right, each with what it weighs and where it balances. Those of which nothing is made are left out. */
export const sectionsOf = (parts: readonly Part[], rod: Rod, carry: Carry): readonly Section[] =>
  bySection(parts, rod).map(([id, mine]) => sectionOf(id, mine, rod, carry));

/** Only what each section weighs and the box it stands in, by its id. */
export const loadsOf = (parts: readonly Part[], rod: Rod): ReadonlyMap<string, Load> =>
  new Map(
    bySection(parts, rod).map(([id, mine]) => [
      id,
      { ...boxOf(mine, rod, piecesIn(id, rod)), weightKg: mine.reduce((sum, p) => sum + p.weightKg, 0) },
    ]),
  );

function bySection(parts: readonly Part[], rod: Rod): readonly (readonly [string, readonly Part[]])[] {
  const own = new Map<string, Part[]>();
  for (const part of parts) {
    if (part.inSection === undefined) continue;
    const mine = own.get(part.inSection);
    if (mine) mine.push(part);
    else own.set(part.inSection, [part]);
  }
  return [...new Set(rod.runs.flatMap((run) => run.sections))].flatMap((id) => {
    const mine = own.get(id);
    return mine ? [[id, mine] as const] : [];
  });
}

function sectionOf(id: string, parts: readonly Part[], rod: Rod, carry: Carry): Section {
  const pieces = piecesIn(id, rod);
  const size = boxOf(parts, rod, pieces);
  const { weightKg, centre } = balance(parts);
  return {
    id,
    pieces,
    parts: parts.map((p) => p.mark),
    size,
    weightKg,
    centreOfGravity: centre,
    liftingPoints: liftingPoints(rod, pieces, centre),
    breaches: breachesOf({ ...size, weightKg }, carry),
  };
}

/** Weight, and where it acts: each part's weight at its own centre of mass. */
function balance(parts: readonly Part[]): { readonly weightKg: number; readonly centre: Vec3 } {
  let weightKg = 0;
  const moment = [0, 0, 0];
  for (const part of parts) {
    const at = massCentre(part);
    weightKg += part.weightKg;
    for (let k = 0; k < 3; k++) moment[k] += part.weightKg * at[k];
  }
  return { weightKg, centre: [moment[0] / weightKg, moment[1] / weightKg, moment[2] / weightKg] };
}

/** The joins of a unit, left to right: within runs, at corners, at flaps. Bolts stand at the job's heights that lie between the plates. */
export function joinsOf(rod: Rod, fit: Fit): readonly Join[] {
  const bolts = fit.bolts.filter((z) => z > rod.frameLow + rod.timber.face && z < rod.frameHeight - rod.timber.face);
  return rod.runs.flatMap((run, i): Join[] => {
    const within = run.joins.map(
      ({ id, x, behind }, k): Join => ({
        id,
        run: run.id,
        x,
        at: 'run',
        behind,
        sections: [run.sections[k], run.sections[k + 1]],
        bolts,
      }),
    );
    const next = rod.runs[i + 1];
    if (run.joinAtRight === undefined || !next) return within;
    const flap = run.right.flap;
    return [
      ...within,
      {
        id: run.joinAtRight,
        run: run.id,
        x: run.length,
        at: flap ? 'flap' : 'corner',
        behind: flap ? 'gap' : 'corner',
        sections: [run.sections[run.sections.length - 1], next.sections[0]],
        bolts: flap ? [] : bolts,
      },
    ];
  });
}
