import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Step } from '../../src/vocabulary/making';
import type { Part } from '../../src/vocabulary/part';
import { useArrows } from '../shell/useArrows';
import { app } from '../store/app';
import { useApp, useDesign } from '../store/hooks';
import { useMaking } from '../store/making';
import './assembly.css';
import { PLACE, stepsIn } from './steps';
import { STANDS, useCalm } from './useSteer';

/** The unit put together step by step: what is done, where, with which parts; the view shows it so far. */
export default function AssemblyPanel() {
  const { steps } = useMaking();
  const asked = useApp((state) => state.view.step);
  const { step, index } = useMemo(() => stepsIn(steps, asked), [steps, asked]);
  const last = steps.length - 1;
  const [playing, setPlaying] = useState(false);
  const calm = useCalm();
  const go = useCallback(
    (by: 1 | -1) => {
      setPlaying(false);
      app.getState().setStep(Math.max(0, Math.min(last, index + by)));
    },
    [index, last],
  );
  useArrows(go);
  useEffect(() => {
    if (!playing) return;
    const next = setTimeout(() => {
      if (index < last) app.getState().setStep(index + 1);
      if (index + 1 >= last) setPlaying(false);
    }, STANDS);
    return () => clearTimeout(next);
  }, [playing, index, last]);
  const play = () => {
    if (!playing && index === last) app.getState().setStep(0);
    setPlaying(!playing);
  };
  return (
    <section className="steps" aria-labelledby="steps-title">
      <h2 id="steps-title">Assembly</h2>
      {step ? (
        <>
          <fieldset className="group" aria-label="Steps">
            <button type="button" disabled={index === 0} onClick={() => go(-1)}>
              Previous
            </button>
            {calm ? null : (
              <button type="button" aria-pressed={playing} onClick={play}>
                {playing ? 'Pause' : 'Play'}
              </button>
            )}
            <button type="button" disabled={index === last} onClick={() => go(1)}>
              Next
            </button>
          </fieldset>
          <Told step={step} index={index} of={steps.length} quiet={playing} />
          <AllSteps steps={steps} index={index} />
        </>
      ) : (
        <p className="aside">Nothing to put together: the job makes no parts.</p>
      )}
    </section>
  );
}

interface ToldProps {
  readonly step: Step;
  readonly index: number;
  readonly of: number;
  /** While the steps are played they are not read out one after another. */
  readonly quiet: boolean;
}

function Told({ step, index, of, quiet }: ToldProps) {
  const { parts } = useDesign();
  const byMark = useMemo(() => new Map(parts.map((part) => [part.mark, part])), [parts]);
  const own = step.parts.flatMap((mark) => byMark.get(mark) ?? []);
  return (
    <div className="step-told">
      <div aria-live={quiet ? 'off' : 'polite'}>
        <p className="step-number">
          Step {index + 1} <span className="count">of {of}</span>
        </p>
        <p className="step-place">
          {PLACE[step.place]}
          {step.section === undefined ? '' : `, section ${step.section}`}
        </p>
        <p className="step-what">{step.what}</p>
      </div>
      {own.length > 0 ? <Marks parts={own} /> : null}
    </div>
  );
}

/** The parts of a step, each to be picked out. */
function Marks({ parts }: { readonly parts: readonly Part[] }) {
  const selected = useApp((state) => state.view.selected);
  return (
    <ul className="step-parts" aria-label="Parts of this step">
      {parts.map((part) => (
        <li key={part.mark}>
          <button
            type="button"
            aria-pressed={part.mark === selected}
            onClick={() => app.getState().select(part.mark === selected ? null : part.mark, part.run)}
          >
            <b>{part.mark}</b> {part.name}
          </button>
        </li>
      ))}
    </ul>
  );
}

/** All steps as a list to go to any of them. */
function AllSteps({ steps, index }: { readonly steps: readonly Step[]; readonly index: number }) {
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    list.current?.children[index]?.scrollIntoView({ block: 'nearest' });
  }, [index]);
  return (
    <ol className="all-steps" ref={list} aria-label="All steps">
      {steps.map(({ number, place, what, section }, i) => (
        <li key={number}>
          <button
            type="button"
            aria-current={i === index ? 'step' : undefined}
            onClick={() => app.getState().setStep(i)}
          >
            <span className="n">{i + 1}</span>
            <span>
              {what}
              <small>
                {place}
                {section === undefined ? '' : ` ${section}`}
              </small>
            </span>
          </button>
        </li>
      ))}
    </ol>
  );
}
