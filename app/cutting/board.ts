import { useStore } from 'zustand';
import { openCutters } from '../effects/cutting';
import { app } from '../store/app';
import { planAhead } from './ahead';
import { openRack } from './rack';
import { keepSoFar } from './so-far';
import { type CuttingState, createCutting } from './store';

/** Who works out the plans. */
export const cutters = openCutters((answer) => cutting.hear(answer));
/** The one board for cutting of this page. */
export const cutting = createCutting(cutters);

/** The joiner's own rack of offcuts. */
export const rack = openRack(app, cutting);

keepSoFar(app, cutting, rack);

cutters.hire();
planAhead(app, cutting, rack);

/** One piece of the board's state; the component is drawn again only when that piece changes. */
export const useCutting = <T>(selector: (state: CuttingState) => T): T => useStore(cutting, selector);
