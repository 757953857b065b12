import type { BuildStage } from '../../src/vocabulary/part';
import { app } from '../store/app';
import { useApp, useCurrentRun } from '../store/hooks';
import type { Look } from '../store/view';
import { Choice } from './Choice';

const stages: readonly { readonly value: BuildStage; readonly label: string }[] = [
  { value: 'finished', label: 'Finished' },
  { value: 'clad', label: 'Clad' },
  { value: 'framed', label: 'Framed' },
];
/** `of`: the look is taken of the run in hand, and says so. */
const looks: readonly { readonly value: Look; readonly label: string; readonly of?: true }[] = [
  { value: 'room', label: 'In the room' },
  { value: 'fit', label: 'Fit' },
  { value: 'front', label: 'Front', of: true },
  { value: 'plan', label: 'Plan' },
  { value: 'left', label: 'Left end', of: true },
  { value: 'right', label: 'Right end', of: true },
];

/** How the unit is looked at. */
export function ViewBar() {
  const view = useApp((state) => state.view);
  const run = useCurrentRun();
  const { setMode, look, setShowDimensions } = app.getState();
  return (
    <div className="view-bar">
      <Choice legend="How far it is built" name="stage" value={view.mode} options={stages} onValue={setMode} />
      <fieldset className="group" aria-label="Look from">
        {looks.map(({ value, label, of }) => (
          <button
            key={value}
            type="button"
            title={of && run ? `${label} of ${run.name}` : undefined}
            onClick={() => look(value)}
          >
            {label}
          </button>
        ))}
      </fieldset>
      <label className="tick-inline">
        <input
          type="checkbox"
          checked={view.showDimensions}
          onChange={(event) => setShowDimensions(event.target.checked)}
        />
        <span>Dimensions</span>
      </label>
    </div>
  );
}
