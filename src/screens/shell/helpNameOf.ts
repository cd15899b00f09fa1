/** Name of the help page of a screen, from its route: "/sculpture/:sculpture/round/start" is "sculpture-round-start". */
export const helpNameOf = ({ path, help }: { readonly path: string; readonly help?: string }): string =>
  help ??
  (path
    .split('/')
    .filter((part) => part !== '' && !part.startsWith(':'))
    .join('-') ||
    'sculptures');
