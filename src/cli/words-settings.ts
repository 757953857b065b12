import { formatLength } from '../base/lengths';
import { caresOf, type PlannedBatch } from '../cut';
import type { BevelSetUp, Dial, GroovePass, GrooveSetUp, ProfileSetUp, SawSetUp, Settings } from '../vocabulary/set-up';

const mm = (length: number): string => formatLength(length, 'mm');
const deg = (angle: number): string => `${Number(angle.toFixed(2))}°`;

/** All settings of saw and router in the order of the work, each with what is cut at it. Lengths in mm, angles from square. */
export function settingsText(settings: Settings, planned: readonly PlannedBatch[]): string {
  const names = new Map(planned.map(({ batch }) => [batch.id, batch.name]));
  const kinds = new Map(planned.map(({ batch }) => [batch.id, batch.problem.kind]));
  const of = (batch: string): string =>
    `${names.get(batch) ?? batch}, ${kinds.get(batch) === 'bars' ? 'bar' : 'sheet'}`;
  const numbered = (title: string, lines: readonly string[]): readonly string[] =>
    lines.length > 0 ? ['', title, ...lines.map((line, i) => `  ${i + 1}. ${line}`)] : [];
  const careful = <T extends { readonly care: readonly string[] }>(
    title: string,
    all: readonly T[],
    words: (one: T) => string,
  ): readonly string[] => [
    ...numbered(title, all.map(words)),
    ...caresOf(all).map(([care, numbers]) => `  at ${numbers.join(', ')}: ${care}`),
  ];
  const atSaw = (title: string, all: readonly SawSetUp[]): readonly string[] =>
    careful(title, all, (one) => sawWords(one, of));
  const lengthsAt = (saw: SawSetUp['saw'], title: string): readonly string[] =>
    atSaw(
      title,
      settings.lengths.filter((one) => one.saw === saw),
    );
  const lines = [
    `settings: ${settings.moves} times something is set in this order, ${settings.movesAsDrawn} times bar by bar and sheet by sheet`,
    ...settings.cautions.map((caution) => `  ${caution}`),
    ...atSaw('sheets', settings.sheets),
    ...careful('mouldings run on strips and edges', settings.profiles, profileWords),
    ...lengthsAt('mitre saw', 'lengths, at the mitre saw'),
    ...lengthsAt('panel saw', 'lengths of wide blanks, at the panel saw or along a guide'),
    ...numbered('bevels and mitres of boards', settings.bevels.map(bevelWords)),
    ...numbered('grooves', settings.grooves.map(grooveWords)),
    ...numbered(
      'other work',
      settings.work.map(({ what, marks }) => `${what}: ${marks.join(', ')}`),
    ),
  ];
  return lines.map((line) => `${line}\n`).join('');
}

const DIALS: Readonly<Record<Dial, (value: number) => string>> = {
  'rip fence': (value) => `rip fence ${mm(value)}`,
  'cross-cut stop': (value) => `cross-cut stop ${mm(value)}`,
  'length stop': (value) => `stop ${mm(value)}`,
  mitre: (value) => (value === 0 ? 'square' : `turned ${deg(Math.abs(value))} ${value > 0 ? 'right' : 'left'}`),
  tilt: (value) => (value === 0 ? 'upright' : `tilted ${deg(Math.abs(value))} ${value > 0 ? 'right' : 'left'}`),
};

function sawWords({ at, cuts, blocks }: SawSetUp, of: (batch: string) => string): string {
  const stands = (Object.entries(at) as [Dial, number][]).map(([dial, value]) => DIALS[dial](value)).join(', ');
  const batches = [...new Set(cuts.map(({ batch }) => batch))];
  const done = batches.map((batch) => {
    const there = cuts.filter((one) => one.batch === batch);
    const numbers = (index: number): string =>
      there.flatMap((one) => (one.index === index ? [one.cut] : [])).join(', ');
    const each = [...new Set(there.map(({ index }) => index))].map((index) => `${index + 1} (${numbers(index)})`);
    return `${of(batch)} ${each.join(', ')}`;
  });
  const strips = blocks.map(({ marks }) => marks.join(', ')).filter(Boolean);
  const freed = [...cuts.flatMap(({ marks }) => marks), ...strips];
  return [
    `${stands || 'by eye'}: ${[...done, ...(strips.length > 0 ? ['blocks off their strips'] : [])].join('; ')}`,
    ...(freed.length > 0 ? [`gives ${freed.join(', ')}`] : []),
  ].join(' – ');
}

const profileWords = ({ cutter, edge, passes }: ProfileSetUp): string =>
  `${cutter} along the ${edge}: ${passes.map(({ marks, length }) => `${marks.join('+')} (${mm(length)})`).join(', ')}`;

const bevelWords = ({ of, tiltDeg, mitreDeg, passes }: BevelSetUp): string =>
  `${of === 'edge' ? 'long edge' : 'end'}${tiltDeg ? `, tilted ${deg(tiltDeg)}` : ''}${mitreDeg ? `, turned ${deg(mitreDeg)}` : ''}: ${passes
    .map(({ fence, marks }) => `at ${mm(fence)} ${marks.join(', ')}`)
    .join('; ')}`;

const grooveWords = ({ fence, radius, width, depth, passes }: GrooveSetUp): string =>
  `fence ${mm(fence)} from the cutter's centre, radius ${mm(radius)}, ${mm(depth)} deep, ${mm(width)} wide: ${passes.map(passWords).join(', ')}`;

function passWords({ mark, groove, against, stops }: GroovePass): string {
  const stopped = stops ? `, blocks at ${mm(stops.begin)} and ${mm(stops.end)}` : '';
  return `${mark} no. ${groove} (${against} edge to the fence${stopped})`;
}
