import { describe, expect, it } from 'vitest';
import { type ClassOptions, classesOf, levelOf } from '../../../src/engine/condition';
import type { BodyOf, SculptureRecord } from '../../../src/engine/record';
import {
  checkThing,
  classSetThing,
  findingBody,
  type Made,
  onLadder,
  recordOf,
  roundName,
  roundThing,
  sculpture,
  zoneName,
  zoneThing,
} from './madeUp';

type Finding = BodyOf<'finding'>;

const zones = [zoneThing('A', 1), zoneThing('B', 1)];
const classed = (made: readonly Made[], more: Partial<SculptureRecord> = {}, options: ClassOptions = {}) =>
  classesOf(recordOf(zones, made, more), roundName(2026), options);
const zoneA = (
  findings: readonly Finding[],
  visit: Made['visit'] = {},
  more: Partial<SculptureRecord> = {},
  options: ClassOptions = {},
) => {
  const found = classed([{ zone: 'A', findings, visit }], more, options).zones.find(
    ({ about }) => about === zoneName('A'),
  );
  if (!found) throw new Error('zone A has classes');
  return found;
};
const codes = (reasons: readonly { readonly code: string }[]): string[] => reasons.map(({ code }) => code);
const green = (label: string, more: Partial<Finding> = {}) =>
  findingBody('even-green-film', { coverage: onLadder(label), ...more });

describe('condition class of a zone', () => {
  it('is CC0 only where nothing is found; what was cleared is nothing', () => {
    expect(zoneA([]).condition).toMatchObject({ level: 0, reasons: [{ code: 'class: no finding' }] });
    expect(zoneA([green('0', { cleared: true })]).condition.level).toBe(0);
    expect(zoneA([green('<1', { activity: 'stable' })]).condition.level).toBe(1);
  });

  it('is CC1 from an index of 80, CC2 from 55, CC3 below, and says which', () => {
    const pits = (count: Finding['count'], severity: Finding['severity']) =>
      findingBody('pits-known', { count, severity, activity: 'active' });
    expect(zoneA([pits('one', 'slight')]).condition).toMatchObject({ level: 1, reasons: [{ params: { limit: 80 } }] });
    expect(zoneA([pits('two to five', 'moderate')]).condition).toMatchObject({
      level: 2,
      reasons: [{ params: { limit: 80 } }],
    });
    expect(zoneA([pits('more', 'severe')]).condition).toMatchObject({ level: 3, reasons: [{ params: { limit: 55 } }] });
  });

  it('is at least CC2 at a stop word, however slight, and whatever its origin was thought to be', () => {
    for (const origin of ['metal', 'stain', 'dirt'] as const) {
      const mound = findingBody('pale-powdery-mounds', { count: 'one', activity: 'stable', origin });
      const { condition, stopWords } = zoneA([mound]);
      expect(condition.level, origin).toBe(2);
      expect(stopWords).toEqual(['pale-powdery-mounds']);
    }
  });

  it('is CC3 for a severe finding not at rest where metal is at stake, even in a zone of good index', () => {
    const pit = findingBody('core-salts', { count: 'one', severity: 'severe' });
    expect(zoneA([pit]).condition).toMatchObject({ level: 3 });
    expect(codes(zoneA([pit]).condition.reasons)).toContain('class: severe, active, metal at stake');
    expect(zoneA([{ ...pit, activity: 'stable' }]).condition.level).toBe(2);
  });

  it('is not CC3 by one finding that is less than severe', () => {
    expect(zoneA([findingBody('core-salts', { count: 'one', severity: 'moderate' })]).condition.level).toBe(2);
  });

  it('hears a known crack as a stop word the first time only', () => {
    const crack = findingBody('crack-known', { activity: 'stable' });
    expect(zoneA([crack]).stopWords).toEqual(['crack-known']);
    const again = classed([
      { zone: 'A', year: 2025, findings: [crack] },
      { zone: 'A', findings: [crack] },
    ]);
    expect(again.zones[0]?.stopWords).toEqual([]);
    expect(again.zones[0]?.condition.level).toBe(1);
  });

  it('hears it again where last year said it was gone', () => {
    const crack = findingBody('crack-known', { activity: 'stable' });
    const back = classed([
      { zone: 'A', year: 2025, findings: [{ ...crack, cleared: true }] },
      { zone: 'A', findings: [crack] },
    ]);
    expect(back.zones[0]?.stopWords).toEqual(['crack-known']);
  });

  it('is none for a zone nobody judged', () => {
    const classes = classed([{ zone: 'A', state: 'not looked', visit: { reason: 'wet' } }]);
    expect(classes.zones.map(({ condition }) => condition.level)).toEqual([null, null]);
    expect(classes.zones.map(({ urgency }) => urgency.level)).toEqual([null, null]);
    expect(classes.sculpture.condition).toMatchObject({ level: null, reasons: [{ code: 'class: no zone to judge' }] });
    expect(classes.sculpture.urgency.level).toBeNull();
  });
});

