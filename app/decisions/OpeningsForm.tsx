import { addOpening, removeOpening, setOpening } from '../../src/job/edits-making';
import { MOST } from '../../src/job/fields';
import { openingFields } from '../../src/job/fields-making';
import type { Opening } from '../../src/vocabulary/job';
import { foundOf } from '../rod/things';
import { app } from '../store/app';
import { design } from '../store/designs';
import { useApp, useDesign } from '../store/hooks';
import { withUnit } from './entry';
import { FieldInput } from './FieldInput';
import { useTrial } from './found';
import { ChoiceInput, TextInput } from './inputs';
import { newOpening } from './new-opening';
import { useRowKeys } from './row-keys';
import { runOfNumber, runOptions } from './runs';
import { Section } from './Section';
import { ThingRow } from './ThingRow';

/** What the height is called where it lies flat: in the top, from the front edge backwards. */
const FLAT: Readonly<Partial<Record<keyof Opening, string>>> = {
  z: 'Middle, back from the front edge',
  height: 'Size of the hole, front to back',
};

const KEYS = ['through', 'use', 'x', 'z', 'width', 'height'] as const;

const nameOfUse = ({ use, through }: Opening): string =>
  `${openingFields.use.options.find(({ value }) => value === use)?.label ?? use}${through === 'top' ? ' through the top' : ''}`;

function Row({ opening, index }: { readonly opening: Opening; readonly index: number }) {
  const made = useDesign();
  const path = `/unit/openings/${index}`;
  const { made: tried, typing } = useTrial();
  const { edit } = app.getState();
  const { units } = made.job;
  const name = opening.name || `Opening ${index + 1}`;
  const change = (label: string, what: Partial<Opening>) =>
    edit(`${label}, ${name}`, (job) => setOpening(job, index, what));
  // The hole of a pipe is as high as it is wide.
  const keys = opening.use === 'pipe' ? KEYS.filter((key) => key !== 'height') : KEYS;
  return (
    <ThingRow
      thing={{ kind: 'opening', index }}
      run={runOfNumber(made, opening.run)?.id}
      name={name}
      told={`${nameOfUse(opening)}, ${runOfNumber(made, opening.run)?.name ?? `run ${opening.run}`}, at ${withUnit(opening.x, units)}`}
      found={foundOf({ kind: 'opening', index }, tried)}
      remove={`Remove ${name}`}
      onRemove={() => edit(`Remove ${name}`, (job) => removeOpening(job, index))}
    >
      <TextInput
        label="Name of the opening"
        most={80}
        value={opening.name}
        onValue={(text) => change('Name', { name: text })}
      />
      <ChoiceInput
        label="In run"
        value={String(opening.run)}
        options={runOptions(made)}
        path={`${path}/run`}
        onValue={(run) => change('Run', { run: Number(run) })}
      />
      {keys.map((key) => (
        <FieldInput
          key={key}
          field={{ ...openingFields[key], label: (opening.through === 'top' && FLAT[key]) || openingFields[key].label }}
          value={opening[key]}
          path={`${path}/${key}`}
          onTyping={typing(`${path}/${key}`)}
          onValue={(value) => change(openingFields[key].label, { [key]: value })}
        />
      ))}
    </ThingRow>
  );
}

/** Holes for what comes through: sockets, pipes, grilles. */
export function OpeningsForm() {
  const openings = useApp((state) => state.document.unit.openings);
  const keys = useRowKeys(openings);
  const add = () => {
    const { document, edit, take, view } = app.getState();
    const { runs } = design(document).rod;
    const made = newOpening(document, runs.find(({ id }) => id === view.run) ?? runs[0]);
    edit(`Add ${made.name}`, (job) => addOpening(job, made));
    take({ kind: 'opening', index: document.unit.openings.length }, runs.find((r) => r.jobIndex === made.run - 1)?.id);
  };
  return (
    <Section title="Openings">
      {openings.map((opening, i) => (
        <Row key={keys[i]} opening={opening} index={i} />
      ))}
      <button type="button" disabled={openings.length >= MOST.openings} onClick={add}>
        Add an opening
      </button>
    </Section>
  );
}
