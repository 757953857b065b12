import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MOST_LINES } from './law.ts';
import { breachesOf } from './tools/breaches.ts';

const root = join(import.meta.dirname, '..');

/** Code files below a folder, addressed from the repository with forward slashes. */
function codeBelow(folder: string): string[] {
  const top = join(root, folder);
  if (!existsSync(top)) return [];
  return readdirSync(top, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|tsx|css)$/.test(name))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .sort();
}

const read = (path: string) => readFileSync(join(root, path), 'utf8');

describe('the law of imports', () => {
  for (const folder of ['src', 'app']) {
    it(`is kept in ${folder}/`, () => {
      const files = codeBelow(folder).filter((path) => !path.endsWith('.css'));
      expect(files.length, `no file of ${folder}/ was read`).toBeGreaterThan(0);
      expect(files.flatMap((path) => breachesOf(path, read(path)))).toEqual([]);
    });
  }
});

describe('size', () => {
  for (const folder of ['src', 'app', 'tests', 'e2e']) {
    it(`no file of ${folder}/ is over ${MOST_LINES} lines`, () => {
      const long = codeBelow(folder)
        .map((path) => ({ path, lines: read(path).replace(/\n$/, '').split('\n').length }))
        .filter(({ lines }) => lines > MOST_LINES);
      expect(long).toEqual([]);
    });
  }
});

