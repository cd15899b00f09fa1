import { describe, expect, it } from 'vitest';
import { fundSheet } from '../../../src/papers/campaign/fundSheet';
import { paperHtml, textOf } from '../../../src/papers/layout';
import { gardenDay, gardenSurvey, sourceOf } from '../../files/gardenSource';
import { hostileIn, without } from './changedSurvey';
import { withOwnText } from './ownTexts';

const survey = gardenSurvey();
const about = fundSheet.choices(sourceOf(survey))[0]?.about ?? '';
const made = (of = survey) => {
  const paper = fundSheet.make(sourceOf(of), about);
  if (!paper) throw new Error('The sheet could not be made.');
  return paper;
};
const text = (of = survey): string => textOf(made(of).body).replace(/\s+/g, ' ');

describe('The sheet for funders', () => {
  it('tells the costs line by line, and the target of today and of later, as the screen of the fund does', () => {
    const told = text();
    for (const line of ['Strip, desalt, hot patina, wax demo $ 46,000', 'Reserve demo $ 6,996', 'demo $ 65,296'])
      expect(told).toContain(line);
    for (const later of ['67,908', '73,449']) expect(told).toContain(later);
  });

  it('keeps what is in hand, pledged and hoped for apart: no sum of them stands anywhere', () => {
    const told = text();
    for (const sum of ['demo $ 15,000', 'demo $ 16,000', 'demo $ 29,000', 'demo $ 4,000']) expect(told).toContain(sum);
    for (const sum of ['60,000', '42,400', '45,000', '31,000']) expect(told).not.toContain(sum);
    expect(told).toContain('never made one');
  });

  it('asks for the upkeep together with the work, with the endowment that carries it', () => {
    expect(text()).toContain('costs demo $ 3,100 a year. An endowment of demo $ 77,500');
    expect(text()).toContain('Upkeep for twenty years');
  });

  it('promises one measure and one day, drafted from the way that was chosen', () => {
    const told = text();
    expect(told).toContain('Now there are 3 (2 to 4) of them in a year; after the work there are to be 10 (8 to 11).');
    expect(told).toContain('wanted by 2 May 2028');
  });

  it('holds her own words where she wrote some, and says beside the paper where it lacks them', () => {
    expect(made().lacks).toContain('why this work matters, in your own words');
    const own = withOwnText(survey, 'funder-sheet', about, 'significance', 'It was paid for by the ferrymen.');
    expect(text(own)).toContain('Why this work matters It was paid for by the ferrymen.');
    expect(made(own).lacks).not.toContain('why this work matters, in your own words');
  });

  it('names no giver: who gave is theirs to say', () => {
    for (const giver of ['family on the quay', 'Harbour works yard', 'Arts grant']) expect(text()).not.toContain(giver);
  });

  it('of a survey without money there is no such sheet to choose', () => {
    expect(fundSheet.choices(sourceOf(without(survey, ['fund', 'gift', 'option', 'quote', 'moneyRules'])))).toEqual([]);
  });

  it('a fund without costs or upkeep says so in whole sentences', () => {
    const bare = hostileIn(survey, (kind, body) =>
      kind === 'fund' ? { ...body, lines: [], upkeep: undefined, promise: undefined, wanted: undefined } : body,
    );
    expect(text(bare)).toContain('What it costs is not written down yet.');
    expect(text(bare)).toContain('What the care afterwards costs is not written down yet.');
  });

  it('what a person wrote stands in it as text, whatever it holds', () => {
    const nasty = '"><img src=x onerror=alert(1)>';
    const told = hostileIn(survey, (kind, body) =>
      kind === 'fund'
        ? {
            ...body,
            title: nasty,
            promise: nasty,
            lines: (body.lines as object[]).map((line) => ({ ...line, name: nasty })),
          }
        : body,
    );
    const html = paperHtml(
      made(told),
      { author: '', status: 'draft', day: gardenDay, size: 'A4', invented: true },
      () => undefined,
    );
    expect(html).not.toContain('<img src=x');
    expect(html).toContain('&lt;img src=x');
  });
});
