import type { Part } from '../../vocabulary/part';
import type { Settings } from '../../vocabulary/set-up';
import { bevelSetUps, profileSetUps, workSetUps } from './bench';
import { CAUTIONS, oversizeCaution, ROUTER_CAUTION } from './care';
import { grooveSetUps } from './grooves';
import { piecesMade } from './pieces-made';
import { barsWork, type PlannedBatch, setUpsOf, sheetWork } from './saws';

export interface SettingsOptions {
  /** Of the saw that parts blocks of a moulded strip, mm; absent: that of their sheets. */
  readonly blockKerf?: number;
  /** How many settings may be weighed in looking for a better order; 0: the first good one. Absent: about a tenth of a second of work. */
  readonly patience?: number;
}

/**
 * All the work of the batches gathered by what is set for it, in the order of the trade: sheets are ripped and cross-cut, strips are moulded, bars
 * and blocks are cut to length, edges and ends that are not square are cut, and then grooves are run on boards of their final size.
 * @param parts of the design, where there is one: what is moulded, bevelled and grooved is theirs to say
 */
export function settingsOf(
  planned: readonly PlannedBatch[],
  parts: readonly Part[] = [],
  { blockKerf, patience }: SettingsOptions = {},
): Settings {
  const { strips, blocks, uncutEnds, oversize } = piecesMade(planned, parts, blockKerf);
  const sheets = setUpsOf(sheetWork(planned), 'panel saw', patience);
  const isWide = ({ batch }: PlannedBatch): boolean => batch.saw === 'panel saw';
  const narrow = setUpsOf(
    barsWork(
      planned.filter((one) => !isWide(one)),
      blocks,
    ),
    'mitre saw',
    patience,
  );
  const wide = setUpsOf(barsWork(planned.filter(isWide), []), 'panel saw', patience);
  const profiles = profileSetUps(strips, parts);
  const grooves = grooveSetUps(parts);
  return {
    sheets: sheets.setUps,
    profiles,
    lengths: [...narrow.setUps, ...wide.setUps],
    bevels: bevelSetUps(parts, uncutEnds),
    grooves,
    work: workSetUps(parts),
    moves: sheets.moves + narrow.moves + wide.moves,
    movesAsDrawn: sheets.movesAsDrawn + narrow.movesAsDrawn + wide.movesAsDrawn,
    cautions: [
      ...CAUTIONS,
      ...(oversize > 0 ? [oversizeCaution(oversize)] : []),
      ...(profiles.length + grooves.length > 0 ? [ROUTER_CAUTION] : []),
    ],
  };
}
