import type { WorkOnPaper } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { date, measure, w, whole } from '../../words';
import { type PaperPiece, pictures, say, section } from '../layout';
import { thingsIn } from '../reading';
import { photosOfRound } from './conditionFacts';
import type { LatestOnPaper } from './latestOnPaper';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;

/** Most photos on a report: four rows of three. */
const most = 12;
/** What tells most of a round first. */
const order: readonly string[] = ['elevation', 'station', 'finding', 'zone', 'sentinel', 'look', 'other'];

/** The photos of the round, each with what it shows, its day, the light and its scale. */
export const photosOnPaper = (work: WorkOnPaper, latest: LatestOnPaper): PaperPiece => {
  const all = [...photosOfRound(work, latest.round.thing)].sort(
    (a, b) => order.indexOf(a.body.role) - order.indexOf(b.body.role),
  );
  const left = all.length - most;
  return section(
    words.photos,
    say(all.length === 0 ? words.noPhotos : words.photosHow, all.length === 0 ? undefined : 'small'),
    pictures(all.slice(0, most).map((photo) => ({ sha256: photo.body.sha256, caption: captionOf(work, photo) }))),
    left > 0 && say(words.photoMore(left, whole(left)), 'small'),
  );
};

/** What a photo shows, its day, light and state, and its scale or that there is none. */
export const captionOf = (work: WorkOnPaper, { body }: Thing<'photo'>): string => {
  const { within, record } = work;
  const square = thingsIn(within, 'sentinel').find(({ thing }) => thing === body.sentinel)?.body;
  const station = thingsIn(within, 'station').find(({ thing }) => thing === body.station)?.body;
  const zone = record.zones.find(({ thing }) => thing === (body.zone ?? square?.zone));
  const round = record.rounds.find(({ thing }) => thing === body.round)?.body;
  const day = body.taken?.slice(0, 10) ?? round?.date;
  const shows = [words.photoRoles[body.role], station && `${station.letter} (${station.aim})`, zone && zoneLabel(zone)];
  return [
    shows.filter(Boolean).join(' '),
    day && date(day),
    body.light && words.lights[body.light],
    body.wet && words.wet[body.wet],
    square ? words.photoSquare[square.which] : (frameOf(work, body) ?? words.photoNoScale),
    body.note,
  ]
    .filter(Boolean)
    .join('; ');
};

/** Width of the frame, where a length is measured on a view from the same station. */
const frameOf = ({ within }: WorkOnPaper, body: Thing<'photo'>['body']): string | undefined => {
  const view = thingsIn(within, 'elevation').find(
    ({ body: { station, photo, scale } }) =>
      scale && ((station !== undefined && station === body.station) || photo === `photo/${body.sha256}`),
  )?.body;
  const of = thingsIn(within, 'photo').find(({ thing }) => thing === view?.photo)?.body;
  if (!view?.scale || !of?.width || !of.height) return undefined;
  const { a, b, metres } = view.scale;
  const long = Math.hypot(b[0] - a[0], ((b[1] - a[1]) * of.height) / of.width);
  return long > 0 ? words.photoFrame(measure('length', metres / long, 1)) : undefined;
};