describe('urgency class of a zone', () => {
  it('is UC0 where nothing presses, and says what is not known yet', () => {
    const { urgency } = zoneA([green('3', { activity: 'stable' })]);
    expect(urgency).toMatchObject({ level: 0, reasons: [{ code: 'class: nothing presses' }] });
    expect(urgency.notYetKnown.map(({ params }) => params.what)).toEqual([
      'change',
      'hold',
      'expected hold',
      'forecast',
    ]);
  });

  it('is UC1 for what is active in the metal from 3 %, for beading at sheets or worse, and for deposits that etch', () => {
    const active = { activity: 'active' } as const;
    expect(zoneA([green('3', active)]).urgency).toMatchObject({
      level: 1,
      reasons: [{ code: 'class: active in the metal' }],
    });
    expect(zoneA([green('<1', active)]).urgency.level).toBe(0);
    expect(zoneA([green('30', { origin: 'stain' })]).urgency.level).toBe(0);
    expect(zoneA([], { beading: 'sheets' }).urgency.level).toBe(1);
    expect(zoneA([], { beading: 'wets' }).urgency.level).toBe(1);
    expect(zoneA([], { beading: 'flattened' }).urgency.level).toBe(0);
    expect(zoneA([findingBody('droppings', { coverage: onLadder('<1') })]).urgency.level).toBe(1);
    expect(zoneA([findingBody('failed-plug', { count: 'one' })]).urgency.level).toBe(1);
    expect(zoneA([findingBody('wax-worn', { coverage: onLadder('50') })]).urgency.level).toBe(0);
    expect(zoneA([findingBody('thin-dark-area', { coverage: onLadder('50') })]).urgency.level).toBe(0);
  });

  it('is UC1 from 10 % where activity was left unclear, as the app assumes it', () => {
    expect(zoneA([green('10')]).urgency.level).toBe(1);
    expect(zoneA([green('5')]).urgency.level).toBe(0);
    expect(zoneA([green('90+', { activity: 'stable' })]).urgency.level).toBe(0);
  });

  it('is UC2 for any pale powdery mounds, new pits, corrosion under a film, an open joint', () => {
    expect(zoneA([findingBody('pale-powdery-mounds', { count: 'one', activity: 'stable' })]).urgency.level).toBe(2);
    expect(zoneA([findingBody('pits-new', { count: 'one' })]).urgency.level).toBe(2);
    expect(zoneA([findingBody('green-under-film', { coverage: onLadder('<1') })]).urgency.level).toBe(2);
    expect(zoneA([findingBody('open-joint')]).urgency.level).toBe(2);
    expect(zoneA([findingBody('open-joint', { activity: 'stable' })]).urgency.level).toBe(0);
  });

  it('is UC2 where green is clearly worse than the last comparable round, once somebody compared', () => {
    const worse = zoneA([green('<1')], {}, {}, { clearlyWorse: new Set([zoneName('A')]) });
    expect(worse.urgency).toMatchObject({ level: 2, reasons: [{ code: 'class: green clearly worse' }] });
    const same = zoneA([green('<1')], {}, {}, { clearlyWorse: new Set([zoneName('B')]) });
    expect(same.urgency.level).toBe(0);
    expect(same.urgency.notYetKnown.map(({ params }) => params.what)).not.toContain('change');
  });

  it('is UC2 under the action level, which the collection sets', () => {
    const green40 = green('40', { severity: 'severe', activity: 'stable' });
    const level = (actionLevel: number) =>
      zoneA([green40], {}, { scale: { version: 1, hazards: {}, actionLevel } }).urgency;
    expect(level(75).level).toBe(0);
    expect(level(85)).toMatchObject({ level: 2, reasons: [{ code: 'class: index under action level' }] });
  });

  it('is UC3 for an insert loose or broken, and while a person check is open', () => {
    expect(zoneA([findingBody('insert-chipped', { count: 'one' })]).urgency.level).toBe(3);
    const open = zoneA([], {}, { personChecks: [checkThing('1', { zone: zoneName('A') })] });
    expect(open.urgency).toMatchObject({ level: 3, reasons: [{ code: 'class: person check open' }] });
  });

  it('falls back once a named person has closed the check', () => {
    const closed = checkThing('1', { zone: zoneName('A'), closed: { on: '2026-05-13', by: 'Steward' } });
    expect(zoneA([], {}, { personChecks: [closed] }).urgency.level).toBe(0);
  });

  it('is UC3 for what could hurt someone though no check was opened for it', () => {
    const loose = findingBody('part-loose', { count: 'one' });
    expect(zoneA([loose]).urgency.reasons).toContainEqual({
      code: 'class: could hurt someone, no person check yet',
      params: { kind: 'part-loose' },
    });
    const judged = checkThing('1', { zone: zoneName('A'), closed: { on: '2026-05-12', by: 'Steward' } });
    expect(zoneA([loose], {}, { personChecks: [judged] }).urgency.level).toBe(1);
  });

  it('does not ask for a check where the part was looked for and is no longer loose', () => {
    expect(zoneA([findingBody('part-loose', { count: 'one', cleared: true })]).urgency.level).toBe(0);
  });

  it('asks again where the same part is loose this year, though last year’s check was closed', () => {
    const lastYear = checkThing('1', {
      zone: zoneName('A'),
      opened: '2025-05-12',
      closed: { on: '2025-06-01', by: 'Steward' },
    });
    const { urgency } = zoneA([findingBody('part-loose', { count: 'one' })], {}, { personChecks: [lastYear] });
    expect(urgency.level).toBe(3);
  });

  it('of an older round is not raised by a check opened later', () => {
    const later = checkThing('1', { zone: zoneName('A'), opened: '2027-05-12' });
    expect(zoneA([], {}, { personChecks: [later], rounds: [roundThing(2026), roundThing(2027)] }).urgency.level).toBe(
      0,
    );
  });

  it('of an older round keeps the check that was open on its day', () => {
    const check = checkThing('1', { zone: zoneName('A'), closed: { on: '2026-06-01', by: 'Steward' } });
    const more = { personChecks: [check], rounds: [roundThing(2026), roundThing(2027)] };
    expect(zoneA([], {}, more).urgency.level).toBe(3);
  });

  it('is UC3 by danger to people alone in a zone nobody could look at', () => {
    const classes = classed([{ zone: 'A', state: 'not looked' }], {
      personChecks: [checkThing('1', { zone: zoneName('A') })],
    });
    expect(classes.zones.find(({ about }) => about === zoneName('A'))?.urgency.level).toBe(3);
  });

  it('does not read a kind it does not know as quiet', () => {
    const { condition } = zoneA([findingBody('kind-of-tomorrow')]);
    expect(condition.level).toBe(1);
  });
});

