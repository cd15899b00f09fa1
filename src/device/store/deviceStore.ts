import type { Reason } from '../../engine/record';
import { sha256 } from '../hash';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { shareArrivedIn, takeEntriesIn, takeEntriesOut } from './arrivals';
import { checkAll, rebuildAll } from './checks';
import type { Connection, TableName } from './connection';
import { database, type Tables } from './database';
import { erasingTables } from './erased';
import { headsWord, noHeads } from './headsHash';
import { lookingThrough } from './lookingThrough';
import { forgetMarker, writeMarker } from './marker';
import { dropBytes, dropBytesOf, heldIn, putBytes, sameBytes } from './photosKept';
import { reading } from './reading';
import { type Counter, countersIn, type Self, selfIn } from './self';
import type { Batch, Store } from './store';
import type { Surroundings } from './surroundings';
import { type Written, writeBatch } from './writing';
import type { WritingLock } from './writingLock';

export interface Parts {
  readonly name: string;
  readonly conn: Connection;
  readonly lock: WritingLock;
  readonly around: Surroundings;
  readonly self: Self;
  readonly counters: Map<string, Counter>;
  readonly notes: readonly Reason[];
  /** Why it is only read, where the database is newer than this build. */
  readonly newer?: Reason;
}

export interface MadeStore {
  readonly store: Store;
  lockMoved(held: boolean): void;
  wanted(): void;
}

/** What one tab tells the others. */
interface Told {
  readonly withins: readonly string[];
}

const writingTables: readonly TableName[] = ['entries', 'current', 'touches', 'deeds', 'meta'];

