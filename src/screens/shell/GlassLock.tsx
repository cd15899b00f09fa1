import { useEffect, useRef, useState } from 'react';
import { settings } from '../../actions';
import { w } from '../../words';
import { Button } from '../parts';
import { HoldButton } from '../parts/HoldButton';
import { ignoreShortTouches } from './shortTouches';
import { useQuestion } from './useQuestion';
import './glass.css';

const words = w.field.glass;

/** In rain, on the screens of the round: short touches do nothing, and the whole glass can be locked while the hands are elsewhere. */
export function GlassLock() {
  const { wetGlass } = useQuestion(settings);
  const [locked, setLocked] = useState(false);
  useEffect(() => (wetGlass ? ignoreShortTouches() : undefined), [wetGlass]);
  if (!wetGlass) return null;
  return (
    <div className="glass-row by-hand not-printed">
      <p>{words.row}</p>
      <Button size="round" onClick={() => setLocked(true)}>
        {words.lock}
      </Button>
      {locked && <Locked onUnlock={() => setLocked(false)} />}
    </div>
  );
}

/** Dark, so that it spares the battery; modal, so that nothing under it can be reached by any way of touching. */
function Locked({ onUnlock }: { readonly onUnlock: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    if (typeof element?.showModal === 'function') element.showModal();
    else element?.setAttribute('open', '');
    return () => element?.close?.();
  }, []);
  return (
    <dialog ref={dialog} className="glass" aria-label={words.locked} onCancel={(e) => e.preventDefault()}>
      <p className="glass-title">{words.locked}</p>
      <p>{words.lockedWhat}</p>
      <HoldButton size="big" onHeld={onUnlock}>
        {words.unlock}
      </HoldButton>
    </dialog>
  );
}
