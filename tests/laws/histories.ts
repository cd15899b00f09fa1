import fc from 'fast-check';
import { restated } from '../../src/actions/keeping/restated';
import { unite } from '../../src/engine/exchange';
import {
  assemble,
  currentOf,
  type Entry,
  type EntryToBe,
  erasedBy,
  erasureOf,
  isErasure,
  nameOf,
  undoingEntries,
} from '../../src/engine/record';
import { bodies, collection, round, sculpture, uuid, zoneA, zoneB } from '../files/entries';

/** What one of three tablets does next. `pick` is a number to choose with. */
export interface Deed {
  readonly do: 'write' | 'remove' | 'settle' | 'undo' | 'erase';
  readonly on: number;
  readonly pick: number;
  readonly say: number;
}
export type Step =
  | Deed
  | { readonly do: 'send'; readonly on: number; readonly to: number; readonly things: readonly boolean[] }
  /** A file that was sent some time ago is opened, once more or elsewhere. */
  | { readonly do: 'open'; readonly to: number; readonly pick: number };

const things = [
  nameOf.finding(round, zoneA, 'green-spots', 'metal'),
  nameOf.finding(round, zoneB, 'green-spots', 'metal'),
  zoneA,
  sculpture,
  nameOf.photo('ab'.repeat(32)),
  nameOf.personName(nameOf.surveyor(uuid(7))),
] as const;
const [, , , , photo, name] = things;

const withinOf = (thing: string): string => (thing === name ? collection : sculpture);

const bodyOf = (thing: string, say: number): Entry['body'] => {
  if (thing === sculpture) return { ...bodies.sculpture, note: `note ${say}` };
  if (thing === name) return { surveyor: nameOf.surveyor(uuid(7)), name: `Name ${say}` };
  if (thing === photo)
    return { sculpture, sha256: 'ab'.repeat(32), mime: 'image/jpeg', bytes: 9, role: 'zone', note: `said ${say}` };
  if (thing === zoneA) return bodies.zone({ name: `Name ${say}`, significance: 0.5 + (say % 4) / 2 });
  return bodies.finding({
    zone: thing === things[0] ? zoneA : zoneB,
    severity: (['slight', 'moderate', 'severe'] as const)[say % 3] ?? 'slight',
    activity: (['stable', 'unclear', 'active'] as const)[(say >> 2) % 3] ?? 'unclear',
    note: `said ${say}`,
  });
};

const tablet = fc.integer({ min: 0, max: 2 });
const small = fc.integer({ min: 0, max: 50 });

export const steps: fc.Arbitrary<readonly Step[]> = fc.array(
  fc.oneof(
    {
      weight: 5,
      arbitrary: fc.record({
        do: fc.constantFrom(
          'write' as const,
          'write' as const,
          'write' as const,
          'remove' as const,
          'settle' as const,
          'undo' as const,
          'erase' as const,
        ),
        on: tablet,
        pick: small,
        say: small,
      }),
    },
    { weight: 1, arbitrary: fc.record({ do: fc.constant('open' as const), to: tablet, pick: small }) },
    {
      weight: 2,
      arbitrary: fc.record({
        do: fc.constant('send' as const),
        on: tablet,
        to: tablet,
        things: fc.array(fc.boolean(), { minLength: things.length, maxLength: things.length }),
      }),
    },
  ),
  // Without it most histories stay too short for anybody to disagree.
  { maxLength: 40, size: 'max' },
);

/** Milliseconds since 1970 on each tablet when it begins, and how far each step moves it (clocks may run backwards). */
export interface Clocks {
  readonly start: readonly number[];
  readonly step: readonly number[];
}
const clock = fc.integer({ min: Date.UTC(1971, 0), max: Date.UTC(2099, 0) });
const move = fc.integer({ min: -400_000_000, max: 400_000_000 });
export const clocks: fc.Arbitrary<Clocks> = fc.record({
  start: fc.tuple(clock, clock, clock),
  step: fc.tuple(move, move, move),
});

/** The part of an id that is not time: what may be compared between two runs whose clocks differ. */
export const timeless = (id: string): string => id.slice(24);

