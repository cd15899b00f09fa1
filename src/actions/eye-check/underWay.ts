import type { BodyOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';

/** An eye check that was begun on this device and is not finished: kept beside the record, answer by answer. */
export interface EyeCheckUnderWay {
  /** Of the drawing of its patches. */
  readonly seed: number;
  readonly patches: BodyOf<'eyeCheck'>['patches'];
}

export const keyOf = (surveyor: string): string => `eye check ${surveyor}`;

const versions = new WeakMap<object, number>();

/** Keeps how far it is, durably, before anybody is told. */
export const keepUnderWay = async (desk: Desk, surveyor: string, at: EyeCheckUnderWay | null): Promise<void> => {
  await desk.store.setMeta(keyOf(surveyor), at);
  tellUnderWay(desk);
};

export const tellUnderWay = (desk: Desk): void => {
  versions.set(desk.store, (versions.get(desk.store) ?? 0) + 1);
  desk.store.tell();
};

export const underWay = async (desk: Desk, surveyor: string): Promise<EyeCheckUnderWay | null> =>
  (await desk.store.meta<EyeCheckUnderWay | null>(keyOf(surveyor))) ?? null;

/** How far this surveyor is in an eye check on this device; null where none was begun. */
export const eyeCheckUnderWay = (desk: Desk, surveyor: string): Question<EyeCheckUnderWay | null> =>
  ask(
    desk,
    keyOf(surveyor),
    () => versions.get(desk.store) ?? 0,
    () => underWay(desk, surveyor),
  );
