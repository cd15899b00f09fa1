import { scoreRound } from '../../engine/condition';
import { areaOn, findingsOf, latestRound, type Thing, visitOf, zonesAt } from '../../engine/record';
import { roundTypes } from '../../engine/trade';
import { area, date, w, whole } from '../../words';
import { type PaperPiece, pictures, say, section, table } from '../layout';
import { captionOf } from '../work/photosOnPaper';
import { saidOfFinding } from '../work/saidOfFinding';
import { zoneLabel } from '../work/zoneLabel';
import type { CampaignOnPaper } from './campaignOnPaper';
import { daysOfWork, photosIn } from './dossierTime';

const words = w.paperDossier;

const typeOf = ({ body }: Thing<'round'>): string => roundTypes.find(({ id }) => id === body.type)?.name ?? body.type;

const rounds = ({ record }: CampaignOnPaper): readonly Thing<'round'>[] =>
  record.rounds.filter(({ body }) => body.ended !== undefined && body.type !== 'incident');

/** The last round before the work, zone by zone. */
export const conditionBefore = (file: CampaignOnPaper): PaperPiece => {
  const { began } = daysOfWork(file);
  const round = rounds(file)
    .filter(({ body }) => body.date <= began)
    .at(-1);
  return section(
    words.before,
    say(round ? words.beforeRound(date(round.body.date), typeOf(round)) : words.beforeNone),
    round && zones(file, round),
  );
};

/** The first round after the work, and the latest where it is another. */
export const conditionAfter = (file: CampaignOnPaper): PaperPiece => {
  const { ended } = daysOfWork(file);
  const first = ended === undefined ? undefined : rounds(file).find(({ body }) => body.date >= ended);
  const latest = latestRound(file.record);
  return section(
    words.after,
    say(first ? words.afterRound(date(first.body.date), typeOf(first)) : words.afterNone),
    first && zones(file, first),
    first && latest && latest !== first && [say(words.latestRound(date(latest.body.date))), zones(file, latest)],
  );
};

const zones = ({ record }: CampaignOnPaper, round: Thing<'round'>): PaperPiece => {
  const scores = new Map(scoreRound(record, round.thing).zones.map((zone) => [zone.zone, zone]));
  const { zoneColumns: heads } = words;
  return [
    table(
      words.zonesCaption(date(round.body.date)),
      [
        { head: heads.zone },
        { head: heads.area, kind: 'number' },
        { head: heads.index, kind: 'number' },
        { head: heads.seen, kind: 'wide' },
      ],
      zonesAt(record, round.body.date).map((zone) => {
        const score = scores.get(zone.thing);
        return [
          zoneLabel(zone),
          area(areaOn(zone, round.body.date).m2),
          score ? words.indexOf(whole(score.value), whole(score.low), whole(score.high)) : '',
          seenIn(record, round.thing, zone.thing),
        ];
      }),
    ),
    say(words.zonesHow, 'small'),
  ];
};

const seenIn = (record: CampaignOnPaper['record'], round: string, zone: string): string => {
  const visit = visitOf(record, round, zone);
  if (!visit || visit.body.state === 'not looked') return words.notLooked;
  const found = findingsOf(record, round, zone).map(({ body }) => saidOfFinding(body));
  return [found.length > 0 ? found.join(' ') : words.nothing, visit.body.note].filter(Boolean).join(' ');
};

const titles = { before: words.photosBefore, during: words.photosDuring, after: words.photosAfter } as const;
const none = {
  before: words.lacksOf.photosBefore,
  during: words.lacksOf.photosDuring,
  after: words.lacksOf.photosAfter,
} as const;
/** Photos of one time that are shown: eight rows of three. */
const most = 24;

/** Photographs from before, from the days of the work, or from after; the last ones where there are very many. */
export const photosOf = (file: CampaignOnPaper, when: keyof typeof titles): PaperPiece => {
  const photos = photosIn(file, when);
  return section(
    titles[when],
    photos.length === 0
      ? say(none[when])
      : pictures(
          photos.slice(-most).map((photo) => ({ sha256: photo.body.sha256, caption: captionOf(file.work, photo) })),
          when === 'during' ? 'pair' : 'small',
        ),
  );
};
