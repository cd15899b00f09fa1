/** A whole IndexedDB database as plain JSON: how it is built, and every row. Read and made again past this app's own code. */
export interface StoredDatabase {
  /** As IndexedDB counts: ten times the version of the tables. */
  readonly version: number;
  readonly stores: readonly StoredStore[];
}

interface StoredStore {
  readonly name: string;
  readonly keyPath: string | string[] | null;
  readonly autoIncrement: boolean;
  readonly indexes: readonly {
    readonly name: string;
    readonly keyPath: string | string[];
    readonly unique: boolean;
    readonly multiEntry: boolean;
  }[];
  readonly rows: readonly unknown[];
}

const answered = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });

const mark = '$bytes';

const written = (value: unknown): unknown => {
  if (value instanceof ArrayBuffer) return { [mark]: Buffer.from(value).toString('base64') };
  if (Array.isArray(value)) return value.map(written);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, written(each)]));
};

const read = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(read);
  if (typeof value !== 'object' || value === null) return value;
  const bytes = (value as Record<string, unknown>)[mark];
  if (typeof bytes === 'string') return Uint8Array.from(Buffer.from(bytes, 'base64')).buffer;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, read(each)]));
};

export const storedOf = async (name: string): Promise<StoredDatabase> => {
  const db = await answered(indexedDB.open(name));
  const names = [...db.objectStoreNames];
  const transaction = db.transaction(names);
  const stores = await Promise.all(
    names.map(async (each): Promise<StoredStore> => {
      const store = transaction.objectStore(each);
      const indexes = [...store.indexNames].map((index) => store.index(index));
      return {
        name: each,
        keyPath: store.keyPath,
        autoIncrement: store.autoIncrement,
        indexes: indexes.map(({ name: of, keyPath, unique, multiEntry }) => ({
          name: of,
          keyPath,
          unique,
          multiEntry,
        })),
        rows: (await answered(store.getAll())).map(written),
      };
    }),
  );
  db.close();
  return { version: db.version, stores };
};

/** Makes the database again as it was, under another name. */
export const storeAgain = async (name: string, { version, stores }: StoredDatabase): Promise<void> => {
  const opening = indexedDB.open(name, version);
  opening.onupgradeneeded = () => {
    for (const { name: each, keyPath, autoIncrement, indexes } of stores) {
      const store = opening.result.createObjectStore(each, { keyPath, autoIncrement });
      for (const { name: index, keyPath: of, unique, multiEntry } of indexes)
        store.createIndex(index, of, { unique, multiEntry });
    }
  };
  const db = await answered(opening);
  const transaction = db.transaction(
    stores.map((store) => store.name),
    'readwrite',
  );
  for (const { name: each, rows } of stores) for (const row of rows) transaction.objectStore(each).put(read(row));
  await new Promise<void>((done, failed) => {
    transaction.oncomplete = () => done();
    transaction.onerror = () => failed(transaction.error);
  });
  db.close();
};
