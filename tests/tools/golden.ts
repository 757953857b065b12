/** `npm run golden -- NAME …` renews the goldens named, after one has looked at them; without a name it says which differ. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { difference, GOLDENS, goldens, kept, orphans } from './goldens.ts';

const names = process.argv.slice(2);
const all = goldens();
mkdirSync(GOLDENS, { recursive: true });
const left = orphans();
for (const name of names) {
  const golden = all.find(({ file }) => file === name);
  if (golden) writeFileSync(join(GOLDENS, name), golden.make());
  else if (left.includes(name)) rmSync(join(GOLDENS, name));
  else {
    process.stderr.write(
      `no golden is called ${name}; there are ${[...all.map(({ file }) => file), ...left].join(', ')}\n`,
    );
    process.exitCode = 2;
  }
}
if (names.length === 0) {
  for (const { file, make } of all) {
    const before = kept(file);
    const said = before === null ? 'missing' : difference(before, make());
    if (said !== null) process.stdout.write(`${file}: ${said}\n`);
  }
  for (const file of left) process.stdout.write(`${file}: nothing makes it any more\n`);
}
