import type { Inside, KeptFile, KeptPage, KeptStep, Store } from './keep-store.ts';

const NAME = 'evenfield';
const STORES = ['steps', 'pages', 'files'] as const;

const answered = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });

function open(): Promise<IDBDatabase> {
  const request = indexedDB.open(NAME, 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore('steps', { keyPath: 'id', autoIncrement: true });
    request.result.createObjectStore('pages', { keyPath: 'id', autoIncrement: true });
    request.result.createObjectStore('files', { keyPath: 'path' });
  };
  return answered(request);
}

function insideOf(change: IDBTransaction): Inside {
  const [steps, pages, files] = STORES.map((name) => change.objectStore(name)) as [
    IDBObjectStore,
    IDBObjectStore,
    IDBObjectStore,
  ];
  const quietly = async (request: IDBRequest): Promise<void> => {
    await answered(request);
  };
  return {
    step: (id) => answered<KeptStep | undefined>(steps.get(id)),
    steps: () => answered<KeptStep[]>(steps.getAll()),
    addStep: async (step) => Number(await answered(steps.add(step))),
    dropStep: (id) => quietly(steps.delete(id)),
    pages: () => answered<KeptPage[]>(pages.getAll()),
    addPage: async (page) => Number(await answered(pages.add(page))),
    putPage: (page) => quietly(pages.put(page)),
    dropPage: (id) => quietly(pages.delete(id)),
    files: () => answered<KeptFile[]>(files.getAll()),
    putFile: (file) => quietly(files.put(file)),
    dropFile: (path) => quietly(files.delete(path)),
  };
}

/** The store of this browser; nothing where it keeps none, as in some private windows. */
export async function browserStore(): Promise<Store | undefined> {
  try {
    const database = await open();
    // Another page that brings a newer form of the store is not kept waiting.
    database.onversionchange = () => database.close();
    return {
      async change(work) {
        const change = database.transaction(STORES, 'readwrite');
        const over = new Promise<void>((done, failed) => {
          change.oncomplete = () => done();
          change.onabort = () => failed(change.error ?? new Error('the browser kept nothing'));
        });
        try {
          const result = await work(insideOf(change));
          await over;
          return result;
        } catch (error) {
          over.catch(() => undefined);
          try {
            change.abort();
          } catch {
            // It had ended already.
          }
          throw error;
        }
      },
    };
  } catch {
    return undefined;
  }
}
