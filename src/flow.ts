import { remembered } from './base/remembered';
import { checkAll } from './checks/index';
import { type ElevationKind, elevationOf } from './drawings/elevation';
import { rodDrawing as drawRod } from './drawings/rod';
import { rooms } from './elements/index';
import { bookOf, type JobBook } from './job/book';
import { makeReader } from './job/read';
import { layersOf } from './job/schema';
import { newJob as startJob } from './job/start';
import { makingOf } from './making/index';
import { layoutsOf, type Setting } from './making/layouts';
import { surveyedFloorScribes, wallScribes } from './making/scribes';
import { makeParts, weightOf } from './parts/make';
import { totalsOf } from './parts/totals';
import { fittings } from './sections/assign';
import { type Bundle, bundlesOf } from './sections/bundles';
import { inFewestSections } from './sections/least';
import { joinsOf, sectionsOf } from './sections/sections';
import { leastBehind } from './setting-out/cross-lines';
import { leastApart, placesIn } from './setting-out/joins';
import { type FramedUp, frameUpFor, type Laid, layOut } from './setting-out/lay-out';
import { setOut } from './setting-out/rod';
import { studsByCentres } from './setting-out/studs';
import type { Design } from './vocabulary/design';
import type { Drawing } from './vocabulary/drawing';
import type { Finding } from './vocabulary/finding';
import type { Job, JoinMark } from './vocabulary/job';
import type { Layout, Making } from './vocabulary/making';
import type { Part } from './vocabulary/part';
import type { Result } from './vocabulary/result';
import type { Mark, RodRun } from './vocabulary/rod';

export { cautionsOf } from './checks/cautions';
export { cutBatches, type TakenOff } from './cutting/take-off/index';
export { writeJob } from './job/write';
export { alike } from './parts/alike';
export { teamKg, teamRule } from './sections/limits';
export { rooms };

/** Reads a job file. Never throws: what is wrong comes back as issues at their paths. */
export const readJob: (text: string) => Result<Job> = makeReader(rooms);

/** Layers to which a length may be taken. */
export const layers: readonly string[] = layersOf(rooms);

/** A job to start from, with the default stock book. */
export const newJob = (name: string): Job => startJob(name, rooms);

/**
 * Everything worked out from a job, in one direction: job → rod → backing → framing → parts → findings and totals.
 * Always returns something drawable for a job that passed the schema; what can't be built is a finding. The last
 * one is remembered by the job's reference; who needs several at once keeps them.
 */
export const design: (job: Job) => Design = remembered(workOut);

function workOut(job: Job): Design {
  const book = bookOf(job);
  const demands = rooms.map((room) => room.demands(job.unit.elements[room.kind], book));
  const rodWith = setOut(job, demands);
  const asked = { rooms, job, book };
  let whole: Laid | undefined;
  const made = parted(job, book, (joins) => {
    const laid = layOut(asked, rodWith(joins), whole);
    whole ??= laid;
    return laid;
  });
  const { rod, openings, framing, parts } = made;
  const sections = sectionsOf(made.bundles, rod, job.carry);
  const joins = joinsOf(rod, job.fit);
  const scribes = wallScribes(job, rod);
  const floorScribes = surveyedFloorScribes(job, parts, rod);
  const findings = worstFirst([
    ...made.findings,
    ...checkAll({ job, rod, parts, sections, scribes, floorScribes, joins }),
  ]);
  return {
    job,
    rod,
    openings,
    framing,
    parts,
    sections,
    joins,
    marks: marksOf(rod.runs, parts),
    findings,
    totals: totalsOf(parts, book.any),
  };
}

/**
 * Everything about making a design: fixings, spacers, steps, maps, what waits on site. Worked out when asked for; of two designs it is
 * remembered by reference, for one part of a page may lag behind the others.
 */
export const making: (made: Design) => Making = remembered(makingOf, 2);

/**
 * Ways to set out the frames of a job, fewest different spacers first, each with what would have to be decided otherwise; the layout as
 * it is among them, with nothing to decide. Empty where no room decides about the frame's timber.
 */
