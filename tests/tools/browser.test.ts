import { describe, expect, it } from 'vitest';
import { ensureBrowser, findBrowser, type Machine } from './browser.ts';
import { findTool } from './outside.ts';

/** A machine with these programs on it; `installs` names what appears when a command of that name is run. */
function machine(programs: string[], more: Partial<Machine> = {}, installs: Record<string, string> = {}) {
  const present = new Set(programs);
  const ran: string[] = [];
  const here: Machine = {
    env: {},
    isProgram: (path) => present.has(path),
    findTool: (name) => (present.has(`/usr/bin/${name}`) ? `/usr/bin/${name}` : null),
    playwrightPath: () => '/cache/playwright/chrome',
    isRoot: () => true,
    run: (program, args) => {
      ran.push(
        [program === process.execPath ? 'playwright' : program, ...args.filter((a) => !a.endsWith('.js'))].join(' '),
      );
      const appears = Object.entries(installs).find(([command]) => ran.at(-1)?.startsWith(command))?.[1];
      if (appears) present.add(appears);
      return appears !== undefined || args[0] === 'update';
    },
    ...more,
  };
  return { machine: here, ran };
}

describe('the search for a browser', () => {
  const everything = ['/opt/chrome', '/cache/playwright/chrome', '/usr/bin/chromium', '/usr/bin/google-chrome'];

  it('takes CHROMIUM_PATH first, then Playwright’s own, then the system’s', () => {
    const env = { CHROMIUM_PATH: '/opt/chrome' };
    expect(findBrowser(machine(everything, { env }).machine)).toBe('/opt/chrome');
    expect(findBrowser(machine(everything).machine)).toBe('/cache/playwright/chrome');
    expect(findBrowser(machine(['/usr/bin/google-chrome', '/usr/bin/chromium']).machine)).toBe('/usr/bin/chromium');
    expect(findBrowser(machine([]).machine)).toBeNull();
  });

  it('does not look elsewhere when CHROMIUM_PATH is wrong', () => {
    const env = { CHROMIUM_PATH: '/opt/gone' };
    expect(() => findBrowser(machine(everything, { env }).machine)).toThrow("'/opt/gone'");
  });

  it('installs nothing when there is one', () => {
    const { machine: here, ran } = machine(['/usr/bin/chromium']);
    expect(ensureBrowser(here)).toBe('/usr/bin/chromium');
    expect(ran).toEqual([]);
  });

  it('lets Playwright install one, else apt', () => {
    const first = machine(['/usr/bin/apt-get'], {}, { playwright: '/cache/playwright/chrome' });
    expect(ensureBrowser(first.machine)).toBe('/cache/playwright/chrome');
    expect(first.ran).toEqual(['playwright install chromium']);

    const second = machine(['/usr/bin/apt-get'], {}, { '/usr/bin/apt-get install': '/usr/bin/chromium' });
    expect(ensureBrowser(second.machine)).toBe('/usr/bin/chromium');
    expect(second.ran).toEqual([
      'playwright install chromium',
      '/usr/bin/apt-get update',
      '/usr/bin/apt-get install -y chromium',
    ]);
  });

  it('says what it tried when there is none to be had, and leaves apt to root', () => {
    const { machine: here, ran } = machine(['/usr/bin/apt-get'], { isRoot: () => false });
    expect(() => ensureBrowser(here)).toThrow(/No Chromium.*playwright install chromium.*Set CHROMIUM_PATH/);
    expect(ran).toEqual(['playwright install chromium']);
  });
});

describe('the search for a tool of the system', () => {
  it('finds node, which runs this, and not what nobody has', () => {
    expect(findTool('node')).toMatch(/node/);
    expect(findTool('no-such-tool-anywhere')).toBeNull();
  });
});
