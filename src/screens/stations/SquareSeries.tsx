import { photoSeriesOf } from '../../actions';
import type { Thing } from '../../engine/record';
import { coverageMethods, kindOf } from '../../engine/trade';
import { share, w } from '../../words';
import { SeriesChart } from '../parts/charts';
import { useDesk, useQuestion } from '../shell';

const words = w.stations.squares;

interface SquareSeriesProps {
  readonly sculpture: string;
  readonly sentinel: Thing<'sentinel'>;
  readonly name: string;
}

/** What was measured on the photos of one square, year after year: each kind and way of measuring by itself, with its 90 % range. */
export function SquareSeries({ sculpture, sentinel, name }: SquareSeriesProps) {
  const work = useQuestion(photoSeriesOf(useDesk(), sculpture));
  if (!work) return null;
  const photos = work.series.find(({ of }) => of.thing === sentinel.thing)?.photos ?? [];
  const days = new Map(photos.map(({ photo, day }) => [photo.thing, day]));
  const series = seriesOf(
    work.measures.filter(({ body }) => body.about === sentinel.thing),
    days,
  );
  if (series.length === 0) return <p className="soft small">{words.seriesNone}</p>;
  const drawn = series.filter(({ points }) => points.length > 1);
  if (drawn.length === 0) return <p className="soft small">{words.seriesFew}</p>;
  return (
    <>
      {drawn.map(({ key, title, points }) => (
        <SeriesChart
          key={key}
          unit="share"
          title={title}
          label={w.charts.seriesLabel(`${name}, ${title}`, points.length, at(points[0]), at(points.at(-1)))}
          points={points}
        />
      ))}
    </>
  );
}

const at = (point: { readonly value: number } | undefined): string => (point ? share(point.value) : '');

interface Series {
  readonly key: string;
  readonly title: string;
  readonly points: { day: string; value: number; low: number; high: number; span: number }[];
}

/** Kinds and ways are never joined into one line: they do not measure alike. */
const seriesOf = (measures: readonly Thing<'measure'>[], days: ReadonlyMap<string, string>): readonly Series[] => {
  const found = new Map<string, Series>();
  for (const { body } of measures) {
    const { value, low, high, method } = body.coverage;
    const key = `${body.kind} ${method}`;
    const how = coverageMethods.find(({ id }) => id === method)?.name ?? method;
    const title = words.seriesTitle(kindOf(body.kind)?.name ?? body.kind, how);
    const series = found.get(key) ?? { key, title, points: [] };
    series.points.push({ day: days.get(body.photo) ?? body.date, value, low, high, span: 0 });
    found.set(key, series);
  }
  for (const { points } of found.values()) points.sort((a, b) => (a.day < b.day ? -1 : 1));
  return [...found.values()];
};
