import { useEffect } from 'react';

/** Browsers that draw page margins print the line there; the same line at the end of the paper is for the others. */
const onceOnly = 'CSSMarginRule' in globalThis ? '@media print{.paper footer{display:none}}' : '';

/** While a paper is shown its sheet and the foot of its pages are those of the page: the policy allows a style sheet made so. */
export function usePageCss(css: string | undefined): void {
  useEffect(() => {
    if (!css || !('adoptedStyleSheets' in document)) return;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css + onceOnly);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [css]);
}
