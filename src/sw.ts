import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching';

// The whole app is kept on the tablet at the first visit; nothing is fetched later, so what works today works in the
// field. There is no runtime caching and no other origin.
declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: { url: string; revision: string | null }[] };

precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();

// Any page under our scope is the one page: routes live in the hash.
const page = createHandlerBoundToURL('index.html');
self.addEventListener('fetch', (event) => {
  if (event.request.mode === 'navigate')
    event.respondWith(page({ request: event.request, event, url: new URL(event.request.url) }));
});

// A new version waits until the person says so: a round half entered is never reloaded under her hands.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') void self.skipWaiting();
});
