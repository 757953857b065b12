import type { Args } from './args';
import type { Channels } from './files';

/** One thing the program does. */
export interface Command {
  readonly usage: string;
  readonly help: string;
  /** Options it takes. */
  readonly takes: readonly string[];
  run(args: Args, channels: Channels): number | Promise<number>;
}
