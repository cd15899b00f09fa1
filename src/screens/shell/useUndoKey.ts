import { useEffect, useRef } from 'react';

/** Text has an undo of its own, and what lies under an open sheet is not to be changed. */
const isElsewhere = (target: EventTarget | null): boolean =>
  document.querySelector('dialog[open]') !== null ||
  (target instanceof HTMLElement &&
    (target.isContentEditable || target.matches('textarea, select, input:not([type=radio], [type=checkbox])')));

/** Ctrl and Z, or Command and Z, does what the undo button on the screen does; nothing while there is none. */
export function useUndoKey(undo: (() => void) | undefined): void {
  const now = useRef(undo);
  now.current = undo;
  useEffect(() => {
    const pressed = (e: KeyboardEvent) => {
      if (e.key.toLowerCase() !== 'z' || !(e.ctrlKey || e.metaKey) || e.shiftKey || e.altKey) return;
      if (!now.current || isElsewhere(e.target)) return;
      e.preventDefault();
      now.current();
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, []);
}
