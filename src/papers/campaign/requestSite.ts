import { hotChecks, hotWorkRules } from '../../engine/trade';
import { date, measure, number, sourceSaid, w } from '../../words';
import { list, type PaperPiece, room, say, section, table, under } from '../layout';
import { thingsIn } from '../reading';
import { accessTold } from './accessTold';
import type { CampaignOnPaper } from './campaignOnPaper';
import { insertsTold } from './insertsTold';
import type { Own } from './requestForProposals';

const words = w.paperRequest;
const site = w.paperSite;

/** What has to be kept from harm, how the work is reached, and what holds on the site. */
export const siteOfRequest = (file: CampaignOnPaper, own: Own): PaperPiece => [
  section(
    words.inserts,
    insertsTable(file, words.insertsHow),
    own('neighbours') !== '' && under(words.neighbours, say(own('neighbours'))),
  ),
  section(
    words.access,
    accessTold(file),
    own('hours') === '' ? room(words.hoursRoom) : under(words.hours, say(own('hours'))),
    under(words.grounds, list([words.groundsUsual, ...groundsTold(file)])),
    under(words.waste, list([words.wasteUsual]), own('waste') === '' ? undefined : say(own('waste'))),
  ),
  section(
    words.hot,
    say(words.hotText),
    hotRulesTable(),
    under(words.hotChecks, list(hotChecks.map(({ name }) => name))),
  ),
];

/** Inserts with what they bear, as a named expert said; that none are there is said too. */
export const insertsTable = (file: CampaignOnPaper, caption: string): PaperPiece => {
  const rows = insertsTold(file);
  const { columns } = site;
  if (rows.length === 0) return say(site.insertsNone);
  return [
    table(
      caption,
      [
        { head: columns.insert, kind: 'narrow' },
        { head: columns.removable },
        { head: columns.kept },
        { head: columns.limit },
        { head: columns.state },
      ],
      rows.map(({ name, removable, bedding, kept, limit, care, insert }) => [
        name,
        [removable, bedding].filter(Boolean).join('; '),
        kept,
        limit ?? site.noLimitLong,
        [care?.condition, insert.body.note].filter(Boolean).join(' '),
      ]),
    ),
    say(site.nobodyKnows),
  ];
};

/** What is agreed with those who keep the grounds, for this work or for all. */
const groundsTold = ({ source, record }: CampaignOnPaper): readonly string[] =>
  thingsIn(source.around, 'groundsAgreement')
    .filter(({ body: { works, ended } }) => !ended && (!works?.length || works.includes(record.sculpture.thing)))
    .map(({ body: { text, who, agreed } }) => `${text} (${who.role}, ${date(agreed)})`);

/** What published rules ask for, each with its source. */
export const hotRulesTable = (): PaperPiece => [
  table(
    site.hotRules,
    [
      { head: site.ruleColumns.rule },
      { head: site.ruleColumns.asks, kind: 'number' },
      { head: site.ruleColumns.from, kind: 'wide' },
    ],
    hotWorkRules.map(({ name, value, unit, source }) => [
      name,
      unit === 'm' ? measure('length', value, 1) : site.minutes(number(value)),
      sourceSaid(source),
    ]),
  ),
];
