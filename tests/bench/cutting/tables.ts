/**
 * What `npm run bench:cutting` prints, run bundled by `bench.ts`: FOLDER names another folder with the same files, TABLE … only those tables, `--seconds N`
 * another time for each problem (default 2; jobs of sheets are searched ten times as long too).
 */
import { existsSync, statSync } from 'node:fs';
import { loadLp } from '../../../src/cut';
import { FOLDER } from './data';
import { type Table, tableText } from './print';
import type { Bench } from './solve';
import { barJobs, bins } from './tables-bars';
import { demo } from './tables-demo';
import { anyStageValue, twoStageValue } from './tables-one-sheet';
import { cutUpHere, perfect } from './tables-perfect';
import { classes, severalInTwoStages, severalOfFew, sheetJobs } from './tables-sheets';

const TABLES: Readonly<Record<string, (bench: Bench) => Table | undefined>> = {
  demo,
  'bar-jobs': barJobs,
  'sheet-jobs': sheetJobs,
  bins,
  'one-sheet-2': twoStageValue,
  'one-sheet-any': anyStageValue,
  perfect,
  'cut-up': cutUpHere,
  'several-2': severalInTwoStages,
  'several-few': severalOfFew,
  classes,
};

interface Typed {
  readonly folder: string;
  readonly seconds: number;
  readonly tables: readonly string[];
}

function typed(words: readonly string[]): Typed | string {
  let [folder, seconds] = [FOLDER, 2];
  const tables: string[] = [];
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i];
    if (word === '--seconds') {
      i += 1;
      seconds = Number(words[i]);
    } else if (Object.hasOwn(TABLES, word)) tables.push(word);
    else if (existsSync(word) && statSync(word).isDirectory()) folder = word;
    else return `'${word}' is neither a folder nor a table; there are ${Object.keys(TABLES).join(', ')}`;
  }
  if (!(seconds > 0)) return '--seconds needs a number above 0';
  return { folder, seconds, tables: tables.length > 0 ? tables : Object.keys(TABLES) };
}

const asked = typed(process.argv.slice(2));
if (typeof asked === 'string') {
  process.stderr.write(`${asked}\n`);
  process.exitCode = 2;
} else {
  const bench: Bench = { ...asked, lp: await loadLp(), faults: [] };
  process.stdout.write(`${asked.seconds} s for each problem at most; the solver's loading is not counted\n`);
  for (const name of asked.tables) {
    const table = TABLES[name](bench);
    process.stdout.write(table ? tableText(table) : `\n${name}: its file is not in ${asked.folder}, left out\n`);
  }
  process.stdout.write(`\n${bench.faults.length} faults found by the verifier\n`);
  if (bench.faults.length > 0) process.exitCode = 1;
}
