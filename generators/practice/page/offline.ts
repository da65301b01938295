/** What a service worker of this site can do; the types of pages and of workers do not go together. */
interface Worker {
  addEventListener(type: 'install' | 'activate', listener: (event: { waitUntil(work: Promise<unknown>): void }) => void): void;
  addEventListener(type: 'message', listener: (event: { data: Opened; waitUntil(work: Promise<unknown>): void }) => void): void;
  addEventListener(type: 'fetch', listener: (event: { request: Request; respondWith(answer: Promise<Response>): void }) => void): void;
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
  navigator: { connection?: { saveData?: boolean } };
  /** Written by the build: the files of the site, those of them that many pages share, and a digest of all. */
  slidewireFiles: { files: string[]; shared: string[]; digest: string };
}

/** What a page tells when it is open: its address and those of its scripts. */
export interface Opened {
  here: string[];
}

const worker = globalThis as unknown as Worker;
const { files, shared, digest } = worker.slidewireFiles;
const PREFIX = 'slidewire-';
const NAME = PREFIX + digest;

worker.addEventListener('install', (event) => {
  event.waitUntil(caches.open(NAME).then((cache) => cache.addAll(shared)).then(() => worker.skipWaiting()));
});

/** A page that is open is kept at once. The rest, more than a megabyte compressed, follows behind it, file after file, unless the browser is to save data. */
worker.addEventListener('message', (event) => {
  event.waitUntil(keepAll(event.data.here));
  if (worker.navigator.connection?.saveData) return;
  rest ??= keepAll(files).finally(() => (rest = undefined));
  event.waitUntil(rest);
});

let rest: Promise<void> | undefined;

async function keepAll(addresses: string[]): Promise<void> {
  const cache = await caches.open(NAME);
  for (const address of addresses) {
    if (await cache.match(address)) continue;
    // What fails is tried again when the next page is opened.
    await cache.add(address).catch(() => {});
  }
}

worker.addEventListener('activate', (event) => {
  const outdated = async () => (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== NAME);
  event.waitUntil(outdated().then((names) => Promise.all(names.map((name) => caches.delete(name)))).then(() => worker.clients.claim()));
});

/** The newest from the server where there is one, what is kept where there is none. */
worker.addEventListener('fetch', (event) => {
  event.respondWith(fetch(event.request).catch(() => kept(event.request.url)));
});

async function kept(address: string): Promise<Response> {
  const path = address.replace(/[?#].*$/, '').replace(/\/$/, '/index.html');
  return (await caches.match(path)) ?? Response.error();
}
