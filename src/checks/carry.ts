import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Breach, Section } from '../vocabulary/section';

/** Sections that can't be carried out, driven or carried in by what the job says of the way. */
export function carried({
  job,
  sections,
}: {
  readonly job: Job;
  readonly sections: readonly Section[];
}): readonly Finding[] {
  return sections.flatMap((section) =>
    section.breaches.map((breach): Finding => finding(section, breach, job.unit.joins.by)),
  );
}

function finding({ id, pieces }: Section, { what, value, limit, source, byCutting }: Breach, by: string): Finding {
  const heavy = what === 'weight';
  const unit = heavy ? 'kg' : 'mm';
  return {
    severity: 'warn',
    rule: heavy ? 'section-too-heavy' : 'section-too-big',
    subject: { path: '/unit/joins', ...(pieces[0] ? { run: pieces[0].run } : {}) },
    value,
    limit,
    message: `Section ${id}: ${what} is ${tenth(value)} ${unit}; ${tenth(limit)} ${unit} is allowed.`,
    source,
    remedy: remedyFor(byCutting, by, heavy),
    ...(heavy
      ? {
          caution:
            'Plan the lift: more people, a trolley, or parts carried loose. On steps most of the weight is on those below. Local rules come first.',
        }
      : {}),
  };
}

function remedyFor(byCutting: boolean, by: string, heavy: boolean): string {
  if (!byCutting) return 'Take off what stands out furthest before it is carried, or find another way in.';
  if (by === 'none') return 'Let the unit be made in sections.';
  if (by === 'hand') return 'Mark another join, or let the joins be worked out.';
  return heavy
    ? 'It is one bay already: carry it with more people, or set the pillars closer.'
    : 'It is one bay already: set the pillars closer, or find a larger van or another way.';
}
