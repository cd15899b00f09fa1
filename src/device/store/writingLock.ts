/** The part of Web Locks used here, so that a test can hand in its own. */
export interface Locks {
  request(
    name: string,
    options: { readonly ifAvailable?: boolean; readonly steal?: boolean; readonly signal?: AbortSignal },
    granted: (lock: unknown) => Promise<void> | undefined,
  ): Promise<unknown>;
}

export interface WritingLock {
  readonly held: boolean;
  /** Takes the lock from whoever has it. */
  steal(): Promise<void>;
  release(): void;
}

/**
 * One tab writes. Whoever comes second waits in line and is told when the lock comes to it, or when it was taken away.
 * Where the browser has no locks (insecure addresses) every tab writes: each deed is one transaction all the same.
 */
export const writingLock = async (
  locks: Locks | undefined,
  name: string,
  changed: (held: boolean) => void,
): Promise<WritingLock> => {
  if (!locks) return { held: true, steal: async () => undefined, release: () => undefined };
  let held = false;
  let released = false;
  let letGo: (() => void) | undefined;
  let line: AbortController | undefined;

  const hold = (): Promise<void> => {
    held = true;
    return new Promise((go) => {
      letGo = go;
    });
  };
  const lost = () => {
    if (!held || released) return;
    held = false;
    changed(false);
    wait();
  };
  const wait = () => {
    line = new AbortController();
    locks
      .request(name, { signal: line.signal }, () => {
        const until = hold();
        changed(true);
        return until;
      })
      .catch(lost);
  };

  await new Promise<void>((answered) => {
    locks
      .request(name, { ifAvailable: true }, (lock) => {
        const until = lock ? hold() : undefined;
        answered();
        return until;
      })
      .catch(lost);
  });
  if (!held) wait();

  return {
    get held() {
      return held;
    },
    steal: async () => {
      if (held) return;
      line?.abort();
      await new Promise<void>((answered, refused) => {
        locks
          .request(name, { steal: true }, () => {
            const until = hold();
            answered();
            return until;
          })
          .catch((error: unknown) => {
            lost();
            refused(error);
          });
      });
      changed(true);
    },
    release: () => {
      released = true;
      line?.abort();
      letGo?.();
    },
  };
};
