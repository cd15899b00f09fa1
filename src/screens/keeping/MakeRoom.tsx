import { useState } from 'react';
import { type FreeableWork, freeableWorks, type WhichPhotos } from '../../actions';
import { bytes, w, whole } from '../../words';
import { Choice, Choices, Notice, Reading, Section } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { BagForRoom } from './BagForRoom';

const words = w.keeping;

/** Photos may leave this device once the bag that holds them was opened again and every one in it was found whole. */
export function MakeRoom() {
  const works = useQuestion(freeableWorks(useDesk()));
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [which, setWhich] = useState<WhichPhotos>('older');
  if (!works) return <Reading />;
  const shown = works.filter((work) => work[which].photos.length > 0);
  const going = shown.filter(({ sculpture }) => chosen.includes(sculpture));
  const photos = going.flatMap((work) => work[which].photos);
  return (
    <Section title={words.room} lead={words.roomLead}>
      {works.length === 0 ? (
        <p>{words.roomNone}</p>
      ) : (
        <>
          <Choice
            label={words.roomWhich}
            tiles="full"
            value={which}
            onChange={setWhich}
            options={[
              { value: 'older', label: words.roomOlder, detail: words.roomOlderWhat },
              { value: 'all', label: words.roomAll, detail: words.roomAllWhat },
            ]}
          />
          {shown.length === 0 ? (
            <p>{words.roomNoneOlder}</p>
          ) : (
            <Choices
              label={words.roomWorks}
              values={chosen}
              onChange={setChosen}
              options={shown.map((work) => ({
                value: work.sculpture,
                label: `${work.number} ${work.title}`.trim(),
                detail: sizeOf(work, which),
              }))}
            />
          )}
          {photos.length > 0 && (
            <>
              <p className="strong">
                {words.roomChosen(
                  words.photos(photos.length, whole(photos.length)),
                  bytes(going.reduce((sum, work) => sum + work[which].bytes, 0)),
                )}
              </p>
              <Notice kind="caution" title={words.roomKeep} />
              <BagForRoom key={`${which} ${chosen.join(' ')}`} photos={photos} />
            </>
          )}
        </>
      )}
    </Section>
  );
}

const sizeOf = (work: FreeableWork, which: WhichPhotos): string =>
  words.roomOf(words.photos(work[which].photos.length, whole(work[which].photos.length)), bytes(work[which].bytes));
