import { useLocation } from 'wouter';
import { type PhotoSeriesOfWork, photoSeriesOf } from '../../actions';
import { w, workName } from '../../words';
import { EmptyState, LinkButton, Notice, Page, Reading } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { ChoosePhotos } from './ChoosePhotos';
import { chosenPair } from './chosenPair';
import { TwoPhotos } from './TwoPhotos';
import './compare.css';

const words = w.compare;

interface CompareScreenProps {
  readonly sculpture: string;
  /** Photos to compare, in any order; left out, the last two of the first station that has two. */
  readonly one: string | undefined;
  readonly other: string | undefined;
}

/** Two photos of one spot, beside and on each other. */
export function CompareScreen({ sculpture, one, other }: CompareScreenProps) {
  const work = useQuestion(photoSeriesOf(useDesk(), sculpture));
  const { title } = work?.sculpture.body ?? {};
  return (
    <Page
      title={words.title}
      over={work && workName(work.sculpture)}
      lead={words.lead}
      back={{ to: pathTo.sculpture(sculpture), label: title ?? words.back }}
    >
      {work === undefined ? (
        <Reading />
      ) : work === null ? (
        <EmptyState title={words.missing} />
      ) : (
        <Chosen work={work} one={one} other={other} />
      )}
    </Page>
  );
}

function Chosen({ work, one, other }: { readonly work: PhotoSeriesOfWork } & Omit<CompareScreenProps, 'sculpture'>) {
  const [, go] = useLocation();
  const sculpture = work.sculpture.thing;
  const pair = chosenPair(work, one, other);
  const choose = (a: string, b: string) => go(pathTo.compare(sculpture, a, b));
  if (pair === 'gone') return <Notice kind="caution" title={words.photoMissing} />;
  if (!pair)
    return (
      <EmptyState
        title={words.none}
        actions={
          <>
            <LinkButton to={pathTo.stations(sculpture)}>{words.toStations}</LinkButton>
            <LinkButton to={pathTo.photos(sculpture)}>{words.toPhotos}</LinkButton>
          </>
        }
      >
        {words.noneWhat}
      </EmptyState>
    );
  const { earlier, later } = pair;
  return (
    <>
      <ChoosePhotos work={work} pair={pair} onChoose={choose} />
      {earlier === later ? (
        <Notice kind="caution" title={words.same} />
      ) : (
        <TwoPhotos key={`${earlier.photo.thing} ${later.photo.thing}`} work={work} earlier={earlier} later={later} />
      )}
    </>
  );
}
