import { type PhotoSeriesOfWork, photoSeriesOf } from '../../actions';
import type { Thing } from '../../engine/record';
import { date, w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { pathTo, useDesk, useQuestion } from '../shell';
import { Strip } from './Strip';
import { seriesName } from './seriesNames';
import './compare.css';

const words = w.compare;

/** All years of a station in a row. */
export function StripScreen({ sculpture, station }: { readonly sculpture: string; readonly station: string }) {
  const work = useQuestion(photoSeriesOf(useDesk(), sculpture));
  const series = work?.series.find(({ of }) => of.thing === station);
  const photos = series?.photos ?? [];
  const [first, last] = [photos[0], photos.at(-1)];
  return (
    <Page
      title={work && series ? seriesName(work, series) : words.strip.over}
      over={work && `${workName(work.sculpture)} · ${words.strip.over}`}
      lead={first && last && words.strip.lead(photos.length, date(first.day), date(last.day))}
      back={{ to: pathTo.compare(sculpture), label: words.title }}
    >
      {work === undefined ? (
        <Reading />
      ) : !work || !series ? (
        <EmptyState title={work ? words.strip.missing : words.missing} />
      ) : photos.length === 0 ? (
        <EmptyState
          title={words.strip.empty}
          actions={<LinkButton to={pathTo.shots(sculpture)}>{words.toPhotos}</LinkButton>}
        />
      ) : (
        <Years work={work} station={series.of as Thing<'station'>} photos={photos} />
      )}
    </Page>
  );
}

interface YearsProps {
  readonly work: PhotoSeriesOfWork;
  readonly station: Thing<'station'>;
  readonly photos: PhotoSeriesOfWork['photos'];
}

function Years({ work, station, photos }: YearsProps) {
  return (
    <>
      <Strip work={work} station={station} photos={photos} />
      <PrintRow />
    </>
  );
}