describe('recommendation class', () => {
  it('is RC0 for nothing, RC1 for care, RC2 for a test or a repair', () => {
    expect(zoneA([]).recommendation.level).toBe(0);
    expect(zoneA([green('10')]).recommendation.level).toBe(1);
    expect(zoneA([findingBody('pits-new', { count: 'one' })]).recommendation.level).toBe(2);
    expect(zoneA([green('10', { severity: 'severe' })]).recommendation.level).toBe(2);
    expect(
      zoneA([findingBody('black-crust', { coverage: onLadder('10'), origin: 'dirt' })]).recommendation,
    ).toMatchObject({
      level: 1,
      reasons: [{ code: 'class: wash and look again' }],
    });
  });

  it('never sends a stop word to the wash because it was taken for dirt', () => {
    const mound = findingBody('pale-powdery-mounds', { count: 'one', origin: 'dirt' });
    expect(zoneA([mound]).recommendation.level).toBe(2);
  });

  it('asks a conservator whether major treatment is due where signs are strong, and proposes none itself', () => {
    const strong = zoneA([findingBody('pits-new', { count: 'more', severity: 'severe', activity: 'active' })]);
    expect(strong.recommendation.level).toBe(2);
    expect(codes(strong.recommendation.askConservator)).toEqual(['class: ask whether major treatment is due']);
    expect(zoneA([green('10')]).recommendation.askConservator).toEqual([]);
  });
});

