import { named } from './named';
import type { Source } from './source';

export type PaperOf = 'request' | 'proposal' | 'report';

/** Something a paper of a campaign must hold. */
export interface PaperItem {
  readonly id: string;
  /** A noun, as a line of the list and of the letter. */
  readonly name: string;
  /** What is meant by it, where the name alone may be read in two ways. */
  readonly means?: string;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const guidance: Source = {
  text: 'Guidance for owners of outdoor sculpture and model requests for treatment, from memory.',
  sure: 'from memory',
};
const code: Source = {
  text: 'American Institute for Conservation, Code of Ethics and Guidelines for Practice, guidelines 24 to 28 on documentation and the treatment plan, from memory.',
  sure: 'from memory',
};

const rows = (source: Source, list: readonly (readonly [string, string, string?])[]): readonly PaperItem[] =>
  list.map(([id, name, means]) => ({ id, name, ...(means ? { means } : {}), source }));

/** What must be in it before a request goes out. */
const request: readonly PaperItem[] = [
  ...rows(practice, [
    ['site visit', 'Day of the site visit', 'Nobody prices what they have not seen.'],
    ['access', 'Access, reach and ground'],
    ['water and power', 'Water and power'],
    ['drainage and waste', 'Drainage, run-off and waste'],
    ['hot work', 'Rules for hot work', 'Permit, clear zone, watch: as the fire authority and the insurer ask.'],
    ['inserts', 'List of inserts and who sets their limits'],
    ['test panel', 'Sample area, test panel and who approves them'],
    ['stop work', 'When work stops', 'Bare metal, lost tool marks, an insert that changes, a find nobody expected.'],
    ['exclusions', 'What is not wanted', 'Lacquer, sealed surfaces, recipes without a record.'],
  ]),
  ...rows(guidance, [
    ['documents', 'Documents to be handed over', 'Photographs in progress and after, layer log, report.'],
    ['ownership', 'Who owns photographs and recipe'],
    ['warranty', 'Warranty and call-back'],
    ['insurance', 'Insurance during the work', 'Damage during treatment is often not covered: ask your broker.'],
    ['named people', 'Qualifications and references of named people on the job'],
    ['criteria', 'How bids will be judged', 'Not by the lowest price alone.'],
    ['payment', 'Last payment against the report'],
  ]),
];

/** What a proposal for treatment should say. */
const proposal: readonly PaperItem[] = rows(code, [
  ['condition', 'The condition that is to be addressed'],
  ['aim', 'The aim'],
  ['tests', 'Tests done and what they showed'],
  ['steps', 'Steps, with methods and materials, zone by zone'],
  ['alternatives', 'Other ways, and why not'],
  ['result', 'The result to be expected, and how long it may last'],
  ['risks', 'Risks, and what cannot be taken back'],
  ['inserts', 'Protection of inserts and of what stands around'],
  ['documents', 'The documentation offered'],
  ['people', 'The people who will do it'],
  ['time', 'Time and programme'],
  ['costs', 'Costs, line by line'],
  ['after-care', 'After-care'],
]);

/** What a report of a treatment should hold. */
const report: readonly PaperItem[] = [
  ...rows(code, [
    ['identity', 'Work, dates and names'],
    ['procedures', 'What was done, zone by zone'],
    ['deviations', 'Where it went another way than planned, and why'],
    ['materials added', 'Materials added: product, maker, strength, batch'],
    ['materials removed', 'Materials removed, and samples kept'],
    ['condition after', 'Condition after the treatment'],
    ['new information', 'What was found out on the way'],
    ['care', 'Recommendations for care'],
    ['photos before', 'Photographs before'],
    ['photos during', 'Photographs of what was laid bare'],
    ['photos after', 'Photographs after'],
  ]),
  ...rows(practice, [
    ['layers', 'The layer log'],
    ['temperatures', 'Temperatures at the inserts'],
    ['warranty', 'Warranty: until when, by whom, for what'],
  ]),
];

export const paperItems: Readonly<Record<PaperOf, readonly PaperItem[]>> = {
  request: named('itemsOfRequest', request),
  proposal: named('itemsOfProposal', proposal),
  report: named('itemsOfReport', report),
};

export const paperItemOf = (of: PaperOf, id: string): PaperItem | undefined =>
  paperItems[of].find((row) => row.id === id);
