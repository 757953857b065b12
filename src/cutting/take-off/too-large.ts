import { tenth } from '../../base/tenth';
import type { StockItem } from '../../vocabulary/book';
import type { Finding } from '../../vocabulary/finding';
import type { Part } from '../../vocabulary/part';

/*
 * Parts that no stock can yield. Each is left out of the problem, and said with the joint by which it can be made after all.
 */

const said = (part: Part, more: Omit<Finding, 'severity' | 'subject' | 'source'>): Finding => ({
  severity: 'warn',
  subject: { part: part.mark, run: part.run },
  source: 'sizes from the stock book, less what is trimmed off; joints: common practice, no source',
  ...more,
});

const called = ({ mark, name, where }: Part): string => `${mark} (${name}${where ? `, ${where}` : ''})`;

/** In how many pieces, and how large each is, as equal as can be. */
const divided = (size: number, most: number): readonly [count: number, each: number] => {
  const count = most > 0 ? Math.max(2, Math.ceil(size / most - 1e-9)) : 2;
  return [count, size / count];
};

/** A scarf is cut at a slope of 1 in so many along the bar (common practice, no source). */
const SCARF = 4;

/** A stick that is shorter than the longest bar, but not than what is left within its ends. */
export function longerThanBar(part: Part, length: number, most: number, item: StockItem): Finding {
  // Each joint takes a lap or a slope out of the length.
  const lap = item.kind === 'timber' ? part.size.width : SCARF * part.size.thickness;
  const [count, each] = divided(length, most - lap);
  const how =
    item.kind === 'timber'
      ? `halved over each other for ${tenth(lap)} mm on a stud or post`
      : `scarfed 1 in ${SCARF}, ${tenth(lap)} mm long, over solid backing`;
  return said(part, {
    rule: 'longer-than-bar',
    value: length,
    limit: most,
    message: `${called(part)} is ${tenth(length)} mm long to be sawn; the longest ${item.name} gives ${tenth(most)} mm within its ends. It is not in the cutting plan.`,
    remedy: `Make it in ${count} lengths of ${tenth(each + (lap * (count - 1)) / count)} mm, ${how}; or cut less off the ends of bars; or add a longer length to the stock book.`,
  });
}

export function longerThanBlank(part: Part, length: number, most: number, item: StockItem): Finding {
  const [count, each] = divided(length, most);
  return said(part, {
    rule: 'longer-than-blank',
    value: length,
    limit: most,
    message: `${called(part)} is ${tenth(length)} mm long to be sawn; the longest blank of ${item.name} gives ${tenth(most)} mm. It is not in the cutting plan.`,
    remedy: `Make it in ${count} lengths of ${tenth(each)} mm, butted, kept level with loose tongues or dowels and drawn tight from below with bolts; or enter a longer blank in the stock book.`,
  });
}

/** What a sheet gives within its trimmed edges. */
export interface Room {
  readonly length: number;
  readonly width: number;
}

export function largerThanSheet(
  part: Part,
  size: Room,
  rooms: readonly Room[],
  { name, turnable }: { readonly name: string; readonly turnable: boolean },
): Finding {
  const ways = rooms.flatMap((room) => [room, ...(turnable ? [{ length: room.width, width: room.length }] : [])]);
  const counted = ways.map((room) => ({
    along: room.length > 0 ? Math.ceil(size.length / room.length - 1e-9) : Infinity,
    across: room.width > 0 ? Math.ceil(size.width / room.width - 1e-9) : Infinity,
  }));
  const best = counted.reduce((a, b) => (b.along * b.across < a.along * a.across ? b : a));
  const count = best.along * best.across;
  const largest = rooms.reduce((a, b) => (b.length * b.width > a.length * a.width ? b : a));
  const over = size.length > largest.length || size.width <= largest.width ? 'length' : 'width';
  return said(part, {
    rule: 'larger-than-sheet',
    value: size[over],
    limit: largest[over],
    message: `${called(part)} is ${tenth(size.length)} × ${tenth(size.width)} mm to be sawn; the largest sheet of ${name} gives ${tenth(largest.length)} × ${tenth(largest.width)} mm within its edges. It is not in the cutting plan.`,
    remedy: Number.isFinite(count)
      ? `Make it in ${count} pieces of ${tenth(size.length / best.along)} × ${tenth(size.width / best.across)} mm: butted over a stud, best behind a pillar, where timber is behind it; with a glued loose tongue where none is. Or add a larger sheet to the stock book.`
      : 'Trim less off the edges of the sheet, or add a larger one to the stock book.',
  });
}

/** A set that was to come from one bar and can't. */
export const notFromOne = (parts: readonly Part[], length: number, most: number, item: StockItem): Finding => ({
  severity: 'note',
  rule: 'set-not-from-one-bar',
  subject: { part: parts[0].mark, run: parts[0].run },
  value: length,
  limit: most,
  message: `${parts.map(({ mark }) => mark).join(', ')} together take ${tenth(length)} mm with the saw cuts; the longest ${item.name} gives ${tenth(most)} mm. They come from several bars.`,
  source: 'lengths from the stock book, less what is cut off the ends',
  remedy: 'Nothing to do; or add a longer length to the stock book.',
});
