import type { Reason } from '../../engine/record';

/** Why this device does not keep in step, with the names of the parameters. The sentences live in src/words/en/reasonsOfInStep.ts. */
export const inStepRefusals = {
  'step: not switched on': [],
  'step: under way already': [],
  /** Name and password are kept for as long as the app is open, not longer. */
  'step: password needed': [],
  'step: folder to be let in': ['name'],
  'step: invented': [],
  'step: other collection': ['here', 'theirs'],
  'step: several collections': [],
  'step: no picker': [],
  'step: left off': [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** What was found in the folder and left as it is; the step went on. */
export const inStepFaults = {
  /** A file that is half written, or was altered. */
  'step: file passed over': ['path'],
  /** It builds on entries that are in no file yet. */
  'step: file waits': ['path'],
  'step: file of another collection': ['path'],
  'step: photo in the folder altered': ['path'],
  'step: photo here altered': ['path'],
  /** Another device writes under this one’s name: a copy. This one has a name of its own now. */
  'step: copied tablet': [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export const inStepDeeds = {
  'deed: kept in step': ['entries'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

type Params<T, C extends keyof T> = {
  readonly [P in T[C] extends readonly (infer S extends string)[] ? S : never]: string | number;
};

export const stepRefusal = <C extends keyof typeof inStepRefusals>(
  code: C,
  params: Params<typeof inStepRefusals, C>,
): Reason => ({ code, params });
export const stepFault = <C extends keyof typeof inStepFaults>(
  code: C,
  params: Params<typeof inStepFaults, C>,
): Reason => ({ code, params });
export const stepDeed = (entries: number): Reason => ({ code: 'deed: kept in step', params: { entries } });
