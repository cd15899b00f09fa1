import type { Desk } from '../desk';

/** Milliseconds. Facts of this project's own choosing: a zone left is soon elsewhere, and a server is not asked all day. */
export const stepTimes = { afterChange: 20_000, online: 2000, everySoOften: 600_000 } as const;

/**
 * Steps by itself, where keeping in step is switched on: a while after something was entered (the end of a round among it), when the
 * network is back, and every so often. What stands against it is said on the screen, never over the work. Gives back how to stop.
 */
export const keepInStep = (desk: Desk): (() => void) => {
  if (desk.invented) return () => undefined;
  let stopped = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const due = (wait: number) => {
    clearTimeout(timer);
    if (!stopped) timer = setTimeout(go, wait);
  };
  const go = () => {
    timer = undefined;
    import('./byItself')
      .then(({ byItself }) => byItself(desk))
      .catch(() => undefined)
      .finally(() => {
        // What was entered meanwhile has set its own, sooner.
        if (timer === undefined) due(stepTimes.everySoOften);
      });
  };
  const online = () => due(stepTimes.online);
  const unwatch = desk.store.watch((withins) => {
    if (withins.size > 0) due(stepTimes.afterChange);
  });
  globalThis.addEventListener?.('online', online);
  due(stepTimes.online);
  return () => {
    stopped = true;
    clearTimeout(timer);
    unwatch();
    globalThis.removeEventListener?.('online', online);
  };
};
