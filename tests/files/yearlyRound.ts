import { type BodyOf, type Entry, type KindOfThing, nameOf } from '../../src/engine/record';
import { ladder, ladderStepOf } from '../../src/engine/trade';
import { seeded } from './seeded';

/** What this year's surface shows in a zone, against last year's record of it. */
export type Plan =
  | { readonly what: 'unchanged' }
  /** The first earlier finding now covers another share. */
  | { readonly what: 'changed'; readonly to: number }
  | { readonly what: 'new'; readonly kind: string; readonly group: string; readonly coverage: number };

export interface YearlyZone {
  readonly thing: string;
  readonly letter: string;
  readonly name: string;
  /** Last year's findings in the order of the trade: kind and share, 0 to 1. */
  readonly earlier: readonly { readonly kind: string; readonly coverage: number }[];
  readonly plan: Plan;
}

export interface YearlyRound {
  readonly collection: string;
  readonly entries: readonly Entry[];
  readonly sculpture: string;
  readonly title: string;
  readonly surveyor: string;
  /** Day of the round to be made. Last year's was a year and two days before. */
  readonly day: string;
  readonly zones: readonly YearlyZone[];
}

const lastYear = '2025-05-10';
const thisYear = '2026-05-12';
/** In the order of the trade; none is a stop word, each sits where a person says it does. */
const kindsThere = ['green-run-off-streak', 'green-spots', 'black-crust', 'sooty-deposit', 'tarnish'];
/** Findings in zone after zone: one to three, 1.67 on average. */
const howMany = [1, 2, 1, 2, 1, 3, 1, 2, 1, 2, 1, 3];
const changedAt = [1, 5, 8, 12, 17, 21];
const newAt = [3, 15];
const zoneCount = 24;

/**
 * The yearly round of the field: one work of 24 zones with last year's round. This year 16 zones are as they were, six have one
 * other coverage, two a finding that was not there before.
 */
export const yearlyRound = (): YearlyRound => {
  const draw = seeded(20260512);
  const entries: Entry[] = [];
  let ms = Date.UTC(2025, 4, 10, 8);
  const deed = draw.id(ms);
  const id = () => {
    ms += 1000;
    return draw.id(ms);
  };
  const write = <K extends KindOfThing>(thing: string, kind: K, within: string, body: BodyOf<K>): string => {
    const at = new Date(ms).toISOString().replace('Z', '+00:00');
    const n = entries.length + 1;
    const rest = { device: 'yearly', n, deed, replaces: [], body: body as Record<string, unknown> };
    entries.push({ id: id(), thing, kind, within, v: 1, at, by: surveyor, ...rest });
    return thing;
  };
  const collection = nameOf.collection(id());
  const surveyor = nameOf.surveyor(id());
  const sculpture = nameOf.sculpture(id());
  const round = nameOf.round(id());
  const title = 'Wind over the Weir';
  write(collection, 'collection', collection, { name: 'Weir garden' });
  write(surveyor, 'surveyor', collection, { role: 'Curator' });
  write(sculpture, 'sculpture', sculpture, { number: 'Y-01', title, materials: 'bronze' });
  write(round, 'round', sculpture, {
    sculpture,
    type: 'annual',
    date: lastYear,
    wet: 'dry',
    washed: 'before wash',
    ownEye: true,
    surveyor,
    ended: lastYear,
  });
  const zones = Array.from({ length: zoneCount }, (_, i): YearlyZone => {
    const letter = String.fromCharCode(65 + i);
    const name = `Part ${letter}`;
    const thing = write(nameOf.zone(id()), 'zone', sculpture, {
      sculpture,
      letter,
      name,
      order: i + 1,
      exposure: ['vertical', 'open'],
      reach: i % 3 === 0 ? 'ladder' : 'ground',
      significance: 1,
      versions: [
        { n: 1, since: '2020-01-01', substrate: 'bronze', area: { m2: 1, low: 0.8, high: 1.2, method: 'typed' } },
      ],
    });
    write(nameOf.visit(round, thing), 'visit', sculpture, {
      sculpture,
      round,
      zone: thing,
      zoneVersion: 1,
      state: 'found',
    });
    const many = howMany[i % howMany.length] ?? 1;
    const first = draw.below(kindsThere.length - many + 1);
    const earlier = kindsThere.slice(first, first + many).map((kind) => {
      const step = ladderStepOf(draw.pick([0.03, 0.05, 0.1]));
      write(nameOf.finding(round, thing, kind, 'metal'), 'finding', sculpture, {
        sculpture,
        round,
        zone: thing,
        kind,
        origin: 'metal',
        severity: 'moderate',
        activity: 'unclear',
        coverage: { value: step.value, low: step.low, high: step.high, method: 'ladder' },
      });
      return { kind, coverage: step.value };
    });
    return { thing, letter, name, earlier, plan: planOf(i) };
  });
  return { collection, entries, sculpture, title, surveyor, day: thisYear, zones };
};

const planOf = (i: number): Plan => {
  if (changedAt.includes(i)) return { what: 'changed', to: 0.4 };
  if (newAt.includes(i)) return { what: 'new', kind: 'even-green-film', group: 'green', coverage: 0.15 };
  return { what: 'unchanged' };
};

/** How a step of the ladder is called on its button. */
export const stepName = (coverage: number): string =>
  ladder.find((step) => step.value === coverage)?.name ?? `no step of ${coverage}`;
