/** How far the board can be drawn out, and by how much at a time. */
const LONGEST = 12;
const STEP = 1.5;

/** Draws the board out to several times the width of the window, for crowded runs. */
export function Stretch({ times, onTimes }: { times: number; onTimes: (times: number) => void }) {
  return (
    <fieldset className="rod-zoom" aria-label="Length of the board">
      <button
        type="button"
        aria-label="Shorter"
        disabled={times <= 1}
        onClick={() => onTimes(Math.max(1, times / STEP))}
      >
        −
      </button>
      <button
        type="button"
        aria-label="Longer"
        disabled={times >= LONGEST}
        onClick={() => onTimes(Math.min(LONGEST, times * STEP))}
      >
        +
      </button>
    </fieldset>
  );
}
