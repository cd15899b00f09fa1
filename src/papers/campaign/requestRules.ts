import { criteriaOf, ofCampaign } from '../../engine/campaign';
import { methodsOn } from '../../engine/care';
import { methodOf, paperItems } from '../../engine/trade';
import { number, w } from '../../words';
import { list, type PaperPiece, room, say, section, table, under } from '../layout';
import type { CampaignOnPaper } from './campaignOnPaper';
import type { Own } from './requestForProposals';

const words = w.paperRequest;

/** Who says yes to what, when work stops, what a proposal holds, what is handed over, and how proposals are judged. */
export const rulesOfRequest = (file: CampaignOnPaper, own: Own): PaperPiece => [
  section(words.approvals, list(words.approvalsText)),
  section(words.stop, list(words.stopText), say(words.stopThen)),
  section(words.unwanted, list([...words.unwantedText, words.unwantedForbidden(forbidden(file).join('; '))])),
  section(
    words.proposal,
    list(
      paperItems.proposal.map(({ name, means }) => (means ? `${name}. ${means}` : name)),
      'ol',
    ),
    say(words.proposalHow),
  ),
  section(
    words.documents,
    say(words.documentsText),
    say(words.documentsHow),
    list(
      paperItems.report.map(({ name }) => name),
      'ol',
    ),
    under(words.ownership, own('ownership') === '' ? room(words.ownershipRoom) : say(own('ownership'))),
  ),
  section(words.terms, list(words.termsText), own('terms') !== '' && say(own('terms'))),
  section(
    words.criteria,
    own('criteria') === '' ? weights(file) : say(own('criteria')),
    say(words.criteriaHow, 'small'),
  ),
];

/** As they were set for this campaign, or the usual ones. */
const weights = (file: CampaignOnPaper): PaperPiece =>
  table(
    words.criteriaCaption,
    [
      { head: words.criteriaColumns.what },
      { head: words.criteriaColumns.weight, kind: 'number' },
      { head: words.criteriaColumns.asks, kind: 'wide' },
    ],
    criteriaOf(ofCampaign(file, 'bidCriteria')[0]?.body).map(({ name, weight, asks = '' }) => [
      name,
      number(weight, 1),
      asks,
    ]),
  );

/** Methods that are never used on this work. */
export const forbidden = (file: CampaignOnPaper): readonly string[] => {
  const { forbidden: codes, alsoForbidden } = methodsOn(file.things('methodSheet')[0]);
  return [
    ...codes.map((code) => methodOf(code)?.name ?? code),
    ...alsoForbidden.map((line) => line.replace(/\.$/, '')),
  ];
};
