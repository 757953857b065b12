import { boundsOf } from '../../src/base/outline';
import type { StockItem } from '../../src/vocabulary/book';
import type { Job } from '../../src/vocabulary/job';

/*
 * What a job asks for, read from the job alone: none of the setting-out's own working is used, so that it can be held against it.
 */

export interface ExpectedEnd {
  readonly kind: 'wall' | 'free' | 'corner';
  readonly turnDeg: number;
  /** tan(turn/2): what a layer gains here for each mm of its offset. */
  readonly tan: number;
  readonly toReturn: boolean;
  /** A flap hangs here, over a gap of so much, mm; the end is free. */
  readonly flap?: number;
}

export interface ExpectedRun {
  readonly id: string;
  readonly jobIndex: number | null;
  readonly left: ExpectedEnd;
  readonly right: ExpectedEnd;
}

const corner = (turnDeg: number, toReturn: boolean): ExpectedEnd => ({
  kind: 'corner',
  turnDeg,
  tan: Math.tan((turnDeg * Math.PI) / 360),
  toReturn,
});
const plain = (kind: 'wall' | 'free'): ExpectedEnd => ({ kind, turnDeg: 0, tan: 0, toReturn: false });

/** Where one of the job's runs meets the next: a corner, or a flap if they lie in one line and one is wished. */
const meeting = ({ flap, deflectionDeg }: Job['unit']['plan']['runs'][number]): ExpectedEnd =>
  flap && deflectionDeg === 0 ? { ...plain('free'), flap: flap.width } : corner(deflectionDeg, false);

/** The runs from left to right with their corners and flaps. A return turns 90° and ends free. */
export function expectedRuns({ unit: { plan } }: Job): readonly ExpectedRun[] {
  const { runs, leftEnd, rightEnd } = plan;
  const outer = (end: typeof leftEnd): ExpectedEnd => (end.kind === 'return' ? corner(90, true) : plain(end.kind));
  const list: ExpectedRun[] = runs.map((_, i) => ({
    id: String.fromCharCode(65 + i),
    jobIndex: i,
    left: i === 0 ? outer(leftEnd) : meeting(runs[i - 1]),
    right: i === runs.length - 1 ? outer(rightEnd) : meeting(runs[i]),
  }));
  if (leftEnd.kind === 'return')
    list.unshift({ id: 'RL', jobIndex: null, left: plain('free'), right: corner(90, false) });
  if (rightEnd.kind === 'return')
    list.push({ id: 'RR', jobIndex: null, left: corner(90, false), right: plain('free') });
  return list;
}

/** The stock item that a decision names. */
export const chosen = (job: Job, kind: string, key: string): StockItem => {
  const id = job.unit.elements[kind][key];
  const item = job.stock.items.find((one) => one.id === id);
  if (!item) throw new Error(`no ${String(id)} in the book`);
  return item;
};

/** Its thickness; of a moulding, how far out it reaches from its back. */
export const thick = (item: StockItem): number =>
  item.kind === 'moulding' ? boundsOf(item.section).max[1] : item.thickness;

export const kicked = (job: Job): boolean => job.unit.elements.plinth.style === 'kicked';

/** Offset of each layer's face from the frame's face (a kicked plinth's lies behind it), and how deep the frame and the top go behind it. */
export function expectedLayers(job: Job): {
  readonly faces: Readonly<Record<string, number>>;
  readonly frameDepth: number;
  readonly stud: number;
  readonly topThickness: number;
} {
  const cladding = thick(chosen(job, 'cladding', 'sheet'));
  const timber = chosen(job, 'frame', 'timber');
  if (timber.kind !== 'timber') throw new Error('the frame is of timber');
  const onEdge = job.unit.elements.frame.lay === 'edge';
  return {
    faces: {
      frame: 0,
      cladding,
      pillar: cladding + thick(chosen(job, 'pillar', 'sheet')),
      plinth: kicked(job)
        ? -(job.unit.elements.plinth.recess as number)
        : cladding + thick(chosen(job, 'plinth', 'sheet')),
      skirting: cladding + thick(chosen(job, 'skirting', 'moulding')),
      panel: cladding + thick(chosen(job, 'panel', 'moulding')),
      top: job.unit.elements.top.overhang as number,
    },
    frameDepth: onEdge ? timber.width : timber.thickness,
    stud: onEdge ? timber.thickness : timber.width,
    topThickness: thick(chosen(job, 'top', 'hardwood')),
  };
}
