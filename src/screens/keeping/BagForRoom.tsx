import { useRef, useState } from 'react';
import { type BagSeen, freePhotos, photosInBag } from '../../actions';
import { bytes, sayReason, w, whole } from '../../words';
import { Button, FileButton, FileIcon, Notice, Progress } from '../parts';
import { HoldButton } from '../parts/HoldButton';
import { say, useDesk } from '../shell';

const words = w.keeping;

type Working = 'checking' | 'going';
type At =
  | { readonly at: 'start'; readonly fault?: string; readonly done?: string }
  | { readonly at: Working; readonly done?: number; readonly all?: number }
  | { readonly at: 'checked'; readonly bag: BagSeen; readonly held: number };

/** Opens the bag again, checks it whole, says how many of the chosen photos it holds, and only then lets them go. */
export function BagForRoom({ photos }: { readonly photos: readonly string[] }) {
  const desk = useDesk();
  const [now, setNow] = useState<At>({ at: 'start' });
  const leave = useRef<AbortController>(null);
  const begin = (at: Working) => {
    leave.current = new AbortController();
    setNow({ at });
    return {
      signal: leave.current.signal,
      heard: (done: number, all: number) => setNow({ at, done, all }),
    };
  };
  const open = async (file: File) => {
    const outcome = await photosInBag(file, begin('checking'));
    if (!outcome.ok) return setNow({ at: 'start', fault: sayReason(outcome.reason) });
    const held = new Set(outcome.bag.photos);
    setNow({ at: 'checked', bag: outcome.bag, held: photos.filter((name) => held.has(name)).length });
  };
  const go = async (bag: BagSeen) => {
    const outcome = await freePhotos(desk, photos, bag, begin('going'));
    if (!outcome.ok) return setNow({ at: 'start', fault: sayReason(outcome.reason) });
    const done = words.roomDone(words.photos(outcome.photos, whole(outcome.photos)), bytes(outcome.bytes));
    say(done);
    setNow({ at: 'start', done });
  };
  if (now.at !== 'start' && now.at !== 'checked')
    return (
      <Progress
        label={now.at === 'checking' ? words.roomChecking : words.roomGoing}
        done={now.done}
        all={now.all}
        onCancel={() => leave.current?.abort()}
      />
    );
  if (now.at === 'checked')
    return (
      <Notice
        kind={now.held === 0 ? 'caution' : 'note'}
        title={now.held === 0 ? words.roomHoldsNone(now.bag.name) : words.roomHolds(now.held, photos.length)}
        actions={
          <>
            {now.held > 0 && (
              <HoldButton kind="danger" onHeld={() => void go(now.bag)}>
                {words.roomDo(now.held)}
              </HoldButton>
            )}
            <Button onClick={() => setNow({ at: 'start' })}>{words.roomLeave}</Button>
          </>
        }
      >
        {now.held > 0 && now.held < photos.length && <p>{words.roomStay(photos.length - now.held)}</p>}
      </Notice>
    );
  const { fault, done } = now;
  return (
    <>
      {fault && <Notice kind="problem" title={fault} />}
      {done && <Notice title={done} />}
      <div className="row">
        <FileButton accept="" onFile={open} icon={<FileIcon />} kind="main">
          {words.roomOpen}
        </FileButton>
      </div>
    </>
  );
}
