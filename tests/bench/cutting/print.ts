import { columns } from '../../../src/cli/columns';

/** A table with its heading, where its data are from, and what it is held to. */
export interface Table {
  readonly heading: string;
  readonly origin: string;
  readonly rows: readonly (readonly string[])[];
  readonly holds: readonly Held[];
}

/** A bound that doesn't depend on the machine but for what it can do in the time given. */
export interface Held {
  readonly what: string;
  readonly found: number;
  readonly bound: number;
  /** At most the bound, or at least. */
  readonly way: 'most' | 'least';
  readonly unit: string;
}

export const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
export const mean = (numbers: readonly number[]): number => (numbers.length === 0 ? 0 : sum(numbers) / numbers.length);
/** How far above, in percent. */
export const above = (found: number, reference: number): number => 100 * (found / reference - 1);

export const percent = (value: number): string => `${value.toFixed(2)} %`;
export const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`;
export const plain = (value: number): string => String(Math.round(value * 100) / 100);

const NOISE = 1e-9;

export function tableText({ heading, origin, rows, holds }: Table): string {
  const held = holds.map(({ what, found, bound, way, unit }) => {
    const good = way === 'most' ? found <= bound + NOISE : found >= bound - NOISE;
    return `${what}: ${Number(found.toFixed(3))} ${unit}, at ${way} ${bound} ${unit}: ${good ? 'holds' : 'does not hold'}\n`;
  });
  return `\n## ${heading}\n${origin}\n\n${columns(rows)}${held.join('')}`;
}
