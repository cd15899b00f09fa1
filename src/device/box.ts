/** Small things kept beside the record: settings, and the marker by which a cleared database is noticed. */
export interface Box {
  read(key: string): unknown;
  /** A full or forbidden storage is no reason to stop work: the value then lasts as long as the page. */
  write(key: string, value: unknown): void;
  forget(key: string): void;
}

/** A box that lasts as long as the program: for tests, and for what is made at build time. */
export const memoryBox = (): Box => {
  const kept = new Map<string, string>();
  return {
    read: (key) => parsed(kept.get(key)),
    write: (key, value) => void kept.set(key, JSON.stringify(value)),
    forget: (key) => void kept.delete(key),
  };
};

const parsed = (text: string | null | undefined): unknown => {
  if (!text) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/** A storage of the browser. What it refuses to keep lasts as long as the page. */
const browserBox = (storage: () => Storage): Box => {
  const fallback = memoryBox();
  return {
    read: (key) => {
      try {
        return parsed(storage().getItem(key)) ?? fallback.read(key);
      } catch {
        return fallback.read(key);
      }
    },
    write: (key, value) => {
      fallback.write(key, value);
      try {
        storage().setItem(key, JSON.stringify(value));
      } catch {
        // Kept in memory above.
      }
    },
    forget: (key) => {
      fallback.forget(key);
      try {
        storage().removeItem(key);
      } catch {
        // Nothing was kept there.
      }
    },
  };
};

export const deviceBox: Box = browserBox(() => localStorage);

/** Lasts over a reload of this tab, and not over its closing. */
export const tabBox: Box = browserBox(() => sessionStorage);
