import { SAME_LENGTH } from '../../base/tolerance';
import type { Backing } from '../../vocabulary/backing';
import type { Bench, Made, Room } from '../../vocabulary/room';
import { blocks } from './blocks';
import { kicked, plain } from './boards';
import { fields } from './fields';
import { tooHigh } from './findings';
import { marks } from './marks';
import { obstacles } from './obstacles';
import type { Decisions } from './strip';

/** Fixings go this far below the upper edge, clear of the moulding (common practice, no source). */
const FIXING_BELOW_EDGE = 30;

/** What stands at the foot of the front: blocks under the pillars, a board along it, or a kick board under the frame. */
export const plinth: Room<typeof fields> = {
  kind: 'plinth',
  label: 'Plinth',
  group: 'front',
  layer: 'plinth',
  fields,
  demands({ style, sheet, height, overhang, recess }, book) {
    const { thickness } = book.item('sheet', sheet);
    if (style === 'kicked')
      return {
        layer: { name: 'plinth', outer: -recess },
        heights: { plinth: height, plinthRuns: 1 },
        footOverhang: 0,
        frameLow: height,
      };
    return {
      layer: { name: 'plinth', on: 'cladding', thickness },
      heights: { plinth: height, ...(style === 'plain' ? { plinthRuns: 1 } : {}) },
      footOverhang: style === 'plain' ? 0 : overhang,
    };
  },
  obstacles,
  /** Boards end on joins; blocks stand under their pillars. */
  mindsJoins: ({ style }) => style !== 'blocks',
  /** A board along the front is fixed near its upper edge too; below that the bottom plate serves. */
  backing: ({ style, height }, { rod }) =>
    style === 'plain' && height <= rod.frameHeight
      ? rod.runs.map(
          (run): Backing => ({
            kind: 'noggin',
            run: run.id,
            z: height - FIXING_BELOW_EDGE,
            from: 0,
            to: run.length,
            reason: 'plinth',
          }),
        )
      : [],
  parts,
  marks,
};

const STYLES = { blocks, plain, kicked };

function parts(decisions: Decisions, bench: Bench): Made {
  const { height, style } = decisions;
  const { frameHeight } = bench.rod;
  if (height > frameHeight + SAME_LENGTH) return { drafts: [], findings: [tooHigh(height, frameHeight)] };
  return STYLES[style](decisions, bench);
}
