import { cuttingCsv, partsCsv, rodCsv } from '../exports/csv';
import { modelGlb } from '../exports/gltf';
import { cuttingJson, drawingJson, findingsJson, partsJson, rodJson } from '../exports/json';
import { elevationSheet, runSheet } from '../exports/sheets';
import { alike, elevation, newJob, rodDrawing, writeJob } from '../flow';
import { choiceOf, OPTIONS, UsageError } from './args';
import type { Command } from './command';
import { CUTTING_COMMANDS } from './commands-cutting';
import { MAKING_COMMANDS } from './commands-making';
import { deliver } from './files';
import { DONE, onJob, onlyRun, operand, runOf } from './on-job';
import { checkText, cuttingText, partsText, rodText } from './words';

/** Every command, in the order in which one needs them. */
export const COMMANDS: Readonly<Record<string, Command>> = {
  new: {
    usage: 'new NAME',
    help: 'start a job: writes NAME.job.json here, or --out FILE; overwrites nothing',
    takes: ['out'],
    run: (args, channels) => {
      const name = operand(args, 'NAME');
      const out = args.options.out ?? `${fileName(name)}.job.json`;
      deliver(writeJob(newJob(name)), { to: out, fresh: true }, channels);
      channels.say(out);
      return DONE;
    },
  },
  check: {
    usage: 'check JOB',
    help: 'size, weight and everything found wrong (text, json)',
    takes: ['format', 'out'],
    run: (args, channels) =>
      onJob(
        args,
        channels,
        (worked) => {
          const format = choiceOf(args, 'format', ['text', 'json'], 'text');
          return format === 'json' ? findingsJson(worked) : checkText(worked);
        },
        true,
      ),
  },
  rod: {
    usage: 'rod JOB',
    help: 'the setting-out: every mark of all runs or of one (text, csv, json), or one run drawn (svg)',
    takes: ['run', 'format', 'out'],
    run: (args, channels) =>
      onJob(args, channels, (worked) => {
        const format = choiceOf(args, 'format', ['text', 'csv', 'json', 'svg'], 'text');
        if (format === 'svg') return runSheet(worked, runOf(args, worked), rodDrawing);
        const asked = args.options.run === undefined ? worked : onlyRun(worked, runOf(args, worked));
        return { text: rodText, csv: rodCsv, json: rodJson }[format](asked);
      }),
  },
  parts: {
    usage: 'parts JOB',
    help: 'every part with its end cuts, or with --alike the cutting list (text, csv, json)',
    takes: ['alike', 'format', 'out'],
    run: (args, channels) =>
      onJob(args, channels, (worked) => {
        const format = choiceOf(args, 'format', ['text', 'csv', 'json'], 'text');
        return args.options.alike === undefined
          ? { text: partsText, csv: partsCsv, json: partsJson }[format](worked)
          : { text: cuttingText, csv: cuttingCsv, json: cuttingJson }[format](worked, alike);
      }),
  },
  elevation: {
    usage: 'elevation JOB',
    help: 'a run as seen from its front, its frame, or as seen from behind, on a sheet (svg, json)',
    takes: ['run', 'kind', 'format', 'out'],
    run: (args, channels) =>
      onJob(args, channels, (worked) => {
        const kind = choiceOf(args, 'kind', ['front', 'framing', 'behind'], 'front');
        const format = choiceOf(args, 'format', ['svg', 'json'], 'svg');
        const run = runOf(args, worked);
        if (format === 'json') return drawingJson(elevation(worked, run, kind));
        if (kind === 'behind') return runSheet(worked, run, (made, one) => elevation(made, one, 'behind'));
        return elevationSheet(worked, run, kind, elevation);
      }),
  },
  model: {
    usage: 'model JOB --out FILE',
    help: 'all parts as a 3D model: binary glTF 2.0, metres',
    takes: ['out'],
    run: (args, channels) => {
      if (args.options.out === undefined) throw new UsageError('model writes a binary file: name it with --out FILE');
      return onJob(args, channels, (worked) => modelGlb(worked.parts, worked.job.unit.name));
    },
  },
  ...MAKING_COMMANDS,
  ...CUTTING_COMMANDS,
  help: {
    usage: 'help',
    help: 'this page',
    takes: [],
    run: (_, channels) => {
      channels.out(helpText());
      return DONE;
    },
  },
};

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
    "Exit code 0: done; 1: done, but a finding says that it can't be built so, or a piece has no place; 2: the input can't be used.",
    '',
  ].join('\n');
}
