import type { Reason } from '../record';
import { folded } from './folded';
import { bringReason } from './reasonCodes';

/** A work as a list may speak of it. */
export interface WorkHere {
  readonly thing: string;
  readonly number: string;
  readonly title: string;
  readonly zones: readonly { readonly thing: string; readonly letter: string; readonly name: string }[];
}

export type Match<T> = { readonly found: T } | { readonly problem: Reason };

/** The work of this number, else of this title, letter by letter but for case and blanks; two that fit are not chosen between. */
export const matchWork = (written: string, works: readonly WorkHere[]): Match<WorkHere> => {
  const text = folded(written);
  if (text === '') return { problem: bringReason('bring: work missing', {}) };
  const fits = works.filter(({ number, title }) =>
    [number, title, `${number} ${title}`].some((n) => folded(n) === text),
  );
  const [one, another] = fits;
  if (another) return { problem: bringReason('bring: work unclear', { text: written.trim() }) };
  return one ? { found: one } : { problem: bringReason('bring: work not known', { text: written.trim() }) };
};

const all = ['', 'all', 'whole', 'all zones', 'whole work', 'everything'];

/** Zones by letter or name, several parted by commas, semicolons, strokes or "and"; none: the whole work. */
export const matchZones = (written: string, work: WorkHere): Match<readonly string[]> => {
  if (all.includes(folded(written))) return { found: [] };
  const names = (zone: WorkHere['zones'][number]) =>
    [zone.letter, zone.name, `${zone.letter} ${zone.name}`].map(folded);
  const whole = work.zones.find((zone) => names(zone).includes(folded(written)));
  if (whole) return { found: [whole.thing] };
  const found = new Set<string>();
  for (const part of written.split(/[,;/+&]|\band\b/i)) {
    if (part.trim() === '') continue;
    const fits = work.zones.filter((zone) => names(zone).includes(folded(part)));
    if (fits.length !== 1) return { problem: bringReason('bring: zone not known', { text: part.trim() }) };
    for (const { thing } of fits) found.add(thing);
  }
  return { found: [...found] };
};
