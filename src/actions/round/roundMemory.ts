import type { DeedRow, TouchRow } from '../../device/store';
import {
  applyTouch,
  asThing,
  type Current,
  currentAfter,
  findingsOf,
  gather,
  type SculptureRecord,
  startDraft,
  type Thing,
  visitOf,
  type ZoneDraft,
  type ZoneTouch,
  zoneVersionAt,
} from '../../engine/record';
import type { Committed } from '../commitChanges';
import type { Desk } from '../desk';
import { earlierAnswers, measureOf } from './earlierAnswers';

/** A round in progress, held in memory: read once, then patched with what each deed wrote. */
export interface RoundMemory {
  /** Undefined while it is read for the first time; null where this round is not here. */
  get(): AtHand | null | undefined;
  ready(): Promise<AtHand | null>;
  subscribe(changed: () => void): () => void;
  /** Rises whenever something of this round changed here. */
  version(): number;
  /** The open zone as its touches made it; the same object until one more touch. */
  draftOf(zone: string): ZoneDraft | undefined;
  /** Touches of a zone (or of a zone asked again) not yet written as entries, oldest first. */
  openTouches(zone: string): readonly TouchRow[];
  addTouch(row: TouchRow): void;
  dropTouches(ns: readonly number[]): void;
  /** All touches of this round not yet written as entries, oldest first. */
  allOpenTouches(): readonly TouchRow[];
  /** Runs a deed whose commits this memory takes in by itself: reads the things it wrote, forgets the touches it settled. */
  during<T extends { readonly ok: boolean }>(
    deed: () => Promise<T>,
    things: readonly string[],
    settled?: readonly number[],
  ): Promise<T>;
  /** Reads anew what a deed left behind; never rejects, for the deed stands whether it can be read back or not. */
  reload(): Promise<void>;
  /** Why it cannot be read; undefined where it can. */
  fault(): unknown;
}

export interface AtHand {
  readonly record: SculptureRecord;
  readonly round: Thing<'round'>;
  readonly elevations: readonly Thing<'elevation'>[];
  /** The last deed of this device that can be taken back. */
  readonly lastDeed: DeedRow | undefined;
}

const memories = new WeakMap<Desk['store'], Map<string, RoundMemory>>();

/** The one memory of a round on this desk. */
export const memoryOf = (desk: Desk, round: string): RoundMemory => {
  const ofStore = memories.get(desk.store) ?? new Map<string, RoundMemory>();
  memories.set(desk.store, ofStore);
  const already = ofStore.get(round);
  if (already) return already;
  const made = makeMemory(desk, round);
  ofStore.set(round, made);
  return made;
};

