import { collectionState, sculptureList } from '../../actions';
import { w } from '../../words';
import { AddIcon, EmptyState, LinkButton, Page, Reading } from '../parts';
import { piece } from '../parts/piece';
import { pathTo, useDesk, useQuestion } from '../shell';
import { WelcomeScreen } from './WelcomeScreen';

/** No part of a first visit, which has no works to show. */
const Works = piece(async () => (await import('./Works')).Works);

/** The first screen: the works in most need first, or, where nothing was begun, the ways to begin. */
export function SculptureListScreen() {
  const desk = useDesk();
  const collection = useQuestion(collectionState(desk));
  const rows = useQuestion(sculptureList(desk));
  if (!collection || !rows) return <Reading />;
  if (rows.length > 0) return <Works rows={rows} over={collection.name ?? undefined} />;
  if (collection.name === null) return <WelcomeScreen />;
  return (
    <Page title={w.sculptures.title} over={collection.name}>
      <EmptyState
        title={w.sculptures.emptyTitle}
        actions={
          <LinkButton to={pathTo.newSculpture()} kind="main" size="big" icon={<AddIcon />}>
            {w.sculptures.add}
          </LinkButton>
        }
      >
        <p>{w.sculptures.empty}</p>
      </EmptyState>
    </Page>
  );
}
