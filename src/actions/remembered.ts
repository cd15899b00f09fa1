import type { Desk } from './desk';

const versions = new WeakMap<Desk['store'], number>();

/** Rises whenever what this device remembers beside the record has changed: for the stamps of questions about it. */
export const rememberedVersion = ({ store }: Desk): number => versions.get(store) ?? 0;

/** It has changed: questions about it are asked again. */
export const rememberedAnew = ({ store }: Desk): void => {
  versions.set(store, (versions.get(store) ?? 0) + 1);
  store.tell();
};
