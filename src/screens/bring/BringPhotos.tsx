import { useState } from 'react';
import type { WorkHere } from '../../engine/bring';
import { sayReason, w } from '../../words';
import { Notice, Progress } from '../parts';
import { FolderButton } from './FolderButton';
import { PhotoDays } from './PhotoDays';
import { type Brought, useBringing } from './useBringing';
import { WorkSelect } from './WorkSelect';

const words = w.bring;
/** Where a browser takes a folder its file entry says so. */
const choosesFolders = () => 'webkitdirectory' in HTMLInputElement.prototype;

/** Old photos of one work: kept one by one, then given to rounds day by day. */
export function BringPhotos({ works }: { readonly works: readonly WorkHere[] }) {
  const [work, setWork] = useState(works.length === 1 ? (works[0]?.thing ?? '') : '');
  const { now, brought, take, stop, forget } = useBringing(work);
  const choose = (thing: string) => {
    forget();
    setWork(thing);
  };
  const photos = brought?.each.flatMap(({ photo }) => photo ?? []) ?? [];
  return (
    <div className="stack">
      <p className="soft">{words.photosWhat}</p>
      {!now && <WorkSelect works={works} label={words.work} value={work} onChange={choose} />}
      {now ? (
        <Progress label={words.keeping(now.name)} done={now.done} all={now.of} onCancel={stop} />
      ) : (
        work !== '' && (
          <>
            <div className="row not-printed">
              {choosesFolders() && <FolderButton folder label={words.chooseFolder} onFiles={(f) => void take(f)} />}
              <FolderButton label={words.chooseFiles} onFiles={(f) => void take(f)} />
            </div>
            {!choosesFolders() && <p className="soft">{words.noFolders}</p>}
          </>
        )
      )}
      {brought && !now && <CameOf brought={brought} kept={new Set(photos).size} />}
      {brought && !now && photos.length > 0 && <PhotoDays sculpture={work} photos={photos} />}
    </div>
  );
}

function CameOf({ brought, kept }: { readonly brought: Brought; readonly kept: number }) {
  const refused = brought.each.filter(({ problem }) => problem);
  return (
    <>
      <Notice title={words.kept(kept)}>
        {brought.left > 0 && <p>{words.left(brought.left)}</p>}
        {brought.notPhotos > 0 && <p>{words.notPhotos(brought.notPhotos)}</p>}
      </Notice>
      {refused.length > 0 && (
        <Notice kind="problem" title={words.refused(refused.length)}>
          <ul>
            {refused.map(({ name, problem }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two files may bear one name, and the list never changes
              <li key={i} className="bring-cell">
                {words.fileSaid(name, problem ? sayReason(problem) : '')}
              </li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}
