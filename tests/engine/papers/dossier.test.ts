import { describe, expect, it } from 'vitest';
import { treatmentDossier } from '../../../src/papers/campaign/dossier';
import { paperHtml, picturesIn, textOf } from '../../../src/papers/layout';
import { gardenDay, gardenSurvey, sourceOf } from '../../files/gardenSource';
import { hostileIn, without } from './changedSurvey';
import { withOwnText } from './ownTexts';

const survey = gardenSurvey();
const about = treatmentDossier.choices(sourceOf(survey))[0]?.about ?? '';
const made = (of = survey) => {
  const paper = treatmentDossier.make(sourceOf(of), about);
  if (!paper) throw new Error('The dossier could not be made.');
  return paper;
};
const text = (of = survey): string => textOf(made(of).body).replace(/\s+/g, ' ');

describe('The treatment dossier', () => {
  it('is offered for the campaign that was carried out, not for the one that waits for money', () => {
    expect(treatmentDossier.choices(sourceOf(survey)).map(({ label }) => label)).toEqual([
      'SW-03 Supper by Five Lenses: Colour anew',
    ]);
  });

  it('says first what was not looked at, and then what the file lacks', () => {
    const told = text();
    expect(told.startsWith('Not looked at')).toBe(true);
    const lacks = told.indexOf('What this file lacks');
    expect(lacks).toBeGreaterThan(0);
    expect(lacks).toBeLessThan(told.indexOf('In short'));
    expect(told).toContain('No round “before treatment” was made');
  });

  it('holds the layer log whole: four layers on each of seven zones, the first as it was measured', () => {
    const told = text();
    expect(told.match(/4 layers, in the order/g)).toHaveLength(7);
    expect(told).toContain('Ferric nitrate; 8 %');
    expect(told).toContain('178 °C');
    expect(told.match(/as zone A/g)).toHaveLength(24);
  });

  it('a layer log that is missing is said to be, on top and in its place', () => {
    const told = text(without(survey, ['layer']));
    expect(told).toContain('The layer log is missing: no layer was written down.');
    expect(told).toContain('The layer log is missing. No layer was written down.');
  });

  it('zones without a layer are named', () => {
    const gone = new Set(
      survey.entries
        .filter(({ kind, body }) => kind === 'layer' && body.sameAs !== undefined)
        .map(({ thing }) => thing),
    );
    expect(text({ ...survey, entries: survey.entries.filter(({ thing }) => !gone.has(thing)) })).toContain(
      'No layer is written down for zone B, C, D, E, F, G.',
    );
  });

  it('holds every reading of the hot day beside the limit that was set, the watch and who closed it', () => {
    const told = text();
    expect(told).toContain('Highest 47 °C at 10:57; limit at most 60 °C, two sides at most 40 K apart');
    expect(told).toContain('Highest 33 °C');
    const drawn = JSON.stringify(made().body).match(
      /lens L\d \(zone B\), Table top, \d of five from the left: 12 readings over the day, at most \d+.°C/g,
    );
    expect(drawn).toHaveLength(2);
    expect(told).toContain('65 minutes, by the word of Helper');
    expect(told).toContain('Only one side was measured');
    expect(told).toContain('after the heat: unchanged, seen by Helper');
  });

  it('holds what was approved by whom, the agreed colour and where its panel is kept', () => {
    const told = text();
    expect(told).toContain('Tool marks and the foundry stamp stand as before.');
    expect(told).toContain('Estate of the artist');
    expect(told).toContain('Store, drawer 4, in the dark');
    expect(picturesIn(made().body).length).toBeGreaterThanOrEqual(10);
  });

  it('holds the bid that was taken line by line, the warranty and the look before it ends', () => {
    const told = text();
    expect(told).toContain('demo $ 19,750');
    expect(told).toContain('Last look before it ends 23 September 2026');
    expect(told).toContain('This surface has been stripped once on record.');
  });

  it('made from a survey without money it holds no amount', () => {
    const told = text(without(survey, ['bid', 'option', 'quote', 'fund', 'gift', 'moneyRules']));
    expect(told).not.toMatch(/\$/);
    expect(told).toContain('No prices are in the record this file was made from.');
  });

  it('holds her own words on deviations', () => {
    const own = withOwnText(survey, 'treatment-dossier', about, 'deviations', 'The second layer was laid twice on D.');
    expect(text(own)).toContain('The second layer was laid twice on D.');
  });

  it('what a person wrote stands in it as text, whatever it holds', () => {
    const nasty = '<script>alert(1)</script>';
    const told = hostileIn(survey, (kind, body) =>
      kind === 'layer' ? { ...body, solution: nasty } : kind === 'insertReading' ? { ...body, spot: nasty } : body,
    );
    const html = paperHtml(
      made(told),
      { author: '', status: 'final', day: gardenDay, size: 'Letter', invented: false },
      () => undefined,
    );
    expect(html).not.toContain('<script');
    expect(html).toContain('&lt;script&gt;');
  });
});
