import type { AnyCutPlan, CutBatch } from '../../vocabulary/cut-plan';
import type { BlockCut, CutOf, Dial, SawSetUp } from '../../vocabulary/set-up';
import { barWork, cutsOfBar } from './bar-cuts';
import { careOfBlock, careOfPiece, careOfSheetCut } from './care';
import { copiesOf } from './copies';
import { schedule } from './schedule';
import { drawnSheet, sheetOrder } from './sheet-cuts';
import { after, DIALS, moved, movesOf, type Needs, needsOf, settingOf, together, UNSET, type Work } from './work';

/** A batch and how it is to be cut. */
export interface PlannedBatch {
  readonly batch: CutBatch;
  readonly plan: AnyCutPlan;
}

/** A block to be cut square off a strip, mm. */
export interface Block extends BlockCut {
  readonly length: number;
}

/** What a task of the saw is for: a cut of a plan, or a block off a strip. */
interface Told {
  readonly cut?: CutOf;
  readonly block?: BlockCut;
  readonly care: readonly string[];
}

export interface SawWork {
  readonly work: Work;
  readonly told: readonly Told[];
}

/** All cuts of all sheets, numbered as drawn. */
export function sheetWork(planned: readonly PlannedBatch[]): SawWork {
  const works: Work[] = [];
  const told: Told[] = [];
  for (const { batch, plan } of planned) {
    const { problem } = batch;
    if (problem.kind !== 'sheets' || plan.kind !== 'sheets') continue;
    const marks = copiesOf(batch, plan);
    plan.sheets.forEach((sheet, index) => {
      const { cuts, work } = drawnSheet(problem, sheet);
      const numbers = new Map(sheetOrder(problem, sheet).order.map((drawn, n) => [drawn, n + 1]));
      works.push(work);
      cuts.forEach((cut, i) => {
        const own = cut.frees.flatMap((freed) => (freed.kind === 'piece' ? marks(index, freed.piece) : []));
        told.push({
          cut: { batch: batch.id, index, cut: numbers.get(i) ?? 0, marks: own },
          care: careOfSheetCut(cut),
        });
      });
    });
  }
  return { work: together(works), told };
}

/** All cuts of all bars, and of strips into blocks. */
export function barsWork(planned: readonly PlannedBatch[], strips: readonly (readonly Block[])[]): SawWork {
  const works: Work[] = [];
  const told: Told[] = [];
  for (const { batch, plan } of planned) {
    const { problem } = batch;
    if (problem.kind !== 'bars' || plan.kind !== 'bars') continue;
    const marks = copiesOf(batch, plan);
    plan.bars.forEach((bar, index) => {
      const { cuts } = cutsOfBar(problem, bar);
      works.push(barWork(cuts));
      for (const cut of cuts) {
        const own = cut.frees.flatMap((freed) => (freed.kind === 'piece' ? marks(index, freed.piece) : []));
        told.push({ cut: { batch: batch.id, index, cut: cut.number, marks: own }, care: careOfPiece(cut.stop) });
      }
    });
  }
  for (const strip of strips) {
    const tasks = strip.map(({ length }, i) => ({
      needs: needsOf({ mitre: 0, tilt: 0, 'length stop': length }),
      opens: [],
      like: strip.length > 1 ? 0 : undefined,
      i,
    }));
    works.push({ tasks, lines: [{ tasks: tasks.map(({ i }) => i), opens: [] }], start: [0] });
    for (const { length, ...block } of strip) told.push({ block, care: careOfBlock(length) });
  }
  return { work: together(works), told };
}

export interface SetUps {
  readonly setUps: readonly SawSetUp[];
  readonly moves: number;
  readonly movesAsDrawn: number;
}

/** Which dials say how large the piece becomes. */
const STOPS = DIALS.flatMap((dial, i) => (dial === 'mitre' || dial === 'tilt' ? [] : [i]));

/** Cuts gathered by what the saw is set to, in an order that can be worked. */
export function setUpsOf({ work, told }: SawWork, saw: SawSetUp['saw'], patience?: number): SetUps {
  const { order, moves } = schedule(work, patience);
  const setUps: { at: Needs; move: readonly Dial[]; cuts: CutOf[]; blocks: BlockCut[]; care: Set<string> }[] = [];
  let standing = UNSET;
  for (const task of order) {
    const { needs } = work.tasks[task];
    const move = moved(needs, standing).map((i) => DIALS[i]);
    const last = setUps.at(-1);
    const goesOn = last && move.length === 0 && sameStops(needs, last.at);
    standing = after(needs, standing);
    const now = goesOn && last ? last : { at: needs, move, cuts: [], blocks: [], care: new Set<string>() };
    if (now === last) now.at = after(needs, now.at);
    else setUps.push(now);
    const { cut, block, care } = told[task];
    if (cut) now.cuts.push(cut);
    else if (block) now.blocks.push(block);
    for (const word of care) now.care.add(word);
  }
  return {
    setUps: setUps.map(({ at, care, ...rest }) => ({
      kind: 'saw',
      saw,
      at: settingOf(at),
      ...rest,
      care: [...care],
    })),
    moves,
    movesAsDrawn: movesOf(work, [...work.tasks.keys()]),
  };
}

/** A cut by eye, without a stop, is not one of those at the stop, and a rip is none of the cross-cuts, even where nothing is moved between them. */
const sameStops = (needs: Needs, at: Needs): boolean =>
  STOPS.every((dial) => (needs[dial] === undefined) === (at[dial] === undefined));
