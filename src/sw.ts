import { cleanupOutdatedCaches, createHandlerBoundToURL, matchPrecache, precacheAndRoute } from 'workbox-precaching';
import { registerRoute } from 'workbox-routing';

// The whole app is kept on the tablet at the first visit. Nothing is fetched later and no other host is asked, so what
// works at the office works in the field.
declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: { url: string; revision: string | null }[] };

const files = self.__WB_MANIFEST;
precacheAndRoute(files);
cleanupOutdatedCaches();

// The server may keep a folder here that tablets keep in step with: what is asked of it is the server's to answer.
const folder = new URL('./folder/', self.location.href).pathname;

// Every other address under ours opens the one page: routes live in the hash.
registerRoute(
  ({ request, url }) => request.mode === 'navigate' && !`${url.pathname}/`.startsWith(folder),
  createHandlerBoundToURL('index.html'),
);

// The page that brought this worker uses it at once: the network may be gone before a second visit.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// A new version waits until the person says so: a round half entered is never reloaded under her hands.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') void self.skipWaiting();
});

// Before a day in the field: every file is looked up, and how many are there is answered.
self.addEventListener('message', (event) => {
  if (event.data?.type !== 'FILES_KEPT') return;
  const [answer] = event.ports;
  const looked = Promise.all(files.map((file) => matchPrecache(typeof file === 'string' ? file : file.url)));
  event.waitUntil(
    looked.then((found) => answer?.postMessage({ kept: found.filter(Boolean).length, all: files.length })),
  );
});
