import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { chromium } from '@playwright/test';
import { findTool, isProgram } from './outside.ts';

/** What the search asks of the machine; replaced in the search's own test. */
export interface Machine {
  readonly env: Readonly<Record<string, string | undefined>>;
  isProgram(path: string): boolean;
  findTool(name: string): string | null;
  /** Where Playwright keeps its own Chromium, whether it is there or not. */
  playwrightPath(): string;
  isRoot(): boolean;
  /** Runs a program to its end, its output on stderr; true when it succeeded. */
  run(program: string, args: readonly string[]): boolean;
}

/** An installation that has not ended by then will not end: no network, most likely. */
const INSTALL_MS = 10 * 60_000;

const SYSTEM_NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];
const SYSTEM_PATHS = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

export const thisMachine: Machine = {
  env: process.env,
  isProgram,
  findTool,
  playwrightPath: () => chromium.executablePath(),
  isRoot: () => process.getuid?.() === 0,
  run: (program, args) => spawnSync(program, args, { stdio: ['ignore', 2, 2], timeout: INSTALL_MS }).status === 0,
};

/**
 * Path of a Chromium already on the machine, or null: `CHROMIUM_PATH`, then Playwright's own, then the system's.
 * @throws when `CHROMIUM_PATH` names something that is not a program
 */
export function findBrowser(machine: Machine = thisMachine): string | null {
  const asked = machine.env.CHROMIUM_PATH;
  if (asked) {
    if (!machine.isProgram(asked)) throw new Error(`CHROMIUM_PATH is '${asked}', which is not a program.`);
    return asked;
  }
  const own = machine.playwrightPath();
  if (machine.isProgram(own)) return own;
  for (const name of SYSTEM_NAMES) {
    const path = machine.findTool(name);
    if (path) return path;
  }
  return SYSTEM_PATHS.find((path) => machine.isProgram(path)) ?? null;
}

/**
 * Path of a Chromium; where there is none, it is installed: by Playwright, else by apt when we are root on Debian.
 * @throws when no browser can be had, saying what was tried
 */
export function ensureBrowser(machine: Machine = thisMachine): string {
  const present = findBrowser(machine);
  if (present) return present;

  const tried = ['CHROMIUM_PATH (not set)', "Playwright's own (absent)", 'a system Chromium (absent)'];
  const cli = join(dirname(createRequire(import.meta.url).resolve('@playwright/test/package.json')), 'cli.js');
  tried.push('playwright install chromium');
  if (machine.run(process.execPath, [cli, 'install', 'chromium'])) {
    const installed = findBrowser(machine);
    if (installed) return installed;
  }
  const apt = machine.findTool('apt-get');
  if (apt && machine.isRoot()) {
    tried.push('apt-get install chromium');
    if (machine.run(apt, ['update']) && machine.run(apt, ['install', '-y', 'chromium'])) {
      const installed = findBrowser(machine);
      if (installed) return installed;
    }
  }
  throw new Error(`No Chromium for the journeys. Tried: ${tried.join('; ')}. Set CHROMIUM_PATH to one.`);
}

/** Launch arguments: nothing fetched behind the tests' back, and WebGL drawn by the processor. */
export const BROWSER_ARGS: readonly string[] = [
  '--disable-background-networking',
  '--disable-component-update',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
];
