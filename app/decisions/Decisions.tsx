import { toolFields, unitFields } from '../../src/job/fields';
import { useApp } from '../store/hooks';
import { BaysForm } from './BaysForm';
import { decide } from './decide';
import { CarryForm, CuttingForm, FitForm } from './GroupForm';
import { LengthInput, NumberInput } from './inputs';
import { JobForm } from './JobForm';
import { JoinsForm } from './JoinsForm';
import { OpeningsForm } from './OpeningsForm';
import { PlanForm } from './PlanForm';
import { RoomForms } from './RoomForms';
import { Section } from './Section';
import { SurveyForm } from './SurveyForm';

function Heights() {
  const unit = useApp((state) => state.document.unit);
  return (
    <Section title="Heights and depth">
      <div className="pair">
        {(['height', 'depth'] as const).map((key) => (
          <LengthInput
            key={key}
            field={unitFields[key]}
            value={unit[key]}
            path={`/unit/${key}`}
            onValue={(value) => decide(unitFields[key].label, `/unit/${key}`, value)}
          />
        ))}
      </div>
    </Section>
  );
}

function Workshop() {
  const tools = useApp((state) => state.document.tools);
  return (
    <Section title="Workshop">
      {(['sawKerf', 'mitreSawKerf', 'roundingStep'] as const).map((key) => (
        <LengthInput
          key={key}
          field={toolFields[key]}
          value={tools[key]}
          path={`/tools/${key}`}
          onValue={(value) => decide(toolFields[key].label, `/tools/${key}`, value)}
        />
      ))}
      <NumberInput
        field={toolFields.mostTiltDeg}
        value={tools.mostTiltDeg}
        path="/tools/mostTiltDeg"
        onValue={(value) => decide(toolFields.mostTiltDeg.label, '/tools/mostTiltDeg', value)}
      />
    </Section>
  );
}

/** All that is decided, in the order in which a joiner takes the decisions. */
export function Decisions() {
  return (
    <>
      <JobForm />
      <SurveyForm />
      <FitForm />
      <CarryForm />
      <PlanForm />
      <Heights />
      <RoomForms />
      <BaysForm />
      <OpeningsForm />
      <JoinsForm />
      <Workshop />
      <CuttingForm />
    </>
  );
}
