import { levelOf } from '../../engine/condition';
import type { Reason, SculptureRecord } from '../../engine/record';
import { enClasses } from '../../engine/trade';
import { list, type NameOfThing, sayReason, share, w, figure as written } from '../../words';
import { figure, h, type PaperPiece, say, table } from '../layout';
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
  return h(
    'div',
    { class: 'figures' },
    figure(words.index, index, words.indexHow(share(score.seenShare), score.scale)),
    weakest !== null &&
      score.zones.length > 1 &&
      figure(
        words.weakest,
        words.weakestOf(zoneLabel(zones.find(({ thing }) => thing === weakest.zone)), ...pairOf(weakest)),
        words.weakestHow,
      ),
    ...(['green', 'bare', 'scale'] as const).map(
      (what) => active[what].high > 0 && figure(words.active[what], ranged(active[what], 'm2'), words.activeHow),
    ),
  );
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
export const classTable = ({ classes: { sculpture }, record }: LatestOnPaper, nameOf: NameOfThing): PaperPiece => [
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
        whyText(reasons, record, nameOf),
      ];
    }),
  ),
  say(words.classesHow, 'small'),
];

/** Reasons of the same kind that differ by their zone are said once, with the letters of all. */
const whyText = (reasons: readonly Reason[], record: SculptureRecord, nameOf: NameOfThing): string => {
  const lettersOf = (code: string): readonly string[] =>
    reasons
      .filter((reason) => reason.code === code)
      .flatMap(({ params }) => record.zones.find(({ thing }) => thing === params.zone)?.body.letter ?? []);
  const shared = {
    'class: highest of its zones': words.whyHighest,
    'class: weakest zone pulls down': words.whyWeakest,
  } as const;
  const said = reasons.map((reason) => {
    const sentence = shared[reason.code as keyof typeof shared];
    return sentence ? sentence(list(lettersOf(reason.code))) : sayReason(reason, nameOf);
  });
  return [...new Set(said)].join(' ');
};

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
