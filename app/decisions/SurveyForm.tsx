import { addLevel, removeLevel, removeWall } from '../../src/job/edits';
import { MOST, surveyFields } from '../../src/job/fields';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { decide } from './decide';
import { readWords } from './entry';
import { ChoiceInput, LengthInput, NumberInput, TextInput } from './inputs';
import { withNextWall, withWallRenamed } from './plan-edits';
import { RemoveButton } from './RemoveButton';
import { useRowKeys } from './row-keys';
import { Section } from './Section';

function Walls() {
  const walls = useApp((state) => state.document.survey.walls);
  const keys = useRowKeys(walls);
  const { edit } = app.getState();
  return (
    <>
      {walls.map((wall, i) => (
        <fieldset className="thing" key={keys[i]}>
          <legend>{wall.name}</legend>
          <TextInput
            label="Name of the wall"
            most={80}
            value={wall.name}
            read={(text) =>
              readWords(
                text,
                walls.map(({ name }) => name),
              )
            }
            onValue={(name) => edit('Wall’s name', (job) => withWallRenamed(job, i, name))}
          />
          <div className="pair">
            <NumberInput
              field={surveyFields.directionDeg}
              value={wall.directionDeg}
              path={`/survey/walls/${i}/directionDeg`}
              onValue={(value) => decide('Direction of a wall', `/survey/walls/${i}/directionDeg`, value)}
            />
            <NumberInput
              field={surveyFields.leanDeg}
              value={wall.leanDeg}
              path={`/survey/walls/${i}/leanDeg`}
              onValue={(value) => decide('Lean of a wall', `/survey/walls/${i}/leanDeg`, value)}
            />
            {(['skirtingHeight', 'skirtingThickness'] as const).map((key) => (
              <LengthInput
                key={key}
                field={surveyFields[key]}
                value={wall[key] ?? surveyFields[key].default}
                path={`/survey/walls/${i}/${key}`}
                onValue={(value) => decide(surveyFields[key].label, `/survey/walls/${i}/${key}`, value)}
              />
            ))}
          </div>
          <RemoveButton
            name={`Remove ${wall.name}`}
            onRemove={() => edit(`Remove ${wall.name}`, (job) => removeWall(job, wall.name))}
          />
        </fieldset>
      ))}
      <button type="button" disabled={walls.length >= MOST.walls} onClick={() => edit('Add a wall', withNextWall)}>
        Add a wall
      </button>
    </>
  );
}

function Levels() {
  const levels = useApp((state) => state.document.survey.levels);
  const keys = useRowKeys(levels);
  const { rod } = useDesign();
  const runs = rod.runs
    .filter((run) => run.jobIndex !== null)
    .map((run) => ({ value: String((run.jobIndex ?? 0) + 1), label: run.name }));
  const { edit } = app.getState();
  return (
    <>
      {levels.map((level, i) => (
        <fieldset className="thing" key={keys[i]}>
          <legend>Floor level {i + 1}</legend>
          <ChoiceInput
            label="Taken along"
            value={String(level.run)}
            options={runs}
            onValue={(run) => decide('Run of a floor level', `/survey/levels/${i}/run`, Number(run))}
          />
          <div className="pair">
            <LengthInput
              field={surveyFields.along}
              value={level.along}
              path={`/survey/levels/${i}/along`}
              onValue={(value) => decide('Place of a floor level', `/survey/levels/${i}/along`, value)}
            />
            <LengthInput
              field={surveyFields.height}
              value={level.height}
              path={`/survey/levels/${i}/height`}
              onValue={(value) => decide('Floor level', `/survey/levels/${i}/height`, value)}
            />
          </div>
          <RemoveButton
            name={`Remove floor level ${i + 1}`}
            onRemove={() => edit('Remove a floor level', (job) => removeLevel(job, i))}
          />
        </fieldset>
      ))}
      <button
        type="button"
        disabled={levels.length >= MOST.levels}
        onClick={() => edit('Add a floor level', (job) => addLevel(job, { run: 1, along: 0, height: 0 }))}
      >
        Add a floor level
      </button>
    </>
  );
}

/** What was found in the room. */
export function SurveyForm() {
  return (
    <Section title="Room">
      <Walls />
      <Levels />
    </Section>
  );
}
