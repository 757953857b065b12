import type { StockItem } from '../vocabulary/book';
import type { EndCondition, Job, Run } from '../vocabulary/job';
import type { Issue } from '../vocabulary/result';
import { cutterFaults, sectionFaults } from './cross-profile';
import { stuffIssues } from './cross-stuff';
import type { RoomWords } from './schema';
import { pointer } from './words';

type Path = readonly (string | number)[];

/** What one part of a job that has the right shape asks of another: ids that exist, names used once, outlines that close. */
export function crossIssues(job: Job, rooms: readonly RoomWords[]): Issue[] {
  const { items, fixings } = job.stock;
  const { cutters } = job.tools;
  return [
    ...job.unit.plan.runs.flatMap((run, i) => runIssues(run, ['unit', 'plan', 'runs', i])),
    ...endIssues(job, 'leftEnd'),
    ...endIssues(job, 'rightEnd'),
    ...levelIssues(job),
    ...roomIssues(job, rooms),
    ...usedOnce(
      job.unit.bays.map(({ run, bay }) => `run ${run}, bay ${bay}`),
      ['unit', 'bays'],
      'bay',
    ),
    ...risingIssues(job.fit.bolts, ['fit', 'bolts']),
    ...usedOnce(
      job.survey.walls.map((wall) => wall.name),
      ['survey', 'walls'],
      'name',
    ),
    ...usedOnce(
      items.map((item) => item.id),
      ['stock', 'items'],
      'id',
    ),
    ...usedOnce(
      fixings.map((fixing) => fixing.id),
      ['stock', 'fixings'],
      'id',
    ),
    ...usedOnce(
      cutters.map((cutter) => cutter.id),
      ['tools', 'cutters'],
      'id',
    ),
    ...items.flatMap((item, i) => itemIssues(item, ['stock', 'items', i])),
    ...stuffIssues(items),
    ...cutters.flatMap((cutter, i) =>
      cutterFaults(cutter).map(({ at, message }) => issue([...['tools', 'cutters', i], ...at], message)),
    ),
  ];
}

function runIssues(run: Run, path: Path): Issue[] {
  if (run.rhythm?.by !== 'marks') return [];
  return risingIssues(run.rhythm.marks, [...path, 'rhythm', 'marks']);
}

function risingIssues(values: readonly number[], path: Path): Issue[] {
  const fall = values.findIndex((value, i) => i > 0 && value <= (values[i - 1] ?? value));
  if (fall < 1) return [];
  return [issue([...path, fall], `found ${values[fall]} after ${values[fall - 1]}; allowed are rising lengths`)];
}

function endIssues(job: Job, which: 'leftEnd' | 'rightEnd'): Issue[] {
  const end: EndCondition = job.unit.plan[which];
  if (end.kind !== 'wall' || end.wall === undefined) return [];
  const names = job.survey.walls.map((wall) => wall.name);
  if (names.includes(end.wall)) return [];
  return [issue(['unit', 'plan', which, 'wall'], unknown(end.wall, 'wall', names, 'the survey'))];
}

function levelIssues(job: Job): Issue[] {
  const runs = job.unit.plan.runs.length;
  return job.survey.levels.flatMap(({ run }, i) =>
    run <= runs
      ? []
      : [issue(['survey', 'levels', i, 'run'], `found ${run}; allowed is the number of a run, 1 to ${runs}`)],
  );
}

/** Every decision that names something in the book names one that is there, of the kind asked for. */
function roomIssues(job: Job, rooms: readonly RoomWords[]): Issue[] {
  return rooms.flatMap((room) =>
    Object.entries(room.fields).flatMap(([key, field]): Issue[] => {
      const value = job.unit.elements[room.kind]?.[key];
      const path = ['unit', 'elements', room.kind, key];
      if (field.kind === 'lengths') return Array.isArray(value) ? risingIssues(value, path) : [];
      if (field.kind !== 'stock' || typeof value !== 'string' || (field.optional && value === '')) return [];
      const ids = idsOf(job, field.of);
      return ids.includes(value) ? [] : [issue(path, unknown(value, field.of, ids, 'the book'))];
    }),
  );
}

function idsOf(job: Job, kind: StockItem['kind'] | 'cutter'): string[] {
  if (kind === 'cutter') return job.tools.cutters.map((cutter) => cutter.id);
  return job.stock.items.filter((item) => item.kind === kind).map((item) => item.id);
}

function itemIssues(item: StockItem, path: Path): Issue[] {
  switch (item.kind) {
    case 'sheet':
      return greater(item.width, item.length, [...path, 'width'], 'the length');
    case 'timber':
      return [...greater(item.thickness, item.width, [...path, 'thickness'], 'the width'), ...lengthIssues(item, path)];
    case 'moulding':
      return [
        ...sectionFaults(item.section).map(({ at, message }) => issue([...path, 'section', ...at], message)),
        ...lengthIssues(item, path),
      ];
    case 'hardwood':
      return [];
  }
}

function lengthIssues(item: Extract<StockItem, { kind: 'timber' | 'moulding' }>, path: Path): Issue[] {
  return usedOnce(
    item.lengths.map(({ length }) => length),
    [...path, 'lengths'],
    'length',
  );
}

function greater(value: number, most: number, path: Path, than: string): Issue[] {
  return value <= most ? [] : [issue(path, `found ${value}; allowed is at most ${than}, ${most} mm`)];
}

function usedOnce(names: readonly (string | number)[], path: Path, key: string): Issue[] {
  const first = new Map<string | number, number>();
  return names.flatMap((name, i) => {
    const before = first.get(name);
    if (before === undefined) {
      first.set(name, i);
      return [];
    }
    return [
      issue([...path, i, key], `found ${JSON.stringify(name)} again; it is already at ${pointer([...path, before])}`),
    ];
  });
}

function unknown(name: string, kind: string, known: readonly string[], where: string): string {
  const some = known.slice(0, 12).join(', ') + (known.length > 12 ? ', …' : '');
  return `found ${JSON.stringify(name)}, which is no ${kind} of ${where}; known are ${some || 'none'}`;
}

const issue = (path: Path, message: string): Issue => ({ path: pointer(path), message });
