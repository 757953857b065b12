/** Writes public/examples/*.job.json afresh from examples.ts: `npx tsx tests/tools/write-examples.ts`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { rooms } from '../../src/elements/index.ts';
import { writeJob } from '../../src/job/write.ts';
import { examples } from './examples.ts';

const folder = join(import.meta.dirname, '..', '..', 'public', 'examples');
mkdirSync(folder, { recursive: true });
for (const [file, job] of Object.entries(examples(rooms))) writeFileSync(join(folder, file), writeJob(job));
