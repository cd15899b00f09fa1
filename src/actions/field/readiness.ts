/** What is looked at before a day in the field, in the order it is shown. */
export const readyAbout = [
  'offline',
  'installed',
  'room',
  'promise',
  'elsewhere',
  'camera',
  'clock',
  'awake',
  'battery',
  'person',
  'round',
] as const;
export type ReadyAbout = (typeof readyAbout)[number];

/** 'unknown' where the browser tells nobody: then a person looks. */
export type ReadyState = 'ok' | 'look' | 'unknown';

/** What each look may find, with the names of its parameters. The sentences live in src/words/. */
export const readyCodes = {
  'offline: kept': ['files'],
  'offline: some missing': ['kept', 'all'],
  'offline: no worker': [],
  'offline: not secure': [],
  'offline: silent': [],
  'installed: yes': [],
  'installed: in a tab': [],
  /** Bytes of the trial, photos it stands for, and bytes the record takes by our own count. */
  'room: enough': ['trial', 'photos', 'bytes'],
  'room: full': ['kept', 'bytes'],
  'room: not tried': ['said', 'bytes'],
  'promise: yes': [],
  'promise: no': [],
  'promise: not told': [],
  'elsewhere: nothing here': [],
  'elsewhere: never': [],
  'elsewhere: behind': ['rounds', 'day'],
  'elsewhere: all': ['day'],
  'camera: opens': [],
  'camera: not allowed': [],
  'camera: none': [],
  'camera: not on the page': [],
  'camera: busy': ['said'],
  /** Day and time as the device has them: a person holds them against a watch. */
  'clock: as it says': ['day', 'time'],
  'clock: out of step': ['day', 'today'],
  'awake: yes': [],
  'awake: refused': [],
  'awake: cannot': [],
  /** Whole per cent. */
  'battery: enough': ['percent'],
  'battery: filling': ['percent'],
  'battery: low': ['percent'],
  'battery: not told': [],
  'person: set': ['role'],
  'person: nobody set': [],
  'person: nobody named': [],
  'round: none open': [],
  'round: open': ['title', 'day'],
  'round: of another': ['title', 'day', 'role'],
} as const satisfies Readonly<Record<string, readonly string[]>>;
export type ReadyCode = keyof typeof readyCodes;

export type ReadyParams<C extends ReadyCode> = {
  readonly [P in (typeof readyCodes)[C] extends readonly (infer S extends string)[] ? S : never]: string | number;
};

/** One line of the check. */
export interface ReadyLine {
  readonly about: ReadyAbout;
  readonly state: ReadyState;
  readonly code: ReadyCode;
  readonly params: Readonly<Record<string, string | number>>;
}

/** What the code begins with is what it is about. */
export const readyLine = <C extends ReadyCode>(state: ReadyState, code: C, params: ReadyParams<C>): ReadyLine => ({
  about: code.split(':')[0] as ReadyAbout,
  state,
  code,
  params,
});
