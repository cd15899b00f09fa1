import { vi } from 'vitest';

const calls = {
  store: ['add', 'put', 'delete', 'clear', 'get', 'getAll', 'getKey', 'getAllKeys', 'count', 'openCursor'],
  index: ['get', 'getAll', 'getKey', 'getAllKeys', 'count', 'openCursor', 'openKeyCursor'],
} as const;

/** Makes the n-th call to the database fail, whatever it asks for. Gives how many were made. */
export const failAt = (n: number): (() => number) => {
  let made = 0;
  const broken = (on: object, method: string) => {
    const real = (on as Record<string, (...all: unknown[]) => unknown>)[method];
    vi.spyOn(on as Record<string, () => unknown>, method).mockImplementation(function (
      this: unknown,
      ...all: unknown[]
    ) {
      made += 1;
      if (made === n) throw new DOMException('a fault', 'DataError');
      return real?.apply(this, all);
    });
  };
  for (const method of calls.store) broken(IDBObjectStore.prototype, method);
  for (const method of calls.index) broken(IDBIndex.prototype, method);
  return () => made;
};