describe('classes of the whole sculpture', () => {
  const strong = findingBody('pits-new', { count: 'more', severity: 'severe', activity: 'active' });

  it('are no mean: one bad zone among good ones is still seen', () => {
    const classes = classed([{ zone: 'A', findings: [strong] }, { zone: 'B' }]);
    expect(classes.sculpture.condition.level).toBe(2);
    expect(codes(classes.sculpture.condition.reasons)).toContain('class: weakest zone pulls down');
    expect(classes.sculpture.urgency.level).toBe(2);
    expect(classes.sculpture.recommendation.level).toBe(2);
    expect(classes.sculpture.recommendation.askConservator.map(({ params }) => params.why)).toContain('share');
  });

  it('are CC0 only where every zone judged is', () => {
    expect(classed([{ zone: 'A' }, { zone: 'B' }]).sculpture.condition.level).toBe(0);
    expect(classed([{ zone: 'A' }, { zone: 'B', findings: [green('<1')] }]).sculpture.condition.level).toBe(1);
  });

  it('are UC3 for a check on the sculpture as a whole', () => {
    const classes = classed([{ zone: 'A' }], { personChecks: [checkThing('1')] });
    expect(classes.sculpture.urgency.level).toBe(3);
    expect(classes.zones[0]?.urgency.level).toBe(0);
  });

  it('hear a stop word in one small zone, though the whole is in good order', () => {
    const mound = findingBody('pale-powdery-mounds', { count: 'one', activity: 'stable' });
    const classes = classed([{ zone: 'A', findings: [mound] }, { zone: 'B' }]);
    expect(classes.sculpture.condition.level).toBe(2);
    expect(classes.sculpture.stopWords).toEqual(['pale-powdery-mounds']);
  });

  it('do not hold what was set for another round', () => {
    const classSets = [classSetThing(sculpture, { urgency: 3, round: roundName(2025) })];
    expect(levelOf(classed([{ zone: 'A' }, { zone: 'B' }], { classSets }).sculpture, 'urgency')).toBe(0);
  });

  it('hold what a named person set, and keep the proposal beside it', () => {
    const classSets = [classSetThing(sculpture, { urgency: 2 }), classSetThing(zoneName('A'), { condition: 0 })];
    const classes = classed([{ zone: 'A', findings: [green('10')] }], { classSets });
    const [zone] = classes.zones;
    if (!zone) throw new Error('zone A has classes');
    expect(levelOf(classes.sculpture, 'urgency')).toBe(2);
    expect(classes.sculpture.urgency.level).toBe(1);
    expect(levelOf(zone, 'condition')).toBe(0);
    expect(levelOf(zone, 'urgency')).toBe(1);
    expect(classes.sculpture.set?.setBy).toBe('Steward');
  });
});
