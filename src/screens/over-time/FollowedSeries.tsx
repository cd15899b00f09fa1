import type { SculptureRecord } from '../../engine/record';
import { scaleOf, treatmentOf } from '../../engine/trade';
import { type Followup, isFigure } from '../../engine/trend';
import { type NameOfThing, w, whole } from '../../words';
import { SeriesChart } from '../parts/charts';
import { Reasons } from '../parts/Reasons';
import { forecastSentence, trendSentence } from '../parts/trendText';

const words = w.overTime;

interface FollowedSeriesProps {
  readonly record: SculptureRecord;
  readonly followed: Followup;
  readonly nextRound: string | null;
  readonly nameOf: NameOfThing;
}

/** A series: first in a sentence, then drawn, then what it rests on. */
export function FollowedSeries({ record, followed, nextRound, nameOf }: FollowedSeriesProps) {
  const { series, trend, next } = followed;
  const { what, points } = series;
  const ahead = forecastSentence(followed, nextRound);
  const { actionLevel } = scaleOf(record.scale);
  const [first = '', last = ''] = [points[0]?.day, points.at(-1)?.day];
  return (
    <div className="stack followed">
      <p>
        <span className="strong">{trendSentence(followed)}</span> {ahead}
      </p>
      <SeriesChart
        title={what === 'index' ? words.index : words.active[what]}
        titleUnseen
        unit={what === 'index' ? 'index' : 'm2'}
        points={points.map(({ day, figure, span, seenShare }) => ({
          day,
          value: figure.value,
          low: figure.low,
          high: figure.high,
          span,
          open: seenShare < 0.995,
        }))}
        breaks={series.breaks
          .filter(({ day }) => day >= first && day <= last)
          .map(({ day, type }) => ({ day, what: treatmentOf(type)?.name ?? type }))}
        marks={series.marks.map(({ day, surveyor }) => ({
          day,
          what: words.otherSurveyor(nameOf(surveyor) ?? words.someone),
        }))}
        ticks={series.ticks.map(({ day }) => day)}
        forecast={nextRound && next && isFigure(next) ? { day: nextRound, ...next } : null}
        {...(what === 'index' && points.some(({ figure }) => figure.low < actionLevel + 5)
          ? { level: { value: actionLevel, what: words.actionLevel(whole(actionLevel)) } }
          : {})}
      />
      <Reasons reasons={[...trend.reasons, ...series.reasons]} nameOf={nameOf} />
    </div>
  );
}
