import { FIXINGS } from './fixings';
import type { Foreign, Step } from './migrate';
import { STOCK_ITEMS } from './stock';

/** Stock that came into the book with version 2, from which decisions new then start. */
const NEW_STOCK = /^(rail-|undertop-|sawn-25x)/;
const NEW_FIXINGS = /^(screw-4x30|brad-64)$/;

/**
 * Version 2 brought sections, what stands behind the front, openings and allowances for walls. A unit of version 1 stays what it was: made in one
 * piece, with nothing behind it, frames up to the walls and blocks square at free ends; its book gets the stock that the new decisions need.
 */
export const toVersion2: Step = {
  from: 1,
  upgrade: (file) => ({
    ...file,
    fit: { tolerance: 0, scribe: 0 },
    ...(isGroup(file.stock) ? { stock: stocked(file.stock) } : {}),
    ...(isGroup(file.unit) ? { unit: plain(file.unit) } : {}),
  }),
};

function stocked(stock: Foreign): Foreign {
  return {
    ...stock,
    items: withNew(
      stock.items,
      STOCK_ITEMS.filter(({ id }) => NEW_STOCK.test(id)),
    ),
    fixings: withNew(
      stock.fixings,
      FIXINGS.filter(({ id }) => NEW_FIXINGS.test(id)),
    ),
  };
}

/** A list with what it lacks; what is no list stays for the schema to refuse. */
function withNew(list: unknown, things: readonly { readonly id: string }[]): unknown {
  if (!Array.isArray(list)) return list;
  const there = new Set(list.map((item) => (isGroup(item) ? item.id : undefined)));
  return [...list, ...things.filter(({ id }) => !there.has(id))];
}

function plain(unit: Foreign): Foreign {
  const elements = isGroup(unit.elements) ? unit.elements : {};
  const plinth = isGroup(elements.plinth) ? elements.plinth : {};
  return {
    ...unit,
    joins: { by: 'none' },
    elements: { ...elements, plinth: { ...plinth, endReturn: false }, carcass: { build: false } },
  };
}

const isGroup = (value: unknown): value is Foreign =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
