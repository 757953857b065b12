import { tenth } from '../base/tenth';
import type { Finding } from '../vocabulary/finding';
import type { Job } from '../vocabulary/job';
import type { Part } from '../vocabulary/part';
import type { Breach, Section } from '../vocabulary/section';

/** What leaves loose and is longer than the van. It is carried by hand, so doors and turns don't stop it as they do a section. */
export function looseParts({ job, parts }: { readonly job: Job; readonly parts: readonly Part[] }): readonly Finding[] {
  const { vanLength } = job.carry;
  return parts.flatMap((part): readonly Finding[] => {
    const left = (part.oversize ?? []).reduce((sum, o) => sum + (o.on === 'length' ? o.amount : 0), 0);
    const value = part.size.length + left;
    if (part.fitted !== 'site' || value <= vanLength + NOISE) return [];
    return [
      {
        severity: 'warn',
        rule: 'loose-part-too-long',
        subject: { part: part.mark, run: part.run, path: '/carry/vanLength' },
        value,
        limit: vanLength,
        message: `${part.mark} (${part.name}) leaves loose and is ${tenth(value)} mm long; the van takes ${tenth(vanLength)} mm at its floor.`,
        source: 'the job: van',
        remedy:
          'Carry it slanting or on the roof, with its end marked where it stands out behind; joint it shorter; or find a longer van.',
        caution:
          'A load that stands out more than 1 m behind must be made clearly visible, by more than 2 m with marker boards (C&U Regulations 1986, reg 82). Local rules come first.',
      },
    ];
  });
}

/** Below this a length is the same, mm. */
const NOISE = 1e-6;

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
