import type { Opening } from '../../actions';
import { sayReason, w, whole } from '../../words';
import { Button, Notice } from '../parts';
import { LastFiles } from './LastFiles';
import { pathTo } from './paths';

const words = w.shell;

interface NotOpenProps {
  readonly opening: Exclude<Opening, { readonly state: 'open' }>;
  readonly show: (opening: Opening) => void;
}

/** In the place of an empty list: that the data was removed and what brings it back, or why it cannot be opened. */
export function NotOpen({ opening, show }: NotOpenProps) {
  return (
    <main className="page narrow">
      {opening.state === 'removed' ? (
        <Removed opening={opening} show={show} />
      ) : (
        <>
          <h1>{words.cannotOpen}</h1>
          <Notice
            kind="problem"
            title={sayReason(opening.reason)}
            actions={<Button onClick={() => location.reload()}>{words.loadAgain}</Button>}
          />
        </>
      )}
    </main>
  );
}

function Removed({ opening, show }: NotOpenProps & { readonly opening: Extract<Opening, { state: 'removed' }> }) {
  const { reason, lastFiles } = opening;
  const begin = async (where: string) => {
    location.hash = `#${where}`;
    show(await opening.startAfresh());
  };
  const since = lastFiles[0] ? Number(reason.params.count) - lastFiles[0].entries : 0;
  return (
    <>
      <h1>{words.removed}</h1>
      <Notice
        kind="problem"
        title={sayReason(reason)}
        actions={
          <>
            <Button kind="main" onClick={() => begin(pathTo.carry())}>
              {words.openLast}
            </Button>
            <Button kind="quiet" onClick={() => begin(pathTo.sculptures())}>
              {words.startAfresh}
            </Button>
          </>
        }
      >
        <LastFiles files={lastFiles} />
        {since > 0 && <p>{words.lostSince(whole(since))}</p>}
        <p>{words.startAfreshWhat}</p>
      </Notice>
    </>
  );
}
