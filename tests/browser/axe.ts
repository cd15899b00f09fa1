import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds on the page, by all its rules or by the one alone that asks for contrast: rule, element and why. */
export async function axeFaults(page: Page, onlyContrast = false): Promise<string[]> {
  // The page's own policy keeps scripts out of the page; the debugger may still bring one.
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(`${axeSource}; 0`);
  const found = await page.evaluate(
    (rules) =>
      (globalThis as unknown as { axe: typeof axe }).axe.run(document, {
        resultTypes: ['violations'],
        preload: false,
        ...(rules && { runOnly: rules }),
      }),
    onlyContrast ? ['color-contrast'] : undefined,
  );
  return found.violations.flatMap(({ id, help, nodes }) =>
    nodes.map(
      ({ target, failureSummary }) => `${id} (${help}): ${target.join(' ')} ${failureSummary?.split('\n')[1] ?? ''}`,
    ),
  );
}
