// Keeps the page for where there is no network, such as on the floor. It fetches the page's own files and nothing else.
const KEPT = 'evenfield-page';
const FILES = ['./', 'manifest.webmanifest', 'icon.svg', 'icon-192.png', 'icon-512.png'];

self.addEventListener('install', (event) => {
  event.waitUntil(
    caches
      .open(KEPT)
      .then((cache) => cache.addAll(FILES))
      .then(() => self.skipWaiting()),
  );
});
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// The newest page where it can be had, otherwise the one that is kept.
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(
    fetch(request)
      .then(async (answer) => {
        if (answer.ok) await caches.open(KEPT).then((cache) => cache.put(request, answer.clone()));
        return answer;
      })
      .catch(
        async () =>
          (await caches.match(request, { ignoreSearch: true })) ?? (await caches.match('./')) ?? Response.error(),
      ),
  );
});
