/**
 * Class names of papers as they stand in a page: each begins with "paper", since in the app a paper lies in the same page as the
 * style sheets of every screen that was opened before it.
 */
export const classOnPaper = (names: string): string =>
  names
    .split(' ')
    .map((name) => (name === 'paper' || name.startsWith('paper-') ? name : `paper-${name}`))
    .join(' ');
