import type { PaperSource, WorkOnPaper } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { reaches, roundTypes } from '../../engine/trade';
import { area, date, list, w, whole } from '../../words';
import { facts, type PaperPiece, section } from '../layout';
import { personIn, thingsIn } from '../reading';
import type { LatestOnPaper } from './latestOnPaper';
import { areaOfAll } from './notLookedFirst';
import { letters } from './zoneLabel';

const words = w.paperCondition;

/** Which work it is. Where keys are and how it is climbed is told to nobody here. */
export const factsOfWork = (
  { record, within }: WorkOnPaper,
  latest: LatestOnPaper | undefined,
  how: 'whole' | 'short' = 'whole',
): PaperPiece => {
  const { number, title, maker, date: made, materials, dimensions, note } = record.sculpture.body;
  const zones = latest?.zones ?? record.zones;
  const count = words.zoneCount(zones.length, whole(zones.length));
  return facts([
    [words.facts.number, how === 'whole' && number],
    [words.facts.titleOf, how === 'whole' && title],
    [words.facts.maker, maker],
    [words.facts.date, made && date(made)],
    [words.facts.materials, materials],
    [words.facts.dimensions, dimensions],
    [words.facts.place, thingsIn(within, 'place')[0]?.body.text],
    [words.facts.zones, latest ? words.zonesOf(count, area(areaOfAll(latest))) : count],
    [
      words.facts.inserts,
      how === 'whole' && list(record.inserts.map(({ body }) => w.papers.insert(whole(body.count), body.material))),
    ],
    [words.facts.note, how === 'whole' && note],
  ]);
};

export const theWork = (work: WorkOnPaper, latest: LatestOnPaper | undefined): PaperPiece =>
  section(words.what, factsOfWork(work, latest));

export const roundTypeOf = ({ body }: Thing<'round'>): string =>
  roundTypes.find(({ id }) => id === body.type)?.name ?? body.type;

/** How the surface was: "dry, before washing". */
export const surfaceOf = ({ body }: Thing<'round'>): string =>
  words.surfaceOf(words.wet[body.wet], words.washed[body.washed]);

export const photosOfRound = ({ within }: WorkOnPaper, round: string): readonly Thing<'photo'>[] =>
  thingsIn(within, 'photo').filter(({ body }) => body.round === round);

/** The light as it is written with the photos of the round; '' where it is with none. */
export const lightOf = (photos: readonly Thing<'photo'>[]): string => {
  const lights = [...new Set(photos.flatMap(({ body }) => body.light ?? []))].map((light) => words.lights[light]);
  return lights.length > 0 ? words.lightOfPhotos(list(lights)) : '';
};

/** Purpose, examiner and day, the conditions of looking, what was read for it. `own` holds her words of this paper. */
export const theSurvey = (
  source: PaperSource,
  work: WorkOnPaper,
  latest: LatestOnPaper,
  own: { readonly purpose: string; readonly light: string },
): PaperPiece => {
  const { round } = latest;
  const { date: day, surveyor, ownEye, note } = round.body;
  return section(
    words.survey,
    facts([
      [words.purpose, own.purpose],
      [words.examiner, personIn(source, surveyor) || words.examinerNot],
      [
        words.kind,
        [words.roundOf(roundTypeOf(round), date(day)), enteredLater(source, round)].filter(Boolean).join('. '),
      ],
      [words.surface, surfaceOf(round)],
      [words.light, own.light || lightOf(photosOfRound(work, round.thing)) || words.notRecorded],
      [words.reach, reachOf(latest)],
      [words.looking, [words.byEye, ownEye && words.ownEye].filter(Boolean).join(' ')],
      [words.documents, documents(work, round)],
      [words.roundNote, note],
    ]),
  );
};

/** A round typed in from pencil cards says so, with the day and who typed. */
const enteredLater = (source: PaperSource, { body: { fromPaper } }: Thing<'round'>): string =>
  fromPaper ? w.paperCards.enteredFromPaper(date(fromPaper.entered), personIn(source, fromPaper.surveyor)) : '';

const reachOf = ({ zones }: LatestOnPaper): string =>
  [...new Set(zones.map(({ body }) => body.reach))]
    .map((reach) =>
      words.reachOf(
        reaches.find(({ id }) => id === reach)?.name ?? reach,
        letters(zones.filter(({ body }) => body.reach === reach)),
      ),
    )
    .join('; ');

const documents = (work: WorkOnPaper, round: Thing<'round'>): string => {
  const { rounds, treatments, looks } = work.record;
  const before = rounds.filter(({ body }) => body.date < round.body.date);
  const log = treatments.length + looks.length;
  const photos = photosOfRound(work, round.thing).length;
  const [first, last] = [before[0], before.at(-1)];
  const parts = [
    first && last && words.docRounds(before.length, whole(before.length), date(first.body.date), date(last.body.date)),
    log > 0 && words.docLog(log, whole(log)),
    photos > 0 && words.docPhotos(photos, whole(photos)),
  ].filter((part) => typeof part === 'string');
  return parts.length > 0 ? list(parts) : words.docNone;
};
