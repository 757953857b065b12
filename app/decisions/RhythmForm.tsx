import { MOST, rhythmFields } from '../../src/job/fields';
import type { Rhythm } from '../../src/vocabulary/job';
import type { RodRun } from '../../src/vocabulary/rod';
import { ChoiceInput, CountInput, LengthInput, LengthsInput } from './inputs';
import { rhythmOfKind } from './plan-edits';

const ways = [
  { value: 'pillars', label: 'as pillars say' },
  { value: 'count', label: 'by number' },
  { value: 'pitch', label: 'by greatest pitch' },
  { value: 'marks', label: 'by centres' },
] as const;

interface Props {
  readonly rhythm: Rhythm | undefined;
  readonly run: RodRun | undefined;
  readonly path: string;
  readonly onRhythm: (rhythm: Rhythm | undefined) => void;
}

/** Bays of one run, where it differs from what the pillars say for all. */
export function RhythmForm({ rhythm, run, path, onRhythm }: Props) {
  return (
    <>
      <ChoiceInput
        label="Bays in this run"
        value={rhythm?.by ?? 'pillars'}
        options={ways}
        path={`${path}/by`}
        onValue={(by) => onRhythm(rhythmOfKind(by, run))}
      />
      {rhythm?.by === 'count' ? (
        <CountInput
          field={rhythmFields.count}
          value={rhythm.count}
          path={`${path}/count`}
          onValue={(count) => onRhythm({ by: 'count', count })}
        />
      ) : null}
      {rhythm?.by === 'pitch' ? (
        <LengthInput
          field={rhythmFields.pitch}
          value={rhythm.pitch}
          path={`${path}/pitch`}
          onValue={(pitch) => onRhythm({ by: 'pitch', pitch })}
        />
      ) : null}
      {rhythm?.by === 'marks' ? (
        <LengthsInput
          field={{
            ...rhythmFields.mark,
            label: 'Pillar centres',
            maxItems: MOST.marks,
            help: 'Of the pillars between the end ones, from the left end of the run’s frame line; semicolons between them.',
          }}
          value={rhythm.marks}
          path={`${path}/marks`}
          onValue={(marks) => onRhythm({ by: 'marks', marks })}
        />
      ) : null}
    </>
  );
}
