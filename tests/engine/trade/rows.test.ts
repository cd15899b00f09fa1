import { describe, expect, it } from 'vitest';
import type { BodyOf } from '../../../src/engine/record';
import { bodySchemas } from '../../../src/engine/record/schemas';
import * as trade from '../../../src/engine/trade';

const tables: readonly (readonly [
  string,
  readonly { readonly id: string; readonly name: string; readonly source: trade.Source }[],
])[] = [
  ['kinds', trade.kinds],
  ['ladder', trade.ladder],
  ['coverageMethods', trade.coverageMethods],
  ['severities', trade.severities],
  ['activities', trade.activities],
  ['counts', trade.counts],
  ['origins', trade.origins],
  ['exposures', trade.exposures],
  ['reaches', trade.reaches],
  ['substrates', trade.substrates],
  ['reasonsNotLooked', trade.reasonsNotLooked],
  ['beadings', trade.beadings],
  ['treatments', trade.treatments],
  ['methods', trade.methods],
  ['sortsOfProduct', trade.sortsOfProduct],
  ['weatherRules', Object.values(trade.weatherRules)],
  ['roundTypes', trade.roundTypes],
  ['cautions', trade.cautions],
  ['incidentSorts', trade.incidentSorts],
  ['groundsTopics', trade.groundsTopics],
  ['packingItems', trade.packingItems],
  ['closeDownSteps', trade.closeDownSteps],
  ['yearVerdicts', trade.yearVerdicts],
  ['stopRules', trade.stopRules.map(({ text, ...rule }) => ({ ...rule, name: text }))],
  ['rustGrades', trade.rustGrades],
  ['rustPictures', trade.rustPictures],
  ['condition classes', trade.enClasses.condition],
  ['urgency classes', trade.enClasses.urgency],
  ['recommendation classes', trade.enClasses.recommendation],
];

describe.each(tables)('the table of %s', (_, rows) => {
  it('gives every row its own code, a name, and a source', () => {
    expect(rows.length).toBeGreaterThan(1);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const { name, source } of rows) {
      expect(name).not.toBe('');
      expect(source.text).not.toBe('');
    }
  });
});

describe('the coverage ladder', () => {
  it('has twelve steps, of which 0 says "looked, none there"', () => {
    expect(trade.ladder.map(({ label }) => label)).toEqual([
      '0',
      '<1',
      '3',
      '5',
      '10',
      '15',
      '20',
      '30',
      '40',
      '50',
      '70',
      '90+',
    ]);
    expect(trade.ladder[0]).toMatchObject({ value: 0, low: 0, high: 0 });
  });

  it('has bins that meet and reach from 0 to the whole zone, each holding its value', () => {
    const steps = trade.ladder.slice(1);
    expect(steps[0]?.low).toBe(0);
    expect(steps.at(-1)?.high).toBe(1);
    steps.forEach((step, i) => {
      if (i > 0) expect(step.low, step.label).toBe(steps[i - 1]?.high);
      expect(step.low, step.label).toBeLessThan(step.value);
      expect(step.value, step.label).toBeLessThan(step.high);
    });
  });

  it('has its limits half way between what the buttons say, as its rule states', () => {
    const printed = trade.ladder.slice(2).map(({ label }) => Number.parseFloat(label));
    trade.ladder.slice(2, -1).forEach((step, i) => {
      expect(step.high * 100, step.label).toBeCloseTo(((printed[i] ?? 0) + (printed[i + 1] ?? 0)) / 2, 9);
    });
  });

  it('finds the step of any share, and a share on a limit in the lower step', () => {
    expect(trade.ladderStepOf(0).label).toBe('0');
    expect(trade.ladderStepOf(0.0001).label).toBe('<1');
    expect(trade.ladderStepOf(0.01).label).toBe('<1');
    expect(trade.ladderStepOf(0.22).label).toBe('20');
    expect(trade.ladderStepOf(0.25).label).toBe('20');
    expect(trade.ladderStepOf(1).label).toBe('90+');
    expect(() => trade.ladderStepOf(1.01)).toThrow(/more than the whole zone/);
  });
});

describe('words the record may hold and words the trade knows', () => {
  const shapes = bodySchemas.finding.shape;
  const options = (schema: { readonly options: readonly string[] }): string[] => [...schema.options].sort();
  const ids = (rows: readonly { readonly id: string }[]): string[] => rows.map(({ id }) => id).sort();

  it('are the same for severity, activity, origin, count and coverage', () => {
    expect(ids(trade.severities)).toEqual(options(shapes.severity));
    expect(ids(trade.activities)).toEqual(options(shapes.activity));
    expect(ids(trade.origins)).toEqual(options(shapes.origin));
    expect(ids(trade.counts)).toEqual(options(shapes.count.def.innerType));
    expect(ids(trade.coverageMethods)).toEqual(options(shapes.coverage.def.innerType.shape.method));
  });

  it('are the same for round types and beading', () => {
    expect(ids(trade.roundTypes)).toEqual(options(bodySchemas.round.shape.type));
    expect(ids(trade.beadings)).toEqual(options(bodySchemas.visit.shape.beading.def.innerType));
  });

  it('fit the fields of the record in length', () => {
    const zone = { substrate: 60, exposure: 40, reach: 40 } satisfies Partial<
      Record<keyof BodyOf<'zone'> | 'substrate', number>
    >;
    for (const { id } of trade.substrates) expect(id.length).toBeLessThanOrEqual(zone.substrate);
    for (const { id } of trade.exposures) expect(id.length).toBeLessThanOrEqual(zone.exposure);
    for (const { id } of trade.treatments) expect(id.length).toBeLessThanOrEqual(60);
  });
});

describe('weights', () => {
  it('never let the worse word weigh less', () => {
    const rising = (rows: readonly { readonly weight: number }[]): boolean =>
      rows.every((row, i) => i === 0 || row.weight >= (rows[i - 1]?.weight ?? 0));
    expect(rising(trade.severities)).toBe(true);
    expect(rising([...trade.activities].reverse())).toBe(true);
    expect(rising(trade.counts)).toBe(true);
  });
});
