import { type LpSolver, loadLp, readCutProblem, readRack, settingsOf as setUpsOf, totalOf } from '../cut';
import { cutBatches, design } from '../flow';
import type { Offcut } from '../vocabulary/cut-plan';
import { type Args, choiceOf, UsageError } from './args';
import type { Command } from './command';
import { cutFor, type Patience } from './cut-for';
import { asJson, type CutDone, cutData } from './cut-json';
import { type Channels, deliver, openJob, readText, usable } from './files';
import { findingLines } from './findings';
import { DONE, operand, STOPPED } from './on-job';
import { byMarks, byName, cutText, plainMoney, pounds, totalText } from './words-cutting';
import { settingsText } from './words-settings';

/** Planning how stock is cut, for a job or for a problem in a file. */
export const CUTTING_COMMANDS: Readonly<Record<string, Command>> = {
  cut: {
    usage: 'cut JOB',
    help: 'how to cut what the job needs, or with --problem FILE what a list asks (text, json)',
    takes: ['problem', 'rack', 'seconds', 'steps', 'seed', 'format', 'out'],
    run: (args, channels) => (args.options.problem === undefined ? cutJob(args, channels) : cutProblem(args, channels)),
  },
};

const DEFAULT_SECONDS = 2;
const MOST_SECONDS = 3600;
const MOST_STEPS = 1e9;

async function cutProblem(args: Args, channels: Channels): Promise<number> {
  const { problem: file = '', rack, out } = args.options;
  if (args.words.length > 1) throw new UsageError(`cut takes JOB or --problem FILE; there is also '${args.words[1]}'`);
  if (rack !== undefined) throw new UsageError('a problem has its offcuts among its stock: --rack goes with JOB');
  const settings = settingsOf(args);
  const { problem, warnings } = usable(file, readCutProblem(readText(file)));
  const done: CutDone = { problem, warnings, ...settings, ...(await searched(problem, settings)) };
  const said = settings.format === 'json' ? asJson(cutData(done)) : cutText(done, byName(problem), plainMoney);
  deliver(said, { to: out, source: file }, channels);
  return done.plan.unplaced.length > 0 ? STOPPED : DONE;
}

/** Every stuff of a job, each as long as was asked. */
async function cutJob(args: Args, channels: Channels): Promise<number> {
  const file = operand(args, 'JOB or --problem FILE');
  const settings = settingsOf(args);
  const worked = design(openJob(file));
  const { batches, findings } = cutBatches(worked, rackOf(args));
  const cut = [];
  for (const batch of batches) {
    const { problem } = batch;
    const done: CutDone = { problem, warnings: [], ...settings, ...(await searched(problem, settings)) };
    cut.push({ batch, done });
  }
  const total = totalOf(cut.map(({ done }) => done.plan));
  const planned = cut.map(({ batch, done: { plan } }) => ({ batch, plan }));
  const setUps = setUpsOf(planned, worked.parts, { blockKerf: worked.job.tools.mitreSawKerf });
  const said =
    settings.format === 'json'
      ? asJson({
          job: worked.job.name,
          findings,
          cost: total.cost,
          bound: total.bound,
          settings: setUps,
          batches: cut.map(({ batch: { id, name, marks, from }, done }) => ({
            id,
            name,
            marks,
            from,
            ...cutData(done, marks),
          })),
        })
      : [
          ...findingLines(findings).map((line) => `${line}\n`),
          ...cut.map(({ batch, done }) => `${batch.name}: ${cutText(done, byMarks(batch.marks), pounds)}`),
          totalText(total),
          settingsText(setUps, planned),
        ].join('\n');
  deliver(said, { to: args.options.out, source: file }, channels);
  const stops = [...new Set([...worked.findings, ...findings])].filter(({ severity }) => severity === 'stop');
  findingLines(stops).forEach(channels.say);
  const unplaced = cut.some(({ done }) => done.plan.unplaced.length > 0);
  return unplaced || stops.length > 0 ? STOPPED : DONE;
}

interface Settings {
  readonly seed: number;
  readonly patience: Patience;
  readonly format: 'text' | 'json';
}

function settingsOf(args: Args): Settings {
  const { seconds, steps } = args.options;
  if (seconds !== undefined && steps !== undefined) throw new UsageError('--seconds or --steps, not both');
  return {
    seed: numberOf(args, 'seed', { least: 0, most: 2 ** 32 - 1, whole: true }) ?? 1,
    patience:
      steps === undefined
        ? { seconds: numberOf(args, 'seconds', { least: 0, most: MOST_SECONDS }) ?? DEFAULT_SECONDS }
        : { steps: numberOf(args, 'steps', { least: 0, most: MOST_STEPS, whole: true }) ?? 0 },
    format: choiceOf(args, 'format', ['text', 'json'], 'text'),
  };
}

/** A number given as an option. Throws a UsageError that says what is allowed. */
function numberOf(
  args: Args,
  name: string,
  range: { readonly least: number; readonly most: number; readonly whole?: true },
) {
  const { [name]: text } = args.options;
  if (text === undefined) return undefined;
  const value = /^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (value >= range.least && value <= range.most && (!range.whole || Number.isInteger(value))) return value;
  const what = `a ${range.whole ? 'whole ' : ''}number from ${range.least} to ${range.most}`;
  throw new UsageError(`--${name} is '${text}'; it may be ${what}`);
}

const searched = async (problem: CutDone['problem'], { seed, patience }: Settings) =>
  cutFor(problem, seed, patience, await solver());

let loading: Promise<LpSolver> | undefined;
/** Loaded when it is first needed, and once: it takes longer than most problems. */
function solver(): Promise<LpSolver> {
  loading ??= loadLp();
  return loading;
}

function rackOf({ options: { rack } }: Args): readonly Offcut[] {
  return rack === undefined ? [] : usable(rack, readRack(readText(rack)));
}
