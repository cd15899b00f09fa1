import { useEffect, useState } from 'react';
import { type Opening, openDesk } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, Notice, Reading } from '../parts';
import { OpeningContext } from './DeskContext';
import { Shell } from './Shell';
import { useDeviceSettings } from './useDeviceSettings';
import './tokens.css';
import './base.css';

/** Opens the collection on this device and shows it, or says why it could not be opened. */
export function App() {
  useDeviceSettings();
  const [opening, setOpening] = useState<Opening>();
  useEffect(() => {
    let left = false;
    openDesk().then((opened) => {
      if (!left) setOpening(opened);
    });
    return () => {
      left = true;
    };
  }, []);
  return (
    <OpeningContext value={setOpening}>
      {opening?.state === 'open' ? (
        <Shell key={opening.desk.collection} desk={opening.desk} />
      ) : (
        <NotOpen opening={opening} show={setOpening} />
      )}
    </OpeningContext>
  );
}

type NotOpened = Exclude<Opening, { readonly state: 'open' }>;

function NotOpen({ opening, show }: { readonly opening: NotOpened | undefined; readonly show: (o: Opening) => void }) {
  if (!opening) return <Reading>{w.shell.opening}</Reading>;
  return (
    <main className="page narrow">
      <h1>{w.shell.cannotOpen}</h1>
      <Notice
        kind="problem"
        title={sayReason(opening.reason)}
        actions={
          opening.state === 'removed' && (
            <Button kind="main" onClick={async () => show(await opening.startAfresh())}>
              {w.shell.startAfresh}
            </Button>
          )
        }
      >
        {opening.state === 'removed' && <p>{w.shell.startAfreshWhat}</p>}
      </Notice>
    </main>
  );
}
