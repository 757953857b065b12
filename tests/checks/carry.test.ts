import { describe, expect, test } from 'vitest';
import { looseParts } from '../../src/checks/carry';
import { design } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import { findingOf, jobOf, partOf, rulesOf, type Said } from '../elements/job-of';

const RULE = 'loose-part-too-long';
/** A run of 3500 between two walls under a top in one length, 3500 long. */
const under = (vanLength: number, top: object = {}, said: Said = {}): Design =>
  design(
    jobOf({
      runs: [{ length: 3500 }],
      carry: { vanLength },
      elements: { top: { longest: 4000, fitted: 'site', ...top } },
      ...said,
    }),
  );

describe('a length that leaves loose', () => {
  test('is measured against the van when it is longer', () => {
    const made = under(3499);
    const top = partOf(made, 'TP');
    expect(top).toMatchObject({ fitted: 'site', size: { length: 3500 } });
    const found = made.findings.filter((f) => f.rule === RULE);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      severity: 'warn',
      subject: { part: top.mark, run: 'A', path: '/carry/vanLength' },
      value: 3500,
      limit: 3499,
      source: 'the job: van',
    });
    expect(found[0].message).toContain(`${top.mark} (top) leaves loose and is 3500 mm long; the van takes 3499 mm`);
    expect(found[0].remedy).toMatch(/joint it shorter/);
    // Standing out behind is where somebody gets hurt.
    expect(found[0].caution).toMatch(/reg 82.*Local rules come first\./s);
  });

  test('may be as long as the van', () => expect(rulesOf(under(3500))).not.toContain(RULE));

  test('is carried with what is left on to its length, not to its width', () => {
    // 15 at each wall: 3530.
    const scribed = (vanLength: number) => under(vanLength, {}, { fit: { scribe: 15 } });
    expect(findingOf(scribed(3529), RULE)).toMatchObject({ value: 3530, limit: 3529 });
    expect(rulesOf(scribed(3530))).not.toContain(RULE);
    // What is left on along an edge makes it wider only.
    const { job, parts } = under(3500);
    const wider = parts.map((part) => ({
      ...part,
      oversize: [{ side: 'back edge', amount: 20, on: 'width', reason: 'to scribe' } as const],
    }));
    expect(looseParts({ job, parts: wider })).toEqual([]);
  });

  test('is no matter of the doors, as a section is', () => {
    const carry = { vanLength: 3500, routeDoorWidth: 700, routeDoorHeight: 1000, shopDoorWidth: 700 };
    const made = under(3500, {}, { carry });
    expect(rulesOf(made)).toContain('section-too-big');
    expect(rulesOf(made)).not.toContain(RULE);
  });

  test('is none of the parts that go with a section: the section itself is too long then', () => {
    const made = under(3499, { fitted: 'workshop' });
    expect(partOf(made, 'TP').fitted).toBe('workshop');
    expect(rulesOf(made)).not.toContain(RULE);
    expect(findingOf(made, 'section-too-big').value).toBeCloseTo(3500, 6);
  });
});
