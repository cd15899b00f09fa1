import { type ComponentType, type LazyExoticComponent, lazy } from 'react';

/** A reading that was cut off by the page before, or by a device short of memory, goes well a moment later. */
const thenWait = [400, 1600];

/**
 * A part of the app that comes when it is first needed. One that does not come is asked for twice more, as React would
 * never ask again and would show nothing in its place until the page is loaded anew. Fails with the browser's own error.
 */
export const piece = <P>(load: () => Promise<ComponentType<P>>): LazyExoticComponent<ComponentType<P>> =>
  lazy(async () => ({ default: await asked(load, thenWait) }));

/** A piece that the rest does without: where it never comes, nothing stands in its place. */
export const extra = (load: () => Promise<ComponentType>): LazyExoticComponent<ComponentType> =>
  lazy(async () => ({ default: await asked(load, thenWait).catch(() => Nothing) }));

async function asked<T>(load: () => Promise<T>, waits: readonly number[]): Promise<T> {
  forgetSheetsThatFail();
  try {
    return await load();
  } catch (fault) {
    const [wait, ...later] = waits;
    if (wait === undefined) throw fault;
    await new Promise((go) => setTimeout(go, wait));
    return asked(load, later);
  }
}

const Nothing = () => null;

let forgets = false;

/** A link to a style sheet that failed counts as one that is there: the piece would come without its looks. */
function forgetSheetsThatFail(): void {
  if (forgets) return;
  forgets = true;
  document.addEventListener(
    'error',
    ({ target }) => {
      if (target instanceof HTMLLinkElement && target.rel === 'stylesheet') target.remove();
    },
    true,
  );
}
