import { vi } from 'vitest';
import type { BagAnswers, BagPost, BagSaid } from '../../src/device/bag/asked';
import { serve } from '../../src/device/bag/serve';

/** Stands for the worker of bags where there are no workers: the same answers, in place, each word handed over later. */
export const bagWorkerHere = (answers: BagAnswers): void => {
  class Here {
    onmessage: ((event: { readonly data: BagSaid }) => void) | null = null;
    onerror: unknown = null;
    #hear: (post: BagPost) => void = () => undefined;
    #ended = false;

    constructor() {
      serve(answers, {
        post: (said) => void setTimeout(() => this.#ended || this.onmessage?.({ data: said })),
        listen: (hear) => {
          this.#hear = hear;
        },
      });
    }

    postMessage(post: BagPost) {
      setTimeout(() => this.#ended || this.#hear(post));
    }

    terminate() {
      this.#ended = true;
    }
  }
  vi.stubGlobal('Worker', Here);
  if (!globalThis.location) vi.stubGlobal('location', { href: 'https://app.example/', origin: 'https://app.example' });
};
