/**
 * Lays a style sheet on the page, the last of all, and gives what takes it off again. Made so and not written into the page: the
 * page's policy allows it. Nothing happens in browsers that cannot.
 */
export const layOnPage = (css: string): (() => void) => {
  if (!('adoptedStyleSheets' in document)) return () => undefined;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  };
};
