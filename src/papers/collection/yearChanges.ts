import { type FindingChange, firstComparable, type ThenAndNow } from '../../engine/change';
import { kindOf } from '../../engine/trade';
import { area, midSentence, number, share, w } from '../../words';
import { list, type PaperPiece, say } from '../layout';
import { nameOfWork } from '../reading';
import { zoneOf } from './namesIn';
import { comparedRounds, type WorkInYear } from './workInYear';

const words = w.paperYear;
/** A page has room for so many of each. */
const most = 3;

interface Told {
  readonly sentence: string;
  /** How far beyond its error, or how near to it. */
  readonly z: number;
}

const shortName = ({ work }: WorkInYear): string => work.record.sculpture.body.number || nameOfWork(work);
const yearOf = ({ earlier }: ThenAndNow): string => earlier.body.date.slice(0, 4);

/** Moved for sure, and not only one among many comparisons. */
const isSure = ({ verdict, aloneCouldBeChance }: FindingChange): boolean =>
  (verdict === 'worse' || verdict === 'better') && !aloneCouldBeChance;

const seemed = (change: FindingChange): boolean =>
  !isSure(change) &&
  (change.verdict === 'no sure change' || change.aloneCouldBeChance) &&
  change.earlier.coverage !== undefined &&
  change.later.coverage !== undefined &&
  change.earlier.coverage.value !== change.later.coverage.value;

const sentence = (one: WorkInYear, change: FindingChange, since: string): string => {
  const at = [shortName(one), zoneOf(one.work, change.zone)] as const;
  const kind = midSentence(kindOf(change.kind)?.name ?? change.kind);
  const [before, now] = [amountOf(change.earlier), amountOf(change.later)];
  if (change.named.some(({ what }) => what === 'new')) return unbroken(words.came(...at, kind, now, since));
  if (change.named.some(({ what }) => what === 'gone')) return unbroken(words.went(...at, kind, before, since));
  return unbroken(words.changed(...at, kind, before || '–', now || '–', since));
};

const counted: Readonly<Record<string, string>> = w.paperLetter.count;
const amountOf = ({ coverage, count }: FindingChange['earlier']): string =>
  coverage ? share(coverage.value) : count ? (counted[count] ?? count) : '';

/** A number and its unit stay on one line. */
const unbroken = (said: string): string => said.replace(/ (?=%|m²|sq)/g, '\u00a0');

const verdictSaid = ({ verdict, clearly }: { readonly verdict: string; readonly clearly: boolean }): string =>
  verdict === 'worse' ? (clearly ? words.clearlyWorse : words.worse) : clearly ? words.clearlyBetter : words.better;

const byStrength = (a: Told, b: Told): number => b.z - a.z || (a.sentence < b.sentence ? -1 : 1);

/** Changes since the round before; where those are fewer than the page has room for, of whole works since the first round like it. */
export const sureChanges = (works: readonly WorkInYear[]): PaperPiece => {
  const thisYear = works
    .flatMap((one) =>
      (one.change?.findings ?? []).filter(isSure).map((change): Told => {
        const since = one.change ? yearOf(one.change) : '';
        return { sentence: `${sentence(one, change, since)}: ${verdictSaid(change)}.`, z: Math.abs(change.z ?? 0) };
      }),
    )
    .sort(byStrength);
  // Only where there is room for them: each takes two rounds against each other.
  const longer = thisYear.length < most ? works.flatMap(overYears).sort(byStrength) : [];
  const all = [...thisYear, ...longer].slice(0, most);
  return all.length > 0 ? list(all.map((told) => told.sentence)) : say(words.sureNone);
};

/** What a work came to since the first round like this one, where a treatment has not broken the series. */
const overYears = (one: WorkInYear): Told[] => {
  const first = one.round && firstComparable(one.record, one.round.thing);
  if (!first || !one.round || first.thing === one.change?.earlier.thing) return [];
  const answer = comparedRounds(one.record, first.thing, one.round.thing);
  if (answer.between.some(({ breaksSeries }) => breaksSeries)) return [];
  return (['green', 'bare', 'scale'] as const).flatMap((what): Told[] => {
    const moved = answer.sculpture.active[what];
    const { verdict, aloneCouldBeChance, earlier, later, z } = moved;
    if ((verdict !== 'worse' && verdict !== 'better') || aloneCouldBeChance) return [];
    const said = words.grown(
      shortName(one),
      words.what[what],
      area(earlier.value),
      area(later.value),
      first.body.date.slice(0, 4),
    );
    return [{ sentence: `${unbroken(said)}: ${verdictSaid(moved)}.`, z: Math.abs(z ?? 0) }];
  });
};

export const unsureChanges = (works: readonly WorkInYear[]): PaperPiece => {
  const all = works
    .flatMap((one) =>
      (one.change?.findings ?? []).filter(seemed).map((change): Told => {
        const grew = (change.later.coverage?.value ?? 0) > (change.earlier.coverage?.value ?? 0);
        const from = grew ? change.smallest?.up : change.smallest?.down;
        const why = change.aloneCouldBeChance
          ? words.couldBeChance
          : typeof from === 'number'
            ? words.onlyFrom(`${number(from * 100, 1)}\u00a0%`)
            : undefined;
        const said = sentence(one, change, one.change ? yearOf(one.change) : '');
        return { sentence: `${[said, why].filter(Boolean).join('; ')}.`, z: Math.abs(change.z ?? 0) };
      }),
    )
    .sort(byStrength)
    .slice(0, most);
  return all.length > 0 ? list(all.map((told) => told.sentence)) : say(words.unsureNone);
};
