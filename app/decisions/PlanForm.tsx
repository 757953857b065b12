import { setRun as changeRun, removeRun } from '../../src/job/edits';
import { runFields } from '../../src/job/fields';
import type { Run } from '../../src/vocabulary/job';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { EndForm } from './EndForm';
import { cornerWords } from './entry';
import { FlapForm } from './FlapForm';
import { ChoiceInput, LengthInput, NumberInput } from './inputs';
import { layerOptions, roomForRun, withNextRun } from './plan-edits';
import { RemoveButton } from './RemoveButton';
import { RhythmForm } from './RhythmForm';
import { useRowKeys } from './row-keys';
import { Section } from './Section';

function RunForm({ run, index, last }: { readonly run: Run; readonly index: number; readonly last: boolean }) {
  const onRod = useDesign().rod.runs.find((candidate) => candidate.jobIndex === index);
  const only = useApp((state) => state.document.unit.plan.runs.length === 1);
  const { edit, setRun } = app.getState();
  const name = onRod?.name ?? `Run ${index + 1}`;
  const path = `/unit/plan/runs/${index}`;
  const change = (label: string, what: Partial<Run>) => edit(`${label}, ${name}`, (job) => changeRun(job, index, what));
  return (
    // The rod follows to the run that is being decided on.
    <fieldset className="thing" onFocus={() => onRod && setRun(onRod.id)}>
      <legend>{name}</legend>
      <div className="pair">
        <LengthInput
          field={runFields.length}
          value={run.length}
          path={`${path}/length`}
          onValue={(length) => change('Length', { length })}
        />
        <ChoiceInput
          label="Measured over"
          value={run.over}
          options={layerOptions}
          path={`${path}/over`}
          onValue={(over) => change('Layer measured over', { over })}
        />
      </div>
      <RhythmForm
        rhythm={run.rhythm}
        run={onRod}
        path={`${path}/rhythm`}
        onRhythm={(rhythm) => change('Bays', { rhythm })}
      />
      {last ? null : (
        <>
          <NumberInput
            field={runFields.deflectionDeg}
            value={run.deflectionDeg}
            path={`${path}/deflectionDeg`}
            readout={cornerWords}
            onValue={(deflectionDeg) => change('Turn', { deflectionDeg })}
          />
          <ChoiceInput
            label={runFields.through.label}
            help={runFields.through.help}
            value={run.through}
            options={runFields.through.options}
            path={`${path}/through`}
            onValue={(through) => change('Frame through', { through })}
          />
        </>
      )}
      <FlapForm run={run} index={index} name={name} last={last} />
      <RemoveButton
        name={`Remove ${name}`}
        disabled={only}
        onRemove={() => edit(`Remove ${name}`, (job) => removeRun(job, index))}
      />
    </fieldset>
  );
}

/** The runs from left to right, and what the whole stands against at its ends. */
export function PlanForm() {
  const job = useApp((state) => state.document);
  const { runs } = job.unit.plan;
  const keys = useRowKeys(runs);
  return (
    <Section title="Plan">
      <EndForm which="leftEnd" />
      {runs.map((run, i) => (
        <RunForm key={keys[i]} run={run} index={i} last={i === runs.length - 1} />
      ))}
      <EndForm which="rightEnd" />
      <button type="button" disabled={!roomForRun(job)} onClick={() => app.getState().edit('Add a run', withNextRun)}>
        Add a run
      </button>
    </Section>
  );
}
