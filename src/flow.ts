import { checkAll } from './checks/index';
import { elevationOf } from './drawings/elevation';
import { rodDrawing as drawRod } from './drawings/rod';
import { rooms } from './elements/index';
import { bookOf, type JobBook } from './job/book';
import { makeReader } from './job/read';
import { layersOf } from './job/schema';
import { newJob as startJob } from './job/start';
import { makeParts } from './parts/make';
import { totalsOf } from './parts/totals';
import { assign } from './sections/assign';
import { joinsOf, sectionsOf } from './sections/sections';
import { frameUp } from './setting-out/framing';
import { placeOpenings } from './setting-out/openings';
import { setOut } from './setting-out/rod';
import type { Design } from './vocabulary/design';
import type { Drawing } from './vocabulary/drawing';
import type { Decision } from './vocabulary/field';
import type { Finding } from './vocabulary/finding';
import type { Job, JoinMark } from './vocabulary/job';
import type { Part } from './vocabulary/part';
import type { Result } from './vocabulary/result';
import type { Demands, Mark } from './vocabulary/rod';

export { cautionsOf } from './checks/cautions';
export { writeJob } from './job/write';
export { alike } from './parts/alike';
export { rooms };

/** Reads a job file. Never throws: what is wrong comes back as issues at their paths. */
export const readJob: (text: string) => Result<Job> = makeReader(rooms);

/** Layers to which a length may be taken. */
export const layers: readonly string[] = layersOf(rooms);

/** A job to start from, with the default stock book. */
export const newJob = (name: string): Job => startJob(name, rooms);

const memo = new WeakMap<Job, Design>();

/**
 * Everything worked out from a job, in one direction: job → rod → backing → framing → parts → findings and totals.
 * Always returns something drawable for a job that passed the schema; what can't be built is a finding. Memoised by reference.
 */
export function design(job: Job): Design {
  const known = memo.get(job);
  if (known) return known;
  const made = workOut(job);
  memo.set(job, made);
  return made;
}

function workOut(job: Job): Design {
  const book = bookOf(job);
  const demands = rooms.map((room) => room.demands(job.unit.elements[room.kind], book));
  const joins = job.unit.joins.by === 'hand' ? job.unit.joins.at : [];
  const made = build(job, book, demands, joins);
  const { rod, openings, framing, parts } = made;
  const sections = sectionsOf(parts, rod, job.carry);
  const findings = worstFirst([...made.findings, ...checkAll({ job, rod, parts, sections })]);
  return {
    job,
    rod,
    openings,
    framing,
    parts,
    sections,
    joins: joinsOf(rod, job.fit),
    marks: marksOf(rod.runs, parts),
    findings,
    totals: totalsOf(parts, book.any),
  };
}

/** One way through the stages, with the joins where they are said to be. */
function build(job: Job, book: JobBook, demands: readonly Demands[], joins: readonly JoinMark[]): Built {
  const decided = (kind: string): Readonly<Record<string, Decision>> => job.unit.elements[kind];
  const rod = setOut(job, demands, joins);
  const bare = { rod, book };
  const inTheWay = rooms.flatMap((room) => room.obstacles?.(decided(room.kind), bare) ?? []);
  const { placed: openings, findings: refused } = placeOpenings(rod, job.unit.openings, inTheWay);
  const backing = rooms.flatMap((room) => room.backing(decided(room.kind), { ...bare, openings }));
  const { framing, findings: framed } = frameUp(rod, backing);
  const bench = { rod, framing, book, openings };
  const made = rooms.map((room) => room.parts(decided(room.kind), bench));
  const pieces = makeParts(
    made.flatMap((m) => m.drafts),
    (material) => book.any(material).densityKgM3,
    job.tools.roundingStep,
  );
  const findings = [...rod.findings, ...refused, ...framed, ...made.flatMap((m) => m.findings)];
  return { rod, openings, framing, parts: assign(pieces, rod.runs), findings };
}

type Built = Pick<Design, 'rod' | 'openings' | 'framing' | 'parts' | 'findings'>;

/** Each run's marks from every room, from its own parts there, in order along the run. */
function marksOf(runs: Design['rod']['runs'], parts: readonly Part[]): Readonly<Record<string, readonly Mark[]>> {
  const by = new Map<string, Part[]>();
  for (const part of parts) {
    const key = `${part.run} ${part.kind}`;
    const list = by.get(key);
    if (list) list.push(part);
    else by.set(key, [part]);
  }
  const marks = runs.map((run) =>
    rooms.flatMap((room) => room.marks(run, by.get(`${run.id} ${room.kind}`) ?? [])).sort((a, b) => a.x - b.x),
  );
  return Object.fromEntries(runs.map((run, i) => [run.id, marks[i]]));
}

const RANK = { stop: 0, warn: 1, note: 2 } as const;
const worstFirst = (findings: readonly Finding[]): readonly Finding[] =>
  [...findings].sort((a, b) => RANK[a.severity] - RANK[b.severity]);

/** The elevation of one run: as finished from the front, or its frame alone. Throws when the unit has no such run. */
export const elevation = (made: Design, run: string, kind: 'front' | 'framing'): Drawing =>
  elevationOf(made, run, kind);

/** The rod of one run as a drawing. Throws when the unit has no such run. */
export const rodDrawing = (made: Design, run: string): Drawing => drawRod(made, run);
