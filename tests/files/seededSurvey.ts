import type { BodyOf, Entry, KindOfThing } from '../../src/engine/record';
import { nameOf } from '../../src/engine/record';
import { kinds, ladder } from '../../src/engine/trade';
import { type Seeded, seeded } from './seeded';
import { type Again, careFor } from './seededCare';

export interface SeededSize {
  readonly works: number;
  readonly zonesEach: number;
  readonly rounds: number;
  readonly photos: number;
  readonly seed: number;
  /** With a wax each year, looks between the rounds and zones asked again. */
  readonly care?: true;
}

/** The one survey for all benches and big tests: 50 works, 2,000 zones, 20 rounds of each work with a wax and looks, 500 photo rows. */
export const big: SeededSize = { works: 50, zonesEach: 40, rounds: 20, photos: 500, seed: 20261015, care: true };

const areaKinds = kinds.filter((k) => k.measure === 'area' && !k.stop && !k.personCheck).map((k) => k.id);
const letters = (i: number): string => (i < 26 ? String.fromCharCode(65 + i) : `A${String.fromCharCode(65 + i - 26)}`);

/** Entries of an invented survey, in the order a single tablet would have written them. */
export const seededSurvey = (size: SeededSize): { collection: string; entries: Entry[] } => {
  const draw = seeded(size.seed);
  const entries: Entry[] = [];
  let ms = Date.UTC(2007, 4, 1, 8);
  let deed = draw.id(ms);
  const collection = nameOf.collection(draw.id(ms));
  const surveyor = nameOf.surveyor(draw.id(ms));
  const write = <K extends KindOfThing>(thing: string, kind: K, within: string, body: BodyOf<K>): string => {
    ms += 1000;
    entries.push({
      id: draw.id(ms),
      thing,
      kind,
      within,
      v: 1,
      at: new Date(ms).toISOString().replace('Z', '+00:00'),
      by: surveyor,
      device: 'seeded',
      n: entries.length + 1,
      deed,
      replaces: [],
      body: body as Record<string, unknown>,
    });
    return thing;
  };
  const newDeed = (at: number) => {
    ms = Math.max(ms, at);
    deed = draw.id(ms);
  };
  write(collection, 'collection', collection, { name: 'Seeded collection' });
  write(surveyor, 'surveyor', collection, { role: 'Steward' });
  for (let w = 0; w < size.works; w++) work(size, w, draw, write, newDeed, collection, surveyor);
  return { collection, entries };
};

type Write = <K extends KindOfThing>(thing: string, kind: K, within: string, body: BodyOf<K>) => string;

const work = (
  size: SeededSize,
  w: number,
  draw: Seeded,
  write: Write,
  newDeed: (at: number) => void,
  collection: string,
  surveyor: string,
) => {
  const start = Date.UTC(2007, 4, 1, 8) + w * 3_600_000;
  newDeed(start);
  const sculpture = nameOf.sculpture(draw.id(start));
  const put = <K extends KindOfThing>(thing: string, kind: K, body: BodyOf<K>) => write(thing, kind, sculpture, body);
  write(sculpture, 'sculpture', collection === '' ? '' : sculpture, {
    number: `Q-${String(w + 1).padStart(2, '0')}`,
    title: `Invented work ${w + 1}`,
    materials: 'bronze',
  });
  const zones = Array.from({ length: size.zonesEach }, (_, i) => {
    const m2 = Math.round((0.3 + draw.next() * 2.5) * 100) / 100;
    return put(nameOf.zone(draw.id(start)), 'zone', {
      sculpture,
      letter: letters(i),
      name: `Zone ${letters(i)}`,
      order: i + 1,
      exposure: [draw.pick(['up', 'vertical', 'down']), 'open'],
      reach: draw.pick(['ground', 'ladder']),
      significance: 1,
      versions: [
        {
          n: 1,
          since: '2007-05-01',
          substrate: 'bronze',
          area: { m2, low: m2 * 0.85, high: m2 * 1.15, method: 'typed' },
        },
      ],
    });
  });
  const own = zones.map(() =>
    Array.from({ length: draw.pick([1, 1, 2, 2, 3]) }, () => ({
      kind: draw.pick(areaKinds),
      step: draw.below(6),
    })).filter((f, i, all) => all.findIndex((g) => g.kind === f.kind) === i),
  );
  const photos = Array.from({ length: Math.floor(size.photos / size.works) }, () => {
    const sha256 = Array.from({ length: 64 }, () => draw.below(16).toString(16)).join('');
    return put(nameOf.photo(sha256), 'photo', {
      sculpture,
      sha256,
      mime: 'image/jpeg',
      bytes: 2_000_000 + draw.below(2_000_000),
      role: 'finding',
    });
  });
  const care = size.care && careFor(sculpture, zones, put, size.seed + w);
  for (let r = 0; r < size.rounds; r++) {
    const year = 2026 - size.rounds + 1 + r;
    newDeed(Date.UTC(year, 4, 10, 9) + w * 3_600_000);
    const date = `${year}-05-${String(10 + (w % 15)).padStart(2, '0')}`;
    const round = put(nameOf.round(draw.id(Date.UTC(year, 4, 10, 9))), 'round', {
      sculpture,
      type: 'annual',
      date,
      wet: 'dry',
      washed: 'before wash',
      ownEye: true,
      surveyor,
      ended: date,
    });
    const seen: Again[] = [];
    zones.forEach((zone, i) => {
      put(nameOf.visit(round, zone), 'visit', { sculpture, round, zone, zoneVersion: 1, state: 'found' });
      for (const f of own[i] ?? []) {
        f.step = Math.max(1, Math.min(ladder.length - 1, f.step + draw.pick([-1, 0, 0, 0, 1])));
        const step = ladder[f.step];
        if (!step) continue;
        const coverage = { value: step.value, low: step.low, high: step.high, method: 'ladder' as const };
        seen.push({ zone, kind: f.kind, coverage });
        put(nameOf.finding(round, zone, f.kind, 'metal'), 'finding', {
          sculpture,
          round,
          zone,
          kind: f.kind,
          origin: 'metal',
          severity: draw.pick(['slight', 'moderate']),
          activity: 'unclear',
          coverage,
          ...(r === size.rounds - 1 && i < photos.length && photos[i] ? { photos: [photos[i]] } : {}),
        });
      }
    });
    if (care) care.after(round, date, seen);
  }
};
