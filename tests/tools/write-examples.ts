/** Writes public/examples/*.job.json afresh from examples.ts: `npx tsx tests/tools/write-examples.ts`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeJob } from '../../src/job/write.ts';
import { loadRooms } from '../job/rooms.ts';
import { examples } from './examples.ts';

const folder = join(import.meta.dirname, '..', '..', 'public', 'examples');
mkdirSync(folder, { recursive: true });
for (const [file, job] of Object.entries(examples(await loadRooms()))) writeFileSync(join(folder, file), writeJob(job));
