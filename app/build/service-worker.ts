/**
 * The text of the service worker. It answers from its own copy first, and asks the network only for what it does not
 * hold. A new version is fetched whole beside the old one and takes over when the last tab of the old one is closed,
 * so that a page never gets chunks of two versions.
 *
 * @param cachePrefix begins the name of every cache of this app; other caches of the same origin are left alone
 * @param version     names this exact set of files
 * @param addresses   the files, relative to the page
 */
export function serviceWorkerSource(cachePrefix: string, version: string, addresses: readonly string[]): string {
  // The page is kept under './': some hosts answer 'index.html' with a redirect, which a navigation may not be given.
  const kept = [...new Set(addresses.map((address) => (address === 'index.html' ? './' : address)))].sort();
  return `// Two copies of the app may live on one origin, each in its own folder.
const PREFIX = ${JSON.stringify(cachePrefix)} + self.registration.scope + ' ';
const CACHE = PREFIX + ${JSON.stringify(version)};
const FILES = ${JSON.stringify(kept, null, 2)};

async function keepAll() {
  const cache = await caches.open(CACHE);
  await cache.addAll(FILES.map((file) => new Request(encodeURI(file), { cache: 'reload' })));
}

async function dropOldVersions() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request) {
  const cache = await caches.open(CACHE);
  // A server may say that its answer varies with Origin; the files are the same for everyone.
  const held = await cache.match(request, { ignoreVary: true });
  if (held) return held;
  if (request.mode === 'navigate') {
    const page = await cache.match('./', { ignoreVary: true });
    if (page) return page;
  }
  return fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(keepAll()));
self.addEventListener('activate', (event) => event.waitUntil(dropOldVersions()));
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});
`;
}
