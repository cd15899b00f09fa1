import { useEffect, useRef } from 'react';

/** The answers of one question: what stands in one group with the control that has the focus. */
const groupOf = (from: Element): HTMLElement[] => {
  const group = from.closest('fieldset, ol, ul');
  return group ? [...group.querySelectorAll<HTMLElement>('button:not(:disabled), a[href]')] : [];
};

/** The nearest one above or below, by where it stands on the screen; one after another where nothing stands there. */
const across = (from: HTMLElement, all: readonly HTMLElement[], by: 1 | -1): HTMLElement | undefined => {
  const here = from.getBoundingClientRect();
  const beyond = all
    .map((one) => ({ one, box: one.getBoundingClientRect() }))
    .filter(({ box }) => (by === 1 ? box.top >= here.bottom - 1 : box.bottom <= here.top + 1))
    .sort(
      (a, b) =>
        Math.abs(a.box.top - here.top) - Math.abs(b.box.top - here.top) ||
        Math.abs(a.box.left - here.left) - Math.abs(b.box.left - here.left),
    );
  return beyond[0]?.one;
};

const goal = (key: string, from: HTMLElement, all: readonly HTMLElement[]): HTMLElement | undefined => {
  const at = all.indexOf(from);
  switch (key) {
    case 'ArrowRight':
      return all[at + 1];
    case 'ArrowLeft':
      return all[at - 1];
    case 'ArrowDown':
      return across(from, all, 1) ?? all[at + 1];
    case 'ArrowUp':
      return across(from, all, -1) ?? all[at - 1];
    case 'Home':
      return all[0];
    case 'End':
      return all.at(-1);
    default:
      return undefined;
  }
};

/** Arrow keys go from answer to answer within one question; Tab still goes through all of them. */
const arrowsInGroup = (e: KeyboardEvent): void => {
  const { target } = e;
  if (!(target instanceof HTMLElement) || !target.matches('button, a') || e.altKey || e.ctrlKey || e.metaKey) return;
  const to = goal(e.key, target, groupOf(target));
  if (!to) return;
  e.preventDefault();
  to.focus();
};

/** The keys of the pad, wherever on the screen the focus is; Escape closes a question, where there is one. */
export function usePadKeys(close?: () => void): void {
  const now = useRef(close);
  now.current = close;
  useEffect(() => {
    const pressed = (e: KeyboardEvent) => {
      if (document.querySelector('dialog[open]')) return;
      if (e.key === 'Escape') now.current?.();
      else arrowsInGroup(e);
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, []);
}

/** After a touch the control that was touched may be gone: the question that came in its place takes the focus, so that it is read out. */
export const focusAsked = (pad: HTMLElement): void => {
  const { activeElement } = document;
  if (activeElement && activeElement !== document.body && activeElement.isConnected) return;
  const row = pad.querySelector<HTMLElement>('.finding.open .finding-row');
  const asked = row ?? pad.querySelector<HTMLElement>('fieldset.ladder, fieldset.pad-group, .finding-row');
  if (!asked) return;
  if (!asked.matches('button')) asked.tabIndex = -1;
  asked.focus({ preventScroll: true });
};
