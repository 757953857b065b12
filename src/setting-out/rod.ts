import { leftOf } from '../base/tenth';
import { add2, heading, scale2 } from '../base/vec';
import type { Finding } from '../vocabulary/finding';
import type { Vec2 } from '../vocabulary/geometry';
import type { Job, JoinMark } from '../vocabulary/job';
import type { Demands, Rod, RunEnd, SaidOfBay } from '../vocabulary/rod';
import { divide } from './bays';
import { backOf, layCarcass } from './carcass';
import { crossings } from './crossings';
import { type EndSeed, endsOf, frameLength } from './ends';
import { numbered, placeJoins, type Unjoined } from './joins';
import { type Asked, gather } from './layers';
import { flapFaults, type RunSeed, seedsOf } from './plan';

/** Less than this is no run: nothing could be fixed to it. */
const LEAST_RUN = 20;

/**
 * The setting-out of a job: corners, layers, heights, pillars and bays. The first of the job's runs starts at (0, 0) and goes along x.
 * It is worked out once; what is returned gives the rod with the joins where the unit is to be taken apart, and refuses in a finding what
 * can't be one.
 * @param demands what each room's decisions ask of the setting-out, in the register's order.
 */
export function setOut(job: Job, demands: readonly Demands[]): (joins: readonly JoinMark[]) => Rod {
  const asked = gather(demands);
  const { plan, height, depth } = job.unit;
  const seeds = seedsOf(job);
  const ends = endsOf(seeds, plan.leftEnd, plan.rightEnd, asked, job.fit);
  const lengths = seeds.map((seed, i) => frameLength(seed, ends[i], asked));
  const lines = polyline(seeds, lengths);
  const wishes = job.unit.bays.map((wish, i): SaidOfBay => ({ ...wish, path: pathOfBay(i) }));
  const built = seeds.map((seed, i) => runOf(seed, ends[i], lengths[i], lines[i], asked, wishes));
  const unjoined = built.map((b) => b.run);
  const faults = [...built.flatMap((b) => b.findings), ...flapFaults(job), ...noSuchBays(job, unjoined)];
  const frameHeight = height - asked.top.thickness;
  const { timber, frameLow, top } = asked;
  const layers = {
    ...asked.layers,
    [top.layer]: { name: top.layer, inner: top.overhang - depth, outer: top.overhang },
  };
  const flaps = seeds.flatMap(({ id, flap }, i) => (flap ? [{ left: id, right: seeds[i + 1].id, ...flap }] : []));
  return (joins) => {
    const joined = placeJoins(unjoined, joins, timber.face, job.unit.joins.by === 'hand');
    const before = { timber, frameLow, frameHeight, overhang: top.overhang, depth };
    const { runs, carcass, findings } = layCarcass(numbered(unjoined, joined), demands, before);
    return {
      runs,
      layers,
      heights: asked.heights,
      timber,
      frameHeight,
      frameLow,
      flaps,
      height,
      depth,
      top,
      ...(carcass ? { carcass } : {}),
      findings: [
        ...faults,
        ...joined.findings,
        ...findings,
        ...crossings({
          runs,
          layers: carcass ? { ...layers, carcass: { name: 'carcass', inner: backOf(carcass), outer: 0 } } : layers,
        }),
      ],
    };
  };
}

/** Start and direction of each seed's frame line. */
function polyline(
  seeds: readonly RunSeed[],
  lengths: readonly number[],
): readonly { readonly origin: Vec2; readonly along: Vec2 }[] {
  const first = seeds.findIndex((s) => s.jobIndex === 0);
  let turn = -seeds.slice(0, first).reduce((sum, s) => sum + s.deflectionDeg, 0);
  let at: Vec2 = [0, 0];
  const lines = seeds.map((seed, i) => {
    const along = heading(turn);
    const line = { origin: at, along };
    at = add2(at, scale2(along, Math.max(0, lengths[i]) + (seed.flap?.width ?? 0)));
    turn += seed.deflectionDeg;
    return line;
  });
  const shift = scale2(lines[first].origin, -1);
  return lines.map((line) => ({ ...line, origin: add2(line.origin, shift) }));
}

