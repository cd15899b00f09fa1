import { metalLedger } from '../../engine/care';
import { areaOn, type Thing, vagueDateOrder, zonesAt } from '../../engine/record';
import { causeOf, treatmentOf } from '../../engine/trade';
import { area, date, lettersOf, w, whenDone, whereDone, whoDid, whole, withWhat } from '../../words';
import { facts, list as listOf, type PaperPiece, pictures, say, section, table, thought } from '../layout';
import { thingsIn } from '../reading';
import { captionOf } from '../work/photosOnPaper';
import type { CampaignOnPaper } from './campaignOnPaper';

const words = w.paperRequest;

/** Entries of the logbook that are shown. */
const mostEntries = 8;
/** Photos that are shown: four rows of three. */
const mostPhotos = 12;

/** What the work is, and how much surface it has. */
export const workFacts = ({ record, work, today }: CampaignOnPaper): PaperPiece => {
  const { number, title, maker, date: made, materials, dimensions } = record.sculpture.body;
  const zones = zonesAt(record, today);
  const sum = (of: 'm2' | 'low' | 'high') => zones.reduce((all, zone) => all + areaOn(zone, today)[of], 0);
  return section(
    words.work,
    facts([
      [words.facts.number, number],
      [words.facts.title, title],
      [words.facts.maker, maker],
      [words.facts.date, made && date(made)],
      [words.facts.materials, materials],
      [words.facts.dimensions, dimensions],
      [words.facts.place, thingsIn(work.within, 'place')[0]?.body.text],
      [
        words.facts.surface,
        zones.length > 0 && words.surface(area(sum('m2')), area(sum('low')), area(sum('high')), whole(zones.length)),
      ],
    ]),
  );
};

/** What was done to it, the latest first, and how often metal was taken away. */
export const historyTold = ({ record }: CampaignOnPaper): PaperPiece => {
  const latestFirst = [...record.treatments].sort((a, b) =>
    vagueDateOrder(b.body.date).localeCompare(vagueDateOrder(a.body.date)),
  );
  const shown = latestFirst.slice(0, mostEntries);
  const { historyColumns: heads } = words;
  return section(
    words.history,
    shown.length === 0
      ? say(words.historyNone)
      : table(
          words.historyCaption,
          [
            { head: heads.when, kind: 'narrow' },
            { head: heads.what },
            { head: heads.where },
            { head: heads.with },
            { head: heads.by },
          ],
          shown.map(({ body }) => [
            whenDone(body),
            treatmentOf(body.type)?.name ?? body.type,
            whereDone(record, body.zones),
            [withWhat(body), body.coats && w.logbook.coatsOf(whole(body.coats))].filter(Boolean).join(', '),
            whoDid(body),
          ]),
        ),
    latestFirst.length > shown.length && say(words.historyMore(latestFirst.length - shown.length), 'small'),
    say(words.stripped(metalLedger(record).most)),
  );
};

/** What was thought of the work, apart from all that was seen. */
export const thoughtTold = ({ record, work }: CampaignOnPaper): PaperPiece => {
  const said = thingsIn(work.within, 'interpretation');
  if (said.length === 0) return undefined;
  const zoneOf = (about: string | undefined) => record.zones.find(({ thing }) => thing === about)?.body;
  return thought(
    say(words.thoughtHow, 'small'),
    listOf(
      said.map(({ body: { statement, by, date: when, about, source } }) => {
        const zone = zoneOf(about);
        const where = zone ? `${w.thenAndNow.zoneNamed(zone.letter, zone.name)}: ` : '';
        return `${where}${statement} (${[by, date(when), source].filter(Boolean).join(', ')})`;
      }),
    ),
  );
};

/** What feeds the damage, and how each stands; `past`: the work is done, and nothing is asked of anybody any more. */
export const causesTable = ({ record, planned }: CampaignOnPaper, past = false): PaperPiece => {
  const { causesColumns: heads } = words;
  if (planned.cause.length === 0) return section(words.causes, say(past ? words.causesNonePast : words.causesNone));
  return section(
    words.causes,
    table(
      past ? words.causesCaptionPast : words.causesCaption,
      [{ head: heads.what }, { head: heads.where }, { head: heads.state }, { head: heads.seen, kind: 'wide' }],
      planned.cause.map(({ body }) => [
        causeOf(body.sort)?.name ?? body.sort,
        body.zones.length > 0 ? w.campaign.causes.zones(lettersOf(record, body.zones)) : w.campaign.causes.whole,
        [w.campaign.causes.states[body.state], body.changed && date(body.changed)].filter(Boolean).join(', '),
        [body.seen, body.why].filter(Boolean).join(' '),
      ]),
    ),
    !past && say(words.causesOpen),
  );
};

const shows = ({ body }: Thing<'photo'>): string => body.station ?? body.sentinel ?? body.zone ?? body.role;

/** The latest photo from each station, square and zone. */
export const photosOfRequest = ({ work }: CampaignOnPaper): PaperPiece => {
  const latest = new Map<string, Thing<'photo'>>();
  for (const photo of thingsIn(work.within, 'photo').sort((a, b) => dayOf(a).localeCompare(dayOf(b))))
    latest.set(shows(photo), photo);
  if (latest.size === 0) return undefined;
  return section(
    words.photos,
    pictures(
      [...latest.values()]
        .slice(0, mostPhotos)
        .map((photo) => ({ sha256: photo.body.sha256, caption: captionOf(work, photo) })),
    ),
    say(words.photosHow, 'small'),
  );
};

const dayOf = ({ body }: Thing<'photo'>): string => body.taken ?? '';
