import { useState } from 'react';
import type { TakenMany, TakenOne } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, Notice } from '../parts';
import type { TakingNow } from './useTaking';

const words = w.photos;

/** How far a row of photos is, with a way to stop that loses nothing. */
export function TakingProgress({ now, stop }: { readonly now: TakingNow; readonly stop: () => void }) {
  const [stopping, setStopping] = useState(false);
  return (
    <div className="taking" role="status">
      <p>{words.progress(now.done, now.of, now.name)}</p>
      <progress max={now.of} value={now.done} aria-label={words.progressName} />
      <Button
        size="round"
        disabled={stopping}
        onClick={() => {
          setStopping(true);
          stop();
        }}
      >
        {stopping ? words.stopping : words.stop}
      </Button>
    </div>
  );
}

const blanked = 'location blanked';

/** How it came out: what was kept, what was not and why, what to know of single ones. */
export function TakingResult({ result, close }: { readonly result: TakenMany; readonly close: () => void }) {
  const kept = result.each.filter(({ photo }) => photo);
  const refused = result.each.filter(({ problem }) => problem);
  const told = kept.filter(({ notes }) => notes.some(({ code }) => code !== blanked));
  const withoutPlace = kept.filter(({ notes }) => notes.some(({ code }) => code === blanked)).length;
  return (
    <div className="stack">
      <Notice
        title={words.keptMany(kept.length)}
        actions={
          <Button size="round" onClick={close}>
            {words.closeResult}
          </Button>
        }
      >
        {result.left > 0 && <p>{words.leftMany(result.left)}</p>}
        {withoutPlace > 0 && <p>{words.blankedMany(withoutPlace)}</p>}
      </Notice>
      {refused.length > 0 && (
        <Notice kind="problem" title={words.refusedMany(refused.length)}>
          <Files rows={refused} said={({ problem }) => (problem ? sayReason(problem) : '')} />
        </Notice>
      )}
      {told.length > 0 && (
        <Notice kind="caution" title={words.toKnowMany(told.length)}>
          <Files
            rows={told}
            said={({ notes }) =>
              notes
                .filter(({ code }) => code !== blanked)
                .map((note) => sayReason(note))
                .join(' ')
            }
          />
        </Notice>
      )}
    </div>
  );
}

function Files({ rows, said }: { readonly rows: readonly TakenOne[]; readonly said: (row: TakenOne) => string }) {
  return (
    <ul className="taken-files">
      {rows.map((row, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two files may bear one name, and the list never changes
        <li key={i}>{withName(row.name, said(row))}</li>
      ))}
    </ul>
  );
}

/** Some sentences name the file themselves. */
const withName = (name: string, said: string): string => (said.includes(name) ? said : words.fileSaid(name, said));
