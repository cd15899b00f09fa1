import { useMemo, useState } from 'react';
import { type PhotoOfWork, type PhotoSeriesOfWork, photoUrl } from '../../actions';
import { fitBetween, fitPhotos, isRefused, pairsBetween, photosUnlike, type Size } from '../../engine/photo';
import type { Reason } from '../../engine/record';
import { date, w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { PrintRow } from '../parts/PrintRow';
import { Reasons } from '../parts/Reasons';
import { PhotoAway, useDesk, useQuestion } from '../shell';
import { LayPhotos } from './LayPhotos';
import type { Looked } from './looked';
import { isUnshown, photoName, unshownWhy } from './seriesNames';
import { Verdict } from './Verdict';
import { WaysToLook } from './WaysToLook';

const words = w.compare;

interface TwoPhotosProps {
  readonly work: PhotoSeriesOfWork;
  readonly earlier: PhotoOfWork;
  readonly later: PhotoOfWork;
}

const unknown: Size = { width: 4, height: 3 };

/** Nobody wrote down what could differ: nothing is known to. */
const onlyUnsaid = (unlike: readonly Reason[]): boolean =>
  unlike.every(({ code }) => code === 'photos: light or wet not said');

const sizeOf = ({ photo }: PhotoOfWork): Size | undefined => {
  const { width, height } = photo.body;
  return width && height ? { width, height } : undefined;
};

/** What is said of the two, then the two themselves, or the pairs by which the one is laid on the other. */
export function TwoPhotos({ work, earlier, later }: TwoPhotosProps) {
  const [laying, setLaying] = useState(false);
  const { fits } = work;
  const [from, onto] = [earlier.photo.thing, later.photo.thing];
  const fit = useMemo(() => fitBetween(fits, from, onto), [fits, from, onto]);
  const pairs = pairsBetween(fits, from, onto);
  const [size, ontoSize] = [sizeOf(earlier), sizeOf(later)];
  const refused = useMemo(() => {
    const told = !fit && pairs && size && ontoSize && fitPhotos(pairs.pairs, size, ontoSize, pairs.kind);
    return told && isRefused(told) ? told.refused : [];
  }, [fit, pairs, size, ontoSize]);
  const one = useLooked(earlier, words.altEarlier(date(earlier.day)));
  const other = useLooked(later, words.altLater(date(later.day)));
  const unlike = photosUnlike(earlier.photo.body, later.photo.body);
  const flawed = [one, other].filter(({ row }) => isUnshown(row));
  const sized = size !== undefined && ontoSize !== undefined && flawed.length === 0;
  return (
    <>
      {unlike.length > 0 && (
        <Notice {...(onlyUnsaid(unlike) ? { title: words.alikeUnknown } : { kind: 'caution', title: words.unlike })}>
          <Reasons reasons={unlike} />
        </Notice>
      )}
      {laying ? (
        <LayPhotos
          earlier={one}
          later={other}
          pairs={pairs?.pairs ?? []}
          kind={pairs?.kind ?? 'similarity'}
          fit={fit}
          refused={refused}
          onDone={() => setLaying(false)}
        />
      ) : (
        <Section
          title={words.look}
          actions={
            sized && (
              <Button kind={fit ? 'plain' : 'main'} onClick={() => setLaying(true)}>
                {fit || pairs ? words.layAgain : words.lay}
              </Button>
            )
          }
        >
          {flawed.map(({ row, name }) => (
            <Notice key={row.photo.thing} kind="caution" title={name}>
              <p>{unshownWhy(row)}</p>
            </Notice>
          ))}
          {!(size && ontoSize) && <Notice kind="caution" title={words.unknownSize} />}
          {sized && <Verdict fit={fit} refused={refused} begun={pairs !== undefined} />}
          <PhotoAway photo={one.row.photo.thing} />
          <PhotoAway photo={other.row.photo.thing} />
          <WaysToLook work={work} earlier={one} later={other} fit={fit} />
          <PrintRow />
        </Section>
      )}
    </>
  );
}

function useLooked(row: PhotoOfWork, alt: string): Looked {
  const url = useQuestion(photoUrl(useDesk(), row.photo.thing, 'whole'));
  return { row, url, alt, name: photoName(row), size: sizeOf(row) ?? unknown };
}
