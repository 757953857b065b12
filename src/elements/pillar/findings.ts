import { tenth } from '../../base/tenth';
import type { Finding } from '../../vocabulary/finding';

const PATH = '/unit/elements/pillar';
const source = 'geometry of the board';

export const noHeight = (blocks: number, top: number): Finding => ({
  severity: 'stop',
  rule: 'pillar-no-height',
  subject: { path: PATH },
  value: blocks,
  limit: top,
  message: `Pillars have no height: the blocks reach ${tenth(blocks)} mm and the top begins at ${tenth(top)} mm.`,
  source,
  remedy: 'Lower the plinth blocks or raise the unit.',
});

export const noFlutes = (reason: string): Finding => ({
  severity: 'stop',
  rule: 'flutes-do-not-fit',
  subject: { path: `${PATH}/flutes` },
  message: `Flutes can't be run: ${reason}.`,
  source,
  remedy: 'Fewer or shallower flutes, or less margin. The pillars are drawn plain.',
});

/** A narrow corner board takes fewer flutes of the same cutter. */
export const fewerFlutes = (run: string, face: number, flutes: number, wanted: number): Finding => ({
  severity: 'note',
  rule: 'fewer-flutes',
  subject: { run, path: `${PATH}/cornerWidth` },
  value: flutes,
  limit: wanted,
  message: `Corner boards show ${tenth(face)} mm and take ${flutes} of the ${wanted} flutes, run with the same cutter.`,
  source,
  remedy: 'Widen the corner boards if they should have as many as the others.',
});

/** A narrow corner board keeps less plain beside its flutes than the others. */
export const lessMargin = (made: number, wished: number): Finding => ({
  severity: 'note',
  rule: 'flute-margin-less',
  subject: { path: `${PATH}/cornerWidth` },
  value: made,
  limit: wished,
  message: `Beside the flutes of corner boards a margin of ${tenth(wished)} mm is wished; the boards are narrow, and ${tenth(made)} mm is left.`,
  source,
  remedy: 'Widen the corner boards if they should have as much as the others.',
});

/** At a sharp corner the mitre may take more than the whole board. */
export const tooNarrow = (run: string, where: string, face: number, need: number): Finding => ({
  severity: 'stop',
  rule: 'corner-board-too-narrow',
  subject: { run, path: `${PATH}/cornerWidth` },
  value: face,
  limit: need,
  message: `The corner board at the ${where} end of run ${run} shows ${tenth(face)} mm; its mitre alone needs ${tenth(need)} mm.`,
  source,
  remedy: 'Widen the corner boards, use thinner stuff, or turn the corner less. The board is left out.',
});

/** Stops that leave less of a flute than it is wide. */
export const noRoomForStops = (value: number, limit: number): Finding => ({
  severity: 'stop',
  rule: 'flutes-stopped-away',
  subject: { path: `${PATH}/fluteStop` },
  value,
  limit,
  message: `Pillar boards ${tenth(value)} mm high leave nothing of stopped flutes; they need ${tenth(limit)} mm.`,
  source,
  remedy: 'Leave less plain at the ends, or run the flutes through. The flutes are left out.',
});

/** A pillar hard by an inside corner that has none of its own. */
export const pastMitre = (run: string, pillar: number, value: number): Finding => ({
  severity: 'stop',
  rule: 'pillar-past-mitre',
  subject: { run, path: `${PATH}/atCorners` },
  value,
  limit: 0,
  message: `Pillar ${pillar} of run ${run} would stand ${tenth(value)} mm past the mitre of the corner.`,
  source: 'geometry of the corner',
  remedy: 'Move the pillar, or have pillars at corners. It is left out.',
});
