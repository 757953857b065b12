import { useDeferredValue, useEffect, useMemo, useState } from 'react';
import type { Finding } from '../../src/vocabulary/finding';
import type { CutSoFar } from '../effects/cutting-keep';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { cutting, rack, useCutting } from './board';
import { takenOff } from './taken-off';

/** Hands the batches of the job on the board to the cutting, with what has been cut of it at earlier visits; gives what can't be cut as it is. */
export function useJobBatches(): readonly Finding[] {
  const now = useDesign();
  const job = useApp((state) => state.document);
  const id = useApp((state) => state.documentId);
  // What is typed comes first; the plans may lag behind it. A design and whose it is come together: no job is given another's parts.
  const { design, documentId, document } = useDeferredValue(
    useMemo(() => ({ design: now, documentId: id, document: job }), [now, id, job]),
  );
  const offcuts = useCutting((state) => state.rack);
  const [found, setFound] = useState<{ readonly documentId: string; readonly soFar: readonly CutSoFar[] } | null>(null);
  useEffect(() => {
    let wanted = true;
    const take = (soFar: readonly CutSoFar[]) => wanted && setFound({ documentId, soFar });
    rack
      .keep()
      .then((keep) => keep.cutOf(documentId))
      .then(take, () => {
        app.getState().notify({ tone: 'trouble', text: 'What is cut already of this job could not be looked up.' });
        take([]);
      });
    return () => {
      wanted = false;
    };
  }, [documentId]);
  const { batches, findings } = useMemo(() => takenOff(design, offcuts), [design, offcuts]);
  useEffect(() => {
    const { documentId: onBoard, order, held } = cutting.getState();
    const isOn = onBoard === documentId;
    // What was cut of it earlier is on the board already, if there is any: once somebody has looked.
    const looked = isOn && !order.job.every((id) => held[id]?.ahead);
    if (!looked && found?.documentId !== documentId) return;
    const soFar = looked ? [] : (found?.soFar ?? []);
    // Another job's plans are none of this one's; nor is what was planned ahead, where another tab has begun to cut since.
    if (!isOn || soFar.length > 0) cutting.forget('job');
    cutting.setState({ documentId });
    cutting.take('job', batches, soFar);
    cutting.setState({ taken: document });
  }, [batches, found, documentId, document]);
  return findings;
}
