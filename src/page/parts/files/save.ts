const KINDS: Record<string, string> = {
  svg: 'image/svg+xml',
  png: 'image/png',
  pdf: 'application/pdf',
  csv: 'text/csv',
  json: 'application/json',
  html: 'text/html',
  yaml: 'application/yaml',
  zip: 'application/zip',
};

/** How long the browser may take to fetch what it saves, ms. */
const FETCHED = 60_000;

/** Saves a file where this browser saves what it is given. */
export function save(name: string, content: string | Uint8Array): void {
  const type = KINDS[name.split('.').at(-1)!] ?? 'application/octet-stream';
  const address = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), FETCHED);
}
