import { causesFirst, stepsOfCampaign } from '../../engine/campaign';
import { zonesAt } from '../../engine/record';
import { campaignStepOf } from '../../engine/trade';
import { date, money, namesOfCampaign, sayReason, w } from '../../words';
import { facts, list, type PaperPiece, say, section, table, under } from '../layout';
import type { CampaignOnPaper } from './campaignOnPaper';
import { daysOfWork } from './dossierTime';
import { causesTable } from './requestOfWork';

const words = w.paperDossier;

/** The days, who did it, for how much, who answers for it. */
export const inShort = (file: CampaignOnPaper): PaperPiece => {
  const { campaign, planned, name } = file;
  const { body } = campaign;
  const { began, ended } = daysOfWork(file);
  const option = file.things('option').find(({ thing }) => thing === body.option)?.body.title;
  const decision = planned.decision.find(({ thing }) => thing === body.decision)?.body;
  const bid = planned.bid.find(({ thing }) => thing === body.takenBid)?.body;
  const priced = bid && { minor: bid.lines.reduce((sum, { minor }) => sum + minor, 0), currency: bid.currency };
  const day = (value: string | undefined) => value && date(value);
  const { facts: names } = words;
  return section(
    words.short,
    say(words.lead(name, date(began), ended ? date(ended) : ''), 'lead'),
    facts([
      [names.work, name],
      [names.opened, date(body.opened)],
      [names.began, date(began)],
      [names.ended, day(ended)],
      [names.accepted, day(body.accepted)],
      [names.step, campaignStepOf(body.step)?.name ?? body.step],
      [names.option, option],
      [names.decision, decision && words.decidedOn(date(decision.date), decision.title)],
      [names.contractor, bid?.who],
      [names.price, priced && money(priced)],
      [names.warranty, body.warrantyUntil && words.warrantyBy(date(body.warrantyUntil), body.warrantyWho ?? '')],
      [names.note, body.note],
    ]),
  );
};

/** Each step of the campaign with what is there for it and what is lacking. */
export const stepsTold = (file: CampaignOnPaper): PaperPiece => {
  const names = namesOfCampaign(file);
  const said = (reasons: Parameters<typeof sayReason>[0][]) =>
    reasons.map((reason) => sayReason(reason, names)).join(' ');
  return section(
    words.steps,
    table(
      words.stepsCaption,
      [{ head: words.stepColumns.step }, { head: words.stepColumns.there }, { head: words.stepColumns.lacks }],
      stepsOfCampaign(file)
        .filter(({ state }) => state !== 'ahead')
        .map(({ step, there, lacks }) => [step.name, said([...there]), said([...lacks])]),
    ),
  );
};

/** What was decided and why, and what fed the damage. */
export const whyTold = (file: CampaignOnPaper): PaperPiece => {
  const { campaign, planned, record, today } = file;
  const decision = planned.decision.find(({ thing }) => thing === campaign.body.decision)?.body;
  const { reasons } = causesFirst(zonesAt(record, today), planned.cause, today);
  return section(
    words.why,
    campaign.body.note && say(campaign.body.note),
    decision
      ? under(
          words.decidedOn(date(decision.date), decision.title),
          list([
            words.chosen(decision.chosen),
            ...decision.refused.map(({ what, why }) => words.refused(what, why)),
            ...(decision.dissent ? [words.dissent(decision.dissent)] : []),
          ]),
        )
      : say(words.lacksOf.decision),
    causesTable(file, true),
    list(reasons.map((reason) => sayReason(reason))),
  );
};
