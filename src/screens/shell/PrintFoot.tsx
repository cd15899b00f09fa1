import { useEffect } from 'react';
import { collectionState, settings } from '../../actions';
import { date, pageFoot, w } from '../../words';
import { useDesk } from './DeskContext';
import { useQuestion } from './useQuestion';

/** Where a paper is shown, its own foot stands. */
const hasOwnFoot = () => document.querySelector('.paper-sheet') !== null;

/**
 * The foot of every page of any screen that is printed, from its own button or the browser's: collection, screen, day, state of the
 * record and page x of y. Set when printing begins, for the title of the screen that is printed.
 */
export function PrintFoot() {
  const desk = useDesk();
  const name = useQuestion(collectionState(desk))?.name ?? '';
  const { paper } = useQuestion(settings);
  useEffect(() => {
    if (!('adoptedStyleSheets' in document)) return;
    let sheet: CSSStyleSheet | undefined;
    const take = () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
      sheet = undefined;
    };
    const put = () => {
      take();
      if (hasOwnFoot()) return;
      const words = w.paperLayout;
      const title = document.title.replace(` · ${w.product}`, '');
      const line = [
        desk.invented && words.invented,
        name,
        title,
        date(desk.today()),
        words.state(desk.store.headsOf(desk.collection)),
      ];
      sheet = new CSSStyleSheet();
      sheet.replaceSync(pageFoot(line.filter(Boolean).join(' · '), paper));
      document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
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
