import { useEffect } from 'react';
import { layOnPage } from '../shell/pageSheet';

/** Browsers that draw page margins print the line there; the same line at the end of the paper is for the others. */
const onceOnly = 'CSSMarginRule' in globalThis ? '@media print{.paper footer{display:none}}' : '';

/** While a paper is shown its sheet and the foot of its pages are those of the page. */
export function usePageCss(css: string | undefined): void {
  useEffect(() => (css ? layOnPage(css + onceOnly) : undefined), [css]);
}
