import { daysWithWeather, workingReach } from '../../engine/heat';
import { reaches, workingReachStanding } from '../../engine/trade';
import { measure, number, w } from '../../words';
import { facts, type PaperPiece, say } from '../layout';
import type { CampaignOnPaper } from './campaignOnPaper';

const words = w.paperSite;

/** How the work is reached and what stands in the way, as its access sheet says. */
export const accessTold = ({ planned }: CampaignOnPaper): PaperPiece => {
  const body = planned.accessSheet[0]?.body;
  if (!body) return [say(words.accessNone), say(words.accessAsk)];
  const { height, plinth, outreach, waterDepth, competent, days } = body;
  const { access: names } = words;
  const metres = (value: number | undefined) => (value === undefined ? undefined : measure('length', value));
  const reach = height === undefined ? undefined : workingReach(plinth ?? 0, height);
  return [
    facts([
      [names.height, metres(height)],
      [names.plinth, metres(plinth)],
      [names.equipment, reaches.find(({ id }) => id === body.equipment)?.name ?? body.equipment],
      [
        names.reach,
        reach === undefined
          ? undefined
          : `${measure('length', reach)} (${words.reachHow(measure('length', workingReachStanding.value))})`,
      ],
      [names.outreach, metres(outreach)],
      [names.ground, body.ground],
      [names.bears, body.bears && words.bearsWords[body.bears]],
      [names.waterDepth, metres(waterDepth)],
      [names.closures, body.closures],
      [names.water, body.water],
      [names.power, body.power],
      [names.permits, body.permits],
      [names.competent, competent && [competent.role, competent.name].filter(Boolean).join(', ')],
      [names.days, days === undefined ? undefined : words.days(number(days), number(daysWithWeather(days)))],
      [names.rescue, body.rescue],
      [names.note, body.note],
    ]),
    say(words.accessAsk, 'small'),
  ];
};
