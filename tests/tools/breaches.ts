import { posix } from 'node:path';
import ts from 'typescript';
import { LAW, REGISTER, ROOM, ROOM_CONTRACT, ROOMS, type Stage, WORLDLY } from '../law.ts';
import { importsOf, parse } from './imports.ts';
import { worldlyUses } from './worldly.ts';

/**
 * What in a file breaks the law of imports; none when it keeps it.
 * @param path below the repository, with forward slashes: `src/parts/marks.ts`
 */
export function breachesOf(path: string, text: string): string[] {
  const stage = stageOf(path);
  if (!stage) return [`${path}: belongs to no stage of the law`];
  const file = parse(path, text);
  const breaches: string[] = [];
  for (const { target, line } of importsOf(file)) {
    const why = target === null ? 'its target is computed' : whyForbidden(path, stage, target);
    if (why) breaches.push(`${path}:${line}: may not import '${target ?? '?'}': ${why}`);
  }
  if (stage.typesOnly) {
    for (const statement of file.statements) {
      if (!isTypeOnly(statement)) {
        breaches.push(`${path}:${lineOf(file, statement)}: is for types only, and holds '${firstWords(statement)}'`);
      }
    }
  }
  if (!stage.worldly) {
    for (const use of worldlyUses(file, WORLDLY)) {
      breaches.push(`${path}:${use.line}: the engine does without '${use.name}'`);
    }
  }
  return breaches;
}

/** The entry of the law that rules a file, or null when no entry names its place. */
export function stageOf(path: string): Stage | null {
  const page = withoutEnding(path);
  const ruling = LAW.filter((stage) => covers(stage.place, page)).sort((a, b) => b.place.length - a.place.length)[0];
  if (ruling) return ruling;
  const room = roomOf(page);
  return room === null ? null : { ...ROOM, place: room };
}

function whyForbidden(path: string, stage: Stage, target: string): string | null {
  if (!target.startsWith('.')) {
    const name = packageOf(target);
    const allowed = stage.packages.includes(name) || (name.startsWith('node:') && stage.packages.includes('node:*'));
    return allowed ? null : `'${name}' is no package of ${stage.place}`;
  }
  const aim = landing(path, target);
  // A place inside this one may be ruled by a stricter entry (app/build within app): compare entries, not paths.
  if (stageOf(`${aim}.ts`)?.place === stage.place) return null;
  if (aim === REGISTER && !stage.mayImport.includes(REGISTER)) return 'only src/flow.ts knows the register';
  if (stage.mayImport.some((place) => covers(place, aim))) return null;
  return `${stage.place} may import ${[stage.place, ...stage.mayImport].join(', ')}`;
}

/** Where a relative import lands: a page below the repository, without ending; a folder stands for its index. */
function landing(path: string, target: string): string {
  const bare = target.replace(/\?.*$/, '').replace(/(^|\/)(\.{1,2})?\/?$/, '$&/index');
  const aim = withoutEnding(posix.normalize(posix.join(posix.dirname(path), bare)));
  const isPlaceItself = LAW.some((stage) => stage.place === `${aim}/`) || `${aim}/` === ROOMS;
  return isPlaceItself ? `${aim}/index` : aim;
}

/** `src/elements/top/` for any page of that room; null for pages that are in no room. */
function roomOf(page: string): string | null {
  if (page === REGISTER || page === ROOM_CONTRACT || !page.startsWith(ROOMS)) return null;
  const [room, ...rest] = page.slice(ROOMS.length).split('/');
  return rest.length > 0 ? `${ROOMS}${room}/` : null;
}

function covers(place: string, page: string): boolean {
  return place.endsWith('/') ? page.startsWith(place) : page === place;
}

function withoutEnding(path: string): string {
  return path.replace(/\.(d\.ts|[cm]?[jt]sx?)$/, '').replace(/\/$/, '');
}

function packageOf(target: string): string {
  const words = target.split('/');
  if (target.startsWith('node:')) return target;
  return words.slice(0, target.startsWith('@') ? 2 : 1).join('/');
}

function isTypeOnly(statement: ts.Statement): boolean {
  if (ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement)) return true;
  if (ts.isImportDeclaration(statement)) return statement.importClause?.isTypeOnly === true;
  if (ts.isExportDeclaration(statement)) {
    const named =
      statement.exportClause && ts.isNamedExports(statement.exportClause) && statement.exportClause.elements;
    return statement.isTypeOnly || (named && named.length === 0 && !statement.moduleSpecifier) === true;
  }
  return false;
}

function lineOf(file: ts.SourceFile, node: ts.Node): number {
  return file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1;
}

function firstWords(node: ts.Node): string {
  return node.getText().split('\n')[0]?.slice(0, 60) ?? '';
}
