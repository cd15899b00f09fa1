import type { BodyOf, Reason, Thing } from '../record';
import { zonesAt } from '../record';
import { treatmentOf } from '../trade';
import { type CampaignFile, ofCampaign } from './campaignFile';
import { causesFirst } from './causesFirst';
import { paperEntered, paperStanding } from './paperStanding';
import { because } from './reasonCodes';
import { scheduleStanding } from './scheduleStanding';

/** What the record holds for a step, and what the step still asks for. */
export interface Found {
  readonly there: readonly Reason[];
  readonly lacks: readonly Reason[];
}

const there = (...reasons: Reason[]): Found => ({ there: reasons, lacks: [] });
const lacks = (...reasons: Reason[]): Found => ({ there: [], lacks: reasons });
const both = (...parts: readonly Found[]): Found => ({
  there: parts.flatMap((part) => part.there),
  lacks: parts.flatMap((part) => part.lacks),
});

/** What is looked for at each step of trade/campaignSteps; a step not here is settled by a word alone. */
export const foundAt: Readonly<Record<string, (file: CampaignFile) => Found>> = {
  causes: ({ record, planned, today }) => {
    const { reasons, waits } = causesFirst(zonesAt(record, today), planned.cause, today);
    return waits ? lacks(...reasons) : there(...reasons);
  },
  assessment: (file) => {
    const paper = paperEntered(file.planned.completeness, file.campaign.thing, 'proposal');
    if (!paper) return lacks(because('campaign: no proposal'));
    const { whole, reasons } = paperStanding('proposal', paper.body);
    return whole ? there(...reasons) : lacks(...reasons);
  },
  options: ({ campaign }) =>
    campaign.body.option || campaign.body.decision
      ? there(because('campaign: option or decision written'))
      : lacks(because('campaign: no option chosen')),
  money: ({ campaign }) =>
    campaign.body.fund ? there(because('campaign: fund there')) : lacks(because('campaign: no fund')),
  request: (file) => both(schedule(file), request(file), bids(file)),
  access: ({ planned }) =>
    planned.accessSheet.length > 0
      ? there(because('campaign: access sheet there'))
      : lacks(because('campaign: no access sheet')),
  inserts,
  before: (file) => roundOf(file, 'before treatment'),
  strip: (file) => approved(file, 'sample area'),
  colour: (file) => both(approved(file, 'colour'), colourCard(file)),
  patina: (file) => {
    const count = ofCampaign(file, 'layer').length;
    return count > 0
      ? there(because('campaign: layers written', { count }))
      : lacks(because('campaign: no layers written'));
  },
  wax,
  report: (file) => both(report(file), approved(file, 'handover')),
  watch: (file) => both(roundOf(file, 'after treatment'), warranty(file)),
};

const schedule = (file: CampaignFile): Found => {
  const lines = ofCampaign(file, 'quantities').flatMap(({ body }) => body.items);
  const standing = scheduleStanding(file.record, lines, file.today);
  return both(
    lines.length > 0 ? there(because('campaign: schedule of so many lines', { count: lines.length })) : there(),
    // That a zone is not to be treated may be meant: it is told, not asked for.
    there(...standing.filter(({ code }) => code === 'campaign: zones without a line')),
    lacks(...standing.filter(({ code }) => code !== 'campaign: zones without a line')),
  );
};

const request = ({ planned, campaign }: CampaignFile): Found => {
  const { whole, reasons } = paperStanding(
    'request',
    paperEntered(planned.completeness, campaign.thing, 'request')?.body,
  );
  return whole ? there(...reasons) : lacks(...reasons);
};

const bids = (file: CampaignFile): Found => {
  const count = ofCampaign(file, 'bid').filter(({ body }) => body.withdrawn === undefined).length;
  if (count === 0) return lacks(because('campaign: no bids'));
  const so = there(because('campaign: bids so many', { count }));
  const { takenBid } = file.campaign.body;
  return both(
    so,
    takenBid ? there(because('campaign: bid taken', { bid: takenBid })) : lacks(because('campaign: none taken')),
  );
};

