import { useState } from 'react';
import { momentHere, setPlanned } from '../../actions';
import { seenAfter } from '../../engine/heat';
import { nameOf, type Thing } from '../../engine/record';
import { w } from '../../words';
import { Choice, Notice, PhotosHere } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { timeIn } from './typed';

const words = w.hotWork.after;
const states = ['unchanged', 'changed'] as const;

interface AfterHeatProps {
  readonly day: Thing<'hotDay'>;
  readonly insert: string;
  readonly name: string;
  readonly after: Thing<'insertAfter'> | undefined;
  /** Photos of it from before, to hold this one against. */
  readonly before: readonly string[];
  readonly by: string;
  readonly mayWrite: boolean;
}

/**
 * The insert as it is after the heat: a photo, and whether it changed. Kept as soon as both are there. What was seen before the
 * flame was lit again stands with the photos from before.
 */
export function AfterHeat({ day, insert, name, after: known, before: earlier, by, mayWrite }: AfterHeatProps) {
  const after = seenAfter(day.body, known?.body) ? known : undefined;
  const before = after ? earlier : [...earlier, ...(known?.body.photos ?? [])];
  const desk = useDesk();
  const { run, refused } = useDeed();
  const [photos, setPhotos] = useState<readonly string[]>(after?.body.photos ?? []);
  const [state, setState] = useState(after?.body.state);
  const keep = (next: { readonly photos: readonly string[]; readonly state: typeof state }) => {
    setPhotos(next.photos);
    setState(next.state);
    const { state: said } = next;
    if (!said || next.photos.length === 0) return;
    const { sculpture } = day.body;
    const body = {
      sculpture,
      insert,
      hotDay: day.thing,
      state: said,
      photos: [...next.photos],
      by,
      at: momentHere(desk),
    };
    void run(
      () => setPlanned(desk, 'insertAfter', nameOf.insertAfter(day.thing, insert), body),
      () => say(words.kept),
    );
  };
  return (
    <section className="stack tight" aria-label={words.photos(name)}>
      <h4 className="hot-name">{words.title}</h4>
      {refused && <Notice kind="problem" title={refused} />}
      {before.length > 0 && (
        <PhotosHere
          desk={desk}
          sculpture={day.body.sculpture}
          as="other"
          label={w.insertCare.photos(name)}
          photos={before}
        />
      )}
      {mayWrite ? (
        <>
          {(photos.length === 0 || !state) && <p className="soft not-printed">{words.first}</p>}
          <PhotosHere
            desk={desk}
            sculpture={day.body.sculpture}
            as="other"
            label={words.photos(name)}
            photos={photos}
            onChange={(next) => keep({ photos: next, state })}
          />
          <Choice
            label={words.state(name)}
            tiles="narrow"
            size="round"
            options={states.map((value) => ({ value, label: words.states[value] }))}
            value={state}
            onChange={(next) => keep({ photos, state: next })}
          />
        </>
      ) : (
        <>
          {after && <p className="strong">{words.states[after.body.state]}</p>}
          {after && (
            <PhotosHere
              desk={desk}
              sculpture={day.body.sculpture}
              as="other"
              label={words.photos(name)}
              photos={photos}
            />
          )}
        </>
      )}
      {after && <p className="soft small">{words.seenBy(after.body.by, timeIn(after.body.at))}</p>}
      {state === 'changed' && (
        <Notice kind="stop" title={words.states.changed}>
          <p>{words.changedWhat}</p>
        </Notice>
      )}
    </section>
  );
}
