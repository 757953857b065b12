import { massCentre } from '../base/solid/mass';
import type { Vec3 } from '../vocabulary/geometry';
import type { Carry, Fit } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Rod } from '../vocabulary/rod';
import type { Join, Section } from '../vocabulary/section';
import type { Bundle } from './bundles';
import { liftingPoints } from './lifting';
import { breachesOf } from './limits';

/** The sections of a unit, left to right, each with what it weighs and where it balances. */
export const sectionsOf = (bundles: readonly Bundle[], rod: Rod, carry: Carry): readonly Section[] =>
  bundles.map((bundle) => sectionOf(bundle, rod, carry));

function sectionOf({ id, parts, pieces, size, weightKg }: Bundle, rod: Rod, carry: Carry): Section {
  const centre = balance(parts, weightKg);
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

/** Where the weight acts: each part's at its own centre of mass. */
function balance(parts: readonly Part[], weightKg: number): Vec3 {
  const moment = [0, 0, 0];
  for (const part of parts) {
    const at = massCentre(part);
    for (let k = 0; k < 3; k++) moment[k] += part.weightKg * at[k];
  }
  return [moment[0] / weightKg, moment[1] / weightKg, moment[2] / weightKg];
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
