import { type FundFigures, fundFiguresOf, giftsOf, isFundFigures } from '../../engine/fund';
import type { PaperSource } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { fine, type PaperPiece, type PaperSort, say, section } from '../layout';
import { nameOfWork, ownText, stateWithAround, thingsOfAll, workOf } from '../reading';
import { latestOnPaper } from '../work/latestOnPaper';
import { notLookedFirst } from '../work/notLookedFirst';
import { type CampaignOnPaper, campaignOnPaper, campaignsOf, moneyRules } from './campaignOnPaper';
import { fundMoney, fundUpkeep } from './fundMoney';
import { draftedOutcome, opportunity, whoDoesIt } from './fundPromise';
import { waysOf } from './waysSideBySide';

const words = w.paperFund;
const id = 'funder-sheet';

/** For those who are asked for money: what it makes possible, how that is told, what it costs and who keeps it up. */
export const fundSheet: PaperSort = {
  id,
  about: 'fund',
  pages: [2, 2],
  title: words.title,
  reader: words.reader,
  speaksOf: ['money'],
  choices: (source) =>
    thingsOfAll(source, 'fund')
      .filter(({ body }) => body.closed === undefined)
      .map(({ thing, body }) => ({ about: thing, label: body.title })),
  make: (source, about) => {
    const fund = thingsOfAll(source, 'fund').find(({ thing }) => thing === about);
    if (!fund) return undefined;
    const { title, sculpture, promise, upkeep, lines, wanted } = fund.body;
    const work = sculpture ? workOf(source, sculpture) : undefined;
    const file = campaignOf(source, fund);
    const ways = file && waysOf(file);
    const latest = work && latestOnPaper(work);
    const own = (part: string) => ownText(source, id, about, part);
    const drafted = draftedOutcome(fund, work, ways);
    const name = work ? nameOfWork(work) : source.name;
    const body: PaperPiece[] = [
      work && notLookedFirst(latest, true),
      say(work ? words.lead(name, title) : words.leadOfAll(title, source.name), 'lead'),
      own('significance') !== '' && section(words.significance, say(own('significance'))),
      opportunity(work, latest, file, ways),
      section(words.outcome, say(own('outcome') || drafted), say(words.outcomeHow, 'small')),
      fine(
        fundMoney(source, fund, figures(source, fund), file),
        fundUpkeep(source, fund),
        promise !== undefined && section(words.promised, say(promise)),
        own('benefit') !== '' && section(words.benefit, say(own('benefit'))),
        whoDoesIt(file, ways),
      ),
    ];
    return {
      title,
      over: name,
      number: work?.record.sculpture.body.number ?? source.name,
      state: work ? stateWithAround(source, work) : source.state,
      scale: latest?.score.scale,
      body,
      own: [
        {
          ...{ part: 'significance', label: words.significanceLabel, hint: words.significanceHint },
          ...{ text: own('significance'), longest: 1200 },
        },
        {
          ...{ part: 'outcome', label: words.outcomeLabel, hint: words.outcomeHint },
          ...{ text: own('outcome'), drafted, longest: 1200 },
        },
        {
          ...{ part: 'benefit', label: words.benefitLabel, hint: words.benefitHint },
          ...{ text: own('benefit'), longest: 1200 },
        },
      ],
      lacks: [
        own('significance') === '' && words.lacks.significance,
        own('benefit') === '' && words.lacks.benefit,
        upkeep === undefined && words.lacks.upkeep,
        promise === undefined && words.lacks.promise,
        lines.length === 0 && words.lacks.lines,
        wanted === undefined && words.lacks.wanted,
        !(ways?.chosen ?? ways?.leaning?.option)?.body.goodMonths && words.lacks.months,
      ].filter((line) => typeof line === 'string'),
    };
  },
};

/** The campaign that this fund pays for. */
const campaignOf = (source: PaperSource, { thing }: Thing<'fund'>): CampaignOnPaper | undefined => {
  const campaign = campaignsOf(source).find(({ body }) => body.fund === thing);
  return campaign && campaignOnPaper(source, campaign.thing);
};

const figures = (source: PaperSource, fund: Thing<'fund'>): FundFigures | undefined => {
  const gifts = giftsOf(thingsOfAll(source, 'gift'), fund.thing);
  const told = fundFiguresOf(fund, gifts, moneyRules(source), source.today);
  return isFundFigures(told) ? told : undefined;
};
