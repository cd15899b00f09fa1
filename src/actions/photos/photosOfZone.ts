import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { recordOf } from '../questions/records';
import { thingsWithin } from '../theThing';

/** A photo on which a zone, or a sentinel square in it, can be measured. */
export interface PhotoOfZone {
  readonly photo: Thing<'photo'>;
  /** What the photo is of: the zone, or the square. */
  readonly about: string;
  readonly sentinel: Thing<'sentinel'> | null;
  /** Day it was taken or of its round, YYYY-MM-DD; '' where neither is known. */
  readonly day: string;
}

/** Newest first: photos said to be of the zone, of its findings and squares, those it is outlined on, and later ones from the same station. */
export const photosOfZone = (desk: Desk, sculpture: string, zone: string): Question<readonly PhotoOfZone[]> =>
  ask(
    desk,
    `photos of ${zone}`,
    () => desk.store.counterOf(sculpture),
    async () => {
      const [photos, outlines, elevations, sentinels, record] = await Promise.all([
        thingsWithin(desk, 'photo', sculpture),
        thingsWithin(desk, 'outline', sculpture),
        thingsWithin(desk, 'elevation', sculpture),
        thingsWithin(desk, 'sentinel', sculpture),
        recordOf(desk, sculpture),
      ]);
      const outlined = outlines.filter(({ body }) => body.zone === zone);
      const sides = new Set(outlined.map(({ body }) => body.elevation));
      const stations = new Set(elevations.filter(({ thing }) => sides.has(thing)).map(({ body }) => body.station));
      const sources = new Set(outlined.map(({ body }) => body.target.source));
      // Where the zone is outlined nowhere, it may show on any side: its part is then drawn when it is measured.
      const anySide = new Set(sources.size > 0 ? [] : elevations.map(({ body }) => body.photo));
      const here = new Map(sentinels.filter(({ body }) => body.zone === zone).map((s) => [s.thing, s]));
      const found = new Set(
        record.findings.filter(({ body }) => body.zone === zone).flatMap(({ body }) => body.photos ?? []),
      );
      const dayOf = ({ body }: Thing<'photo'>): string =>
        body.taken?.slice(0, 10) ?? record.rounds.find(({ thing }) => thing === body.round)?.body.date ?? '';
      return photos
        .flatMap((photo): PhotoOfZone[] => {
          const { body, thing } = photo;
          const day = dayOf(photo);
          const sentinel = body.sentinel ? here.get(body.sentinel) : undefined;
          if (sentinel) return [{ photo, about: sentinel.thing, sentinel, day }];
          const shown =
            body.zone === zone ||
            found.has(thing) ||
            sources.has(thing) ||
            (anySide.has(thing) && body.zone === undefined) ||
            (body.station && stations.has(body.station));
          return shown ? [{ photo, about: zone, sentinel: null, day }] : [];
        })
        .sort((a, b) => (a.day === b.day ? (a.photo.thing < b.photo.thing ? -1 : 1) : a.day < b.day ? 1 : -1));
    },
  );
