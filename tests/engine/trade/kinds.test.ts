import { describe, expect, it } from 'vitest';
import { cautions, defaultScale, kindOf, kinds, scaleOf, stainKey, treatments } from '../../../src/engine/trade';

const ids = (rows: readonly { readonly id: string }[]): string[] => rows.map(({ id }) => id);

describe('kinds of finding', () => {
  it('have a code that may go into the name of a thing: plain, and each its own', () => {
    expect(new Set(ids(kinds)).size).toBe(kinds.length);
    for (const id of ids(kinds)) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('keep the codes that stand in surveys already written', () => {
    expect(ids(kinds)).toEqual(
      'even-green-film green-line-at-water green-run-off-streak green-spots pale-powdery-mounds black-crust black-crust-lifting thin-dark-area sooty-deposit finish-thinned tarnish bare-by-touch bare-by-abrasion hard-water-scale core-salts green-under-film white-haze-in-wax wax-built-up wax-worn lacquer-yellow lacquer-chalky film-lifting pits-new pits-known crack-new crack-known open-joint failed-plug porosity dent-old dent-bright part-missing part-loose corroded-fixing rust-from-inside weep-hole-blocked droppings organic-stain paint-marks algae-moss lichen insert-chipped insert-loose insert-missing insert-clouded base-tilts base-joint-open'.split(
        ' ',
      ),
    );
  });

  it('all have a hazard from 0.05 to 1, a sentence why, and a line to hold against the surface', () => {
    for (const { id, hazard, why, looksLike } of kinds) {
      expect(hazard, id).toBeGreaterThanOrEqual(0.05);
      expect(hazard, id).toBeLessThanOrEqual(1);
      expect(why, id).toMatch(/^[A-Z].+\.$/);
      expect(looksLike, id).toMatch(/^[A-Z].+\.$/);
    }
  });

  it('never print a diagnosis in place of what was seen', () => {
    for (const { id, name, why, looksLike, asks = '' } of kinds) {
      expect(`${name} ${why} ${looksLike} ${asks}`, id).not.toMatch(/disease|chloride corrosion|is bronze/i);
    }
  });

  it('ask for a test or a repair, never less, wherever the app says ask the conservator', () => {
    for (const { id, recommends } of kinds.filter(({ stop }) => stop === 'always')) expect(recommends, id).toBe(2);
  });

  it('say a caution wherever someone could be hurt', () => {
    const hurting = kinds.filter(({ personCheck }) => personCheck);
    expect(ids(hurting)).toEqual([
      'crack-new',
      'part-missing',
      'part-loose',
      'corroded-fixing',
      'insert-chipped',
      'insert-loose',
      'insert-missing',
      'base-tilts',
    ]);
    for (const { id, caution, stop } of hurting) {
      expect(caution, id).toBeTruthy();
      expect(stop, id).toBe('always');
    }
  });

  it('weigh fresh over old where both are offered', () => {
    const hazard = (id: string): number => kindOf(id)?.hazard ?? Number.NaN;
    expect(hazard('pits-new')).toBeGreaterThan(hazard('pits-known'));
    expect(hazard('crack-new')).toBeGreaterThan(hazard('crack-known'));
    expect(hazard('dent-bright')).toBeGreaterThan(hazard('dent-old'));
    expect(hazard('black-crust-lifting')).toBeGreaterThan(hazard('black-crust'));
  });

  it('count only what is told by area towards an active area', () => {
    for (const { id, measure } of kinds.filter(({ countsAs }) => countsAs)) expect(measure, id).toBe('area');
    expect(ids(kinds.filter(({ countsAs }) => countsAs === 'green'))).toEqual([
      'even-green-film',
      'green-line-at-water',
      'green-run-off-streak',
      'green-spots',
      'green-under-film',
    ]);
    expect(ids(kinds.filter(({ countsAs }) => countsAs === 'bare'))).toEqual(['bare-by-touch', 'bare-by-abrasion']);
    expect(ids(kinds.filter(({ countsAs }) => countsAs === 'scale'))).toEqual(['hard-water-scale']);
  });

  it('exclude each other only where both are told by area', () => {
    for (const { id, measure } of kinds.filter(({ onlyOneOf }) => onlyOneOf)) expect(measure, id).toBe('area');
  });
});

describe('the scale of weights', () => {
  it('is the project’s own where the collection set nothing', () => {
    const scale = scaleOf(null);
    expect(scale.id).toBe('2026.1');
    expect(scale.actionLevel).toBe(75);
    expect(scale.stainHazard).toBe(0.15);
    expect(scale.hazardOf('green-spots')).toBe(0.6);
  });

  it('names the collection’s version beside the project’s, and keeps hazards the collection did not name', () => {
    const scale = scaleOf({ version: 3, actionLevel: 70, hazards: { 'green-spots': 0.5, [stainKey]: 0.1 } });
    expect(scale.id).toBe('2026.1 + 3');
    expect(scale.actionLevel).toBe(70);
    expect(scale.stainHazard).toBe(0.1);
    expect(scale.hazardOf('green-spots')).toBe(0.5);
    expect(scale.hazardOf('even-green-film')).toBe(0.45);
  });

  it('does not score a kind it does not know because a file names a hazard for it', () => {
    const scale = scaleOf({ version: 1, actionLevel: 75, hazards: { 'kind-of-tomorrow': 1, toString: 1 } });
    expect(scale.hazardOf('kind-of-tomorrow')).toBeUndefined();
    expect(scale.hazardOf('toString')).toBeUndefined();
    expect(scale.hazardOf('constructor')).toBeUndefined();
  });

  it('keeps a hazard of nought that a collection chose', () => {
    expect(scaleOf({ version: 1, actionLevel: 75, hazards: { tarnish: 0 } }).hazardOf('tarnish')).toBe(0);
  });

  it('says where its numbers come from', () => {
    expect(defaultScale.source.sure).toBe('own choice');
  });
});

describe('treatments', () => {
  it('break a series where the surface or its cause is another afterwards; wax breaks none', () => {
    expect(ids(treatments.filter(({ breaksSeries }) => breaksSeries))).toEqual([
      'cleaning by media',
      'coating removed',
      'strip',
      'local treatment',
      'local colour',
      'repatination',
      'cause removed',
    ]);
  });

  it('start a hold only with a coating', () => {
    expect(ids(treatments.filter(({ coats }) => coats))).toEqual(['wax', 'spot wax', 'hot wax', 'lacquer']);
  });
});

describe('cautions', () => {
  it('speak where they matter and leave the law to those who know it', () => {
    for (const { id, where, text } of cautions) {
      expect(where.length, id).toBeGreaterThan(0);
      expect(text.length, id).toBeLessThan(170);
    }
    expect(ids(cautions)).toEqual(expect.arrayContaining(['ladder', 'alone', 'basin', 'nests', 'hot-work', 'inserts']));
  });
});
