import {
  assemblyCsv,
  fixingsCsv,
  makingJson,
  mapCsv,
  partFixingsCsv,
  sectionsCsv,
  siteCsv,
  spacersCsv,
} from '../exports/making';
import { layoutsBySpacers, making } from '../flow';
import type { Design } from '../vocabulary/design';
import type { Making } from '../vocabulary/making';
import { type Args, choiceOf } from './args';
import type { Command } from './command';
import { onJob, runOf } from './on-job';
import {
  assemblyText,
  fixingsText,
  mapText,
  partFixingsText,
  sectionsText,
  siteText,
  spacersText,
} from './words-making';

/** What a command says in each format. */
type Said = Readonly<Record<'text' | 'csv' | 'json', () => string>>;

/** A command that says something of the making of a job. */
const about = (
  name: string,
  help: string,
  say: (worked: Design, made: Making, args: Args) => Said,
  options: readonly string[] = [],
): Command => ({
  usage: `${name} JOB`,
  help: `${help} (text, csv, json)`,
  takes: [...options, 'format', 'out'],
  run: (args, channels) =>
    onJob(args, channels, (worked) => {
      const format = choiceOf(args, 'format', ['text', 'csv', 'json'], 'text');
      return say(worked, making(worked), args)[format]();
    }),
});

/** Commands about the making: what is carried, bought, cut first, in which order it goes together, what waits on site. */
export const MAKING_COMMANDS: Readonly<Record<string, Command>> = {
  sections: about(
    'sections',
    'what is carried in one piece: size, weight, where it balances, where to lift',
    (worked) => ({
      text: () => sectionsText(worked),
      csv: () => sectionsCsv(worked),
      json: () => makingJson(worked.job, { sections: worked.sections, joins: worked.joins }),
    }),
  ),
  fixings: about(
    'fixings',
    'screws, brads, bolts, adhesive and ironmongery to buy, or with --each those of every part',
    ({ job }, made, args) => {
      const each = args.options.each !== undefined;
      return {
        text: () => (each ? partFixingsText(made) : fixingsText(made)),
        csv: () => (each ? partFixingsCsv(made.fixings) : fixingsCsv(made.fixings)),
        json: () => makingJson(job, { fixings: each ? made.fixings.parts : made.fixings.totals }),
      };
    },
    ['each'],
  ),
  spacers: about('spacers', 'blocks to build the frames against, and how few there could be', (worked, made) => ({
    text: () => spacersText(worked, made, layoutsBySpacers(worked.job)),
    csv: () => spacersCsv(made.spacers, worked.job),
    json: () => makingJson(worked.job, { spacers: made.spacers, layouts: layoutsBySpacers(worked.job) }),
  })),
  assembly: about('assembly', 'the order in which it is put together, step by step', ({ job }, made) => ({
    text: () => assemblyText(made),
    csv: () => assemblyCsv(made.steps),
    json: () => makingJson(job, { steps: made.steps }),
  })),
  map: about(
    'map',
    'where timber is behind the skin, of all runs or of one, in running measurements',
    (worked, made, args) => {
      const asked = args.options.run === undefined ? undefined : runOf(args, worked);
      const maps = made.maps.filter(({ run }) => asked === undefined || run === asked);
      return {
        text: () => mapText(worked, maps),
        csv: () => mapCsv(maps, worked.job),
        json: () => makingJson(worked.job, { maps }),
      };
    },
    ['run'],
  ),
  site: about('site', 'what waits on site: packers, scribes, notches', (worked, made) => ({
    text: () => siteText(worked, made),
    csv: () => siteCsv(made, worked.job),
    json: () => makingJson(worked.job, { site: made.site }),
  })),
};
