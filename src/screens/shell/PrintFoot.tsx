import { useEffect } from 'react';
import { collectionState, settings } from '../../actions';
import { date, pageFoot, w } from '../../words';
import { useDesk } from './DeskContext';
import { layOnPage } from './pageSheet';
import { useQuestion } from './useQuestion';

/** Where a paper is shown, its own foot stands. */
const hasOwnFoot = () => document.querySelector('.paper-sheet') !== null;

/**
 * The foot of every page of any screen that is printed, from its own button or the browser's: collection, screen, day and page x of y.
 * Set when printing begins, for the title of the screen that is printed. A paper is made from the record and names its state; a screen
 * also shows what is chosen on it, so no state of the record would tell two prints of it apart.
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
      const line = [desk.invented && words.invented, name, title, date(desk.today())];
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