describe('the checker of the law', () => {
  const keeps = (path: string, text: string) => expect(breachesOf(path, text)).toEqual([]);
  const breaks = (path: string, text: string, said: string | RegExp) => {
    const breaches = breachesOf(path, text);
    expect(breaches).toHaveLength(1);
    expect(breaches[0]).toMatch(said);
    expect(breaches[0]).toContain(path);
  };

  it('lets a stage import itself, the words and the base, with or without an ending', () => {
    keeps('src/parts/marks.ts', "import { x } from './round.ts';\nimport type { P } from '../vocabulary/part';");
    keeps('src/parts/solid/mesh.ts', "import { v } from '../../base/vec';\nimport { r } from '../round';");
  });

  it('names the file, the line and the import of a breach', () => {
    breaks(
      'src/parts/marks.ts',
      "\nimport { q } from '../costing/quote.ts';",
      /marks\.ts:2: .*'\.\.\/costing\/quote\.ts'/,
    );
  });

  it.each([
    ["import type { Q } from '../costing/quote';"],
    ["import '../costing/quote';"],
    ["export { q } from '../costing/quote';"],
    ["export type * from '../costing/quote';"],
    ["export const q = import('../costing/quote');"],
    ["export type Q = import('../costing/quote').Q;"],
    ["import q = require('../costing/quote');"],
    ["export const u = new URL('../costing/quote', import.meta.url);"],
    ['/// <reference path="../costing/quote.ts" />'],
    ['const where = "../costing/quote"; export const q = import(where);'],
  ])('reads %s', (text) => breaks('src/parts/marks.ts', text, 'may not import'));

  it('is not misled by imports in comments and strings', () => {
    keeps(
      'src/parts/marks.ts',
      "// import { q } from '../costing/quote';\nexport const s = \"import('../costing/quote')\";",
    );
  });

  it('keeps rooms strangers to each other, and the register to themselves', () => {
    keeps('src/elements/plinth/parts.ts', "import { f } from './fields';\nimport type { Room } from '../room';");
    keeps('src/elements/plinth/parts.ts', "import { f } from '.';");
    breaks('src/elements/plinth/parts.ts', "import { f } from '../frame/fields';", 'may not import');
    breaks('src/elements/plinth/parts.ts', "import { f } from '../frame';", 'may not import');
    breaks('src/elements/plinth/parts.ts', "import { rooms } from '../index';", 'may not import');
    breaks('src/elements/plinth/parts.ts', "import { rooms } from '..';", 'may not import');
    breaks('src/elements/shared.ts', '', 'belongs to no stage');
  });

  it('lets only the flow know the register, and only the register know the rooms', () => {
    keeps('src/flow.ts', "import { rooms } from './elements/index';");
    keeps('src/flow.ts', "import { rooms } from './elements';");
    keeps('src/elements/index.ts', "import { frame } from './frame/index';");
    breaks('src/flow.ts', "import { frame } from './elements/frame/index';", 'may not import');
    breaks(
      'src/checks/lifting.ts',
      "import { rooms } from '../elements/index';",
      'only src/flow.ts knows the register',
    );
    breaks('app/main.tsx', "import { rooms } from '../src/elements/index';", 'only src/flow.ts knows the register');
    breaks('src/cli/main.ts', "import { rooms } from '../elements';", 'only src/flow.ts knows the register');
  });

  it('lets the callers reach the flow, the job, the exports and the words, and nothing behind them', () => {
    for (const path of ['app/main.tsx', 'app/store/document.ts']) {
      const up = path.startsWith('app/store') ? '../../src' : '../src';
      for (const open of ['flow', 'job/schema', 'exports/svg', 'vocabulary/job', 'base/length']) {
        keeps(path, `import * as x from '${up}/${open}';`);
      }
      breaks(path, `import { n } from '${up}/parts/number';`, 'may not import');
    }
    keeps('src/cli/main.ts', "import { argv } from 'node:process';\nimport { design } from '../flow';");
    breaks('src/cli/main.ts', "import { n } from '../checks/route';", 'may not import');
    breaks('app/main.tsx', "import { budget } from './build/budget';", 'may not import');
    breaks('app/main.tsx', "import data from '../tests/golden/demo.json';", 'may not import');
  });

  it('lets nothing of the engine reach up to the flow, the screen or the command line', () => {
    breaks('src/job/schema.ts', "import { design } from '../flow';", 'may not import');
    breaks('src/job/schema.ts', "import { App } from '../../app/shell/App';", 'may not import');
    breaks('src/exports/svg.ts', "import { main } from '../cli/main';", 'may not import');
    keeps('src/base/vec.ts', "import type { Vec2 } from '../vocabulary/geometry';");
    breaks('src/base/vec.ts', "import type { Job } from '../vocabulary/job';", 'may not import');
  });

  it('allows a package only where the law lists it', () => {
    keeps('src/job/schema.ts', "import { z } from 'zod';");
    keeps('src/base/fill.ts', "import earcut from 'earcut';");
    keeps('src/exports/gltf.ts', "import { Document } from '@gltf-transform/core';");
    keeps('app/scene/View.tsx', "import { Canvas } from '@react-three/fiber';\nimport { x } from 'three/addons/x.js';");
    breaks('src/parts/marks.ts', "import { z } from 'zod';", "'zod' is no package of src/parts/");
    breaks('src/parts/solid.ts', "import * as three from 'three';", 'no package');
    breaks('src/elements/top/parts.ts', "import { useMemo } from 'react';", 'no package');
    breaks('src/exports/csv.ts', "import { writeFileSync } from 'node:fs';", 'no package');
    breaks('app/main.tsx', "import { readFileSync } from 'node:fs';", 'no package');
  });

  it('keeps the vocabulary to types', () => {
    keeps(
      'src/vocabulary/part.ts',
      "import type { Vec2 } from './geometry';\nexport interface P { v: Vec2 }\nexport type Q = P;\nexport {};",
    );
    breaks('src/vocabulary/part.ts', 'export const x = 1;', 'is for types only');
    breaks('src/vocabulary/part.ts', 'export enum Kind { A }', 'is for types only');
    breaks('src/vocabulary/part.ts', "import { v } from './geometry';", 'is for types only');
    breaks('src/vocabulary/part.ts', "export { v } from './geometry';", 'is for types only');
    breaks('src/vocabulary/part.ts', "import type { V } from '../base/vec';", 'may not import');
  });

  it.each([
    ['export const t = Date.now();'],
    ['export const t = (at: Date) => at;'],
    ['export const t = Math.random();'],
    ["export const t = Math['random']();"],
    ['export const { random } = Math;'],
    ['export const t = window.innerWidth;'],
    ["export const t = document.createElement('p');"],
    ['export const t = process.env.HOME;'],
    ["export const t = fetch('./job.json');"],
    ["console.log('here');"],
    ['setTimeout(() => {}, 10);'],
    ['export const t = { fetch };'],
  ])('finds the world outside in %s', (text) => {
    breaks('src/parts/marks.ts', text, 'the engine does without');
    keeps('src/cli/main.ts', text);
    keeps('app/effects/files.ts', text);
  });

  it('is not misled by names that are only spelt like globals', () => {
    keeps('src/parts/marks.ts', 'export const w = (opening: { window: number }) => opening.window + Math.hypot(1, 2);');
    keeps('src/parts/marks.ts', 'export const write = (document: string) => document.length;');
    keeps('src/parts/marks.ts', "export const row = { process: 'glue up', date: '2024-05-01' };");
  });

  it('knows no stage that the law does not list', () => {
    breaks('src/helpers/misc.ts', '', 'belongs to no stage');
    breaks('src/misc.ts', '', 'belongs to no stage');
  });
});