function runOf(
  seed: RunSeed,
  ends: { readonly left: EndSeed; readonly right: EndSeed },
  found: number,
  line: { readonly origin: Vec2; readonly along: Vec2 },
  asked: Asked,
  wishes: readonly SaidOfBay[],
): { readonly run: Unjoined; readonly findings: readonly Finding[] } {
  const length = Math.max(0, found);
  const left = placed(ends.left, 0 - ends.left.frameBeyond);
  const right = placed(ends.right, length + ends.right.frameBeyond);
  const face = asked.pillars ? (asked.layers[asked.pillars.layer]?.outer ?? 0) : 0;
  const from = -face * left.grows;
  const to = length + face * right.grows;
  const skin = asked.pillars ? (asked.layers[asked.pillars.layer]?.inner ?? 0) : 0;
  const outermost = Math.max(...Object.values(asked.layers).map((l) => l.outer));
  const short = [
    { left: Math.min(length, length + outermost * (left.grows + right.grows)), least: LEAST_RUN },
    // The frame has a stud at each end.
    { left: right.frameAt - left.frameAt, least: Math.max(LEAST_RUN, 2 * asked.timber.face) },
  ].find((s) => s.left < s.least);
  const sound = short === undefined;
  const path =
    seed.jobIndex === null
      ? `/unit/plan/${seed.id === 'RL' ? 'leftEnd' : 'rightEnd'}/length`
      : `/unit/plan/runs/${seed.jobIndex}/length`;
  const division =
    sound && asked.pillars
      ? divide({
          run: seed.id,
          path,
          from,
          to,
          left,
          right,
          width: asked.pillars.width,
          cornerWidth: asked.pillars.cornerWidth,
          footOverhang: asked.footOverhang,
          rhythm: seed.rhythm ?? asked.pillars.rhythm,
          atCorners: asked.pillars.atCorners,
          bareFrom: -skin * left.grows,
          bareTo: length + skin * right.grows,
          wishes: seed.jobIndex === null ? [] : wishes.filter((w) => w.run - 1 === seed.jobIndex),
        })
      : { pillars: [], bays: [], findings: [] };
  const run: Unjoined = {
    id: seed.id,
    name: seed.name,
    jobIndex: seed.jobIndex,
    origin: line.origin,
    along: line.along,
    front: [line.along[1], -line.along[0]],
    length,
    left,
    right,
    pillars: division.pillars,
    bays: division.bays,
    sound,
  };
  return { run, findings: short ? [tooShort(seed.id, path, short.left, short.least)] : division.findings };
}

const placed = ({ frameBeyond: _, ...end }: EndSeed, frameAt: number): RunEnd => ({ ...end, frameAt });

const tooShort = (run: string, path: string, left: number, least: number): Finding => ({
  severity: 'stop',
  rule: 'run-too-short',
  subject: { run, path },
  message: `Run ${run} has ${leftOf(left)} left after its corners; ${least} mm is the least that can be built.`,
  value: left,
  limit: least,
  source: 'geometry of the setting-out',
  remedy: 'Lengthen the run, or turn its corners less. Nothing is made for it.',
});

const pathOfBay = (index: number): string => `/unit/bays/${index}`;

/** What the job says of bays that the setting-out has not. */
function noSuchBays({ unit }: Job, runs: readonly Unjoined[]): readonly Finding[] {
  return unit.bays.flatMap(({ run, bay }, i): Finding[] => {
    const there = runs.find((r) => r.jobIndex === run - 1);
    if (there && bay <= there.bays.length) return [];
    return [
      {
        severity: 'warn',
        rule: 'no-such-bay',
        subject: { path: pathOfBay(i), ...(there ? { run: there.id } : {}) },
        value: bay,
        limit: there?.bays.length ?? 0,
        message: there
          ? `Bay ${bay} of run ${there.id} is decided on; the run has ${there.bays.length}.`
          : `Bay ${bay} of run number ${run} is decided on; the plan has no such run.`,
        source: 'the setting-out',
        remedy: 'Take the decision away, or divide the run into more bays. Nothing is made of it.',
      },
    ];
  });
}
