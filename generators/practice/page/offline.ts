/** What a service worker of this site can do; the types of pages and of workers do not go together. */
interface Worker {
  addEventListener(type: 'install' | 'activate', listener: (event: { waitUntil(work: Promise<unknown>): void }) => void): void;
  addEventListener(type: 'fetch', listener: (event: { request: Request; respondWith(answer: Promise<Response>): void }) => void): void;
  skipWaiting(): Promise<void>;
  clients: { claim(): Promise<void> };
  /** Written by the build: the files of the site, and a digest of them. */
  slidewireFiles: { files: string[]; digest: string };
}

const worker = globalThis as unknown as Worker;
const { files, digest } = worker.slidewireFiles;
const PREFIX = 'slidewire-';
const NAME = PREFIX + digest;

// All of the site is there after the first visit, fetched behind the page that was opened: one and a half megabytes, compressed.
worker.addEventListener('install', (event) => {
  event.waitUntil(caches.open(NAME).then((cache) => cache.addAll(files)).then(() => worker.skipWaiting()));
});

worker.addEventListener('activate', (event) => {
  const outdated = async () => (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== NAME);
  event.waitUntil(outdated().then((names) => Promise.all(names.map((name) => caches.delete(name)))).then(() => worker.clients.claim()));
});

/** The newest from the server where there is one, what is kept where there is none. */
worker.addEventListener('fetch', (event) => {
  const kept = async () => (await caches.match(event.request, { ignoreSearch: true })) ?? Response.error();
  event.respondWith(fetch(event.request).catch(kept));
});
