import type { DecisionsOf } from '../../vocabulary/field';
import type { Finding } from '../../vocabulary/finding';
import type { Rod, RodRun } from '../../vocabulary/rod';
import type { Bench } from '../../vocabulary/room';
import type { fields } from './fields';
import { boardStandsProud, meetInBay, noBoard, pastTop, skirtingInTheWay, tooLow } from './piece-findings';
import { LEAST_PIECE, type PieceAt, pieceOf, type Which } from './pieces';

export interface BasesAndCaps {
  readonly base?: PieceAt;
  readonly cap?: PieceAt;
  readonly findings: readonly Finding[];
}

/** The bases and caps that can be made between `low` and the underside of the top. */
export function basesAndCaps(
  decided: DecisionsOf<typeof fields>,
  { rod, book }: Pick<Bench, 'rod' | 'book'>,
  low: number,
): BasesAndCaps {
  const findings: Finding[] = [];
  const wanted = (which: Which): number => {
    const height = decided[`${which}Height`];
    if (height === 0 || height >= LEAST_PIECE) return height;
    findings.push(tooLow(which, height, LEAST_PIECE));
    return 0;
  };
  const [baseHeight, capHeight] = [wanted('base'), wanted('cap')];
  if (baseHeight + capHeight === 0) return { findings };
  const clear = rod.frameHeight - low - baseHeight - capHeight;
  if (clear < LEAST_PIECE) return { findings: [...findings, noBoard(clear, LEAST_PIECE)] };
  const board = rod.layers.pillar.outer - rod.layers.pillar.inner;
  const made = (which: Which, from: number, to: number): PieceAt | undefined => {
    if (to === from) return undefined;
    const piece = pieceOf(which, decided, book, { low: from, high: to });
    if (which === 'base' && meetsSkirting(rod, piece)) {
      findings.push(skirtingInTheWay(rod.heights.skirting, piece.low));
      return undefined;
    }
    if (piece.thickness < board) findings.push(boardStandsProud(which, piece.thickness, board));
    const out = rod.layers.pillar.inner + piece.thickness;
    if (which === 'cap' && out > rod.top.overhang) findings.push(pastTop(out, rod.top.overhang));
    return piece;
  };
  const base = made('base', low, low + baseHeight);
  const cap = made('cap', rod.frameHeight - capHeight, rod.frameHeight);
  return { ...(base ? { base } : {}), ...(cap ? { cap } : {}), findings };
}

/** Skirting runs from foot to foot; where it is higher than the blocks, a base must not be wider than they are. */
function meetsSkirting({ heights, runs }: Rod, { low, overhang }: PieceAt): boolean {
  if ((heights.plinthRuns ?? 0) > 0 || (heights.skirting ?? 0) <= low) return false;
  return runs.some((run) =>
    run.pillars.some(
      (p) =>
        (p.where !== 'left' && overhang > p.from - p.footFrom) || (p.where !== 'right' && overhang > p.footTo - p.to),
    ),
  );
}

/** The first bay of a run too narrow for two pieces that stand into it. */
export function narrowBay(run: RodRun, { which, overhang }: PieceAt): Finding | undefined {
  const bay = run.bays.find((b) => b.to - b.from < 2 * overhang);
  return bay ? meetInBay(which, run.id, bay.index + 1, bay.to - bay.from, 2 * overhang) : undefined;
}
