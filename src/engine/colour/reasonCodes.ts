import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const colourReasons = {} as const satisfies Record<string, readonly string[]>;

export type ColourReason = keyof typeof colourReasons;

export const because = (code: ColourReason, params: Reason['params'] = {}): Reason => ({ code, params });
