import axe from 'axe-core';

/**
 * Faults axe-core finds in what is on the page, one line each. No layout here, so contrast and sizes are measured in the
 * browser; and a screen alone has no landmarks, those are the shell's.
 */
export const axeFaults = async (): Promise<string[]> => {
  const { violations } = await axe.run(document.body, {
    rules: { 'color-contrast': { enabled: false }, region: { enabled: false } },
  });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`));
};
