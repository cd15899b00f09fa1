import type { Reason } from '../record';

/**
 * Why a file is not taken, with the parameters its sentence may use. `where` is the path in the file ("entries[12].body.zone"),
 * `entry` the number of the entry counted from 1, `kind` its kind, `found` what stands there, cut short.
 */
export const problemReasons = {
  // The file as a whole.
  'empty file': [],
  'file too large': ['megabytes', 'most'],
  'a zip file': [],
  'not UTF-8': [],
  'file cut off': [],
  'not JSON': [],
  'not a survey': [],
  'version not readable': ['found'],
  'newer format': ['found', 'known'],
  'check does not match': [],
  'too many entries': ['count', 'most'],
  // How it is written.
  'nested too deep': ['where', 'most'],
  'name not allowed': ['where', 'found'],
  'same name twice': ['where', 'found'],
  'text too long': ['where', 'most'],
  'broken character': ['where'],
  'number not exact': ['where', 'found'],
  'number too large': ['where', 'found'],
  // One entry by itself.
  'value missing': ['where', 'entry', 'kind'],
  'wrong sort of value': ['where', 'entry', 'kind', 'found'],
  'number out of range': ['where', 'entry', 'kind', 'found', 'least', 'most'],
  'word not known': ['where', 'entry', 'kind', 'found'],
  'not a date': ['where', 'entry', 'kind', 'found'],
  'not an id': ['where', 'entry', 'kind', 'found'],
  'too long or too short': ['where', 'entry', 'kind'],
  'range ends out of order': ['where', 'entry', 'kind'],
  'shares do not add up': ['where', 'entry', 'kind'],
  'name does not fit': ['where', 'entry', 'kind', 'found', 'fitting'],
  'within another': ['where', 'entry', 'kind', 'found', 'fitting'],
  'refers to another kind': ['where', 'entry', 'kind', 'found', 'fitting'],
  'refers to itself': ['where', 'entry', 'kind'],
  // Entries among each other.
  'one id, two contents': ['where', 'entry', 'kind', 'id'],
  'replaces itself': ['where', 'entry', 'kind'],
  'replaces what is not in the file': ['where', 'entry', 'kind', 'found'],
  'replaces across things': ['where', 'entry', 'kind', 'found'],
  'replaces in a circle': ['where', 'entry', 'kind'],
  'erasure changed': ['where', 'entry', 'kind'],
  // Where there are more than are listed.
  'more problems': ['count'],
} as const satisfies Record<string, readonly string[]>;

export type ProblemCode = keyof typeof problemReasons;

/** What the person holding the file can do. */
export const advice = {
  'get the file again': [],
  'update this app': [],
  'choose another file': [],
  'carry fewer sculptures': [],
  'ask who made the file': [],
} as const satisfies Record<string, readonly string[]>;

export type AdviceCode = keyof typeof advice;

/** What to do about each problem: damage is cured by fetching the file again, a faulty writer only by asking. */
export const adviceOn: Readonly<Record<ProblemCode, AdviceCode>> = {
  ...(Object.fromEntries(Object.keys(problemReasons).map((code) => [code, 'ask who made the file'])) as Record<
    ProblemCode,
    AdviceCode
  >),
  'empty file': 'get the file again',
  'file cut off': 'get the file again',
  'not UTF-8': 'get the file again',
  'not JSON': 'get the file again',
  'check does not match': 'get the file again',
  'file too large': 'carry fewer sculptures',
  'too many entries': 'carry fewer sculptures',
  'a zip file': 'choose another file',
  'not a survey': 'choose another file',
  'newer format': 'update this app',
};

/** What is worth saying about a file that is taken. */
export const noteReasons = {
  'written by a newer version': ['found', 'known'],
  'kinds not known': ['count', 'kinds'],
  'kept at home': ['count'],
  'erased left out': ['count'],
} as const satisfies Record<string, readonly string[]>;

/** Every reason of this folder. The sentences live in src/words/. */
export const exchangeReasons = { ...problemReasons, ...advice, ...noteReasons } as const;

type AllReasons = typeof exchangeReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends keyof AllReasons>(
  code: C,
  ...[params]: AllReasons[C] extends readonly [] ? [] : [Record<AllReasons[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });

/** A value as a sentence may quote it: on one line, at most 60 characters. */
export const quoted = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? '—');
  const line = text.replace(/\s+/g, ' ');
  return line.length > 60 ? `${line.slice(0, 59)}…` : line;
};
