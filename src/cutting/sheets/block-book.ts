import type { Kind } from './scaled';

/** Bits of a word that are used: fields must not reach the sign. */
const BITS = 30;
/** Words held by blocks at most, which bounds the memory: 8 MB, and up to five times as much in rows. */
const MOST_WORDS = 2e6;
/** Blocks at most. */
const MOST_BLOCKS = 400_000;

/**
 * Rectangles of pieces, each kept once: how many of each kind are in one, and its sides. Counts are packed in words, of each kind so many bits as
 * its quantity needs and one more, which tells of an overflow.
 */
export interface BlockBook {
  readonly size: number;
  /** No more can be taken in. */
  readonly full: boolean;
  length(block: number): number;
  width(block: number): number;
  /** Of one piece, as it lies. */
  add(kind: number, length: number, width: number): void;
  /**
   * Joins a block, once each, with itself and all that were joined before it and share a side, where there are so many pieces of each kind.
   * Returns how many it was tried with.
   */
  joinWithEarlier(block: number): number;
  /** The two of which a block was joined; or the kind of its only piece. */
  parents(block: number): { readonly kind: number } | readonly [number, number];
}

export function blockBook(
  kinds: readonly Kind[],
  most: { readonly length: number; readonly width: number },
): BlockBook {
  const [fields, words] = fieldsOf(kinds);
  const room = Math.min(MOST_BLOCKS, Math.floor(MOST_WORDS / words));
  /** Of each field the quantity and, above it, a one: what is taken from it without borrowing leaves the one. */
  const limits = new Int32Array(words);
  const guards = new Int32Array(words);
  kinds.forEach(({ quantity }, k) => {
    const { word, bit } = fields[k];
    const guard = 2 ** bitsOf(quantity);
    limits[word] += (quantity + guard) * 2 ** bit;
    guards[word] += guard * 2 ** bit;
  });
  const counts = new Int32Array(room * words);
  const lengths: number[] = [];
  const widths: number[] = [];
  /** Two numbers for each block: its parents, or −1 and its kind. */
  const from: number[] = [];
  const slots = new Int32Array(2 ** Math.ceil(Math.log2(2 * room + 2))).fill(-1);
  const ofLength = new Map<number, Row>();
  const ofWidth = new Map<number, Row>();
  let size = 0;

  /** Takes in the block whose counts stand behind the last one, unless it is there already. */
  function take(length: number, width: number, first: number, second: number): void {
    const at = size * words;
    let hash = length;
    for (let i = 0; i < words; i++) hash = Math.imul(hash ^ counts[at + i] ^ (hash >>> 15), 0x9e3779b1);
    let slot = (hash ^ (hash >>> 16)) & (slots.length - 1);
    for (; slots[slot] >= 0; slot = (slot + 1) & (slots.length - 1)) if (same(slots[slot], at, length)) return;
    slots[slot] = size;
    lengths.push(length);
    widths.push(width);
    from.push(first, second);
    size++;
  }
  /** The same pieces have the same area: with the length the width is known. */
  function same(block: number, at: number, length: number): boolean {
    if (lengths[block] !== length) return false;
    for (let i = 0; i < words; i++) if (counts[block * words + i] !== counts[at + i]) return false;
    return true;
  }
  /** With all of a row, which share the side `shared`. */
  function join(block: number, row: Row, shared: 'length' | 'width'): void {
    const { data, end } = row;
    const own = shared === 'length' ? widths[block] : lengths[block];
    const longest = (shared === 'length' ? most.width : most.length) - own;
    const p = block * words;
    others: for (let r = 0; r < end && size < room; r += words + 2) {
      const other = data[r + 1];
      if (other > longest) continue;
      const at = size * words;
      for (let i = 0; i < words; i++) {
        const sum = counts[p + i] + data[r + 2 + i];
        if (((limits[i] - sum) & guards[i]) !== guards[i]) continue others;
        counts[at + i] = sum;
      }
      if (shared === 'length') take(lengths[block], own + other, block, data[r]);
      else take(own + other, widths[block], block, data[r]);
    }
  }
  function append(row: Row, block: number, side: number): void {
    if (row.end + words + 2 > row.data.length) {
      const longer = new Int32Array(2 * (row.end + words + 2));
      longer.set(row.data);
      row.data = longer;
    }
    row.data[row.end] = block;
    row.data[row.end + 1] = side;
    for (let i = 0; i < words; i++) row.data[row.end + 2 + i] = counts[block * words + i];
    row.end += words + 2;
  }

  return {
    get size() {
      return size;
    },
    get full() {
      return size >= room;
    },
    length: (block) => lengths[block],
    width: (block) => widths[block],
    add(kind, length, width) {
      if (size >= room) return;
      const at = size * words;
      counts.fill(0, at, at + words);
      counts[at + fields[kind].word] = 2 ** fields[kind].bit;
      take(length, width, -1, kind);
    },
    joinWithEarlier(block) {
      const [length, width] = [lengths[block], widths[block]];
      const above = rowOf(ofLength, length);
      const beside = rowOf(ofWidth, width);
      // Itself too, for there may be two of it.
      append(above, block, width);
      append(beside, block, length);
      join(block, above, 'length');
      join(block, beside, 'width');
      return (above.end + beside.end) / (words + 2);
    },
    parents: (block) => (from[2 * block] < 0 ? { kind: from[2 * block + 1] } : [from[2 * block], from[2 * block + 1]]),
  };
}

/** Blocks that share a side, one after the other in memory: number, other side, counts. */
interface Row {
  data: Int32Array;
  end: number;
}

function rowOf(rows: Map<number, Row>, side: number): Row {
  const row = rows.get(side) ?? { data: new Int32Array(0), end: 0 };
  if (row.end === 0) rows.set(side, row);
  return row;
}

const bitsOf = (quantity: number): number => Math.ceil(Math.log2(quantity + 1));

interface Field {
  readonly word: number;
  readonly bit: number;
}

/** Where each kind's count stands, and how many words there are. */
function fieldsOf(kinds: readonly Kind[]): [readonly Field[], number] {
  let [word, bit] = [0, 0];
  const all = kinds.map(({ quantity }) => {
    const needed = bitsOf(quantity) + 1;
    if (bit + needed > BITS) [word, bit] = [word + 1, 0];
    const field = { word, bit };
    bit += needed;
    return field;
  });
  return [all, word + 1];
}
