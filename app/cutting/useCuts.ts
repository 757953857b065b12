import { useEffect, useMemo, useState } from 'react';
import type { BarCuts, SheetCuts } from '../../src/vocabulary/set-up';
import { cutters } from './board';
import { laidOf } from './copies';
import { cutsAt } from './cuts-at';
import type { Shown } from './held';

/** Pieces of which the cuts are put in order on the page; of a thousand it takes a tenth of a second, and the worker does it. */
const AT_ONCE = 150;

/** A search that finds better plans one after the other is not kept from it by asking for the cuts of each, ms. */
const QUIET = 300;

type Cuts = SheetCuts | BarCuts;

/** The cuts of the sheet or bar in hand; undefined while they are put in order elsewhere. */
export function useCuts(shown: Shown, index: number): Cuts | undefined {
  const many = (laidOf(shown.plan)[index]?.pieces.length ?? 0) > AT_ONCE;
  const atOnce = useMemo(() => (many ? undefined : cutsAt(shown, index)), [many, shown, index]);
  const [found, setFound] = useState<{ readonly of: Shown; readonly index: number; readonly cuts: Cuts | undefined }>();
  useEffect(() => {
    if (!many) return;
    let wanted = true;
    const ask = async (): Promise<void> => {
      const { batch, plan } = shown;
      const reply = await cutters.ask({ what: 'cuts', problem: batch.problem, plan, index }).catch(() => undefined);
      if (wanted) setFound({ of: shown, index, cuts: reply?.what === 'cuts' ? reply.cuts : cutsAt(shown, index) });
    };
    const timer = setTimeout(() => void ask(), QUIET);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [many, shown, index]);
  return many ? (found?.of === shown && found.index === index ? found.cuts : undefined) : atOnce;
}
