import { w } from '../../words';
import { fine, leftFirst, list, newPage, type PaperSort, say, section } from '../layout';
import { ownText, stateWithAround } from '../reading';
import { viewsBeside } from '../views';
import { latestOnPaper } from '../work/latestOnPaper';
import { notLookedFirst } from '../work/notLookedFirst';
import { accessTold } from './accessTold';
import { campaignOnPaper, campaignsToChoose } from './campaignOnPaper';
import { careFromHere, deviations, peopleNamed, samplesKept, warrantyTold, watchSince } from './dossierAfter';
import { agreedColours, approvalsTold, papersAndBid } from './dossierAgreed';
import { conditionAfter, conditionBefore, photosOf } from './dossierCondition';
import { hotDaysTold } from './dossierHeat';
import { lacksOf } from './dossierLacks';
import { layerLog, ledgerTold, logbookTold } from './dossierLayers';
import { inShort, stepsTold, whyTold } from './dossierShort';
import { insertsTable } from './requestSite';

const words = w.paperDossier;
const id = 'treatment-dossier';
export type OwnOfDossier = (part: 'deviations' | 'samples' | 'care') => string;

/** Everything of a campaign that has begun, for the file for good. What is missing in it is said first. */
export const treatmentDossier: PaperSort = {
  id,
  about: 'campaign',
  pages: [20, 60],
  title: words.title,
  reader: words.reader,
  speaksOf: ['money', 'access'],
  choices: (source) =>
    campaignsToChoose(source, (file) => {
      const { began, ended, accepted } = file.campaign.body;
      return (
        Boolean(began ?? ended ?? accepted) ||
        file.planned.layer.some(({ body }) => body.campaign === file.campaign.thing)
      );
    }),
  make: (source, about) => {
    const file = campaignOnPaper(source, about);
    if (!file) return undefined;
    const { work, record, campaign, name } = file;
    const own: OwnOfDossier = (part) => ownText(source, id, about, part);
    const latest = latestOnPaper(work);
    const lacks = lacksOf(file, own);
    const views = viewsBeside(work);
    return {
      title: words.heading(campaign.body.title),
      over: name,
      number: record.sculpture.body.number,
      state: stateWithAround(source, work),
      scale: latest?.score.scale,
      body: [
        notLookedFirst(latest),
        leftFirst(words.missing, list(lacks) ?? say(words.missingNone), say(words.missingHow, 'small')),
        inShort(file),
        newPage(fine(stepsTold(file), whyTold(file))),
        newPage(fine(conditionBefore(file)), views.length > 0 && section(words.drawings, views)),
        newPage(photosOf(file, 'before')),
        newPage(fine(papersAndBid(file))),
        newPage(approvalsTold(file)),
        newPage(agreedColours(file)),
        newPage(
          fine(
            section(words.inserts, insertsTable(file, words.insertsCaption)),
            section(words.access, accessTold(file)),
          ),
        ),
        newPage(hotDaysTold(file)),
        newPage(layerLog(file)),
        newPage(logbookTold(file), ledgerTold(file)),
        newPage(photosOf(file, 'during')),
        newPage(deviations(file, own('deviations'))),
        newPage(fine(conditionAfter(file)), photosOf(file, 'after')),
        newPage(samplesKept(file, own('samples')), careFromHere(file, own('care'))),
        newPage(warrantyTold(file), watchSince(file)),
        peopleNamed(file),
      ],
      own: (
        [
          ['deviations', words.deviationsLabel, words.deviationsHint],
          ['samples', words.samplesLabel, words.samplesHint],
          ['care', words.careLabel, words.careHint],
        ] as const
      ).map(([part, label, hint]) => ({ part, label, hint, text: own(part), longest: 6000 })),
      lacks,
    };
  },
};
