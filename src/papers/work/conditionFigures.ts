import { levelOf } from '../../engine/condition';
import { enClasses } from '../../engine/trade';
import { type NameOfThing, sayReason, share, w, figure as written } from '../../words';
import { figure, type PaperPiece, say, table } from '../layout';
import type { LatestOnPaper } from './latestOnPaper';
import { zoneLabel } from './zoneLabel';

const words = w.paperCondition;

/** A figure with its 90 % range: "60 (55 to 64)". */
export const ranged = (
  of: { readonly value: number; readonly low: number; readonly high: number },
  as?: 'm2',
): string => {
  const { value, range } = written(of, as);
  return words.indexOf(value, range);
};

/** The index of the whole with its range, beside it what a mean can hide, and how much is not at rest. */
export const conditionFigures = ({ score, zones }: LatestOnPaper): PaperPiece => {
  const { value, low, high, weakest, active } = score;
  const index = value === null || low === null || high === null ? words.indexNone : ranged({ value, low, high });
  return [
    figure(words.index, index, words.indexHow(share(score.seenShare), score.scale)),
    weakest &&
      score.zones.length > 1 &&
      figure(
        words.weakest,
        words.weakestOf(zoneLabel(zones.find(({ thing }) => thing === weakest.zone)), ...pairOf(weakest)),
        words.weakestHow,
      ),
    ...(['green', 'bare', 'scale'] as const).map(
      (what) => active[what].high > 0 && figure(words.active[what], ranged(active[what], 'm2'), words.activeHow),
    ),
  ].filter((piece) => piece !== null);
};

const pairOf = (of: Parameters<typeof ranged>[0]): readonly [value: string, range: string] => {
  const { value, range } = written(of);
  return [value, range];
};

const letterOfClass = { condition: 'CC', urgency: 'UC', recommendation: 'RC' } as const;
export type WhichClass = keyof typeof letterOfClass;
export const classKinds = Object.keys(letterOfClass) as WhichClass[];

export const className = (which: WhichClass, level: number | null | undefined): string => {
  const row = level === null || level === undefined ? undefined : enClasses[which][level];
  return row ? words.classOf(row.id, row.name) : words.classNone;
};

/** The three classes of the whole: what the rule proposes and why, and what a named person set. */
export const classTable = ({ classes: { sculpture } }: LatestOnPaper, nameOf: NameOfThing): PaperPiece => [
  table(
    words.classes,
    [
      { head: words.classColumns.of },
      { head: words.classColumns.proposed },
      { head: words.classColumns.set },
      { head: words.classColumns.why, kind: 'wide' },
    ],
    classKinds.map((which) => {
      const { level, reasons } = sculpture[which];
      const set = sculpture.set?.[which];
      return [
        words.classNames[which],
        className(which, level),
        set === undefined ? words.classNotSet : words.classSetBy(className(which, set), sculpture.set?.setBy ?? ''),
        reasons.map((reason) => sayReason(reason, nameOf)).join(' '),
      ];
    }),
  ),
  say(words.classesHow, 'small'),
];

/** "2 1 1*" for a row of zones: a star where a person set it. */
export const classMarks = ({ classes }: LatestOnPaper, zone: string): string => {
  const of = classes.zones.find(({ about }) => about === zone);
  if (!of) return '';
  return classKinds
    .map((which) => {
      const level = levelOf(of, which);
      return `${level ?? '–'}${of.set?.[which] === undefined ? '' : '*'}`;
    })
    .join(' ');
};
