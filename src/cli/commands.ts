import { partsCsv, rodCsv } from '../exports/csv';
import { modelGlb } from '../exports/gltf';
import { drawingJson, findingsJson, partsJson, rodJson } from '../exports/json';
import { type SheetInfo, sheetSvg } from '../exports/svg';
import { design, elevation, newJob, rodDrawing, writeJob } from '../flow';
import type { Design } from '../vocabulary/design';
import { type Args, choiceOf, list, OPTIONS, UsageError } from './args';
import { deliver, openJob } from './files';
import { checkText, findingLine, partsText, rodText, worstFirst } from './words';

/** Exit codes: done; a finding says that the unit can't be built so; the input can't be used. */
export const DONE = 0;
export const STOPPED = 1;
export const UNUSABLE = 2;

interface Command {
  readonly usage: string;
  readonly help: string;
  /** Options it takes. */
  readonly takes: readonly string[];
  run(args: Args): number | Promise<number>;
}

/** Every command, in the order in which one needs them. */
export const COMMANDS: Readonly<Record<string, Command>> = {
  new: {
    usage: 'new NAME',
    help: 'start a job: writes NAME.job.json here, or --out FILE; overwrites nothing',
    takes: ['out'],
    run: (args) => {
      const name = operand(args, 'NAME');
      const out = args.options.out ?? `${fileName(name)}.job.json`;
      deliver(writeJob(newJob(name)), out, undefined, true);
      process.stderr.write(`${out}\n`);
      return DONE;
    },
  },
  check: {
    usage: 'check JOB',
    help: 'size, weight and everything found wrong (text, json)',
    takes: ['format', 'out'],
    run: (args) =>
      onJob(args, (worked) => {
        const format = choiceOf(args, 'format', ['text', 'json'], 'text');
        return format === 'json' ? findingsJson(worked) : checkText(worked);
      }),
  },
  rod: {
    usage: 'rod JOB',
    help: 'the setting-out: every mark of every run (text, csv, json), or one run drawn (svg)',
    takes: ['run', 'format', 'out'],
    run: (args) =>
      onJob(args, (worked) => {
        const format = choiceOf(args, 'format', ['text', 'csv', 'json', 'svg'], 'text');
        if (format === 'svg') return sheetSvg(rodDrawing(worked, runOf(args, worked)), sheetInfo(worked));
        return { text: rodText, csv: rodCsv, json: rodJson }[format](worked);
      }),
  },
  parts: {
    usage: 'parts JOB',
    help: 'the cutting list: every part with its end cuts (text, csv, json)',
    takes: ['format', 'out'],
    run: (args) =>
      onJob(args, (worked) => {
        const format = choiceOf(args, 'format', ['text', 'csv', 'json'], 'text');
        return { text: partsText, csv: partsCsv, json: partsJson }[format](worked);
      }),
  },
  elevation: {
    usage: 'elevation JOB',
    help: 'a run as seen from its front, or its frame, on a sheet (svg, json)',
    takes: ['run', 'kind', 'format', 'out'],
    run: (args) =>
      onJob(args, (worked) => {
        const kind = choiceOf(args, 'kind', ['front', 'framing'], 'front');
        const format = choiceOf(args, 'format', ['svg', 'json'], 'svg');
        const drawing = elevation(worked, runOf(args, worked), kind);
        return format === 'json' ? drawingJson(drawing) : sheetSvg(drawing, sheetInfo(worked));
      }),
  },
  model: {
    usage: 'model JOB --out FILE',
    help: 'all parts as a 3D model: binary glTF 2.0, metres',
    takes: ['out'],
    run: (args) => {
      if (args.options.out === undefined) throw new UsageError('model writes a binary file: name it with --out FILE');
      return onJob(args, (worked) => modelGlb(worked.parts, worked.job.unit.name));
    },
  },
  help: {
    usage: 'help',
    help: 'this page',
    takes: [],
    run: () => {
      process.stdout.write(helpText());
      return DONE;
    },
  },
};

/** Opens the job, makes the output, delivers it; findings that stop the job go to standard error and make the exit code. */
async function onJob(args: Args, make: (worked: Design) => string | Uint8Array | Promise<Uint8Array>): Promise<number> {
  const file = operand(args, 'JOB');
  const worked = design(openJob(file));
  deliver(await make(worked), args.options.out, file);
  const stops = worstFirst(worked.findings).filter((finding) => finding.severity === 'stop');
  for (const finding of stops) process.stderr.write(`${findingLine(finding)}\n`);
  return stops.length > 0 ? STOPPED : DONE;
}

/** The one word a command takes besides its options. */
function operand(args: Args, what: string): string {
  const [command, word, extra] = args.words;
  if (word === undefined || word === '')
    throw new UsageError(`${command} needs ${what}: ${COMMANDS[command ?? '']?.usage ?? ''}`);
  if (extra !== undefined) throw new UsageError(`${command} takes one ${what}; there is also '${extra}'`);
  return word;
}

/** The run asked for, or the first. */
function runOf(args: Args, { rod }: Design): string {
  const letters = rod.runs.map((run) => run.id);
  const asked = args.options.run ?? letters[0] ?? '';
  if (!letters.includes(asked)) throw new UsageError(`--run is '${asked}'; the job has ${list(letters)}`);
  return asked;
}

const sheetInfo = ({ job }: Design): SheetInfo => ({
  job: job.name,
  unit: job.unit.name,
  units: job.units,
  client: job.client.name,
});

/** A name as a file's name: what no file system minds. */
const fileName = (name: string): string =>
  name
    .trim()
    .replace(/[^\p{L}\p{N}._-]+/gu, '-')
    .replace(/^[.-]+|[.-]+$/g, '') || 'job';

function helpText(): string {
  const width = Math.max(...Object.values(COMMANDS).map(({ usage }) => usage.length));
  return [
    'counterwright: from decisions to parts and papers',
    '',
    ...Object.values(COMMANDS).map(({ usage, help }) => `  ${usage.padEnd(width)}  ${help}`),
    '',
    ...Object.entries(OPTIONS).map(([name, help]) => `  ${`--${name}`.padEnd(width)}  ${help}`),
    '',
    "Exit code 0: done; 1: done, but a finding says that it can't be built so; 2: the input can't be used.",
    '',
  ].join('\n');
}
