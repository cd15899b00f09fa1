import type { WorkOnPaper } from '../../engine/reckoning';
import { type Thing, vagueDateOrder } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { date, measure, w, whenDone, whereDone, whoDid, whole } from '../../words';
import { list, type PaperPiece, say, section, table, under } from '../layout';
import { thingsIn } from '../reading';

const words = w.paperInsurer;

/** Campaigns that were on site, work that is no curator's own, and every day with a flame. */
export const hotWorkAndContractors = (work: WorkOnPaper): PaperPiece => {
  const lines = [...campaignLines(work), ...workLines(work)];
  const days = hotDaysOf(work);
  return section(
    words.contractors,
    lines.length + days.length === 0 && say(words.contractorsNone),
    list(lines),
    days.length > 0 && under(words.hotDays, hotTable(work), say(words.hotHow, 'small')),
  );
};

const hotDaysOf = ({ within }: WorkOnPaper) =>
  [...thingsIn(within, 'hotDay')].sort((a, b) => (a.body.date < b.body.date ? 1 : -1));

/** A day of hot work on which nobody wrote that the watch was kept. */
export const watchUnsaid = (work: WorkOnPaper): boolean =>
  hotDaysOf(work).some(({ body }) => body.watchMinutes > 0 && !body.watchKept);

const campaignLines = ({ within }: WorkOnPaper): readonly string[] => {
  const bids = thingsIn(within, 'bid');
  return thingsIn(within, 'campaign')
    .filter(({ body }) => body.began)
    .map(({ body }) => {
      const who = bids.find(({ thing }) => thing === body.takenBid)?.body.who;
      return words.campaign(
        body.title,
        words.campaignFrom(date(body.began ?? ''), body.ended ? date(body.ended) : ''),
        who ? words.campaignBy(who) : '',
      );
    });
};

/** Work that is no curator's own and belongs to no campaign told of above. */
const workLines = ({ record, within }: WorkOnPaper): readonly string[] => {
  const campaigns = thingsIn(within, 'campaign').filter(({ body }) => body.began);
  const isTold = ({ body }: Thing<'treatment'>): boolean =>
    campaigns.some(
      ({ thing, body: { began = '', ended = '9999' } }) =>
        body.campaign === thing || (body.date >= began && body.date <= ended),
    );
  return record.treatments
    .filter((each) => treatmentOf(each.body.type)?.askConservator && !isTold(each))
    .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? 1 : -1))
    .map(({ body }) =>
      words.work(
        treatmentOf(body.type)?.name ?? body.type,
        whenDone(body),
        whereDone(record, body.zones),
        whoDid(body),
      ),
    );
};

const hotTable = (work: WorkOnPaper): PaperPiece => {
  const { date: day, permit, by, clear, watch } = words.hotColumns;
  return table(
    '',
    [{ head: day, kind: 'narrow' }, { head: permit }, { head: by }, { head: clear, kind: 'number' }, { head: watch }],
    hotDaysOf(work).map(({ body }) => [
      date(body.date),
      body.permit,
      [body.authorisedBy.name, body.authorisedBy.role].filter(Boolean).join(', '),
      measure('length', body.clearZone, 1),
      [
        words.watch(whole(body.watchMinutes)),
        body.watchKept ? words.watchKept(body.watchKept.by) : words.watchNotKept,
      ].join('; '),
    ]),
  );
};
