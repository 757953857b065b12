import { figures } from '../base/figure';
import { layoutWords } from '../exports/layout-words';
import { siteRows } from '../exports/making';
import { rooms } from '../flow';
import type { Design } from '../vocabulary/design';
import type { FixingLine, FixingMap, Layout, Making } from '../vocabulary/making';
import { columns } from './columns';

/** The sections as a table for reading on a screen, each breach on a line of its own below. */
export function sectionsText({ job, sections }: Design): string {
  const size = figures(job);
  const at = (point: readonly number[]): string => point.map((v) => size(v)).join(' ');
  const rows = sections.map((s) => [
    s.id,
    s.pieces.map(({ run, from, to }) => `${run} ${size(from)}–${size(to)}`).join(', '),
    String(s.parts.length),
    [s.size.length, s.size.depth, s.size.height].map((v) => size(v)).join(' × '),
    `${s.weightKg.toFixed(1)} kg`,
    at(s.centreOfGravity),
    s.liftingPoints.map(at).join(' and '),
  ]);
  const broken = sections.flatMap((s) =>
    s.breaches.map(
      ({ what, value, limit, source }) =>
        `${s.id}: ${what} is ${value.toFixed(1)}, ${limit.toFixed(1)} allowed (${source})\n`,
    ),
  );
  const head = [
    'section',
    'pieces',
    'parts',
    'length × depth × height',
    'weight',
    'balances at x y z',
    'lift at x y z',
  ];
  return columns([head, ...rows]) + broken.join('');
}

const amount = (value: number, unit: FixingLine['unit']): string =>
  unit === 'pieces' ? String(Math.round(value)) : `${value.toFixed(unit === 'g' ? 0 : 1)} ${unit}`;

/** What there is to buy. */
export const fixingsText = ({ fixings }: Making): string =>
  columns([
    ['fixing', 'counted', 'spare', 'packs'],
    ...fixings.totals.map((l) => [
      l.name,
      amount(l.amount, l.unit),
      amount(l.spare, l.unit),
      l.packs > 0 ? String(l.packs) : 'not in the stock book',
    ]),
  ]);

/** The fixings of each part. */
export const partFixingsText = ({ fixings }: Making): string =>
  columns([
    ['part', 'fixing', 'amount', 'how', 'rule'],
    ...fixings.parts.map((l) => [l.part, l.name, amount(l.amount, l.unit), l.how, l.rule]),
  ]);

/** The spacers, and how few there could be. */
export function spacersText({ job }: Design, { spacers }: Making, layouts: readonly Layout[]): string {
  const size = figures(job);
  const rows = spacers.map((s) => [size(s.shopLength), String(s.times), s.where.join(', ')]);
  return columns([['spacer', 'times', 'where'], ...rows]) + fewer(layouts, size);
}

/** The layout with the fewest spacers, where it has fewer than the present one. */
function fewer(layouts: readonly Layout[], size: (mm: number) => string): string {
  const now = layouts.find((l) => l.decisions.length === 0);
  const [best] = layouts;
  if (!now || !best || best.spacers >= now.spacers)
    return `${now?.spacers ?? 0} different spacers; no layout within the decisions needs fewer\n`;
  return `${now.spacers} different spacers; ${best.spacers} with: ${layoutWords(best, rooms, size)}\n`;
}

/** The order of assembly, a line for each step. */
export const assemblyText = ({ steps }: Making): string => {
  const rows = steps.map((s) => [String(s.number), s.place, s.section ?? '', s.what, s.parts.join(' ')]);
  return columns([['step', 'place', 'section', 'what', 'parts'], ...rows]);
};

/** Timber behind the skin. */
export function mapText({ job }: Design, maps: readonly FixingMap[]): string {
  const size = figures(job);
  const rows = maps.flatMap(({ run, datum, timber }) =>
    timber.map((t) => [run, datum, size(t.from), size(t.to), size(t.low), size(t.high), t.name, t.part]),
  );
  return columns([['run', 'from the', 'from', 'to', 'low', 'high', 'timber', 'part'], ...rows]);
}

/** What waits on site, and what had to be assumed. */
export function siteText({ job }: Design, { site }: Making): string {
  const size = figures(job);
  const optional = (value: number | undefined): string => (value === undefined ? '' : size(value));
  const rows = siteRows(site).map((r) => [
    r.what,
    r.run,
    optional(r.x),
    optional(r.length),
    size(r.depth),
    optional(r.left),
    r.where,
  ]);
  const head = ['what', 'run', 'x', 'length', 'most', 'left on', 'where'];
  return columns([head, ...rows]) + (site.notes ?? []).map((note) => `${note}\n`).join('');
}
