/** How long a survey file takes to read beside what JSON.parse alone takes: the step that takes most of it is named. */

import { readSurvey, writeSurvey } from '../../src/engine/exchange';
import { crc32 } from '../../src/engine/exchange/crc32';
import { judgeEntry } from '../../src/engine/exchange/judgeEntry';
import { judgeReplacements } from '../../src/engine/exchange/judgeReplacements';
import { scanJson } from '../../src/engine/exchange/scanJson';
import { assemble, type Entry, erasedBy, withoutErased } from '../../src/engine/record';
import { big, seededSurvey } from '../files/seededSurvey';
import type { Line } from './figures';

const timed = <T>(work: () => T): { readonly ms: number; readonly got: T } => {
  const began = performance.now();
  const got = work();
  return { ms: performance.now() - began, got };
};

const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(0);

/** A survey of about so many megabytes: the works and zones of the large one, with fewer or more rounds. */
const surveyOf = (rounds: number): Uint8Array => {
  const { collection, entries } = seededSurvey({ ...big, rounds });
  return writeSurvey(collection, entries);
};

const linesOf = (bytes: Uint8Array): Line[] => {
  const size = `${megabytes(bytes.length)} MB`;
  const text = new TextDecoder().decode(bytes);
  const alone = timed(() => JSON.parse(text) as { entries: Entry[] });
  const read = timed(() => readSurvey(bytes));
  if (!read.got.ok) throw new Error(JSON.stringify(read.got.problems));
  const { entries } = read.got;
  const heads = timed(() => assemble(entries));
  const steps: readonly (readonly [string, number])[] = [
    ['looking through the text', timed(() => scanJson(text)).ms],
    ['check sum', timed(() => crc32(bytes)).ms],
    ['each entry', timed(() => entries.map(judgeEntry)).ms],
    ['entries among each other', timed(() => judgeReplacements(entries)).ms],
    ['what was erased', timed(() => withoutErased(entries, erasedBy(entries))).ms],
    ['heads', heads.ms],
  ];
  const [slowest, most] = steps.reduce((a, b) => (b[1] > a[1] ? b : a));
  const all = read.ms + heads.ms;
  return [
    { what: `${size}, ${entries.length} entries: JSON.parse alone`, measured: alone.ms, unit: 'ms' },
    { what: `  read, checked and worked out to heads`, measured: all, unit: 'ms' },
    { what: `  against JSON.parse alone`, measured: all / alone.ms, unit: 'times' },
    { what: `  most of it: ${slowest}`, measured: most, unit: 'ms' },
    { what: `  memory of the process at its peak`, measured: process.resourceUsage().maxRSS, unit: 'kB' },
  ];
};

/** About 10 and about 100 MB. */
export const linesOfReading = (): Line[] => [...linesOf(surveyOf(2)), ...linesOf(surveyOf(23))];
