import { type Followed, type Followup, isFigure } from '../../engine/trend';
import { areaNumber, date, fromTo, number, unitOf, w, whole } from '../../words';

const words = w.overTime;

const write = (what: Followed, value: number): string =>
  what === 'index' ? `${number(value)} ${words.unit.index}` : `${areaNumber(value)} ${unitOf('area')}`;

/** One plain sentence of what a series shows: the word trend only where the engine gave it. */
export const trendSentence = ({ series, trend }: Pick<Followup, 'series' | 'trend'>): string => {
  const what = words.subject[series.what];
  const { n, word, slope, up } = trend;
  if (n === 0) return words.trend.none0(what);
  if (word === 'trend' && slope) {
    const size = [slope.low, slope.high].map(Math.abs).sort((a, b) => a - b) as [number, number];
    const bare = (value: number): string => (series.what === 'index' ? number(value) : areaNumber(value));
    return words.trend.trend(
      what,
      up,
      write(series.what, Math.abs(slope.value)),
      fromTo(bare(size[0]), bare(size[1])),
      n,
    );
  }
  if (word === 'rising each time so far') return words.trend.rising(what, n);
  if (word === 'falling each time so far') return words.trend.falling(what, n);
  return word === 'too few rounds' ? words.trend.few(what, n) : words.trend.none(what, n);
};

/** What it comes to by the next round, as a sentence; nothing where it cannot be carried on. */
export const forecastSentence = (
  { series, next }: Pick<Followup, 'series' | 'next'>,
  nextRound: string | null,
): string | undefined => {
  if (!next || !nextRound || !isFigure(next)) return undefined;
  const bare = (value: number): string => (series.what === 'index' ? whole(value) : areaNumber(value));
  const unit = series.what === 'index' ? '' : ` ${unitOf('area')}`;
  return words.forecast(date(nextRound), `${bare(next.value)}${unit}`, fromTo(bare(next.low), bare(next.high)));
};
