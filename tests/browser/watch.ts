import type { BrowserContext, Page } from 'playwright-core';

/**
 * Collects what must never happen on any page: errors, console warnings, breaches of the page's policy, and requests
 * to another host. A browser test ends with `expect(faults).toEqual([])`.
 */
export async function watch(context: BrowserContext, home: string): Promise<string[]> {
  const faults: string[] = [];
  const ours = new URL(home).origin;
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (e) => {
      console.error(`page policy broken: ${e.violatedDirective} ${e.blockedURI} ${e.sourceFile}:${e.lineNumber}`);
    });
  });
  context.on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    if (protocol.startsWith('http') && origin !== ours) faults.push(`asked another host: ${request.url()}`);
  });
  const watchPage = (page: Page) => {
    page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
    page.on('console', (message) => {
      // A lost network is what these tests make; the browser's own line about it is no fault of the page.
      if (message.text().startsWith('Failed to load resource: net::ERR_')) return;
      if (message.type() === 'error' || message.type() === 'warning')
        faults.push(`${message.type()}: ${message.text()}`);
    });
  };
  context.pages().forEach(watchPage);
  context.on('page', watchPage);
  return faults;
}
