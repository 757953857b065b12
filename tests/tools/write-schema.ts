/** `npm run schema`: writes public/job.schema.json from the fields. A test fails while the file is not what this writes. */
import { writeFileSync } from 'node:fs';
import { schemaFile, schemaText } from '../job/schema-text.ts';

writeFileSync(schemaFile, schemaText());
