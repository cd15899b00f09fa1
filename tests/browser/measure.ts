import type { Page } from 'playwright-core';

export interface Asked {
  /** CSS px, the least of height and width of a control. */
  readonly control: number;
  /** The same for the answers at the foot of a zone and the way on. */
  readonly main: number;
  /** CSS px between two controls. */
  readonly apart: number;
}

/** What cannot be hit with a thumb, and what runs out of the screen sideways: each as one line that says where. */
export const measure = (page: Page, asked: Asked): Promise<string[]> =>
  page.evaluate(({ control, main, apart }) => {
    const slack = 0.6;
    const called = (el: Element): string => {
      const name = el.getAttribute('aria-label') ?? el.textContent ?? '';
      const classes = typeof el.className === 'string' ? el.className.trim().replaceAll(/\s+/g, '.') : '';
      return `${el.tagName.toLowerCase()}${classes ? `.${classes}` : ''} "${name.trim().slice(0, 40)}"`;
    };
    const shown = (el: Element): boolean => el.checkVisibility({ opacityProperty: true, visibilityProperty: true });
    const clipped = (el: Element): boolean => {
      for (let up: Element | null = el; up && up !== document.body; up = up.parentElement) {
        const { overflowX, clipPath, position } = getComputedStyle(up);
        if (clipPath !== 'none') return true;
        if (up !== el && overflowX !== 'visible' && position !== 'fixed') return true;
      }
      return false;
    };
    /** A radio or check box is hit through the tile around it. */
    const hit = (el: Element): Element =>
      el.matches('input[type=radio], input[type=checkbox]') ? (el.closest('label') ?? el) : el;

    const faults: string[] = [];
    const wide = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > wide)
      faults.push(`the page is ${document.documentElement.scrollWidth} px wide`);
    for (const el of document.body.querySelectorAll('*')) {
      if (!shown(el) || clipped(el)) continue;
      const { left, right, width } = el.getBoundingClientRect();
      if (width > 0 && (right > wide + 1 || left < -1))
        faults.push(`runs out sideways (${left} to ${right}): ${called(el)}`);
    }
    const controls = [...document.body.querySelectorAll('a[href], button, input, select, textarea, summary')]
      .filter((el) => shown(el) && !clipped(hit(el)) && !el.matches('.skip:not(:focus), .unseen'))
      .map(hit);
    const places = [...new Set(controls)].map((el) => ({ el, box: el.getBoundingClientRect() }));
    for (const { el, box } of places) {
      const least = el.closest('.answer-bar') ? main : el.closest('.header') ? 48 : control;
      // A line of text to type in is as wide as it likes; a link within a sentence is as tall as the sentence.
      if (el.matches('p a, li > a:not([class])')) continue;
      if (box.height < least - slack || (box.width < least - slack && !el.matches('input, select, textarea')))
        faults.push(`${Math.round(box.width)} x ${Math.round(box.height)} px, not ${least}: ${called(el)}`);
    }
    /** What stays while the page moves under it is no neighbour of what moves. */
    const layer = (el: Element): Element => {
      for (let up: Element | null = el; up; up = up.parentElement)
        if (['sticky', 'fixed'].includes(getComputedStyle(up).position)) return up;
      return document.body;
    };
    places.forEach(({ el, box }, i) => {
      for (const other of places.slice(i + 1)) {
        if (el.contains(other.el) || other.el.contains(el) || layer(el) !== layer(other.el)) continue;
        const across = Math.max(other.box.left - box.right, box.left - other.box.right);
        const down = Math.max(other.box.top - box.bottom, box.top - other.box.bottom);
        const gap = Math.max(across, down);
        if (gap < apart - slack) faults.push(`${Math.round(gap)} px between ${called(el)} and ${called(other.el)}`);
      }
    });
    return faults;
  }, asked);
