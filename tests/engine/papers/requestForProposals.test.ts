import { describe, expect, it } from 'vitest';
import { paperItems } from '../../../src/engine/trade';
import { requestForProposals } from '../../../src/papers/campaign/requestForProposals';
import { type PaperNode, type PaperPiece, paperHtml, textOf } from '../../../src/papers/layout';
import { speak } from '../../../src/words/tongue';
import { gardenDay, gardenSurvey, sourceOf } from '../../files/gardenSource';
import { hostileIn, without } from './changedSurvey';
import { withOwnText } from './ownTexts';

const survey = gardenSurvey();
const about = requestForProposals.choices(sourceOf(survey))[0]?.about ?? '';
const made = (of = survey) => {
  const paper = requestForProposals.make(sourceOf(of), about);
  if (!paper) throw new Error('The request could not be made.');
  return paper;
};
const text = (of = survey): string => textOf(made(of).body).replace(/\s+/g, ' ');

const nodesOf = (piece: PaperPiece, tag: string): PaperNode[] => {
  if (Array.isArray(piece)) return piece.flatMap((one) => nodesOf(one, tag));
  if (typeof piece !== 'object' || !('tag' in piece)) return [];
  return [...(piece.tag === tag ? [piece] : []), ...piece.in.flatMap((one) => nodesOf(one, tag))];
};

describe('The request for proposals', () => {
  it('has one line for each of nine zones, with its range, how its area was taken and what was seen', () => {
    const told = text();
    expect(told).toContain('A Top arc, upper face');
    expect(told).toContain('1.60 m²');
    expect(told).toContain('1.44 m² – 1.76 m²');
    expect(told).toContain('from girths and strips');
    expect(told).toContain('Green line at the water, about 70 %');
    expect(told).toContain('Surface treated: 17.8 m² (16.0 m² to 19.6 m²).');
  });

  it('has a price form of its own with the same nine lines and no price of ours', () => {
    const tables = nodesOf(made().body, 'table').filter((table) => textOf(table).includes('Prices along'));
    expect(tables).toHaveLength(1);
    expect(nodesOf(tables[0], 'tr')).toHaveLength(1 + 9 + 3);
    for (const row of nodesOf(tables[0], 'tr')) expect(row.in.flat()).toHaveLength(5);
    expect(textOf(tables[0])).toContain('9. I Base ring 1.60 m²');
    expect(text()).not.toMatch(/\$ ?\d/);
  });

  it('asks for square metres where feet are read: a price by the foot would be entered as one by the metre', () => {
    speak({ language: 'en', locale: 'en-US', units: 'us' });
    try {
      const form = nodesOf(made().body, 'table').find((table) => textOf(table).includes('Prices along'));
      const told = form ? textOf(form) : '';
      expect(told).toContain('9. I Base ring 1.6 m² (17.2 ft²)');
      expect(told).toContain('Measured by you (m²)');
    } finally {
      speak({ language: 'en', locale: 'en-GB', units: 'metric' });
    }
  });

  it('shows the sides with their zones in lines', () => {
    const drawings = nodesOf(made().body, 'svg');
    expect(drawings).toHaveLength(1);
    expect(String(drawings[0]?.at['aria-label'])).toContain('basin edge');
  });

  it('asks for every thing that a proposal and a report must hold', () => {
    const told = text();
    for (const { name } of [...paperItems.proposal, ...paperItems.report]) expect(told).toContain(name);
  });

  it('says that licensed and insured contractors and local rules decide, and prescribes no recipe', () => {
    const told = text();
    expect(told).toContain('Only contractors who are licensed and insured');
    expect(told).toContain('under local rules');
    expect(told).toContain('It does not tell how to do it: the method is yours to propose.');
  });

  it('names the causes with how they stand, and apart from what was seen what a conservator thought', () => {
    const told = text();
    expect(told).toContain('Spray of a basin or fountain zone H, I still at work');
    expect(told.indexOf('Thought, not seen')).toBeGreaterThan(0);
    expect(told.indexOf('positive in I')).toBeGreaterThan(told.indexOf('Thought, not seen'));
  });

  it('tells access, water, power and the rules of hot work with their sources', () => {
    const told = text();
    for (const said of ['Scaffold licence of the port', 'Mains at the ferry hut.', 'Pump cabinet', '29 CFR 1910.252'])
      expect(told).toContain(said);
    expect(told).toContain('not known: to be found out before anything heavy comes');
  });

  it('holds her own words on dates and terms, and room to write where there are none', () => {
    expect(text()).toContain('Questions until');
    const own = withOwnText(survey, 'request-for-proposals', about, 'dates', 'Site visit on 3 March 2027 at ten.');
    expect(text(own)).toContain('Site visit on 3 March 2027 at ten.');
    expect(text(own)).not.toContain('Questions until');
  });

  it('what was marked as missing in the request is said beside it', () => {
    expect(made().lacks).toContain('who owns photographs and recipe');
  });

  it('a campaign without lines, drawings or access says so, and has no price form', () => {
    const empty = text(
      without(survey, ['quantities', 'outline', 'elevation', 'accessSheet', 'cause', 'treatment', 'photo']),
    );
    for (const said of [
      'No lines of work are written down yet.',
      'No zones are drawn on a side yet.',
      'No access sheet is written for this work yet.',
      'No cause is written down.',
      'Nothing is in the logbook.',
    ])
      expect(empty).toContain(said);
    expect(empty).not.toContain('Price form');
  });

  it('what a person wrote stands in it as text, whatever it holds', () => {
    const nasty = '</style><script>x</script>';
    const told = hostileIn(survey, (kind, body) =>
      kind === 'accessSheet' ? { ...body, ground: nasty, permits: nasty } : body,
    );
    const html = paperHtml(
      made(told),
      { author: '', status: 'draft', day: gardenDay, size: 'A4', invented: true },
      () => undefined,
    );
    expect(html).not.toContain('<script');
    expect(html).toContain('&lt;/style&gt;');
  });
});
