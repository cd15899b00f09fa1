import type { WorkOnPaper } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { thingsIn } from '../reading';

const words = w.paperViews;

/** A photo with what stands under it. */
export interface Shown {
  readonly sha256: string;
  readonly caption: string;
}

const dayOf = ({ body }: Thing<'photo'>): string => body.taken?.slice(0, 10) ?? '';

/** The first and the last photo from one spot: of the station whose photos lie furthest apart in time. None where no station has two. */
export const sameSpotPair = ({ within }: WorkOnPaper): readonly [Shown, Shown] | undefined => {
  const stations = new Map(thingsIn(within, 'station').map((station) => [station.thing, station.body]));
  const byStation = new Map<string, Thing<'photo'>[]>();
  for (const photo of thingsIn(within, 'photo')) {
    const { station } = photo.body;
    if (station && stations.has(station) && dayOf(photo) !== '')
      byStation.set(station, [...(byStation.get(station) ?? []), photo]);
  }
  const pairs = [...byStation].flatMap(([station, photos]) => {
    const inTime = [...photos].sort((a, b) => dayOf(a).localeCompare(dayOf(b)));
    const [first, last] = [inTime[0], inTime.at(-1)];
    if (!first || !last || dayOf(first) === dayOf(last)) return [];
    return [
      {
        letter: stations.get(station)?.letter ?? '',
        first,
        last,
        apart: Date.parse(dayOf(last)) - Date.parse(dayOf(first)),
      },
    ];
  });
  const widest = pairs.sort((a, b) => b.apart - a.apart || (a.letter < b.letter ? -1 : 1))[0];
  return widest && [shown(widest.letter, widest.first), shown(widest.letter, widest.last)];
};

const shown = (letter: string, photo: Thing<'photo'>): Shown => {
  const { wet, washed, sha256 } = photo.body;
  const state = [wet && words.wet[wet], washed && words.washed[washed]].filter(Boolean).join(', ');
  return { sha256, caption: words.sameSpot(letter, date(dayOf(photo)), state) };
};
