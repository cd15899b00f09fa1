import { collectionInsights, ownHoldRules, tabs } from '../../actions';
import { w } from '../../words';
import { Page, Reading } from '../parts';
import { UnderWay, useDesk, useQuestion } from '../shell';
import { HoldsView } from './HoldsView';
import '../parts/plainTable.css';
import './holds.css';

const words = w.holds;

/** How long the wax holds: zone by zone, by how zones lie, and what counts as back. */
export function HoldsScreen() {
  const desk = useDesk();
  const insights = useQuestion(collectionInsights(desk));
  const own = useQuestion(ownHoldRules(desk));
  const { mode } = useQuestion(tabs(desk));
  return (
    <Page title={words.title} lead={words.lead}>
      <UnderWay what="figures" />
      {insights === undefined || own === undefined ? (
        <Reading>{words.reading}</Reading>
      ) : (
        <HoldsView insights={insights} own={own} mayWrite={mode === 'writing'} />
      )}
    </Page>
  );
}
