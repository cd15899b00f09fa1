import canonicalize from 'canonicalize';
import { type Entry, erasedBy, erasureOf, isKnown, type Reason, withoutErased } from '../record';
import { crc32 } from './crc32';
import { judgeEntry } from './judgeEntry';
import { judgeReplacements } from './judgeReplacements';
import { format, limits, version } from './limits';
import { because, quoted } from './reasonCodes';
import { referencesOf } from './references';
import { scanJson } from './scanJson';

/** A survey as it came: nothing added, nothing changed, nothing left out but what its own erasures name. */
export interface Survey {
  readonly ok: true;
  /** Thing name of the collection. */
  readonly collection: string;
  readonly version: string;
  readonly entries: readonly Entry[];
  /** Things of kinds or versions this code does not know: kept, shown, not scored. */
  readonly unknown: readonly { readonly thing: string; readonly kind: string }[];
  /** Mentions of things that are not in the file: kept at home. */
  readonly keptAtHome: readonly string[];
  /** What is worth saying about the file. */
  readonly notes: readonly Reason[];
}

export interface NoSurvey {
  readonly ok: false;
  readonly problems: readonly Reason[];
}

const refused = (problems: readonly Reason[]): NoSurvey => {
  const more = problems.length - limits.problems;
  return {
    ok: false,
    problems: more > 0 ? [...problems.slice(0, limits.problems), because('more problems', { count: more })] : problems,
  };
};
const no = (problem: Reason): NoSurvey => refused([problem]);

const megabytes = (bytes: number): number => Math.ceil(bytes / 1_000_000);

const textOf = (bytes: Uint8Array): string | Reason => {
  if (bytes.length > limits.bytes) {
    return because('file too large', { megabytes: megabytes(bytes.length), most: megabytes(limits.bytes) });
  }
  if (bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5)) return because('a zip file');
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return because('not UTF-8');
  }
  return text.trim() === '' ? because('empty file') : text;
};

const parsed = (text: string): { readonly value: unknown } | Reason => {
  const problem = scanJson(text);
  // A fault found in what is no JSON at all says little: whether it parses is asked first, unless that itself could do harm.
  if (problem && (problem.code === 'nested too deep' || problem.code === 'file cut off')) {
    return problem.code === 'file cut off' && !/^\s*\{/.test(text) ? because('not JSON') : problem;
  }
  try {
    const value = JSON.parse(text) as unknown;
    return problem ?? { value };
  } catch {
    return because('not JSON');
  }
};

const isReason = (x: unknown): x is Reason => typeof x === 'object' && x !== null && 'code' in x;
const isObject = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x);

const major = (v: string): string => v.slice(0, v.indexOf('.'));
const minor = (v: string): number => Number(v.slice(v.indexOf('.') + 1));

/** The check stands for the bytes as they were written, or, where a program has set them out anew, for what they say. */
const checkHolds = (bytes: Uint8Array, file: Record<string, unknown>): boolean => {
  if (!Object.hasOwn(file, 'check')) return true;
  const start = new TextEncoder().encode(`{"check":${JSON.stringify(file.check)},`);
  const asWritten = start.every((byte, i) => bytes[i] === byte);
  if (asWritten && file.check === `crc32:${crc32(bytes.subarray(start.length))}`) return true;
  const { check, ...rest } = file;
  return check === `crc32:${crc32(new TextEncoder().encode(canonicalize(rest)?.slice(1)))}`;
};

const judgeFile = (bytes: Uint8Array, file: unknown, named: string): Reason | undefined => {
  if (!isObject(file) || file.format !== named) return because('not a survey');
  const v = file.version;
  if (typeof v !== 'string' || !/^\d{1,4}\.\d{1,4}$/.test(v)) {
    return because('version not readable', { found: quoted(v) });
  }
  if (major(v) !== major(version)) return because('newer format', { found: v, known: version });
  if (!checkHolds(bytes, file)) return because('check does not match');
  const place = { entry: 0, kind: '' };
  const missing = ['collection', 'entries'].find((name) => !Object.hasOwn(file, name));
  if (missing) return because('value missing', { ...place, where: missing });
  if (typeof file.collection !== 'string' || !/^collection\/.{1,380}$/.test(file.collection)) {
    const found = quoted(file.collection);
    return because('name does not fit', { ...place, where: 'collection', found, fitting: 'collection/' });
  }
  if (!Array.isArray(file.entries)) {
    return because('wrong sort of value', { ...place, where: 'entries', found: quoted(file.entries) });
  }
  if (file.entries.length > limits.entries) {
    return because('too many entries', { count: file.entries.length, most: limits.entries });
  }
  return undefined;
};

const survey = (file: EntriesFile): Survey => {
  const erased = erasedBy(file.entries);
  const entries = withoutErased(file.entries, erased);
  const things = new Set(entries.map((e) => e.thing));
  const unknown = new Map(entries.filter((e) => !isKnown(e)).map((e) => [e.thing, e.kind]));
  const mentions = entries.flatMap((e) => (isKnown(e) ? referencesOf(e).map((r) => r.name) : []));
  const keptAtHome = [...new Set(mentions)].filter((name) => !things.has(name) && !erasureOf(erased, name)).sort();
  const notes: Reason[] = [];
  if (entries.length < file.entries.length) {
    notes.push(because('erased left out', { count: file.entries.length - entries.length }));
  }
  if (minor(file.version) > minor(version)) {
    notes.push(because('written by a newer version', { found: file.version, known: version }));
  }
  if (unknown.size > 0) {
    const kinds = quoted([...new Set(unknown.values())].sort().join(', '));
    notes.push(because('kinds not known', { count: unknown.size, kinds }));
  }
  if (keptAtHome.length > 0) notes.push(because('kept at home', { count: keptAtHome.length }));
  return {
    ok: true,
    collection: file.collection,
    version: file.version,
    entries,
    unknown: [...unknown].map(([thing, kind]) => ({ thing, kind })),
    keptAtHome,
    notes,
  };
};

interface EntriesFile {
  readonly collection: string;
  readonly version: string;
  readonly entries: Entry[];
}

/** A file of entries of the format `named`, each entry judged by itself; how they stand among each other is not asked yet. */
export const readEntries = (
  bytes: Uint8Array,
  named: string,
): { readonly ok: true; readonly file: EntriesFile } | NoSurvey => {
  const text = textOf(bytes);
  if (typeof text !== 'string') return no(text);
  const json = parsed(text);
  if (isReason(json)) return no(json);
  const wrong = judgeFile(bytes, json.value, named);
  if (wrong) return no(wrong);
  const file = json.value as EntriesFile;
  const faulty = file.entries.flatMap((entry, i) => judgeEntry(entry, i) ?? []);
  return faulty.length > 0 ? refused(faulty) : { ok: true, file };
};

/**
 * Reads a *.survey.json file from anywhere. Every byte is judged before any is believed: size, UTF-8, depth, JSON, format and
 * version, check sum, each entry, and the entries among each other. Gives the survey exactly as it came, or what is wrong with it,
 * where, and nothing else. Never throws, whatever the bytes.
 */
export const readSurvey = (bytes: Uint8Array): Survey | NoSurvey => {
  const read = readEntries(bytes, format);
  if (!read.ok) return read;
  const tangled = judgeReplacements(read.file.entries);
  return tangled.length > 0 ? refused(tangled) : survey(read.file);
};
