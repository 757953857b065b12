import { SAME_ANGLE_DEG } from '../base/tolerance';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';

/** Bevels, at ends and along edges, beyond what the saw's blade tilts to. */
export function sawTilt({ job, parts }: { readonly job: Job; readonly parts: readonly Part[] }): readonly Finding[] {
  const { mostTiltDeg } = job.tools;
  return parts.flatMap((part): readonly Finding[] => {
    let tilt = Math.max(part.ends[0].tiltDeg, part.ends[1].tiltDeg);
    for (const edge of part.edges) tilt = Math.max(tilt, bevelOf(edge));
    if (tilt <= mostTiltDeg + SAME_ANGLE_DEG) return NONE;
    return [
      {
        severity: 'warn',
        rule: 'beyond-saw-tilt',
        subject: { part: part.mark, run: part.run },
        value: tilt,
        limit: mostTiltDeg,
        message: `${part.mark} (${part.name}) has a bevel of ${Math.round(tilt * 100) / 100}°; the blade tilts to ${mostTiltDeg}°.`,
        source: "the workshop's saw, from the job",
        remedy: 'Cut it on edge, against a jig, or by hand to the line; or change the corner.',
        caution: 'Work held on edge or against a jig must be clamped, with the guard on.',
      },
    ];
  });
}

const NONE: readonly Finding[] = [];

const bevelOf = ({ work, angleDeg }: Part['edges'][number]): number => (work === 'bevelled' ? (angleDeg ?? 0) : 0);