export interface Tablet {
  readonly entries: Map<string, Entry>;
  /** Entries of this tablet's own deeds, latest last; undone ones and those that erase are not in it. */
  readonly deeds: Entry[][];
}

/** Chance as every run has it: the same numbers for the same step, so that only clocks differ between runs. */
const scattered = (n: number): string => (Math.imul(n + 1, 0x9e3779b1) >>> 0).toString(16).padStart(8, '0');

class World {
  readonly tablets: readonly Tablet[] = [0, 1, 2].map(() => ({ entries: new Map(), deeds: [] }));
  /** Every file ever sent. */
  readonly files: (readonly Entry[])[] = [];
  /** Everything anybody ever entered. */
  readonly ever = new Map<string, Entry>();
  private made = 0;
  private readonly time: Clocks;

  constructor(time: Clocks) {
    this.time = time;
  }

  id(on: number): string {
    const n = this.made++;
    const ms = Math.max(0, (this.time.start[on] ?? 0) + n * (this.time.step[on] ?? 0))
      .toString(16)
      .padStart(12, '0')
      .slice(-12);
    return `${ms.slice(0, 8)}-${ms.slice(8)}-7000-8000-${scattered(n)}${n.toString(16).padStart(4, '0')}`;
  }

  at(on: number): string {
    const ms = Math.min(
      Math.max(0, (this.time.start[on] ?? 0) + this.made * (this.time.step[on] ?? 0)),
      Date.UTC(2200, 0),
    );
    return new Date(ms).toISOString().replace('Z', '+00:00');
  }

  private of(on: number): Tablet {
    return this.tablets[on] as Tablet;
  }

  /** In an order no clock has a part in, so that only clocks differ between runs. */
  entriesOf(on: number, thing: string): Entry[] {
    return [...this.of(on).entries.values()]
      .filter((e) => e.thing === thing)
      .sort((a, b) => (timeless(a.id) < timeless(b.id) ? -1 : 1));
  }

  keep(on: number, made: readonly EntryToBe[]): Entry[] {
    const own = made.map((e, i) => ({ ...e, device: `tablet-${on}`, n: this.made * 100 + i }) as Entry);
    for (const e of own) this.ever.set(e.id, e);
    this.join(on, own);
    return own;
  }

  /** What the tablet has, united with more. */
  join(on: number, more: readonly Entry[]): void {
    const { entries } = this.of(on);
    const united = unite([...entries.values()], more);
    if (!united.ok) throw new Error('No tablet writes two contents under one id.');
    entries.clear();
    for (const e of united.entries) entries.set(e.id, e);
  }

  /** Takes some entries of a thing out for good: all, or only some of them, or all that is said of a photo or a name by anybody. */
  erase(on: number, thing: string, say: number): void {
    const all = this.entriesOf(on, thing);
    if (all.length === 0) return;
    const byThing = say % 2 === 0 && (thing === photo || thing === name);
    const going = byThing ? all : all.filter((_, i) => (say >> (i % 5)) % 2 === 0);
    const deed = this.id(on);
    const gone = {
      of: thing === name ? 'name' : 'photo',
      entries: going.map((e) => e.id),
      hashes: byThing && thing === photo ? ['ab'.repeat(32)] : [],
      names: byThing && thing === name ? [name] : [],
      reason: 'Asked for',
      date: '2026-05-20',
    };
    const id = this.id(on);
    const said = { id, kind: 'erasure', within: withinOf(thing), v: 1, at: this.at(on), by: '', deed, replaces: [] };
    const ids = new Set(gone.entries);
    const anew = byThing ? [] : restated(all, ids, (body) => ({ ...body }), { deed, newId: () => this.id(on) });
    // Undo does not reach behind an erasing for which things had to be said again.
    if (anew.length > 0) this.of(on).deeds.length = 0;
    this.keep(on, [{ ...said, thing: nameOf.erasure(id), body: gone }, ...anew] as EntryToBe[]);
  }