export const deviceStore = ({
  name,
  conn,
  lock,
  around,
  self: first,
  counters: firstCounters,
  notes,
  newer,
}: Parts): MadeStore => {
  let self = first;
  const counters = firstCounters;
  const told: Reason[] = [...notes];
  const watchers = new Set<(withins: ReadonlySet<string>) => void>();
  const modeWatchers = new Set<() => void>();
  const channel = around.channel(name);
  let changes = 0;
  let closed = false;
  /** Stands for good: a newer database, or data that was removed while the page was open. */
  let stopped = newer;
  let mode: Store['mode'] = newer || !lock.held ? 'reading' : 'writing';
  let why = newer ?? (lock.held ? undefined : deviceReason('another tab writes', {}));

  const setMode = (to: Store['mode'], because: Reason | undefined) => {
    mode = to;
    why = because;
    for (const watcher of modeWatchers) watcher();
  };
  const tell = (withins: ReadonlySet<string>) => {
    changes++;
    for (const watcher of [...watchers]) watcher(withins);
  };
  const stop = (reason: Reason) => {
    stopped = reason;
    setMode('reading', reason);
  };
  const remembered = (written: Written) => {
    self = written.self;
    for (const [within, counter] of written.counters) counters.set(within, counter);
    writeMarker(around.box, name, self);
    channel?.postMessage({ withins: [...written.counters.keys()] } satisfies Told);
    tell(new Set(written.counters.keys()));
  };
  const caughtUp = async (withins: ReadonlySet<string>) => {
    const [found, rows] = await conn.run(
      'r',
      ['meta'],
      '',
      async (t) => [await selfIn(t), await countersIn(t)] as const,
    );
    if (found) self = found;
    for (const [within, counter] of rows) counters.set(within, counter);
    tell(withins);
  };
  if (channel)
    channel.onmessage = ({ data }) => {
      // A tab that cannot read any more has said why already.
      if (!closed) caughtUp(new Set((data as Told).withins)).catch(() => undefined);
    };

  const run = async <T>(
    rw: 'r' | 'rw',
    tables: readonly TableName[],
    deed: string,
    body: (t: Tables) => Promise<T>,
  ): Promise<T> => {
    if (rw === 'rw' && mode === 'reading') throw new StoreProblem(why ?? deviceReason('another tab writes', {}));
    try {
      return await conn.run(rw, tables, deed, body);
    } catch (error) {
      if (error instanceof StoreProblem && error.reason.code === 'data removed') stop(error.reason);
      throw error;
    }
  };
  const write = <T>(deed: string, body: (t: Tables) => Promise<T>) => run('rw', writingTables, deed, body);
  /** Writes entries, and takes out what erasures among them name. */
  const writeEntries = async <T extends Written>(
    deed: string,
    entries: readonly { readonly kind: string }[],
    body: (t: Tables) => Promise<T>,
    done: (written: T) => void,
  ): Promise<T> => {
    const written = await run('rw', [...writingTables, ...erasingTables(entries)], deed, body);
    done(written);
    return written;
  };

  const store: Store = {
    name,
    get collection() {
      return self.collection;
    },
    get device() {
      return self.device;
    },
    get id() {
      return self.store;
    },
    get made() {
      return self.n;
    },
    get mode() {
      return mode;
    },
    get why() {
      return why;
    },
    get canTakeOver() {
      return mode === 'reading' && stopped === undefined;
    },
    get notes() {
      return told;
    },
    get closed() {
      return closed;
    },
    ...reading(run),

    commit: async (batch) => {
      const { name: said } = batch.deed;
      return (await writeEntries(said.code, batch.entries, (t) => writeBatch(t, batch), remembered)).entries;
    },
    touch: async (row) => {
      const n = await run('rw', ['touches'], 'touch', async (t) => t.touches.add(row as never));
      return { ...row, n };
    },
    dropTouches: (ns) => run('rw', ['touches'], 'touch', async (t) => t.touches.bulkDelete([...ns])),
    takeIn: async (entries, deed: Batch['deed'], options = {}) => {
      const written = await writeEntries(
        deed.name.code,
        entries,
        (t) => takeEntriesIn(t, entries, deed, options, around.newId),
        (done) => {
          if (done.copiedTablet) told.push(deviceReason('copied tablet', {}));
          if (done.added > 0) remembered(done);
        },
      );
      const { added, already, copiedTablet, erased, refused } = written;
      return { added, already, copiedTablet, erased, refused };
    },
    takeOut: async (deed) =>
      remembered(await run('rw', [...writingTables, 'photoBytes', 'thumbs'], '', (t) => takeEntriesOut(t, deed))),
    shareArrived: () => run('rw', ['deeds'], '', shareArrivedIn),
    keepPhoto: async (photo) => {
      const put = () => run('rw', ['photoBytes', 'meta', 'entries'], 'photo', (t) => putBytes(t, 'photoBytes', photo));
      const added = await put();
      let back = await store.photo(photo.sha256);
      if (!added && !sameBytes(photo, back)) {
        // Of two pictures under one name the hash says which is altered: the one here stays unless it is that one.
        if ((await sha256(photo.bytes)) !== photo.sha256) throw new StoreProblem(deviceReason('photo altered', {}));
        await store.dropPhoto(photo.sha256);
        await put();
        back = await store.photo(photo.sha256);
      }
      if (sameBytes(photo, back)) return;
      await run('rw', ['photoBytes', 'meta'], 'photo', (t) => dropBytes(t, photo));
      throw new StoreProblem(deviceReason('photo not kept', {}));
    },
    dropPhoto: (sha256, note) =>
      run('rw', ['photoBytes', 'meta'], 'photo', async (t) => {
        await dropBytesOf(t, [sha256], ['photoBytes']);
        if (note) await t.meta.put(note);
      }),
    dropStray: (sha256) => run('rw', ['photoBytes', 'thumbs', 'meta'], 'photo', (t) => dropBytesOf(t, [sha256])),
    keepThumb: (photo) =>
      run('rw', ['thumbs', 'meta', 'entries'], 'photo', async (t) => void (await putBytes(t, 'thumbs', photo))),
    held: () => run('r', ['meta'], '', (t) => heldIn(t, self.tally.entries)),
    setMeta: (key, value) => run('rw', ['meta'], '', async (t) => void (await t.meta.put({ key, value }))),
    forgetMeta: (key) => run('rw', ['meta'], '', (t) => t.meta.delete(key).then(() => undefined)),
    keepWorkedOut: async (rows) => {
      if (mode === 'reading') return;
      try {
        await run('rw', ['meta'], '', (t) => t.meta.bulkPut(rows.map(([key, value]) => ({ key, value }))));
      } catch (error) {
        if (!(error instanceof StoreProblem)) throw error;
      }
    },
    checkCounts: () => run('r', ['entries', 'current', 'meta'], '', checkAll),
    lookThrough: () => lookingThrough(run),
    rebuildCurrent: async () => remembered(await write('', rebuildAll)),

    watch: (watcher) => {
      watchers.add(watcher);
      return () => watchers.delete(watcher);
    },
    tell: () => {
      for (const watcher of [...watchers]) watcher(new Set());
    },
    counterOf: (within) => counters.get(within)?.n ?? 0,
    headsOf: (within) => headsWord(counters.get(within)?.heads ?? noHeads),
    allHeads: () => new Map([...counters].map(([within, { heads }]) => [within, headsWord(heads)])),
    changes: () => changes,
    takeOver: async () => {
      if (stopped) throw new StoreProblem(stopped);
      await lock.steal();
    },
    watchMode: (watcher) => {
      modeWatchers.add(watcher);
      return () => modeWatchers.delete(watcher);
    },
    close: () => {
      if (closed) return;
      closed = true;
      channel?.close();
      lock.release();
      conn.close();
      setMode('reading', deviceReason('reload needed', {}));
    },
    destroy: async () => {
      store.close();
      const whole = database(name);
      // Whoever reads it beside the page lets go a moment later: that is waited for, and nothing to warn of.
      whole.on('blocked', () => false);
      await whole.delete();
      forgetMarker(around.box, name);
    },
  };

  return {
    store,
    lockMoved: (held) => {
      if (closed || stopped) return;
      if (!held) return setMode('reading', deviceReason('another tab took over', {}));
      caughtUp(new Set())
        .then(() => setMode('writing', undefined))
        .catch((error: unknown) =>
          stop(error instanceof StoreProblem ? error.reason : deviceReason('connection lost', { deed: '' })),
        );
    },
    wanted: () => stop(deviceReason('reload needed', {})),
  };
};
