import { useEffect } from 'react';

/** While a paper is shown its sheet and the foot of its pages are those of the page: the policy allows a style sheet made so. */
export function usePageCss(css: string | undefined): void {
  useEffect(() => {
    if (!css || !('adoptedStyleSheets' in document)) return;
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [css]);
}
