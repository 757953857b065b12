import { alike, elevation, making, rodDrawing } from '../../src/flow';
import type { Design } from '../../src/vocabulary/design';
import type { Drawing } from '../../src/vocabulary/drawing';
import { design } from '../store/designs';
import type { AppStore } from '../store/store';
import { download, fileName } from './download';

/** Something that can be handed on: what it is called, and how to make it when asked. */
export interface Export {
  readonly id: string;
  readonly label: string;
  /** Resolves when the file has been handed to the browser. */
  make(): Promise<void>;
}

async function partsList(made: Design): Promise<void> {
  const { partsCsv } = await import('../../src/exports/csv');
  download(partsCsv(made), fileName(`${made.job.name} parts`, 'csv'), 'text/csv;charset=utf-8');
}

async function cuttingList(made: Design): Promise<void> {
  const { cuttingCsv } = await import('../../src/exports/csv');
  download(cuttingCsv(made, alike), fileName(`${made.job.name} cutting list`, 'csv'), 'text/csv;charset=utf-8');
}

/** What is drawn of each run. */
type Drawn = 'front' | 'framing' | 'behind' | 'rod';

const draw = (made: Design, run: string, kind: Drawn): Drawing =>
  kind === 'rod' ? rodDrawing(made, run) : elevation(made, run, kind);

async function sheetOf(made: Design, run: string, kind: Drawn): Promise<void> {
  const { elevationSheet, runSheet } = await import('../../src/exports/sheets');
  // Front and framing are one set of sheets; those from behind and the rods are numbered among themselves.
  const sheet =
    kind === 'front' || kind === 'framing'
      ? elevationSheet(made, run, kind, draw)
      : runSheet(made, run, (of, id) => draw(of, id, kind));
  download(sheet, fileName(`${made.job.name} ${draw(made, run, kind).title}`, 'svg'), 'image/svg+xml');
}

async function model(made: Design): Promise<void> {
  const { modelGlb } = await import('../../src/exports/gltf');
  download(
    new Uint8Array(await modelGlb(made.parts, made.job.unit.name || made.job.name)),
    fileName(made.job.name, 'glb'),
    'model/gltf-binary',
  );
}

/** The lists about the making, by what they are called; each is worked out and written when asked for. */
const MAKING: readonly {
  readonly id: string;
  readonly name: string;
  readonly write: (pages: typeof import('../../src/exports/making'), made: Design) => string;
}[] = [
  { id: 'sections', name: 'Sections', write: (pages, made) => pages.sectionsCsv(made) },
  { id: 'fixings', name: 'Fixings', write: (pages, made) => pages.fixingsCsv(making(made).fixings) },
  {
    id: 'part-fixings',
    name: 'Fixings part by part',
    write: (pages, made) => pages.partFixingsCsv(making(made).fixings),
  },
  { id: 'spacers', name: 'Spacers', write: (pages, made) => pages.spacersCsv(making(made).spacers, made.job) },
  { id: 'assembly', name: 'Assembly, step by step', write: (pages, made) => pages.assemblyCsv(making(made).steps) },
  { id: 'fixing-map', name: 'Fixing map', write: (pages, made) => pages.mapCsv(making(made).maps, made.job) },
  { id: 'site', name: 'Site work', write: (pages, made) => pages.siteCsv(making(made), made.job) },
];

const makingList = ({ id, name, write }: (typeof MAKING)[number], made: Design): Export => ({
  id,
  label: `${name} (CSV)`,
  make: async () => {
    const text = write(await import('../../src/exports/making'), made);
    download(text, fileName(`${made.job.name} ${name.toLowerCase()}`, 'csv'), 'text/csv;charset=utf-8');
  },
});

/** All that can be made of the job on the board now: the heavy code is fetched when one is asked for. */
export function exportsOf(made: Design): readonly Export[] {
  const runs = made.rod.runs.flatMap(({ id, name }) => {
    const sheet = (kind: Drawn, label: string): Export => ({
      id: `${kind}-${id}`,
      label: `${label} (SVG)`,
      make: () => sheetOf(made, id, kind),
    });
    return [
      sheet('front', `Front elevation of ${name}`),
      sheet('framing', `Framing elevation of ${name}`),
      sheet('behind', `${name} from behind`),
      sheet('rod', `Rod of ${name}`),
    ];
  });
  return [
    { id: 'parts', label: 'Parts list (CSV)', make: () => partsList(made) },
    { id: 'cutting', label: 'Cutting list, alike together (CSV)', make: () => cuttingList(made) },
    ...MAKING.map((list) => makingList(list, made)),
    ...runs,
    { id: 'model', label: 'Solid model (GLB)', make: () => model(made) },
  ];
}

/** Makes one of them, by its id, and says so when it can't be made. */
export async function runExport(store: AppStore, id: string): Promise<void> {
  const { document, notify } = store.getState();
  try {
    await exportsOf(design(document))
      .find((entry) => entry.id === id)
      ?.make();
  } catch (reason) {
    const why = reason instanceof Error ? reason.message : String(reason);
    notify({ tone: 'trouble', text: 'That could not be exported.', lines: [why] });
  }
}
