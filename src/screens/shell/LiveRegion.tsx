import { useEffect, useState } from 'react';
import { hearSaid } from './say';

const shownFor = 6000;

/** Where `say` is heard. It covers no control: touches go through it. */
export function LiveRegion() {
  const [said, setSaid] = useState({ text: '', n: 0 });
  const [shown, setShown] = useState(false);
  useEffect(
    () =>
      hearSaid((text) => {
        setSaid((before) => ({ text, n: before.n + 1 }));
        setShown(true);
      }),
    [],
  );
  useEffect(() => {
    if (said.n === 0) return;
    const timer = setTimeout(() => setShown(false), shownFor);
    return () => clearTimeout(timer);
  }, [said.n]);
  return (
    <div role="status" className={shown ? 'said shown not-printed' : 'said not-printed'}>
      {/* A new key makes the same words be read out again. */}
      <span key={said.n}>{said.text}</span>
    </div>
  );
}
