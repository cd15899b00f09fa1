import { ofCampaign, paperEntered, paperStanding } from '../../engine/campaign';
import { methodsOn } from '../../engine/care';
import { seenAfter } from '../../engine/heat';
import { treatmentOf } from '../../engine/trade';
import { date, w } from '../../words';
import { thingsOfAll } from '../reading';
import type { CampaignOnPaper } from './campaignOnPaper';
import type { OwnOfDossier } from './dossier';
import { daysOfWork, hotDaysIn, layersIn, photosIn, treatmentsIn, zonesTreated } from './dossierTime';
import { insertsTold } from './insertsTold';

const words = w.paperDossier.lacksOf;

/** What a whole file of a treatment would hold and this one does not, as sentences: told, never filled. */
export const lacksOf = (file: CampaignOnPaper, own: OwnOfDossier): readonly string[] => {
  const { campaign, planned, record, source } = file;
  const { body } = campaign;
  const paper = (of: 'proposal' | 'report') => paperEntered(planned.completeness, campaign.thing, of)?.body;
  const report = paper('report');
  const { began, ended } = daysOfWork(file);
  const rounds = record.rounds.filter((round) => round.body.ended !== undefined);
  const kept = thingsOfAll(source, 'keptWhere').some(({ body: { sculpture } }) => sculpture === body.sculpture);
  const cards = ofCampaign(file, 'colourCard');
  return [
    body.decision === undefined && words.decision,
    paper('proposal') === undefined && words.proposal,
    ofCampaign(file, 'approval').length === 0 && words.approvals,
    cards.length === 0 && words.card,
    ...layersMissing(file),
    ...heatMissing(file),
    !rounds.some((round) => round.body.type === 'before treatment' && round.body.date <= began) && words.before,
    ended !== undefined &&
      !rounds.some((round) => round.body.type === 'after treatment' && round.body.date >= ended) &&
      words.roundAfter,
    photosIn(file, 'before').length === 0 && words.photosBefore,
    photosIn(file, 'during').length === 0 && words.photosDuring,
    ended !== undefined && photosIn(file, 'after').length === 0 && words.photosAfter,
    report === undefined && words.report,
    ...(report ? paperStanding('report', report).missing.map(({ name }) => words.reportItem(name)) : []),
    !kept && own('samples') === '' && !cards.some((card) => card.body.kept) && words.samples,
    body.warrantyUntil === undefined && words.warranty,
    own('care') === '' && methodsOn(file.things('methodSheet')[0]).usual && words.care,
  ].filter((line) => typeof line === 'string');
};

const layersMissing = (file: CampaignOnPaper): readonly string[] => {
  const layers = layersIn(file);
  if (layers.length === 0) return [words.layers];
  const bare = zonesTreated(file).filter(({ thing }) => !layers.some(({ body }) => body.zone === thing));
  return bare.length > 0 ? [words.layersOf(bare.map(({ body }) => body.letter).join(', '))] : [];
};

const usesHeat = new Set(['repatination', 'hot wax']);

const heatMissing = (file: CampaignOnPaper): readonly string[] => {
  const days = hotDaysIn(file);
  const hot = treatmentsIn(file).some(({ body }) => usesHeat.has(treatmentOf(body.type)?.id ?? ''));
  if (days.length === 0)
    return hot || layersIn(file).some(({ body }) => body.surface !== undefined) ? [words.hotDays] : [];
  const names = new Map(insertsTold(file).map(({ insert, name }) => [insert.thing, name]));
  return days.flatMap(({ thing, body }) =>
    (body.inserts ?? []).flatMap((insert) => {
      const name = names.get(insert) ?? '?';
      const isOf = (one: { readonly body: { readonly hotDay: string; readonly insert: string } }) =>
        one.body.hotDay === thing && one.body.insert === insert;
      return [
        ...(file.things('insertReading').some(isOf) ? [] : [words.readings(name, date(body.date))]),
        ...(file.things('insertAfter').some((one) => isOf(one) && seenAfter(body, one.body))
          ? []
          : [words.after(name, date(body.date))]),
      ];
    }),
  );
};
