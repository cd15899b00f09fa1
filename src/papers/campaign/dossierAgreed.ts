import { cardPhotos, ofCampaign, paperEntered, paperStanding } from '../../engine/campaign';
import type { BodyOf } from '../../engine/record';
import type { PaperOf } from '../../engine/trade';
import { amountText, area, date, lettersOf, list as listed, money, number, taskName, w } from '../../words';
import { facts, newPage, type PaperPiece, pictures, say, section, table, together, under } from '../layout';
import { thingsIn } from '../reading';
import type { CampaignOnPaper } from './campaignOnPaper';
import { bidsScored, whoDecided } from './dossierScores';

const words = w.paperDossier;

type Signed = BodyOf<'approval'>['signed'];

/** Who signed, in what role, when; that nobody did is said too. */
export const signedText = (signed: Signed): string =>
  signed.length === 0
    ? words.notSigned
    : listed(signed.map(({ role, name = '', on }) => w.campaign.approvals.signedOne(role, name, date(on))));

/** What the request and the proposal had to hold, line by line, and the bid that was taken. */
export const papersAndBid = (file: CampaignOnPaper): PaperPiece =>
  section(
    words.proposal,
    paperTold(file, 'request'),
    paperTold(file, 'proposal'),
    bidTaken(file),
    bidsScored(file),
    whoDecided(file),
  );

/** One paper against what it must hold. */
export const paperTold = ({ planned, campaign }: CampaignOnPaper, of: PaperOf): PaperPiece => {
  const entered = paperEntered(planned.completeness, campaign.thing, of)?.body;
  if (!entered) return under(words.paperOf[of], say(of === 'report' ? words.lacksOf.report : words.lacksOf.proposal));
  const { rows } = paperStanding(of, entered);
  const { paperColumns: heads } = words;
  return under(
    words.paperOf[of],
    table(
      words.paperCaption(entered.from ?? '', date(entered.date)),
      [{ head: heads.item, kind: 'wide' }, { head: heads.state }, { head: heads.where }],
      rows.map(({ item, state, where }) => [item.name, words.states[state ?? 'unseen'], where]),
    ),
    entered.note && say(entered.note),
  );
};

const bidTaken = (file: CampaignOnPaper): PaperPiece => {
  const bids = ofCampaign(file, 'bid');
  const taken = bids.find(({ thing }) => thing === file.campaign.body.takenBid)?.body;
  if (!taken) return say(bids.length === 0 ? words.noMoney : words.noBid);
  const lines = ofCampaign(file, 'quantities')[0]?.body.items ?? [];
  const priceOf = (id: string) => taken.lines.find(({ item }) => item === id);
  const { lineColumns: heads } = words;
  const all = taken.lines.reduce((sum, { minor }) => sum + minor, 0);
  const { currency } = taken;
  const others = bids.length - 1;
  return newPage(
    table(
      words.lines(taken.who, date(taken.date)),
      [
        { head: heads.what, kind: 'wide' },
        { head: heads.amount, kind: 'number' },
        { head: heads.price, kind: 'number' },
      ],
      lines.map((line, i) => {
        const task = taskName(line.task);
        const price = priceOf(line.id);
        return [
          `${i + 1}. ${task === line.name ? task : `${line.name}: ${task}`}`,
          line.unit === 'm2' ? area(line.amount) : amountText(line),
          price ? money({ minor: price.minor, currency }) : '–',
        ];
      }),
      [words.linesSum, '', money({ minor: all, currency })],
    ),
    others > 0 && say(words.otherBids(others)),
  );
};

/** Each question that was put to somebody, with its answer, its photos and who signed. */
export const approvalsTold = (file: CampaignOnPaper): PaperPiece => {
  const approvals = [...ofCampaign(file, 'approval')].sort((a, b) => a.body.date.localeCompare(b.body.date));
  if (approvals.length === 0) return section(words.approvals, say(words.lacksOf.approvals));
  return section(
    words.approvals,
    approvals.map(({ body }) => {
      const letter = body.zone ? lettersOf(file.record, [body.zone]) : '';
      return together(
        under(
          words.approvalOf(w.campaign.approvals.of[body.of], date(body.date)),
          facts([
            [words.answer, w.campaign.approvals.answers[body.answer]],
            [words.where, letter && words.zone(letter, body.m2 ? area(body.m2) : '')],
            [words.said, body.words],
            [words.signed, signedText(body.signed)],
            [w.paperSite.access.note, body.note],
          ]),
          photosNamed(file, body.photos ?? [], w.campaign.approvals.of[body.of]),
        ),
      );
    }),
  );
};

/** Photos by their thing names, each under the same words. */
export const photosNamed = ({ work }: CampaignOnPaper, names: readonly string[], caption: string): PaperPiece =>
  pictures(
    thingsIn(work.within, 'photo')
      .filter(({ thing }) => names.includes(thing))
      .sort((a, b) => (a.body.taken ?? '').localeCompare(b.body.taken ?? ''))
      .map(({ body }) => ({
        sha256: body.sha256,
        caption: [caption, body.taken && date(body.taken.slice(0, 10))].filter(Boolean).join(', '),
      })),
  );

/** The colours that were agreed, each with its four photos, its panel and where that is kept. */
export const agreedColours = (file: CampaignOnPaper): PaperPiece => {
  const cards = ofCampaign(file, 'colourCard');
  if (cards.length === 0) return section(words.colour, say(words.lacksOf.card));
  const photos = new Map(thingsIn(file.work.within, 'photo').map(({ thing, body }) => [thing, body.sha256]));
  const readings = thingsIn(file.work.within, 'agreedColour');
  return section(
    words.colour,
    cards.map(({ body }) => {
      const reading = readings.find(({ thing }) => thing === body.agreedColour)?.body;
      return [
        say(words.agreedOn(date(body.date), lettersOf(file.record, body.zones))),
        facts([
          [words.words, body.words],
          [words.panel, body.panel],
          [words.kept, body.kept],
          [words.reading, reading && labText(reading)],
          [words.signed, signedText(body.signed)],
          [w.paperSite.access.note, body.note],
        ]),
        pictures(
          cardPhotos.flatMap(({ field }) => {
            const sha256 = photos.get(body[field] ?? '');
            return sha256 ? [{ sha256, caption: w.campaign.card.photos[field] }] : [];
          }),
          'pair',
        ),
        say(words.colourHow, 'small'),
      ];
    }),
    readings
      .filter(({ thing }) => !cards.some(({ body }) => body.agreedColour === thing))
      .map(({ body }) =>
        facts([
          [words.reading, `${body.name}: ${labText(body)}`],
          [words.kept, body.kept],
        ]),
      ),
  );
};

const labText = ({ value, illuminant, observer, geometry }: BodyOf<'agreedColour'>): string =>
  words.lab(
    number(value.L, 1),
    number(value.a, 1),
    number(value.b, 1),
    words.labHow(illuminant, observer, w.colour.way.geometries[geometry].name),
  );
