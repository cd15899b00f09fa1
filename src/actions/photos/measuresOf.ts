import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsWithin } from '../theThing';

export interface MeasureOfWork {
  readonly measure: Thing<'measure'>;
  /** The zone it speaks of, or in which its sentinel square lies. */
  readonly zone: string;
  readonly sentinel: Thing<'sentinel'> | null;
  /** Null where the photo was taken away since. */
  readonly photo: Thing<'photo'> | null;
}

/** Every figure measured on photos of a work, oldest first. */
export const measuresOf = (desk: Desk, sculpture: string): Question<readonly MeasureOfWork[]> =>
  ask(
    desk,
    `measures told ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    async () => {
      const [measures, sentinels, photos] = await Promise.all([
        thingsWithin(desk, 'measure', sculpture),
        thingsWithin(desk, 'sentinel', sculpture),
        thingsWithin(desk, 'photo', sculpture),
      ]);
      const named = <T extends { readonly thing: string }>(things: readonly T[], name: string): T | null =>
        things.find(({ thing }) => thing === name) ?? null;
      return [...measures]
        .sort((a, b) =>
          a.body.date === b.body.date ? (a.thing < b.thing ? -1 : 1) : a.body.date < b.body.date ? -1 : 1,
        )
        .map((measure) => {
          const sentinel = named(sentinels, measure.body.about);
          const zone = sentinel?.body.zone ?? measure.body.about;
          return { measure, zone, sentinel, photo: named(photos, measure.body.photo) };
        });
    },
  );
