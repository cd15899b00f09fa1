import { paperEntered, paperStanding } from '../../engine/campaign';
import { w } from '../../words';
import { columns, danger, list, newPage, type Paper, type PaperSort, room, say, section } from '../layout';
import { ownText, stateWithAround } from '../reading';
import { viewsBeside } from '../views';
import { latestOnPaper } from '../work/latestOnPaper';
import { notLookedFirst } from '../work/notLookedFirst';
import { type CampaignOnPaper, campaignOnPaper, campaignsAhead } from './campaignOnPaper';
import { causesTable, historyTold, photosOfRequest, thoughtTold, workFacts } from './requestOfWork';
import { rulesOfRequest } from './requestRules';
import { linesOf, priceForm, scheduleSection } from './requestSchedule';
import { siteOfRequest } from './requestSite';

const words = w.paperRequest;
const id = 'request-for-proposals';

/** Places for words of her own, in the order of the paper. */
const parts = ['dates', 'neighbours', 'hours', 'waste', 'ownership', 'terms', 'criteria'] as const;
export type OwnPart = (typeof parts)[number];
export type Own = (part: OwnPart) => string;

/** The same job in writing for all who offer: what is there, how much of it, what must be kept from harm, what an offer must say. */
export const requestForProposals: PaperSort = {
  id,
  about: 'campaign',
  pages: [6, 12],
  title: words.title,
  reader: words.reader,
  speaksOf: ['access'],
  choices: campaignsAhead,
  make: (source, about) => {
    const file = campaignOnPaper(source, about);
    if (!file) return undefined;
    const { work, record, campaign, name } = file;
    const own: Own = (part) => ownText(source, id, about, part);
    const latest = latestOnPaper(work);
    const views = viewsBeside(work);
    return {
      title: words.heading(campaign.body.title),
      over: name,
      number: record.sculpture.body.number,
      state: stateWithAround(source, work),
      scale: latest?.score.scale,
      body: [
        say(words.lead(source.name, name), 'lead'),
        notLookedFirst(latest),
        section(words.notice, danger(list(words.noticeText))),
        section(
          words.dates,
          own('dates') === '' ? columns(words.datesRoom.map((line) => room(line))) : say(own('dates')),
          say(words.siteVisit),
        ),
        workFacts(file),
        historyTold(file),
        thoughtTold(file),
        causesTable(file),
        section(words.drawings, views, say(views.length > 0 ? words.drawingsHow : words.drawingsNone, 'small')),
        photosOfRequest(file),
        scheduleSection(file),
        siteOfRequest(file, own),
        rulesOfRequest(file, own),
        linesOf(file).length > 0 && newPage(priceForm(file)),
      ],
      own: ownPlaces(own),
      lacks: lacks(file, own, views.length),
    };
  },
};

const ownPlaces = (own: Own): Paper['own'] =>
  (
    [
      ['dates', words.datesLabel, words.datesHint],
      ['neighbours', words.neighboursLabel, words.neighboursHint],
      ['hours', w.paperSite.hoursLabel, w.paperSite.hoursHint],
      ['waste', w.paperSite.wasteLabel, w.paperSite.wasteHint],
      ['ownership', words.ownershipLabel, words.ownershipHint],
      ['terms', words.termsLabel, words.termsHint],
      ['criteria', words.criteriaLabel, words.criteriaHint],
    ] as const
  ).map(([part, label, hint]) => ({ part, label, hint, text: own(part), longest: 3000 }));

const lacks = (file: CampaignOnPaper, own: Own, views: number): readonly string[] => {
  const { planned, campaign } = file;
  const entered = paperEntered(planned.completeness, campaign.thing, 'request')?.body;
  const { missing } = paperStanding('request', entered);
  // What has a place of its own here is told by that.
  const told = new Set(['ownership']);
  return [
    linesOf(file).length === 0 && words.lacks.schedule,
    views === 0 && words.lacks.drawings,
    own('dates') === '' && words.lacks.dates,
    own('ownership') === '' && words.lacks.ownership,
    own('hours') === '' && words.lacks.hours,
    planned.accessSheet.length === 0 && w.paperSite.lacks.access,
    planned.cause.length === 0 && words.lacks.causes,
    entered === undefined && words.lacks.unseen,
    ...missing.filter(({ id: item }) => !told.has(item)).map(({ name }) => words.lacks.item(name)),
  ].filter((line) => typeof line === 'string');
};
