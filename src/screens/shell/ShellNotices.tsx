import { useLocation } from 'wouter';
import { lastFiles, setTourStep, tabs, takeOver, tourStep } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, Notice } from '../parts';
import { useCollections, useDesk } from './DeskContext';
import { LastFiles } from './LastFiles';
import { pathTo } from './paths';
import { say } from './say';
import { updateReady } from './updateReady';
import { useQuestion } from './useQuestion';

/** What a person must know on whichever screen: invented data, a tab that only reads, a version that waits. */
export function ShellNotices({ field }: { readonly field: boolean }) {
  return (
    <>
      <Invented field={field} />
      <ReadingOnly />
      {/* Never in the middle of a round. */}
      {!field && <UpdateWaits />}
    </>
  );
}

/** On every screen and on paper. */
function Invented({ field }: { readonly field: boolean }) {
  const { invented } = useDesk();
  const { showOwn } = useCollections();
  if (!invented) return null;
  return (
    <div className="banner">
      <p>
        <strong>{w.shell.invented}.</strong> {w.shell.inventedWhat}
      </p>
      {!field && (
        <span className="not-printed">
          <Tour />
          <Button kind="quiet" onClick={showOwn}>
            {w.shell.leaveDemo}
          </Button>
        </span>
      )}
    </div>
  );
}

/** Offered where the demo opens, and no more once it goes along. */
function Tour() {
  const [here] = useLocation();
  const step = useQuestion(tourStep);
  if (step > 0 || here !== pathTo.sculptures()) return null;
  return (
    <Button kind="quiet" onClick={() => setTourStep(1)}>
      {w.shell.tour}
    </Button>
  );
}

function ReadingOnly() {
  const desk = useDesk();
  const tab = useQuestion(tabs(desk));
  if (tab.mode === 'writing') return null;
  const take = async () => {
    const outcome = await takeOver(desk);
    say(outcome.ok ? w.shell.takenOver : sayReason(outcome.reason));
  };
  const removed = tab.why?.code === 'data removed';
  return (
    <div className="shell-notice not-printed">
      <Notice
        kind={removed ? 'problem' : 'caution'}
        title={removed ? w.shell.removed : w.shell.readingOnly}
        actions={
          removed ? (
            <Button kind="main" onClick={() => location.reload()}>
              {w.shell.loadAgain}
            </Button>
          ) : (
            tab.canTakeOver && (
              <Button kind="main" onClick={take}>
                {w.shell.takeOver}
              </Button>
            )
          )
        }
      >
        <p>{tab.why ? sayReason(tab.why) : w.shell.readingOnlyWhat}</p>
        {removed && <LastFiles files={lastFiles(desk)} />}
      </Notice>
    </div>
  );
}

function UpdateWaits() {
  const start = useQuestion(updateReady);
  if (!start) return null;
  return (
    <div className="shell-notice not-printed">
      <Notice title={w.shell.update} actions={<Button onClick={start}>{w.shell.updateNow}</Button>}>
        <p>{w.shell.updateWhat}</p>
      </Notice>
    </div>
  );
}
