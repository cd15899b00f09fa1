import { useEffect, useRef, useState } from 'react';
import { type Camera, openViewfinder } from '../../actions';
import { sayReason } from '../../words';

type Stands =
  | { readonly is: 'off' | 'starting' }
  | { readonly is: 'on'; readonly camera: Camera }
  | { readonly is: 'refused'; readonly why: string };

/** The camera of this screen: started by a touch, let go of when the screen is left. */
export const useCamera = () => {
  const [stands, setStands] = useState<Stands>({ is: 'off' });
  const open = useRef<Camera>(undefined);
  const left = useRef(false);
  useEffect(() => {
    left.current = false;
    return () => {
      left.current = true;
      open.current?.close();
    };
  }, []);
  const start = async () => {
    setStands({ is: 'starting' });
    const opened = await openViewfinder();
    if (!opened.ok) return setStands({ is: 'refused', why: sayReason(opened.reason) });
    // Left while the browser was still asking: nobody looks, so it must not stay on.
    if (left.current) return opened.camera.close();
    open.current = opened.camera;
    setStands({ is: 'on', camera: opened.camera });
  };
  return { stands, start } as const;
};
