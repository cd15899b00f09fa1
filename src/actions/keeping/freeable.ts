import { type BodyOf, type Current, idPart } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { rememberedVersion } from '../remembered';

/** 'older': what belongs to rounds before the last one of its work. */
export type WhichPhotos = 'older' | 'all';

/** Photos whose bytes are on this device and could go. */
export interface Freeable {
  /** Hashes of their bytes. */
  readonly photos: readonly string[];
  readonly bytes: number;
}

export interface FreeableWork extends Record<WhichPhotos, Freeable> {
  readonly sculpture: string;
  readonly number: string;
  readonly title: string;
}

/** What room each work's photos take here, the most first. The picture of a side stays: zones are walked and drawn on it. */
export const freeableWorks = (desk: Desk): Question<readonly FreeableWork[]> =>
  ask(
    desk,
    'freeable works',
    () => `${desk.store.changes()} ${rememberedVersion(desk)}`,
    async () => {
      const { store } = desk;
      const [works, photos, sides, rounds, names] = await Promise.all([
        store.ofKind('sculpture'),
        store.ofKind('photo'),
        store.ofKind('elevation'),
        store.ofKind('round'),
        store.photosHere(),
      ]);
      const here = new Set(names);
      const shown = new Set(sides.map(({ lead }) => (lead.body as BodyOf<'elevation'>).photo));
      const may = photos.filter(({ thing }) => here.has(idPart(thing)) && !shown.has(thing));
      return works
        .map((work) => ofWork(work, may, rounds))
        .filter((work) => work.all.photos.length > 0)
        .sort((a, b) => b.all.bytes - a.all.bytes);
    },
  );

const ofWork = (work: Current, photos: readonly Current[], rounds: readonly Current[]): FreeableWork => {
  const { number, title } = work.lead.body as BodyOf<'sculpture'>;
  const days = new Map(
    rounds
      .filter(({ within }) => within === work.thing)
      .map(({ thing, lead }) => [thing, (lead.body as BodyOf<'round'>).date]),
  );
  const last = [...days.values()].sort().at(-1);
  const own = photos.filter(({ within }) => within === work.thing);
  const isOlder = ({ lead }: Current): boolean => {
    const { round, taken } = lead.body as BodyOf<'photo'>;
    const day = (round && days.get(round)) ?? taken?.slice(0, 10);
    return last !== undefined && day !== undefined && day < last;
  };
  return { sculpture: work.thing, number, title, all: together(own), older: together(own.filter(isOlder)) };
};

const together = (photos: readonly Current[]): Freeable => ({
  photos: photos.map(({ thing }) => idPart(thing)),
  bytes: photos.reduce((sum, { lead }) => sum + (lead.body as BodyOf<'photo'>).bytes, 0),
});
