import { photosOfWork } from '../../actions';
import { w } from '../../words';
import { EmptyState, LinkButton, Reading } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { NotHereYet } from './NotHereYet';
import { Viewfinder } from './Viewfinder';

const words = w.photos.viewfinder;

/** The camera with last year's frame laid over it, so that this year's is taken from the same spot. */
export function ViewfinderScreen(at: { readonly sculpture: string; readonly station: string }) {
  const work = useQuestion(photosOfWork(useDesk(), at.sculpture));
  if (work === undefined) return <Reading />;
  if (work === null) return <NotHereYet />;
  const station = work.stations.find(({ thing }) => thing === at.station);
  if (!station)
    return (
      <EmptyState
        page
        title={words.missing}
        actions={<LinkButton to={pathTo.shots(at.sculpture)}>{words.back}</LinkButton>}
      >
        <p>{words.missingWhat}</p>
      </EmptyState>
    );
  return <Viewfinder work={work} station={station} />;
}
