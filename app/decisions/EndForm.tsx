import { setEnd } from '../../src/job/edits';
import { endFields } from '../../src/job/fields';
import type { EndCondition } from '../../src/vocabulary/job';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { ChoiceInput, LengthInput } from './inputs';
import { type EndName, endOfKind, layerOptions, runAtEnd } from './plan-edits';

const kinds = [
  { value: 'free', label: 'nothing' },
  { value: 'wall', label: 'a wall' },
  { value: 'return', label: 'a return' },
] as const;

/** What one end of the whole plan stands against. */
export function EndForm({ which }: { readonly which: EndName }) {
  const end = useApp((state) => state.document.unit.plan[which]);
  const beside = useApp((state) => runAtEnd(state.document, which)?.over ?? 'frame');
  const walls = useApp((state) => state.document.survey.walls);
  const { edit } = app.getState();
  const change = (next: EndCondition) =>
    edit(title, (job) => setEnd(job, which === 'leftEnd' ? 'left' : 'right', next));
  const title = which === 'leftEnd' ? 'Left end' : 'Right end';
  return (
    <fieldset className="thing">
      <legend>{title}</legend>
      <ChoiceInput
        label={`${title} stands against`}
        value={end.kind}
        options={kinds}
        path={`/unit/plan/${which}/kind`}
        onValue={(kind) => change(endOfKind(kind, beside))}
      />
      {end.kind === 'wall' && walls.length > 0 ? (
        <ChoiceInput
          label="Which wall"
          value={end.wall ?? ''}
          options={[{ value: '', label: 'not surveyed' }, ...walls.map(({ name }) => ({ value: name, label: name }))]}
          path={`/unit/plan/${which}/wall`}
          onValue={(wall) => change({ kind: 'wall', ...(wall ? { wall } : {}) })}
        />
      ) : null}
      {end.kind === 'return' ? (
        <>
          <LengthInput
            field={endFields.length}
            value={end.length}
            path={`/unit/plan/${which}/length`}
            onValue={(length) => change({ ...end, length })}
          />
          <ChoiceInput
            label="Measured over"
            value={end.over ?? 'frame'}
            options={layerOptions}
            path={`/unit/plan/${which}/over`}
            onValue={(over) => change({ ...end, over })}
          />
        </>
      ) : null}
    </fieldset>
  );
}
