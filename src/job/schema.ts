import { z } from 'zod';
import type { Fields } from '../vocabulary/field';
import type { BayWish, Flap, Job, Joins, Opening, Plan, Survey } from '../vocabulary/job';
import type { Room } from '../vocabulary/room';
import { endFields, jobFields, MOST, rhythmFields, runFields, surveyFields, unitFields } from './fields';
import { cuttingFields } from './fields-cutting';
import { bayFields, carryFields, fitFields, flapFields, joinFields, openingFields } from './fields-making';
import { decisionOf, group, listOf, numberOf, says, text, toldApartBy, valuesOf } from './leaf';
import { stockBook, tools } from './schema-stock';
import { anyOf } from './words';

/** What the job file needs to know of a room. */
export type RoomWords = Pick<Room, 'kind' | 'label' | 'layer' | 'fields'>;

/** Layers to which a length may be taken: those that the rooms make, each once. */
export const layersOf = (rooms: readonly RoomWords[]): readonly string[] => [
  ...new Set(rooms.flatMap((room) => (room.layer ? [room.layer] : []))),
];

/** The word that tells a job file from other JSON. */
export const FORMAT = 'counterwright-job';
/** The version of the file that this program writes. */
export const VERSION = 2;

const rhythm = z.discriminatedUnion(
  'by',
  [
    group({ by: z.literal('count'), count: numberOf(rhythmFields.count) }),
    group({ by: z.literal('pitch'), pitch: numberOf(rhythmFields.pitch) }),
    group({ by: z.literal('marks'), marks: listOf(numberOf(rhythmFields.mark), 0, MOST.marks, 'pillar centres') }),
  ],
  toldApartBy('by', ['count', 'pitch', 'marks']),
);

const wallName = text('Wall', 80, 1);

/** The layer to which a length was taken. */
const takenOver = (layers: readonly string[]) =>
  z.enum(layers, says(`a layer: ${anyOf(layers.map((layer) => `"${layer}"`))}`)).meta({
    title: 'Taken over',
    description: 'The layer to which the length was taken.',
  });

const endOf = (layers: readonly string[]) =>
  z.discriminatedUnion(
    'kind',
    [
      group({ kind: z.literal('wall'), wall: wallName.optional() }),
      group({ kind: z.literal('free') }),
      group({ kind: z.literal('return'), length: numberOf(endFields.length), over: takenOver(layers).optional() }),
    ],
    toldApartBy('kind', ['wall', 'free', 'return']),
  );

function plan(layers: readonly string[]): z.ZodType<Plan> {
  const run = group({
    length: numberOf(runFields.length),
    over: takenOver(layers),
    deflectionDeg: numberOf(runFields.deflectionDeg),
    through: valuesOf(runFields.through) as z.ZodType<'this' | 'next'>,
    rhythm: rhythm.optional(),
    flap: (groupOf(flapFields) as unknown as z.ZodType<Flap>).optional(),
  });
  const end = endOf(layers);
  return group({ runs: listOf(run, 1, MOST.runs, 'runs'), leftEnd: end, rightEnd: end });
}

const survey: z.ZodType<Survey> = group({
  walls: listOf(
    group({
      name: wallName,
      directionDeg: numberOf(surveyFields.directionDeg),
      leanDeg: numberOf(surveyFields.leanDeg),
      skirtingHeight: numberOf(surveyFields.skirtingHeight).optional(),
      skirtingThickness: numberOf(surveyFields.skirtingThickness).optional(),
    }),
    0,
    MOST.walls,
    'walls',
  ),
  levels: listOf(
    group({
      run: z.int(says('a run’s number, 1 for the first')).min(1, says('a run’s number, 1 for the first')),
      along: numberOf(surveyFields.along),
      height: numberOf(surveyFields.height),
    }),
    0,
    MOST.levels,
    'levels',
  ),
});

/** A group of fields, each at its default where the file is silent. */
const groupOf = (fields: Fields) =>
  group(Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, decisionOf(field)])));

const runNumber = (least: number) => {
  const told = says(`a run’s number, ${least} or more; 1 for the first`);
  return z.int(told).min(least, told);
};

const joins: z.ZodType<Joins> = z.discriminatedUnion(
  'by',
  [
    group({ by: z.literal('none') }),
    group({ by: z.literal('least') }),
    group({
      by: z.literal('hand'),
      at: listOf(group({ run: runNumber(0), x: numberOf(joinFields.x).optional() }), 0, MOST.joins, 'joins'),
    }),
  ],
  toldApartBy('by', ['none', 'least', 'hand']),
);

const opening = groupOf(openingFields).extend({
  name: text('Opening', 80),
  run: runNumber(1),
}) as unknown as z.ZodType<Opening>;

const bay = groupOf(bayFields).extend({
  run: runNumber(1),
  bay: z.int(says('a bay’s number, 1 for the first')).min(1, says('a bay’s number, 1 for the first')),
}) as unknown as z.ZodType<BayWish>;

function elements(rooms: readonly RoomWords[]) {
  const shape: Record<string, z.ZodType<Job['unit']['elements'][string]>> = {};
  for (const room of rooms) {
    const fields = Object.entries(room.fields).map(([key, field]) => [key, decisionOf(field)] as const);
    shape[room.kind] = group(Object.fromEntries(fields)).prefault({}).meta({ title: room.label });
  }
  return group(shape);
}

/**
 * The shape of a job file: every group strict, every number finite and in the range of its field. Decisions of rooms that the
 * file leaves out take their defaults; anything else left out is an issue. What one part of a file asks of another is in cross.ts.
 */
export function makeSchema(rooms: readonly RoomWords[]): z.ZodType<Job> {
  const layers = layersOf(rooms);
  return group({
    format: z.literal(FORMAT, says(`"${FORMAT}"`)),
    version: z.literal(VERSION, says(`${VERSION}`)),
    name: text('Name of the job', 200),
    maker: group({ name: text('Made by', 200).default('') }).prefault({}),
    client: group({ name: text('Client', 200), contact: text('Contact', 1000) }),
    site: group({ address: text('Address', 1000), notes: text('Notes', 20_000) }),
    units: valuesOf(jobFields.units) as z.ZodType<Job['units']>,
    survey,
    carry: groupOf(carryFields).prefault({}) as unknown as z.ZodType<Job['carry']>,
    fit: groupOf(fitFields).prefault({}) as unknown as z.ZodType<Job['fit']>,
    unit: group({
      name: text('Name of the unit', 200),
      plan: plan(layers),
      height: numberOf(unitFields.height),
      depth: numberOf(unitFields.depth),
      elements: elements(rooms),
      joins: joins.default({ by: 'none' }),
      openings: listOf(opening, 0, MOST.openings, 'openings').default([]),
      bays: listOf(bay, 0, MOST.bays, 'bays').default([]),
    }),
    stock: stockBook,
    tools,
    cutting: groupOf(cuttingFields).prefault({}) as unknown as z.ZodType<Job['cutting']>,
  });
}
