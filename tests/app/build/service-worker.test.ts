import { runInNewContext } from 'node:vm';
import { beforeEach, describe, expect, it } from 'vitest';
import { serviceWorkerSource } from '../../../app/build/service-worker.ts';

const SCOPE = 'https://joiner.example/shop/';

/** A request as far as the worker looks at it. */
interface Asked {
  url: string;
  method: string;
  mode: string;
}

const ask = (path: string, more: Partial<Asked> = {}): Asked => ({
  url: new URL(path, SCOPE).href,
  method: 'GET',
  mode: 'cors',
  ...more,
});

/** A browser as far as the worker needs one: caches by name, a network that counts what it is asked. */
class Browser {
  readonly caches = new Map<string, Map<string, string>>();
  readonly fetched: string[] = [];
  readonly requested: { url: string; cache: string | undefined }[] = [];
  online = true;
  claimed = false;

  /** Runs a worker's text in a world of its own; returns the means to send it events. */
  start(source: string) {
    const listeners = new Map<string, (event: unknown) => void>();
    const browser = this;
    const address = (request: string | Asked) =>
      new URL(typeof request === 'string' ? request : request.url, SCOPE).href;
    const open = async (name: string) => {
      const held = this.caches.get(name) ?? new Map<string, string>();
      this.caches.set(name, held);
      return {
        addAll: async (requests: Asked[]) => {
          for (const request of requests) held.set(address(request), await browser.fetch(request));
        },
        // As in a browser whose server varies its answers by Origin: nothing is found unless that is ignored.
        match: async (request: string | Asked, options?: { ignoreVary?: boolean }) =>
          options?.ignoreVary ? held.get(address(request)) : undefined,
      };
    };
    runInNewContext(source, {
      URL,
      Request: function (this: Asked, url: string, options: { cache?: string }) {
        browser.requested.push({ url, cache: options.cache });
        Object.assign(this, ask(url));
      },
      fetch: (request: Asked) => browser.fetch(request),
      caches: {
        open,
        keys: async () => [...this.caches.keys()],
        delete: async (name: string) => this.caches.delete(name),
      },
      self: {
        registration: { scope: SCOPE },
        location: new URL('sw.js', SCOPE),
        clients: {
          claim: async () => {
            this.claimed = true;
          },
        },
        addEventListener: (name: string, listener: (event: unknown) => void) => listeners.set(name, listener),
      },
    });
    const wait = async (name: string) => {
      const waits: Promise<unknown>[] = [];
      listeners.get(name)?.({ waitUntil: (promise: Promise<unknown>) => waits.push(promise) });
      await Promise.all(waits);
    };
    return {
      install: () => wait('install'),
      activate: () => wait('activate'),
      /** The answer to a request, or null when the worker leaves it to the browser. */
      answer: async (request: Asked): Promise<string | null> => {
        let answer: Promise<string> | null = null;
        listeners.get('fetch')?.({
          request,
          respondWith: (promise: Promise<string>) => {
            answer = promise;
          },
        });
        return answer;
      },
    };
  }

  async fetch(request: Asked): Promise<string> {
    this.fetched.push(request.url);
    if (!this.online) throw new Error(`no network for ${request.url}`);
    return `network: ${request.url}`;
  }
}

describe('the service worker', () => {
  const files = ['index.html', 'assets/main-1a2b.js', 'fonts/plain sans.woff2'];
  let browser: Browser;
  let worker: ReturnType<Browser['start']>;

  beforeEach(async () => {
    browser = new Browser();
    worker = browser.start(serviceWorkerSource('bench ', 'v1', files));
    await worker.install();
    await worker.activate();
  });

  it('fetches every file once at installation, past the browser’s own cache, and the page as a folder', () => {
    expect(browser.fetched.sort()).toEqual(
      [SCOPE, `${SCOPE}assets/main-1a2b.js`, `${SCOPE}fonts/plain%20sans.woff2`].sort(),
    );
    expect(new Set(browser.requested.map(({ cache }) => cache))).toEqual(new Set(['reload']));
    expect(browser.claimed).toBe(true);
  });

  it('answers page and files without a network, whatever the page’s query', async () => {
    browser.online = false;
    expect(await worker.answer(ask('assets/main-1a2b.js'))).toBe(`network: ${SCOPE}assets/main-1a2b.js`);
    expect(await worker.answer(ask('./', { mode: 'navigate' }))).toBe(`network: ${SCOPE}`);
    expect(await worker.answer(ask('index.html', { mode: 'navigate' }))).toBe(`network: ${SCOPE}`);
    expect(await worker.answer(ask('./?job=bar', { mode: 'navigate' }))).toBe(`network: ${SCOPE}`);
  });

  it('asks the network for what it does not hold, and says so when there is none', async () => {
    expect(await worker.answer(ask('other.json'))).toBe(`network: ${SCOPE}other.json`);
    browser.online = false;
    await expect(worker.answer(ask('other.json'))).rejects.toThrow('no network');
  });

  it('leaves other origins and other methods alone', async () => {
    expect(await worker.answer(ask('https://elsewhere.example/x.js'))).toBeNull();
    expect(await worker.answer(ask('./', { method: 'POST' }))).toBeNull();
  });

  it('keeps a new version beside the old until it takes over, then drops the old and nothing of others', async () => {
    browser.caches.set('somebody else', new Map());
    browser.caches.set('bench https://joiner.example/other-shop/ v1', new Map());
    const next = browser.start(serviceWorkerSource('bench ', 'v2', files));
    await next.install();
    expect([...browser.caches.keys()]).toContain(`bench ${SCOPE} v1`);
    await next.activate();
    expect([...browser.caches.keys()].sort()).toEqual(
      ['bench https://joiner.example/other-shop/ v1', `bench ${SCOPE} v2`, 'somebody else'].sort(),
    );
  });
});
