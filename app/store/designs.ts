import { remembered } from '../../src/base/remembered';
import { design as workOut } from '../../src/flow';

/** What is in hand at once: the job on the board, the one before the last edit, and one that is being typed. */
const IN_HAND = 3;

/** All that follows from a job, without working it out again for those in hand: what is drawn from it stays the same too. */
export const design = remembered(workOut, IN_HAND);
