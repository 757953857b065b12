import { setAt } from '../../src/job/edits';
import { cuttingFields } from '../../src/job/fields-cutting';
import { carryFields, fitFields } from '../../src/job/fields-making';
import type { Decision, Fields } from '../../src/vocabulary/field';
import { app } from '../store/app';
import { useApp } from '../store/hooks';
import { FieldInput } from './FieldInput';
import { Section } from './Section';

interface Props {
  readonly fields: Fields;
  readonly values: Readonly<Record<string, Decision>>;
  readonly path: string;
}

/** A group of the job's own fields, one after another. */
const Group = ({ fields, values, path }: Props) =>
  Object.entries(fields).map(([key, field]) => (
    <FieldInput
      key={key}
      field={field}
      value={values[key] ?? field.default}
      path={`${path}/${key}`}
      onValue={(value) => app.getState().edit(field.label, (job) => setAt(job, `${path}/${key}`, value))}
    />
  ));

/** What each section must get through on its way in, and who carries it. */
export function CarryForm() {
  const carry = useApp((state) => state.document.carry);
  return (
    <Section title="The way in" folded>
      <Group fields={carryFields} values={{ ...carry }} path="/carry" />
    </Section>
  );
}

/** What is allowed for the room: tolerances, scribing, bolts at the joins. */
export function FitForm() {
  const fit = useApp((state) => state.document.fit);
  return (
    <Section title="Allowances for the room" folded>
      <Group fields={fitFields} values={{ ...fit }} path="/fit" />
    </Section>
  );
}

/** How stock is cut up: trims, stages, what is kept. */
export function CuttingForm() {
  const cutting = useApp((state) => state.document.cutting);
  return (
    <Section title="Cutting" folded>
      <Group fields={cuttingFields} values={{ ...cutting }} path="/cutting" />
    </Section>
  );
}
