/**
 * The law of imports, as data. Paths are folders or files below the repository, without a file ending.
 * A stage imports its own folder, `vocabulary/` and `base/`, and of the packages only those named here.
 */
export interface Stage {
  /** Folder (ending in a slash) or single page, whose files this entry rules. The longest that fits rules. */
  readonly place: string;
  /** Folders (ending in a slash) or single pages that it may import besides itself. */
  readonly mayImport: readonly string[];
  /** Packages it may import; `node:*` stands for everything that comes with Node. */
  readonly packages: readonly string[];
  /** Types only: no statement that is still there when the program runs. */
  readonly typesOnly?: boolean;
  /** May use the clock, chance, the screen, the network and the console. */
  readonly worldly?: boolean;
}

const WORDS = ['src/vocabulary/', 'src/base/'];
const stage = (name: string, packages: readonly string[] = []): Stage => ({
  place: `src/${name}/`,
  mayImport: WORDS,
  packages,
});

/** Where the rooms are: each folder below is one, and imports no other. */
export const ROOMS = 'src/elements/';

/** The contract of a room, if it is kept beside the rooms: every room may import it. */
export const ROOM_CONTRACT = 'src/elements/room';

/** The register: the only page that knows every room, and only `src/flow.ts` (and tests) may import it. */
export const REGISTER = 'src/elements/index';

const OPEN_TO_CALLERS = ['src/flow', 'src/cut', 'src/job/', 'src/exports/', ...WORDS];

export const LAW: readonly Stage[] = [
  // The base knows no joinery: of the words only those that would serve any shop.
  {
    place: 'src/base/',
    mayImport: ['field', 'geometry', 'shape', 'book', 'result'].map((word) => `src/vocabulary/${word}`),
    packages: ['earcut'],
  },
  { place: 'src/vocabulary/', mayImport: [], packages: [], typesOnly: true },
  stage('job', ['zod']),
  stage('setting-out'),
  // A room, in a folder of its own beside the register, is ruled by ROOM below.
  { place: REGISTER, mayImport: [ROOMS, ...WORDS], packages: [] },
  { place: ROOM_CONTRACT, mayImport: WORDS, packages: [] },
  stage('parts'),
  stage('sections'),
  stage('making'),
  stage('cutting', ['highs']),
  stage('checks'),
  stage('costing'),
  stage('drawings'),
  stage('papers'),
  stage('exports', ['@gltf-transform/core']),
  {
    place: 'src/flow',
    mayImport: [
      ...[
        'job',
        'setting-out',
        'parts',
        'sections',
        'making',
        'cutting',
        'checks',
        'costing',
        'drawings',
        'papers',
      ].map((s) => `src/${s}/`),
      REGISTER,
      ROOM_CONTRACT,
      ...WORDS,
    ],
    packages: [],
  },
  // The door to cutting for who has no design: a worker, a problem in a file.
  { place: 'src/cut', mayImport: ['src/cutting/', ...WORDS], packages: [] },
  { place: 'src/cli/', mayImport: OPEN_TO_CALLERS, packages: ['node:*'], worldly: true },
  {
    place: 'app/',
    mayImport: OPEN_TO_CALLERS,
    packages: ['react', 'react-dom', 'three', '@react-three/fiber', 'zustand', 'idb', 'highs'],
    worldly: true,
  },
  { place: 'app/build/', mayImport: [], packages: ['node:*', 'vite'], worldly: true },
];

/** What holds for every room: its own folder, the contract, the words. */
export const ROOM: Omit<Stage, 'place'> = { mayImport: [ROOM_CONTRACT, ...WORDS], packages: [] };

/** Globals that the engine does without: the clock, chance, the screen, the network, the machine. */
export const WORLDLY: readonly string[] = [
  'Date',
  'Math.random',
  'window',
  'document',
  'self',
  'globalThis',
  'navigator',
  'localStorage',
  'process',
  'require',
  'fetch',
  'XMLHttpRequest',
  'console',
  'performance',
  'crypto',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'requestAnimationFrame',
  'eval',
];

/** No file of the project's own code is longer. */
export const MOST_LINES = 300;
