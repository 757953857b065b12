import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { design } from '../../../src/flow';
import type { Design } from '../../../src/vocabulary/design';
import type { Job } from '../../../src/vocabulary/job';
import { SEED } from '../../base/seed';
import { anyJob } from '../../properties/random-job';
import { overlaps, referee } from '../../properties/referee';
import { inWords } from '../../properties/sample';

/** What lies on the front between the pillars: all of it in one unit must keep out of each other's way. */
const KINDS = new Set(['skirting', 'panel', 'undertop', 'cover', 'footrail']);
const COUNT = 24;
/** Designs with one of these findings say themselves that something is in the way of something. */
const IN_THE_WAY = new Set(['plan-folds', 'run-too-short', 'top-squeezed', 'blocks-overlap']);

const decisions = fc.record({
  atCorners: fc.boolean(),
  style: fc.constantFrom('blocks', 'blocks', 'plain', 'kicked'),
  overhang: fc.constantFrom(0, 5, 35, 50),
  caps: fc.constantFrom(0, 45),
  undertop: fc.constantFrom('', 'undertop-scotia-25', 'undertop-cavetto-32'),
  rows: fc.constantFrom(1, 2, 3),
  margin: fc.constantFrom(5, 30, 70),
  height: fc.constantFrom(180, 200, 240),
  out: fc.constantFrom(60, 125, 220),
  spacing: fc.constantFrom(300, 800, 1500),
  places: fc.array(fc.record({ bay: fc.nat(20), right: fc.boolean() }), { maxLength: 3 }),
});
type Said = typeof decisions extends fc.Arbitrary<infer T> ? T : never;

function jobWith(job: Job, said: Said): Job {
  const { elements } = job.unit;
  const decided = {
    ...elements,
    plinth: { ...elements.plinth, style: said.style, overhang: said.overhang },
    pillar: { ...elements.pillar, atCorners: said.atCorners, capHeight: said.caps, capOverhang: 12 },
    undertop: { moulding: said.undertop },
    panel: { ...elements.panel, rows: said.rows, margin: said.margin, rail: true, railHeight: 20 },
    footrail: { ...elements.footrail, wanted: true, height: said.height, out: said.out, spacing: said.spacing },
    carcass: { ...elements.carcass, build: false },
  };
  const whole: Job = { ...job, unit: { ...job.unit, elements: decided } };
  // Joins at bays' edges, where a strip covers them.
  const edges = design(whole).rod.runs.flatMap((run) =>
    run.jobIndex === null
      ? []
      : run.bays.flatMap((b) => [
          ...(b.mitredLeft ? [] : [{ run: Number(run.jobIndex) + 1, x: b.from + 20, right: false }]),
          ...(b.mitredRight ? [] : [{ run: Number(run.jobIndex) + 1, x: b.to - 15, right: true }]),
        ]),
  );
  const at = said.places.flatMap(({ bay, right }) => {
    const there = edges.filter((e) => e.right === right);
    const one = there[bay % Math.max(1, there.length)];
    return one ? [{ run: one.run, x: one.x }] : [];
  });
  return { ...whole, unit: { ...whole.unit, joins: { by: 'hand', at } } };
}

describe(`what lies on the front of ${COUNT} random units (seed ${SEED})`, () => {
  let kernel: Awaited<ReturnType<typeof referee>>;
  beforeAll(async () => {
    kernel = await referee();
  });
  const made: readonly Design[] = fc
    .sample(fc.tuple(anyJob, decisions), { numRuns: COUNT, seed: SEED })
    .map(([job, said]) => design(jobWith(job, said)))
    .filter(({ findings }) => !findings.some((f) => IN_THE_WAY.has(f.rule)));

  it('has all kinds among it, each part with a way of being fixed', () => {
    const parts = made.flatMap((d) => d.parts).filter((p) => KINDS.has(p.kind));
    expect(new Set(parts.map((p) => p.kind))).toEqual(KINDS);
    expect(parts.filter((p) => !p.holds?.length).map((p) => p.mark)).toEqual([]);
  });

  it('shares no stuff with anything', { timeout: 120_000 }, () => {
    const wrong = made.flatMap((d) => {
      const of = new Map(d.parts.map((p) => [p.mark, p.kind]));
      const own = overlaps(kernel, d.parts, 1).filter(({ a, b }) =>
        [a, b].some((mark) => KINDS.has(of.get(mark) ?? '')),
      );
      return own.length > 0 ? [`${JSON.stringify(own.slice(0, 3))} in ${inWords(d.job)}`] : [];
    });
    expect(wrong).toEqual([]);
  });
});
