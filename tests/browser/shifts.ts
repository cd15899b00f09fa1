import type { Page } from 'playwright-core';

interface Shift {
  readonly score: number;
  /** What moved furthest of it, and how far, CSS px. */
  readonly what: string;
}

/** To be run before the page's own code: keeps what moved without a touch within half a second before it. */
export const noteShifts = (): void => {
  interface Moved {
    readonly node: Node | null;
    readonly previousRect: DOMRectReadOnly;
    readonly currentRect: DOMRectReadOnly;
  }
  interface LayoutShift extends PerformanceEntry {
    readonly value: number;
    readonly hadRecentInput: boolean;
    readonly sources: readonly Moved[];
  }
  const kept: Shift[] = [];
  Object.assign(globalThis, { shifts: kept });
  const far = ({ previousRect, currentRect }: Moved) =>
    Math.hypot(currentRect.x - previousRect.x, currentRect.y - previousRect.y);
  new PerformanceObserver((list) => {
    for (const { value, hadRecentInput, sources } of list.getEntries() as LayoutShift[]) {
      const [worst] = [...sources].sort((a, b) => far(b) - far(a));
      if (hadRecentInput || !worst) continue;
      const at = worst.node instanceof Element ? worst.node : worst.node?.parentElement;
      const what = `${at?.tagName.toLowerCase()}.${at?.className} “${at?.textContent?.slice(0, 40)}”`;
      kept.push({ score: value, what: `${what} by ${Math.round(far(worst))} px` });
    }
  }).observe({ type: 'layout-shift', buffered: true });
};

/** What moved since this was last asked: the sum, and what moved in the worst of it. */
export async function shiftsOf(page: Page): Promise<{ readonly score: number; readonly worst: string }> {
  const all = await page.evaluate(() => (globalThis as unknown as { shifts: Shift[] }).shifts.splice(0));
  const worst = [...all].sort((a, b) => b.score - a.score)[0];
  return { score: all.reduce((sum, { score }) => sum + score, 0), worst: worst?.what ?? '' };
}
