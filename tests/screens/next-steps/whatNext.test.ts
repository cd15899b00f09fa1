import { describe, expect, it } from 'vitest';
import type { Classes } from '../../../src/engine/condition';
import { cautionsFor, doNext } from '../../../src/screens/next-steps/whatNext';

const classes = (recommendation: 0 | 1 | 2 | null, given: Partial<Classes> = {}): Classes => ({
  about: 'zone/1',
  condition: { level: 1, reasons: [] },
  urgency: { level: 1, reasons: [], notYetKnown: [] },
  recommendation: { level: recommendation, reasons: [], askConservator: [] },
  stopWords: [],
  ...given,
});

const zone = {
  sculpture: 'sculpture/1',
  letter: 'A',
  name: 'arm',
  order: 1,
  exposure: [] as string[],
  reach: 'ground',
  significance: 1,
  versions: [],
};
const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);

describe('what to do next at a zone', () => {
  it('asks the conservator at a stop word, even where a person set a mild class', () => {
    const set = { sculpture: 's/1', round: 'r/1', about: 'zone/1', recommendation: 1, setBy: 'E. Marsh' };
    expect(doNext(classes(1, { stopWords: ['pits-new'], set }))).toBe('ask');
  });

  it('follows the class a person set before the one the rule proposes', () => {
    const set = { sculpture: 's/1', round: 'r/1', about: 'zone/1', recommendation: 0, setBy: 'E. Marsh' };
    expect(doNext(classes(2, { set }))).toBe('nothing');
    expect(doNext(classes(2))).toBe('local');
  });

  it('sends back to look where nothing was judged', () => {
    expect(doNext(classes(null))).toBe('look');
  });

  it('says nothing of ladders where a zone is reached from the ground', () => {
    const rows = ids(cautionsFor('keep', { zone, kinds: [], inserts: false, dangers: [] }));
    expect(rows).toContain('chemicals');
    expect(rows).not.toContain('ladder');
    expect(rows).not.toContain('droppings');
  });

  it('warns of the ladder, of droppings and of inserts where they are', () => {
    const around = { zone: { ...zone, reach: 'ladder' }, kinds: ['droppings'], inserts: true, dangers: [] };
    expect(ids(cautionsFor('keep', around))).toEqual(expect.arrayContaining(['ladder', 'droppings', 'inserts']));
  });

  it('gives no advice on washing where the zone is to be left alone', () => {
    expect(ids(cautionsFor('ask', { zone, kinds: ['droppings'], inserts: true, dangers: [] }))).toEqual([]);
  });
});
