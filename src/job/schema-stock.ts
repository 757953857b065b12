import { z } from 'zod';
import type { Cutter } from '../vocabulary/book';
import type { Segment, Vec2 } from '../vocabulary/geometry';
import type { StockBook, Tools } from '../vocabulary/job';
import { fixingFields, MOST, stockFields, toolFields } from './fields';
import { group, id, listOf, numberOf, says, text, toldApartBy, valuesOf } from './leaf';
import { anyOf } from './words';

const name = text('Name', 200, 1);
const item = { id: id(), name, densityKgM3: numberOf(stockFields.densityKgM3) };

const lengths = listOf(
  group({ length: numberOf(stockFields.length), pricePence: numberOf(stockFields.pricePence) }),
  1,
  MOST.stockLengths,
  'stock lengths',
);

function point(coordinate: z.ZodType<number>): z.ZodType<Vec2> {
  return z.tuple([coordinate, coordinate], says('a point: two lengths in mm'));
}

function segments(at: z.ZodType<Vec2>): z.ZodType<Segment[]> {
  return listOf(group({ to: at, radius: numberOf(stockFields.radius).optional() }), 1, MOST.segments, 'segments');
}

const sectionPoint = point(numberOf(stockFields.section));
const cutPoint = point(numberOf(stockFields.cut));

const stockItem = z.discriminatedUnion(
  'kind',
  [
    group({
      kind: z.literal('sheet'),
      ...item,
      stuff: id()
        .meta({
          title: 'Cut together with',
          description:
            'What it is a sheet of: sheets that say the same word here are one stuff in several sizes. Left out: its own id.',
        })
        .optional(),
      grain: (valuesOf(stockFields.grain) as z.ZodType<boolean>).optional(),
      length: numberOf(stockFields.length),
      width: numberOf(stockFields.sheetWidth),
      thickness: numberOf(stockFields.thickness),
      pricePence: numberOf(stockFields.pricePence),
    }),
    group({
      kind: z.literal('timber'),
      ...item,
      width: numberOf(stockFields.width),
      thickness: numberOf(stockFields.thickness),
      lengths,
    }),
    group({
      kind: z.literal('moulding'),
      ...item,
      section: group({ start: sectionPoint, segments: segments(sectionPoint) }),
      lengths,
    }),
    group({
      kind: z.literal('hardwood'),
      ...item,
      thickness: numberOf(stockFields.thickness),
      maxLength: numberOf(stockFields.maxLength),
      pricePencePerM2: numberOf(stockFields.pricePencePerM2),
    }),
  ],
  toldApartBy('kind', ['sheet', 'timber', 'moulding', 'hardwood']),
);

const FIXINGS = ['screw', 'brad', 'bolt', 'dowel', 'adhesive'] as const;

const fixing = group({
  id: id(),
  name,
  kind: z.enum(FIXINGS, says(anyOf(FIXINGS.map((kind) => `"${kind}"`)))),
  diameter: numberOf(fixingFields.diameter),
  length: numberOf(fixingFields.length),
  pack: numberOf(fixingFields.pack),
  pricePence: numberOf(stockFields.pricePence),
});

const cutter: z.ZodType<Cutter> = group({ id: id(), name, start: cutPoint, segments: segments(cutPoint) });

export const stockBook: z.ZodType<StockBook> = group({
  items: listOf(stockItem, 1, MOST.items, 'things in stock'),
  fixings: listOf(fixing, 0, MOST.fixings, 'fixings'),
});

export const tools: z.ZodType<Tools> = group({
  sawKerf: numberOf(toolFields.sawKerf),
  mitreSawKerf: numberOf(toolFields.mitreSawKerf),
  mostTiltDeg: numberOf(toolFields.mostTiltDeg).default(toolFields.mostTiltDeg.default),
  roundingStep: numberOf(toolFields.roundingStep),
  cutters: listOf(cutter, 0, MOST.cutters, 'cutters'),
});
