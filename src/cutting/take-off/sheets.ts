import { bareName } from '../../base/bare-name';
import type { Sheet } from '../../vocabulary/book';
import type { Offcut } from '../../vocabulary/cut-plan';
import type { SheetPiece } from '../../vocabulary/cut-problem';
import type { Cutting, Job } from '../../vocabulary/job';
import type { Part } from '../../vocabulary/part';
import type { Taken } from './bars';
import { isMoulded, stripsOf } from './blocks';
import { merged, type Wanted } from './merged';
import { fits, hundredth, leftOn, within } from './sawn';
import { stripOf } from './sides';
import { sheetStock } from './stock';
import { largerThanSheet, type Room } from './too-large';

type Piece = Omit<SheetPiece, 'name' | 'quantity'>;

/** A rectangle to be sawn, and the parts in it; several in a strip that is moulded. */
interface Sawn extends Room {
  readonly parts: readonly Part[];
  readonly layers: number;
}

/** Parts of one stuff, each a rectangle with its length along the grain; what is moulded along its length in strips. */
export function sheets(
  id: string,
  items: readonly Sheet[],
  parts: readonly Part[],
  offcuts: readonly Offcut[],
  { cutting, tools }: Job,
): Taken {
  const [{ thickness, grain = false }] = items;
  const turnable = !grain;
  const { stock, from } = sheetStock(items, offcuts, cutting);
  const rooms = stock.map((one): Room => {
    const trim = one.trim ?? cutting.sheetTrim;
    return { length: within(one.length, trim), width: within(one.width, trim) };
  });
  const over = (part: Part): number => 2 * overSize(part, cutting);
  const longest = Math.min(
    cutting.longestStrip,
    Math.max(...rooms.map((room) => (turnable ? Math.max(room.length, room.width) : room.length))),
  );
  const moulded = parts.filter(isMoulded);
  const most = longest - Math.max(0, ...moulded.map(over));
  const sawn: readonly Sawn[] = [
    ...parts.filter((part) => !isMoulded(part)).map((part) => sawnOf([part], part.size.length + leftOn(part).length)),
    ...stripsOf(moulded, tools.mitreSawKerf, most).map(({ blocks, length }) => sawnOf(blocks, length)),
  ];
  function sawnOf(of: readonly Part[], length: number): Sawn {
    const strip = stripOf(of[0], thickness);
    const more = Math.max(...of.map(over));
    return {
      parts: of,
      layers: strip.layers,
      length: hundredth(length + more),
      width: hundredth(strip.width + leftOn(of[0]).width + more),
    };
  }
  const name = [...new Set(items.map(bareName))].join(' or ');
  const findings = sawn
    .filter((one) => !fitsAny(one, rooms, turnable))
    .flatMap((one) => one.parts.map((part) => largerThanSheet(part, one, rooms, { name, turnable })));
  const wanted = sawn
    .filter((one) => fitsAny(one, rooms, turnable))
    .flatMap(({ parts: of, layers, length, width }) =>
      Array.from(
        { length: layers },
        (): Wanted<Piece> => ({
          piece: { length, width, turnable },
          names: of.map((part) => part.name),
          marks: of.map(({ mark }) => mark),
        }),
      ),
    );
  if (wanted.length === 0) return { findings };
  const { pieces, marks } = merged(wanted);
  return {
    findings,
    batch: {
      id,
      name,
      marks,
      from,
      problem: {
        kind: 'sheets',
        kerf: tools.sawKerf,
        trim: cutting.sheetTrim,
        stages: cutting.stages === 'any' ? undefined : Number(cutting.stages),
        trimsFree: cutting.trimsFree,
        longestCut: cutting.longestCut > 0 ? cutting.longestCut : undefined,
        leastOffcut: { length: cutting.leastLength, width: cutting.leastWidth },
        stock,
        pieces,
      },
    },
  };
}

/** How much larger a part is sawn on each side, to be trimmed afterwards. */
function overSize({ edges, ends }: Part, { oversizeOn, oversize }: Cutting): number {
  if (oversizeOn === 'all') return oversize;
  const worked = edges.length > 0 || ends.some(({ kind }) => kind !== 'square');
  return oversizeOn === 'worked' && worked ? oversize : 0;
}

const fitsAny = (size: Room, rooms: readonly Room[], turnable: boolean): boolean =>
  rooms.some(
    ({ length, width }) =>
      (fits(size.length, length) && fits(size.width, width)) ||
      (turnable && fits(size.length, width) && fits(size.width, length)),
  );
