import { workerAddress } from '../offline';

/** Beside the page; see vite.config.ts. Without a build the source itself is served. */
const address = import.meta.env.DEV ? '/src/device/workers/figuresWorker.ts' : './figures.js';

export const startWorker = (): Worker => new Worker(workerAddress(address), { type: 'module' });
