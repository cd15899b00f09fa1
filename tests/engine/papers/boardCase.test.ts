import { describe, expect, it } from 'vitest';
import { boardCase } from '../../../src/papers/campaign/boardCase';
import { paperHtml, picturesIn, textOf } from '../../../src/papers/layout';
import { gardenDay, gardenSurvey, sourceOf } from '../../files/gardenSource';
import { hostileIn, without } from './changedSurvey';
import { withOwnText } from './ownTexts';

const survey = gardenSurvey();
const source = sourceOf(survey);
const [choice] = boardCase.choices(source);
const made = (of = source) => {
  const paper = boardCase.make(of, choice?.about ?? '');
  if (!paper) throw new Error('The case could not be made.');
  return paper;
};
const text = (of = source): string => textOf(made(of).body).replace(/\s+/g, ' ');

describe('The case for the board', () => {
  it('is offered for the campaign that is still to be decided, not for the one that is over', () => {
    expect(boardCase.choices(source).map(({ label }) => label)).toEqual([
      'SW-02 Half-Tide Stair: Strip and hot patina',
    ]);
  });

  it('begins with what was not looked at', () => {
    expect(text().startsWith('Not looked at')).toBe(true);
  });

  it('sets all ways beside each other with the sums of the screen of options', () => {
    const told = text();
    for (const sum of ['4,442', '7,585', '7,361', '1,481', '1,084', '736']) expect(told).toContain(`demo $ ${sum}`);
    expect(told).toContain('A · Yearly wax only');
    expect(told).toContain('1 large step');
    expect(told).toContain('10 small steps');
  });

  it('says what is cheapest and what dearest, and from which year the dear one has caught up: both, or it would plead', () => {
    const told = text();
    expect(told).toContain('Cheapest in money: way A.');
    expect(told).toContain('Dearest per good month: way A.');
    expect(told).toContain('Way C costs more than way B until year 19; only from then on has it cost no more');
  });

  it('tells the price once, with its reserve, and what waiting one and three years makes of it', () => {
    const told = text();
    for (const sum of ['demo $ 65,296', '67,908', '73,449']) expect(told).toContain(sum);
  });

  it('tells money in hand, pledged and hoped apart, and never as one sum', () => {
    const told = text();
    for (const sum of ['15,000', '16,000', '29,000', '77,500']) expect(told).toContain(sum);
    for (const sum of ['60,000', '42,400', '31,000', '40,400']) expect(told).not.toContain(sum);
  });

  it('shows two photos from one spot', () => {
    expect(picturesIn(made().body)).toHaveLength(2);
    expect(text()).toContain('11 May 2021, from station');
    expect(text()).toContain('12 May 2026, from station');
  });

  it('drafts a motion from the record, and gives way to her own', () => {
    const own = made().own[0];
    expect(own?.drafted).toContain('“Strip, hot patina, then yearly wax”, at a price of up to demo $ 65,296');
    expect(text()).toContain(own?.drafted);
    const told = text(
      sourceOf(withOwnText(survey, 'board-case', choice?.about ?? '', 'motion', 'That we wait a year.')),
    );
    expect(told).toContain('That we wait a year.');
    expect(told).not.toContain('at a price of up to');
  });

  it('made from a survey without money it says so, and holds no amount', () => {
    const told = text(sourceOf(without(survey, ['option', 'quote', 'fund', 'gift', 'moneyRules', 'bid'])));
    expect(told).toContain('No way to go on is written down');
    expect(told).not.toMatch(/\$/);
    const unpriced = hostileIn(survey, (kind, body) => (kind === 'option' ? { ...body, costs: [] } : body));
    const bare = text(sourceOf(without(unpriced, ['quote', 'fund', 'gift', 'bid'])));
    expect(bare).toContain('holds no prices');
    expect(bare).not.toMatch(/\$ \d/);
  });

  it('never shows one way alone without saying that nothing can be decided so', () => {
    const options = survey.entries.filter(({ kind }) => kind === 'option').map(({ thing }) => thing);
    const gone = new Set(options.slice(0, -1));
    const told = text(sourceOf({ ...survey, entries: survey.entries.filter(({ thing }) => !gone.has(thing)) }));
    expect(told).toContain('Only one way is written down');
  });

  it('what a person wrote stands in it as text, whatever it holds', () => {
    const nasty = '<script>alert(1)</script>"\'&';
    const told = hostileIn(survey, (kind, body) =>
      kind === 'option' || kind === 'decision' ? { ...body, title: nasty, risks: nasty, chosen: nasty } : body,
    );
    const paper = made(sourceOf(told));
    const html = paperHtml(
      paper,
      { author: nasty, status: 'draft', day: gardenDay, size: 'A4', invented: true },
      () => undefined,
    );
    expect(html).not.toContain('<script');
    expect(html).toContain('&lt;script&gt;');
  });
});