const makeMemory = (desk: Desk, name: string): RoundMemory => {
  const listeners = new Set<() => void>();
  let currents = new Map<string, Current>();
  let touches: TouchRow[] = [];
  let atHand: AtHand | null | undefined;
  let reading: Promise<void> | undefined;
  let fault: unknown;
  let ownDeeds = 0;
  /** Changes of the work told of by the store: one for each deed of its own, and more where something came from elsewhere meanwhile. */
  let heard = 0;
  const drafts = new Map<string, ZoneDraft>();

  let version = 0;

  const tell = () => {
    version += 1;
    for (const changed of [...listeners]) changed();
  };

  const look = (lastDeed: DeedRow | undefined) => {
    const record = gather(currents.values());
    const round = record?.rounds.find((r) => r.thing === name);
    const elevations = [...currents.values()]
      .flatMap((current) => asThing(current, 'elevation') ?? [])
      .sort((a, b) => a.body.order - b.body.order);
    atHand = record && round ? { record, round, elevations, lastDeed } : null;
  };

  /** What a commit left behind, told from what it wrote: on the ladder nobody waits for it to be read back. */
  const patched = (done: Partial<Committed>): { rows: readonly Current[]; lastDeed: DeedRow } | undefined => {
    if (!done.undo || !done.entries) return undefined;
    const rows = done.entries.map((entry) => currentAfter(currents.get(entry.thing), entry));
    return rows.every((row) => row !== undefined) ? { rows, lastDeed: done.undo } : undefined;
  };

  /** The same read back; nothing where that fails, for the deed is done. */
  const writtenOf = (things: readonly string[]) =>
    Promise.all([desk.store.currents(things), desk.store.lastDeed()]).then(
      ([rows, lastDeed]) => ({ rows, lastDeed }),
      () => undefined,
    );

  /** Rises with all that is patched in here, so that a reading begun before is not taken for what stands now. */
  let patches = 0;

  const read = async (): Promise<void> => {
    const begun = patches;
    const within = (await desk.store.current(name))?.within;
    const [rows, log, lastDeed] = await Promise.all([
      within ? desk.store.within(within) : [],
      desk.store.touchesOf(name),
      desk.store.lastDeed(),
    ]);
    if (begun !== patches) return read();
    currents = new Map(rows.map((current) => [current.thing, current]));
    touches = log.filter((row) => row.deed === undefined);
    drafts.clear();
    fault = undefined;
    look(lastDeed);
    tell();
  };

  const readAnew = (): Promise<void> => {
    reading ??= read().finally(() => {
      reading = undefined;
    });
    return reading;
  };

  /**
   * In the background: what stood here may be so no longer, so a fault leaves nothing at hand, and the screen says so. A store closed
   * meanwhile has nothing more to tell.
   */
  const reload = (): Promise<void> =>
    readAnew().catch((error: unknown) => {
      if (desk.store.closed) return;
      atHand = undefined;
      fault = error;
      tell();
    });

  desk.store.watch((withins) => {
    if (!atHand || !withins.has(atHand.record.sculpture.thing)) return;
    heard += 1;
    if (ownDeeds === 0) void reload();
  });

  const openTouches = (zone: string) => touches.filter((row) => row.zone === zone);

  const startOf = ({ record, round }: AtHand, zone: Thing<'zone'>): ZoneDraft => {
    const visit = visitOf(record, name, zone.thing);
    const found = findingsOf(record, name, zone.thing);
    return startDraft({
      sculpture: record.sculpture.thing,
      round: name,
      zone: zone.thing,
      zoneVersion: zoneVersionAt(zone, round.body.date).n,
      ownEye: round.body.ownEye,
      ...(round.body.fromPaper ? { fromPaper: true as const } : {}),
      ...earlierAnswers(record, round, zone.thing),
      ...(visit
        ? { present: { visit: visit.body, findings: found.map(({ body }) => ({ body, measure: measureOf(body) })) } }
        : {}),
    });
  };

  return {
    get: () => atHand,
    ready: async () => {
      if (atHand === undefined) await readAnew();
      return atHand ?? null;
    },
    subscribe: (changed) => {
      listeners.add(changed);
      if (atHand === undefined) {
        fault = undefined;
        void reload();
      }
      return () => listeners.delete(changed);
    },
    version: () => version,
    draftOf: (zone) => {
      const already = drafts.get(zone);
      const thing = atHand?.record.zones.find((z) => z.thing === zone);
      if (already || !atHand || !thing) return already;
      const draft = openTouches(zone)
        .map((row) => row.touch as ZoneTouch)
        .reduce(applyTouch, startOf(atHand, thing));
      drafts.set(zone, draft);
      return draft;
    },
    openTouches,
    allOpenTouches: () => touches,
    addTouch: (row) => {
      patches += 1;
      touches = [...touches, row];
      const draft = drafts.get(row.zone);
      if (draft) drafts.set(row.zone, applyTouch(draft, row.touch as ZoneTouch));
      tell();
    },
    dropTouches: (ns) => {
      patches += 1;
      for (const row of touches) if (ns.includes(row.n)) drafts.delete(row.zone);
      touches = touches.filter((row) => !ns.includes(row.n));
      tell();
    },
    during: async (deed, things, settled = []) => {
      ownDeeds += 1;
      const before = heard;
      try {
        const done = await deed();
        const fromElsewhere = heard - before > (done.ok ? 1 : 0);
        if (!done.ok) {
          if (fromElsewhere) void reload();
          return done;
        }
        touches = touches.filter((row) => !settled.includes(row.n));
        const written = fromElsewhere ? undefined : (patched(done as Partial<Committed>) ?? (await writtenOf(things)));
        patches += 1;
        drafts.clear();
        if (!written) {
          await reload();
          return done;
        }
        for (const row of written.rows) if (row) currents.set(row.thing, row);
        look(written.lastDeed);
        return done;
      } finally {
        ownDeeds -= 1;
        tell();
      }
    },
    reload,
    fault: () => fault,
  };
};
