import { type PhotoOfWork, photoUrl } from '../../actions';
import type { PhotoFit, Size } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { date, list, number, w } from '../../words';
import { CautionIcon, LinkButton, PhotoView } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { LaidPhoto } from './LaidPhoto';
import { factName, isUnshown, photoName, unshownWhy } from './seriesNames';
import { unlikeOthers } from './unlikeOthers';

const words = w.compare.strip;

interface StripYearProps {
  readonly sculpture: string;
  readonly station: Thing<'station'>;
  readonly row: PhotoOfWork;
  readonly before: PhotoOfWork | undefined;
  readonly latest: PhotoOfWork;
  readonly all: readonly PhotoOfWork[];
  /** How it lies on the latest. */
  readonly fit: PhotoFit | undefined;
  readonly laid: boolean;
}

/** One photo of the strip with its day, what it was not taken alike in, and how far it is off the latest. */
export function StripYear({ sculpture, station, row, before, latest, all, fit, laid }: StripYearProps) {
  const url = useQuestion(photoUrl(useDesk(), row.photo.thing, 'thumb'));
  const alt = words.alt(w.compare.station(station.body.letter, station.body.aim), date(row.day));
  const { width, height } = latest.photo.body;
  const isLatest = row === latest;
  const onto = width && height ? { width, height } : undefined;
  const lies = laid && onto && fit && fit.verdict !== 'not the same station';
  const { others, rule, notSaid } = unlikeOthers(row, all, station.body);
  return (
    <li className="stack tight">
      {isUnshown(row) ? (
        <p className="small">{unshownWhy(row)}</p>
      ) : lies && url ? (
        <Laid url={url} alt={alt} fit={fit} onto={onto} />
      ) : (
        <PhotoView url={url} alt={alt} />
      )}
      <p className="strong">{photoName(row)}</p>
      {rule.length > 0 && <Unlike>{words.ruled(list(rule.map(factName)))}</Unlike>}
      {others.length > 0 && <Unlike>{words.others(list(others.map(factName)))}</Unlike>}
      {notSaid && <p className="soft small">{words.notSaid}</p>}
      {laid && <p className="soft small">{isLatest ? words.latest : liesHow(fit)}</p>}
      <div className="stack tight not-printed">
        {before && (
          <LinkButton kind="quiet" to={pathTo.compare(sculpture, before.photo.thing, row.photo.thing)}>
            {words.withBefore(date(before.day))}
          </LinkButton>
        )}
        {!isLatest && latest !== all[all.indexOf(row) + 1] && (
          <LinkButton kind="quiet" to={pathTo.compare(sculpture, row.photo.thing, latest.photo.thing)}>
            {words.withLatest}
          </LinkButton>
        )}
      </div>
    </li>
  );
}

const liesHow = (fit: PhotoFit | undefined): string => {
  if (!fit) return words.notLaid;
  const off = `${number(fit.residual.share * 100, 1)} %`;
  if (fit.verdict === 'same') return words.laidBy(off);
  return fit.verdict === 'blink only' ? words.roughly(off) : words.apart;
};

function Unlike({ children }: { readonly children: string }) {
  return (
    <p className="small strip-unlike">
      <CautionIcon /> <span>{children}</span>
    </p>
  );
}

interface LaidProps {
  readonly url: string;
  readonly alt: string;
  readonly fit: PhotoFit;
  readonly onto: Size;
}

function Laid({ url, alt, fit, onto }: LaidProps) {
  const viewBox = `0 0 1000 ${(1000 * onto.height) / onto.width}`;
  return (
    <svg className="strip-laid" viewBox={viewBox} role="img" aria-label={alt}>
      <LaidPhoto photo={{ url, size: onto }} fit={fit} ontoSize={onto} />
    </svg>
  );
}
