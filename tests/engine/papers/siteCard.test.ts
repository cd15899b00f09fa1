import { describe, expect, it } from 'vitest';
import { stopRules } from '../../../src/engine/trade';
import { siteCard } from '../../../src/papers/campaign/siteCard';
import { textOf } from '../../../src/papers/layout';
import { gardenSurvey, sourceOf } from '../../files/gardenSource';
import { without } from './changedSurvey';
import { withOwnText } from './ownTexts';

const survey = gardenSurvey();
const choices = siteCard.choices(sourceOf(survey));
const aboutOf = (number: string): string => choices.find(({ label }) => label.startsWith(number))?.about ?? '';
const made = (number: string, of = survey) => {
  const paper = siteCard.make(sourceOf(of), aboutOf(number));
  if (!paper) throw new Error('The card could not be made.');
  return paper;
};
const text = (number: string, of = survey): string => textOf(made(number, of).body).replace(/\s+/g, ' ');

describe('The site card', () => {
  it('says what is never done, when to stop and whom to call', () => {
    const told = text('SW-02');
    expect(told).toContain('Do not: Pressure washer;');
    for (const { text: rule } of stopRules) expect(told).toContain(rule);
    expect(told).toContain('Emergency: 112');
  });

  it('names each insert with the limit its specialist set, and gives none of its own', () => {
    const told = text('SW-03');
    expect(told).toContain(
      'lens L2 (zone B), Table top, 2 of five from the left no; Not known at most 60 °C, two sides at most 40 K apart; set by Glass conservator',
    );
    expect(told).toContain(
      'lens L1 (zone B), Table top, 1 of five from the left yes; Gasket none set: comes out before any heat',
    );
  });

  it('zones that wait for a conservator are left alone', () => {
    expect(text('SW-02')).toMatch(/Zone I: not washed, not waxed, not touched\. Seen there: .*powdery/);
  });

  it('tells water, power, closures and what hot work waits for', () => {
    const told = text('SW-02');
    for (const said of ['Mains at the ferry hut.', 'Pump cabinet', 'Basin drained', '10.7 m', '60 minutes'])
      expect(told).toContain(said);
    expect(told).toContain('Without a permit for the day no flame is lit.');
  });

  it('her own numbers stand before those of the plan of the year; without either there is room to write', () => {
    const own = withOwnText(survey, 'site-card', aboutOf('SW-02'), 'contacts', 'Curator 0100 200 300');
    expect(text('SW-02', own)).toContain('Curator 0100 200 300');
    expect(text('SW-02', own)).not.toContain('Emergency: 112');
    expect(text('SW-02', without(survey, ['yearPlan']))).toContain('Name and number');
  });

  it('a work without an access sheet or list of its own says so', () => {
    const told = text('SW-02', without(survey, ['accessSheet', 'methodSheet']));
    expect(told).toContain('No access sheet is written for this work yet.');
    expect(told).toContain('The usual list; nobody has said it of this work yet.');
  });
});