function inserts({ record, planned }: CampaignFile): Found {
  const reasons = record.inserts.flatMap(({ thing }): Reason[] => {
    const care = planned.insertCare.find(({ body }) => body.insert === thing)?.body;
    if (care?.method === undefined) return [because('campaign: insert without a way', { insert: thing })];
    const needsLimit = care.method === 'shield' || care.method === 'keep heat away';
    return needsLimit && !care.limitBy ? [because('campaign: insert limit without a name', { insert: thing })] : [];
  });
  const count = record.inserts.length - reasons.length;
  return both(count > 0 ? there(because('campaign: inserts provided for', { count })) : there(), lacks(...reasons));
}

/** The round of this sort nearest the work: before its first day, or from its last day on. */
const roundOf = ({ record, campaign }: CampaignFile, type: 'before treatment' | 'after treatment'): Found => {
  const { opened, began, ended } = campaign.body;
  const before = type === 'before treatment';
  const rounds = record.rounds.filter(
    ({ body }) =>
      body.type === type &&
      body.ended !== undefined &&
      (before ? body.date >= opened && (began === undefined || body.date <= began) : body.date >= (ended ?? opened)),
  );
  const round = before ? rounds.at(-1) : rounds[0];
  if (!round) return lacks(because(before ? 'campaign: no round before' : 'campaign: no round after'));
  const { date } = round.body;
  return there(because(before ? 'campaign: round before' : 'campaign: round after', { date }));
};

/** The word said last counts. */
const approved = (file: CampaignFile, of: BodyOf<'approval'>['of']): Found => {
  const last = ofCampaign(file, 'approval')
    .filter(({ body }) => body.of === of && body.answer !== 'open')
    .sort((a, b) => a.body.date.localeCompare(b.body.date))
    .at(-1);
  if (!last) return lacks(because('campaign: not approved', { of }));
  const { date, answer } = last.body;
  return answer === 'yes'
    ? there(because('campaign: approved', { of, date }))
    : lacks(because('campaign: refused', { of, date }));
};

const colourCard = (file: CampaignFile): Found => {
  const card = [...ofCampaign(file, 'colourCard')].sort((a, b) => a.body.date.localeCompare(b.body.date)).at(-1);
  if (!card) return lacks(because('campaign: no colour card'));
  const count = photosLacking(card);
  const so = there(because('campaign: colour card', { date: card.body.date }));
  return count > 0 ? both(so, lacks(because('campaign: colour card lacks photos', { count }))) : so;
};

/** How many of the four photos, dry and wet, in shade and sun, are not on the card. */
export const photosLacking = ({ body }: Thing<'colourCard'>): number =>
  [body.dryShade, body.drySun, body.wetShade, body.wetSun].filter((photo) => photo === undefined).length;

function wax({ record, campaign }: CampaignFile): Found {
  const from = campaign.body.began ?? campaign.body.opened;
  const entry = record.treatments.find(({ body }) => treatmentOf(body.type)?.coats && body.date >= from);
  return entry
    ? there(because('campaign: wax written', { date: entry.body.date }))
    : lacks(because('campaign: no wax written'));
}

const report = ({ planned, campaign }: CampaignFile): Found => {
  const { whole, reasons } = paperStanding(
    'report',
    paperEntered(planned.completeness, campaign.thing, 'report')?.body,
  );
  return whole ? there(...reasons) : lacks(...reasons);
};

const warranty = ({ campaign, today }: CampaignFile): Found => {
  const until = campaign.body.warrantyUntil;
  if (until === undefined) return lacks(because('campaign: no warranty written'));
  return there(
    until < today
      ? because('campaign: warranty over', { date: until })
      : because('campaign: warranty until', { date: until }),
  );
};
