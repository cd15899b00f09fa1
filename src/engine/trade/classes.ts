import { named } from './named';
import type { Source } from './source';

export type Level = 0 | 1 | 2 | 3;

export interface ClassRow {
  readonly id: string;
  readonly level: Level;
  readonly name: string;
  readonly source: Source;
}

const recalled: Source = {
  text: 'After the classes of EN 16096:2012, in our own words; its class list recalled, its scope read on catalogue pages. The thresholds that propose a class are ours.',
  sure: 'from memory',
};

const rows = (letters: string, names: readonly [string, string, string, string]): readonly ClassRow[] =>
  named(
    'classes',
    names.map((name, level) => ({ id: `${letters}${level}`, level: level as Level, name, source: recalled })),
  );

/** How strong the visible signs are, how soon something is due, and what sort of thing. Proposed by rule, set by a named person. */
export const enClasses = {
  condition: rows('CC', ['no signs', 'slight signs', 'plain signs', 'strong signs']),
  urgency: rows('UC', ['in the long run', 'in the next years', 'soon', 'at once']),
  recommendation: rows('RC', [
    'nothing to do',
    'wash, wax, keep',
    'a test, a local treatment or a repair',
    'major treatment, after a diagnosis',
  ]),
} as const;
