import { type Entry, isErasure, type Reason, sameEntry } from '../record';
import { judgeReplacements } from './judgeReplacements';

/** One file of entries out of a shared folder, judged by itself. */
export interface SegmentRead {
  readonly path: string;
  readonly entries: readonly Entry[];
}

export interface NotFitting {
  readonly path: string;
  /** It builds on entries that are neither here nor in another of the files: it may fit once those are there. */
  readonly waits: boolean;
  readonly problem: Reason;
}

export interface Fitting {
  readonly fitting: readonly SegmentRead[];
  /** Entries of those that are not here yet, each once. */
  readonly fresh: readonly Entry[];
  readonly notFitting: readonly NotFitting[];
}

/** Ids of entries that must be at hand to judge these: their own, and what they replace. */
export const idsSpokenOf = (segments: readonly SegmentRead[]): string[] => {
  const ids = new Set<string>();
  for (const { entries } of segments)
    for (const { id, replaces, restores } of entries) {
      ids.add(id);
      for (const other of replaces) ids.add(other);
      if (restores !== undefined) ids.add(restores);
    }
  return [...ids];
};

/**
 * Which files can be united with what is here without leaving anything half: whole files are taken or left. `here` holds those of
 * `idsSpokenOf` that are in the store, and every erasure there. What is here is sound already, so that only what comes is judged.
 */
export const fitTogether = (segments: readonly SegmentRead[], here: ReadonlyMap<string, Entry>): Fitting => {
  // What lies under an entry here is not at hand, and was judged when that came.
  const ground = [...here.values()].map((entry) => (isErasure(entry) ? entry : resting(entry)));
  const notFitting: NotFitting[] = [];
  let left = [...segments];
  for (;;) {
    const coming = left.flatMap((segment) =>
      segment.entries.filter(({ id }) => !here.has(id)).map((entry) => ({ entry, segment })),
    );
    const faults = new Map<SegmentRead, Reason>();
    for (const segment of left) {
      const other = segment.entries.find((entry) => !alike(here.get(entry.id), entry));
      if (other)
        faults.set(segment, {
          code: 'one id, two contents',
          params: { where: '', entry: 0, kind: other.kind, id: other.id },
        });
    }
    if (faults.size === 0)
      for (const problem of judgeReplacements([...ground, ...coming.map(({ entry }) => entry)])) {
        const at = coming[Number(problem.params.entry) - 1 - ground.length];
        if (at && !faults.has(at.segment)) faults.set(at.segment, problem);
      }
    if (faults.size === 0) {
      const fresh = [...new Map(coming.map(({ entry }) => [entry.id, entry])).values()];
      return { fitting: left, fresh, notFitting };
    }
    for (const [{ path }, problem] of faults)
      notFitting.push({ path, waits: problem.code === 'replaces what is not in the file', problem });
    left = left.filter((segment) => !faults.has(segment));
  }
};

const resting = ({ restores: _, ...entry }: Entry): Entry => ({ ...entry, replaces: [] });

const alike = (a: Entry | undefined, b: Entry): boolean => a === undefined || sameEntry(a, b);
