import { dayRange, type Thing } from '../../engine/record';
import { beganOf, endOfCampaign } from '../../engine/watch';
import { thingsIn } from '../reading';
import type { CampaignOnPaper } from './campaignOnPaper';

/** First and last day of the work of a campaign; the last undefined while it is not over. */
export const daysOfWork = ({
  record,
  campaign,
}: CampaignOnPaper): { readonly began: string; readonly ended: string | undefined } => ({
  began: beganOf(record, campaign),
  ended: endOfCampaign(campaign),
});

/** Zones treated in a campaign: those of its layers, its lines and its treatments; all living ones where none says. */
export const zonesTreated = (file: CampaignOnPaper): readonly Thing<'zone'>[] => {
  const named = new Set([
    ...layersIn(file).map(({ body }) => body.zone),
    ...file.planned.quantities
      .filter(({ body }) => body.campaign === file.campaign.thing)
      .flatMap(({ body }) => body.items.flatMap(({ zone }) => zone ?? [])),
  ]);
  return file.record.zones.filter(({ thing }) => named.size === 0 || named.has(thing));
};

export const layersIn = ({ planned, campaign }: CampaignOnPaper): readonly Thing<'layer'>[] =>
  planned.layer.filter(({ body }) => body.campaign === campaign.thing);

export const hotDaysIn = (file: CampaignOnPaper): readonly Thing<'hotDay'>[] =>
  [...file.things('hotDay')]
    .filter(({ body }) => body.campaign === file.campaign.thing)
    .sort((a, b) => a.body.date.localeCompare(b.body.date));

const dayOf = ({ body }: Thing<'photo'>): string => body.taken?.slice(0, 10) ?? '';

/** Photos from before the first day of work, from its days, and from after the last; those of no day are in none. */
export const photosIn = (file: CampaignOnPaper, when: 'before' | 'during' | 'after'): readonly Thing<'photo'>[] => {
  const { began, ended } = daysOfWork(file);
  return thingsIn(file.work.within, 'photo')
    .filter((photo) => {
      const day = dayOf(photo);
      if (day === '') return false;
      if (when === 'before') return day < began;
      if (when === 'after') return ended !== undefined && day > ended;
      return day >= began && (ended === undefined || day <= ended);
    })
    .sort((a, b) => (a.body.taken ?? '').localeCompare(b.body.taken ?? ''));
};

/** Entries of the logbook from the first day of work to the acceptance, in time. */
export const treatmentsIn = (file: CampaignOnPaper): readonly Thing<'treatment'>[] => {
  const { began, ended } = daysOfWork(file);
  const until = file.campaign.body.accepted ?? ended ?? file.today;
  return file.record.treatments
    .filter(({ body }) => {
      const { from } = dayRange(body.date);
      return body.campaign === file.campaign.thing || (from >= began && from <= until);
    })
    .sort((a, b) => dayRange(a.body.date).from.localeCompare(dayRange(b.body.date).from));
};
