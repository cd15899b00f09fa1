/** What writing and reading a bag costs beside hashing the same bytes alone, which no way of doing it can spare. */
import { checkedBag } from '../../src/device/bag/inWorker';
import { sha256 } from '../../src/device/hash';
import { picture } from '../files/bags';
import { writtenBag } from '../files/writtenBag';
import type { Line } from './figures';

const photos = 40;
const each = 5_000_000;

const timed = async <T>(work: () => Promise<T>): Promise<{ readonly ms: number; readonly got: T }> => {
  const began = performance.now();
  const got = await work();
  return { ms: performance.now() - began, got };
};

export const linesOfBag = async (): Promise<Line[]> => {
  const pictures = Array.from({ length: photos }, (_, n) => picture(n, each));
  const size = `${(photos * each) / 1e6} MB of photos`;
  const hashed = await timed(async () => {
    for (const bytes of pictures) await sha256(bytes);
  });
  const wrote = await timed(() => writtenBag(pictures));
  const bag = new Blob(wrote.got);
  const read = await timed(() => checkedBag(bag));
  if (!read.got.ok) throw new Error(JSON.stringify(read.got.reasons));
  return [
    { what: `${size} hashed alone`, measured: hashed.ms, unit: 'ms' },
    { what: '  a bag of them written, against that', measured: wrote.ms / hashed.ms, most: 15, unit: 'times' },
    { what: '  the bag read and checked, against that', measured: read.ms / hashed.ms, most: 8, unit: 'times' },
  ];
};
