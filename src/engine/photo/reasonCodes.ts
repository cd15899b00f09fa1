import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const photoReasons = {} as const satisfies Record<string, readonly string[]>;

export type PhotoReason = keyof typeof photoReasons;

export const because = (code: PhotoReason, params: Reason['params'] = {}): Reason => ({ code, params });
