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
  { value: 'behind', label: 'From behind', of: true },
  { value: 'plan', label: 'Plan' },
  { value: 'left', label: 'Left end', of: true },
  { value: 'right', label: 'Right end', of: true },
];

/** From where one looks. */
function Looks() {
  const run = useCurrentRun();
  const { look } = app.getState();
  return (
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
  );
}

/** How far the sections are drawn apart, in hundredths. */
function Apart() {
  const apart = useApp((state) => state.view.apart);
  const hundredths = Math.round(apart * 100);
  return (
    <label className="apart">
      <span>Drawn apart</span>
      <input
        type="range"
        min={0}
        max={100}
        step={5}
        value={hundredths}
        aria-valuetext={`${hundredths} %`}
        onChange={(event) => app.getState().setApart(Number(event.target.value) / 100)}
      />
    </label>
  );
}

const Tick = (props: { readonly label: string; readonly on: boolean; readonly onChange: (on: boolean) => void }) => (
  <label className="tick-inline">
    <input type="checkbox" checked={props.on} onChange={(event) => props.onChange(event.target.checked)} />
    <span>{props.label}</span>
  </label>
);

/** How the unit is looked at. A step of its assembly is built as far as it is. */
export function ViewBar() {
  const view = useApp((state) => state.view);
  const { setMode, setShowDimensions, setSiteShown } = app.getState();
  const whole = view.pane === 'unit';
  return (
    <div className="view-bar">
      {whole ? (
        <Choice legend="How far it is built" name="stage" value={view.mode} options={stages} onValue={setMode} />
      ) : null}
      <Looks />
      {whole ? (
        <>
          <Tick label="Dimensions" on={view.showDimensions} onChange={setShowDimensions} />
          <Tick label="Site-fitted" on={view.siteShown} onChange={setSiteShown} />
          <Apart />
        </>
      ) : null}
    </div>
  );
}