  /** One entry about a thing, replacing what is given. */
  write(on: number, thing: string, replaces: readonly string[], over: Pick<Entry, 'body'> & { gone?: true }): void {
    const kind = thing.slice(0, thing.indexOf('/'));
    const base = {
      id: this.id(on),
      thing,
      kind,
      within: withinOf(thing),
      v: 1,
      at: this.at(on),
      by: '',
      deed: this.id(on),
    };
    this.of(on).deeds.push(this.keep(on, [{ ...base, replaces: [...replaces], ...over }]));
  }

  take(step: Step): void {
    if (step.do === 'send') {
      const file = [...this.of(step.on).entries.values()].filter(
        (e) => isErasure(e) || step.things[things.indexOf(e.thing as never)],
      );
      this.files.push(file);
      this.join(step.to, file);
      return;
    }
    if (step.do === 'open') {
      const file = this.files[step.pick % Math.max(1, this.files.length)];
      if (file) this.join(step.to, file);
      return;
    }
    if (step.do === 'undo') {
      this.undo(step.on);
      return;
    }
    const thing = things[step.pick % things.length] ?? sculpture;
    if (erasureOf(erasedBy(this.of(step.on).entries.values()), thing)) return;
    if (step.do === 'erase') {
      this.erase(step.on, thing, step.say);
      return;
    }
    const own = this.entriesOf(step.on, thing);
    const current = own.length > 0 ? currentOf(own) : undefined;
    if (step.do === 'write') {
      this.write(step.on, thing, current ? [current.lead.id] : [], { body: bodyOf(thing, step.say) });
    } else if (current && step.do === 'remove' && !current.gone) {
      this.write(step.on, thing, [current.lead.id], { body: current.lead.body, gone: true });
    } else if (current && step.do === 'settle' && current.heads.length > 1) {
      this.write(step.on, thing, current.heads, { body: bodyOf(thing, step.say) });
    }
  }

  undo(on: number): void {
    const deed = this.of(on)
      .deeds.pop()
      ?.filter((e) => this.of(on).entries.has(e.id));
    if (!deed || deed.length === 0) return;
    const undo = { deed: this.id(on), by: '', at: this.at(on), newId: () => this.id(on) };
    this.keep(
      on,
      undoingEntries(deed, (thing) => this.entriesOf(on, thing), undo),
    );
  }
}

export interface Lived {
  /** What each of three tablets has after all steps. */
  readonly tablets: readonly (readonly Entry[])[];
  /** Files that were sent on the way, the first first. */
  readonly files: readonly (readonly Entry[])[];
  /** Everything anybody ever entered, erased or not. */
  readonly ever: readonly Entry[];
}

export const livedThrough = (all: readonly Step[], time: Clocks): Lived => {
  const world = new World(time);
  for (const step of all) world.take(step);
  return {
    tablets: world.tablets.map((t) => [...t.entries.values()]),
    files: world.files,
    ever: [...world.ever.values()],
  };
};

/** Three tablets after all steps. */
export const lived = (all: readonly Step[], time: Clocks): readonly (readonly Entry[])[] =>
  livedThrough(all, time).tablets;

/** One tablet before its last write, and after it was undone at once. */
export const undoneAtOnce = (all: readonly Step[], time: Clocks, last: Deed): readonly [Entry[], Entry[]] => {
  const world = new World(time);
  for (const step of all) world.take(step);
  const tablet = world.tablets[last.on] as Tablet;
  const before = [...tablet.entries.values()];
  const deeds = tablet.deeds.length;
  world.take(last);
  if (tablet.deeds.length > deeds) world.undo(last.on);
  return [before, [...tablet.entries.values()]];
};

/** What everything comes to, in words that can be compared: for each thing its heads, the lead first, and the lead's body. */
export const standing = (entries: readonly Entry[], spelled: (id: string) => string = (id) => id): unknown =>
  [...assemble(entries).values()]
    .map((c) => ({
      thing: isErasure(c.lead) ? `erasure/${spelled(c.thing.slice(8))}` : c.thing,
      heads: c.heads.map(spelled),
      gone: c.gone,
      body: isErasure(c.lead)
        ? { ...c.lead.body, entries: (c.lead.body.entries as string[]).map(spelled) }
        : c.lead.body,
    }))
    .sort((a, b) => (a.thing < b.thing ? -1 : 1));
