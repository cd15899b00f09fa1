import { useEffect } from 'react';
import { collectionState, settings } from '../../actions';
import { date, pageFoot, w } from '../../words';
import { useDesk } from './DeskContext';
import { layOnPage } from './pageSheet';
import { recordStateShown } from './RecordState';
import { useQuestion } from './useQuestion';

/** Where a paper is shown, its own foot stands. */
const hasOwnFoot = () => document.querySelector('.paper-sheet') !== null;

/**
 * The foot of every page of any screen that is printed, from its own button or the browser's: collection, screen, day and page x of y.
 * Set when printing begins, for the title of the screen that is printed. Lists that are handed out name the state of the record too; of
 * any other screen it would not tell two prints apart, as they also show what is chosen on it.
 */
export function PrintFoot() {
  const desk = useDesk();
  const name = useQuestion(collectionState(desk))?.name ?? '';
  const { paper } = useQuestion(settings);
  useEffect(() => {
    let takeOff: (() => void) | undefined;
    const take = () => {
      takeOff?.();
      takeOff = undefined;
    };
    const put = () => {
      take();
      if (hasOwnFoot()) return;
      const words = w.paperLayout;
      const title = document.title.replace(` · ${w.product}`, '');
      const state = recordStateShown();
      const line = [desk.invented && words.invented, name, title, date(desk.today()), state && words.state(state)];
      takeOff = layOnPage(pageFoot(line.filter(Boolean).join(' · '), paper));
    };
    addEventListener('beforeprint', put);
    addEventListener('afterprint', take);
    return () => {
      removeEventListener('beforeprint', put);
      removeEventListener('afterprint', take);
      take();
    };
  }, [desk, name, paper]);
  return null;
}
