/** How many of the app's files lie on the tablet, out of how many; or that no worker keeps them, or it does not answer. */
export type KeptFiles =
  | { readonly worker: 'answers'; readonly kept: number; readonly all: number }
  | { readonly worker: 'none' }
  | { readonly worker: 'silent' };

/** Longer than a slow tablet takes to look up some hundred files, milliseconds. */
const patience = 8000;

/** Asks the worker in charge of this page to look every one of its files up. */
export const keptFiles = async (): Promise<KeptFiles> => {
  const worker = (navigator as { serviceWorker?: ServiceWorkerContainer }).serviceWorker?.controller;
  if (!worker) return { worker: 'none' };
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve({ worker: 'silent' }), patience);
    port1.onmessage = ({ data }: MessageEvent<{ kept: number; all: number }>) => {
      clearTimeout(late);
      port1.close();
      resolve({ worker: 'answers', kept: data.kept, all: data.all });
    };
    worker.postMessage({ type: 'FILES_KEPT' }, [port2]);
  });
};