export function layoutsBySpacers(job: Job): readonly Layout[] {
  const book = bookOf(job);
  const room = rooms.find((one) => one.demands(job.unit.elements[one.kind], book).timber !== undefined);
  const { centres, nogginRows } = room?.fields ?? {};
  if (!room || centres?.kind !== 'length' || nogginRows?.kind !== 'count') return [];
  const { rod } = design(job);
  const joins = joinMarks(rod);
  const limits = {
    kind: room.kind,
    leastCentres: centres.min,
    mostRows: nogginRows.max,
    step: job.tools.roundingStep,
  };
  return layoutsOf(rod.timber, limits, (setting) => {
    const { elements } = job.unit;
    const tried = { ...elements, [room.kind]: { ...elements[room.kind], ...only(setting) } };
    const other = { ...job, unit: { ...job.unit, elements: tried } };
    const demands = rooms.map((one) => one.demands(tried[one.kind], book));
    return frameUpFor({ rooms, job: other, book }, setOut(other, demands)(joins));
  });
}

const only = ({ centres, method, datum, nogginRows }: Setting): Setting => ({ centres, method, datum, nogginRows });

/** The joins of a rod as one would mark them by hand. */
const joinMarks = ({ runs }: Design['rod']): readonly JoinMark[] =>
  runs.flatMap(({ jobIndex, joins, joinAtRight, right }): JoinMark[] => {
    const run = (jobIndex ?? -1) + 1;
    return [...joins.map(({ x }) => ({ run, x })), ...(joinAtRight !== undefined && !right.flap ? [{ run }] : [])];
  });

/** The unit taken apart as the job says: nowhere, by hand, or in the fewest sections that can be carried. */
function parted(job: Job, book: JobBook, laidOut: (joins: readonly JoinMark[]) => Laid): Built {
  const { joins } = job.unit;
  const densityOf = (material: string): number => book.any(material).densityKgM3;
  const make = ({ rod, openings, framing, drafts, findings }: Laid): Built => {
    const parts = makeParts(drafts, densityOf, job.tools.roundingStep, fittings(rod.runs));
    return { rod, openings, framing, findings, parts, bundles: bundlesOf(parts, rod) };
  };
  if (joins.by !== 'least') return make(laidOut(joins.by === 'hand' ? joins.at : []));
  return inFewestSections(
    {
      layOut: laidOut,
      make,
      weigh: (draft) => weightOf(draft, densityOf),
      places: placesIn,
      apart: leastApart,
      studsByCentres,
      leastBehind,
    },
    job.carry,
  );
}

type Built = FramedUp & { readonly parts: readonly Part[]; readonly bundles: readonly Bundle[] };

/** Each run's marks from every room, from its own parts there, in order along the run. */
function marksOf(runs: Design['rod']['runs'], parts: readonly Part[]): Readonly<Record<string, readonly Mark[]>> {
  const by = new Map(runs.map((run) => [run.id, new Map<string, Part[]>()]));
  for (const part of parts) {
    const there = by.get(part.run);
    const list = there?.get(part.kind);
    if (list) list.push(part);
    else there?.set(part.kind, [part]);
  }
  const marksIn = (run: RodRun): readonly Mark[] =>
    rooms.flatMap((room) => room.marks(run, by.get(run.id)?.get(room.kind) ?? [])).sort((a, b) => a.x - b.x);
  return Object.fromEntries(runs.map((run) => [run.id, marksIn(run)]));
}

const RANK = { stop: 0, warn: 1, note: 2 } as const;
const worstFirst = (findings: readonly Finding[]): readonly Finding[] =>
  [...findings].sort((a, b) => RANK[a.severity] - RANK[b.severity]);

/** The elevation of one run: as finished from the front, its frame alone, or from behind. Throws when the unit has no such run. */
export const elevation = (made: Design, run: string, kind: ElevationKind): Drawing => elevationOf(made, run, kind);

/** The rod of one run as a drawing. Throws when the unit has no such run. */
export const rodDrawing = (made: Design, run: string): Drawing => drawRod(made, run);
