/** Served by a web server, the page can be installed and works without a network; opened from disk it needs neither. */
export function letInstall(): void {
  if (!location.protocol.startsWith('http')) return;
  const manifest = document.createElement('link');
  manifest.rel = 'manifest';
  manifest.href = 'manifest.webmanifest';
  const icon = document.createElement('link');
  icon.rel = 'apple-touch-icon';
  icon.href = 'icon-192.png';
  document.head.append(manifest, icon);
  // Where service workers are not to be had, the page is only read anew each time.
  navigator.serviceWorker?.register('sw.js').catch(() => undefined);
}
