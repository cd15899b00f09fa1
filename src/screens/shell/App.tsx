import { Suspense, useEffect, useMemo, useState } from 'react';
import { type Desk, leaveDemo, type Opening } from '../../actions';
import { w } from '../../words';
import { Reading } from '../parts';
import { piece } from '../parts/piece';
import { type Collections, CollectionsContext } from './DeskContext';
import { Shell } from './Shell';
import { useDeviceSettings } from './useDeviceSettings';
import './tokens.css';
import './base.css';
import './forcedColours.css';
import './largeText.css';

/** No part of a start that goes well. */
const NotOpen = piece(async () => (await import('./NotOpen')).NotOpen);

interface AppProps {
  readonly opening: Promise<Opening>;
  /** Given where this tab was in the demo when it was loaded anew. */
  readonly demoOpening?: Promise<Opening> | undefined;
}

/** Shows the collection on this device once it is open, or says why it could not be opened. */
export function App({ opening, demoOpening }: AppProps) {
  useDeviceSettings();
  const [own, setOwn] = useState<Opening>();
  const [demo, setDemo] = useState<Desk>();
  const [comingBack, setComingBack] = useState(demoOpening !== undefined);
  useEffect(() => {
    let left = false;
    opening.then((opened) => {
      if (!left) setOwn(opened);
    });
    return () => {
      left = true;
    };
  }, [opening]);
  useEffect(() => {
    demoOpening?.then((opened) => {
      if (opened.state === 'open') setDemo(opened.desk);
      setComingBack(false);
    });
  }, [demoOpening]);
  const collections = useMemo<Collections>(
    () => ({
      showDemo: (desk) => {
        setDemo(desk);
        goHome();
      },
      showOwn: () => {
        if (demo) leaveDemo(demo);
        setDemo(undefined);
        goHome();
      },
    }),
    [demo],
  );
  const desk = demo ?? (own?.state === 'open' && !comingBack ? own.desk : undefined);
  return (
    <CollectionsContext value={collections}>
      {desk && <Shell key={demo ? 'invented' : 'own'} desk={desk} />}
      {!desk && (!own || comingBack) && <Reading>{w.shell.opening}</Reading>}
      {!desk && !comingBack && own && own.state !== 'open' && (
        <Suspense>
          <NotOpen opening={own} show={setOwn} />
        </Suspense>
      )}
    </CollectionsContext>
  );
}

/** What stands in one collection is not in the other. */
const goHome = () => {
  location.hash = '#/';
};
