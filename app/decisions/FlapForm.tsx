import { removeFlap, setFlap } from '../../src/job/edits-making';
import { flapFields } from '../../src/job/fields-making';
import type { Run } from '../../src/vocabulary/job';
import { app } from '../store/app';
import { FieldInput } from './FieldInput';
import { foundAt, useTrial } from './found';
import { SwitchInput } from './inputs';
import { Refusals } from './Refusals';

interface Props {
  readonly run: Run;
  readonly index: number;
  readonly name: string;
  readonly last: boolean;
}

/** A lifting flap between a run and the next: offered where the two are in line, and kept in sight wherever one is set. */
export function FlapForm({ run, index, name, last }: Props) {
  const path = `/unit/plan/runs/${index}/flap`;
  const { made, typing } = useTrial();
  const { edit } = app.getState();
  const { flap } = run;
  if (!flap && (last || run.deflectionDeg !== 0)) return null;
  return (
    <>
      <SwitchInput
        label={`Flap between ${name} and the next`}
        help="A part of the top that lifts, over a gap between the two frames."
        value={flap !== undefined}
        path={path}
        onValue={(on) => edit(`Flap, ${name}`, (job) => (on ? setFlap(job, index, {}) : removeFlap(job, index)))}
      />
      {flap
        ? (['width', 'hinge', 'gate'] as const).map((key) => (
            <FieldInput
              key={key}
              field={flapFields[key]}
              value={flap[key]}
              path={`${path}/${key}`}
              onTyping={typing(`${path}/${key}`)}
              onValue={(value) =>
                edit(`${flapFields[key].label}, ${name}`, (job) => setFlap(job, index, { [key]: value }))
              }
            />
          ))
        : null}
      <Refusals found={foundAt(made.findings, path).filter(({ severity }) => severity !== 'note')} />
    </>
  );
}
