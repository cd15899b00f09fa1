import { type Entry, nameOf } from '../../src/engine/record';
import { bodies, collection, entry, first, round, sculpture, uuid, zoneA, zoneB } from './entries';
import { photoThings } from './photoThings';
import { plannedThings } from './plannedThings';

/** An invented survey with one entry at least of every known kind, one correction and one removal: valid as it stands. */
export const smallSurvey = (): { collection: string; entries: Entry[] } => {
  const surveyor = nameOf.surveyor(uuid(7));
  const sha256 = 'ab'.repeat(32);
  const photo = nameOf.photo(sha256);
  const insert = nameOf.insert(uuid(8));
  const finding = nameOf.finding(round, zoneA, 'green-spots', 'metal');
  const home = { within: collection };
  const coverage = { value: 0.05, low: 0.04, high: 0.075, method: 'ladder' as const };
  const entries: Entry[] = [
    first(101, collection, 'collection', { name: 'Invented garden' }, home),
    first(
      102,
      nameOf.scale(collection),
      'scale',
      { version: 1, hazards: { 'green-spots': 0.8 }, actionLevel: 75 },
      home,
    ),
    first(103, surveyor, 'surveyor', { role: 'Steward' }, home),
    first(104, nameOf.personName(surveyor), 'name', { surveyor, name: 'Ödön Invented' }, home),
    first(105, sculpture, 'sculpture', { ...bodies.sculpture, note: 'says "hello" — and 雕' }),
    first(106, nameOf.place(sculpture), 'place', { sculpture, text: 'By the pond' }),
    first(107, nameOf.access(sculpture), 'access', { sculpture, text: 'Key at the gate' }),
    first(108, insert, 'insert', { sculpture, zone: zoneA, material: 'glass', count: 2, removable: 'no' }),
    first(109, nameOf.insertValue(insert), 'insertValue', { insert, value: { minor: 12500, currency: 'EUR' } }),
    first(110, nameOf.elevation(uuid(11)), 'elevation', { sculpture, side: 'west', photo, order: 1 }),
    first(111, zoneA, 'zone', bodies.zone()),
    first(112, zoneB, 'zone', bodies.zone({ letter: 'B', name: 'Base', order: 2 })),
    first(113, round, 'round', bodies.round({ surveyor, ended: '2026-05-12' }), { by: surveyor }),
    first(114, nameOf.visit(round, zoneA), 'visit', bodies.visit({ photos: [photo], beading: 'flattened' })),
    first(115, finding, 'finding', bodies.finding()),
    first(116, finding, 'finding', bodies.finding({ severity: 'moderate' }), { replaces: [uuid(115)] }),
    first(117, nameOf.rerating(round, zoneA), 'rerating', {
      sculpture,
      round,
      zone: zoneA,
      ratings: [{ kind: 'green-spots', origin: 'metal', coverage, first: coverage }],
    }),
    first(118, nameOf.classSet(round, zoneA), 'classSet', {
      sculpture,
      round,
      about: zoneA,
      condition: 2,
      setBy: 'Ödön Invented',
    }),
    first(119, nameOf.personCheck(uuid(12)), 'personCheck', {
      sculpture,
      zone: zoneB,
      what: 'leans',
      opened: '2026-05-12',
    }),
    first(120, nameOf.look(uuid(13)), 'look', {
      sculpture,
      zone: zoneA,
      date: '2026-07-01',
      result: 'clear',
      planned: true,
    }),
    first(121, nameOf.treatment(uuid(14)), 'treatment', {
      sculpture,
      zones: [zoneA],
      type: 'wax',
      date: '2026-06',
      coats: 2,
    }),
    first(122, nameOf.interpretation(uuid(15)), 'interpretation', {
      sculpture,
      about: zoneA,
      statement: 'The pond keeps it damp',
      by: 'Ödön Invented',
      date: '2026',
    }),
    first(123, photo, 'photo', { sculpture, sha256, mime: 'image/jpeg', bytes: 2_400_000, role: 'zone' }),
    entry(124, { thing: nameOf.look(uuid(13)), kind: 'look', replaces: [uuid(120)], gone: true }),
    first(130, nameOf.holdRules(collection), 'holdRules', { version: 1, returnLevel: 0.03, chance: 0.25 }, home),
    first(
      131,
      nameOf.climate(collection),
      'climate',
      { temperature: 9.5, humidity: 79, so2: 2, chloride: 20, from: 'invented' },
      home,
    ),
    first(
      132,
      nameOf.eyeCheck(uuid(16)),
      'eyeCheck',
      { surveyor, date: '2026-05-01', seed: 7, patches: [{ truth: 0.043, said: coverage }] },
      home,
    ),
    first(
      133,
      nameOf.erasure(uuid(17)),
      'erasure',
      { of: 'photo', entries: [], hashes: ['cd'.repeat(32)], reason: 'A passer-by was in it', date: '2026-05-13' },
      home,
    ),
    ...photoThings({
      sculpture,
      elevation: nameOf.elevation(uuid(11)),
      photo,
      round,
      zones: [zoneA, zoneB],
      coverage,
      id: uuid,
    }).map(([kind, thing, body], i) => entry(140 + i, { thing, kind, replaces: [], body })),
    ...plannedThings({ collection, sculpture, zone: zoneA, insert, photo, id: uuid }).map(
      ([kind, thing, body, within], i) =>
        entry(5000 + i, { thing, kind, within, replaces: [], body: body as Entry['body'] }),
    ),
  ];
  return { collection, entries };
};
