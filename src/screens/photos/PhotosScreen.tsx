import { useDeferredValue, useState } from 'react';
import {
  expectPhoto,
  keepPhoto,
  noPhotoExpected,
  type PhotoExpected,
  type PhotosOfWork,
  photoForStation,
  photosOfWork,
  setSetting,
  settings,
} from '../../actions';
import { w } from '../../words';
import { EmptyState, Notice, Page, Reading, Section, Tick } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { ManyFiles } from './ManyFiles';
import { NotHereYet } from './NotHereYet';
import { PhotoExpectedNotice } from './PhotoExpectedNotice';
import { PhotoGroups } from './PhotoGroups';
import { isUnsorted } from './placeNames';
import { TakingProgress, TakingResult } from './TakingNotices';
import { useTaking } from './useTaking';
import './photos.css';

const words = w.photos;

/** All photos of a work by round and place; many taken in at once, each sorted afterwards. */
export function PhotosScreen({ sculpture }: { readonly sculpture: string }) {
  const work = useQuestion(photosOfWork(useDesk(), sculpture));
  if (work === undefined) return <Reading />;
  if (work === null) return <NotHereYet />;
  return <Photos work={work} />;
}

function Photos({ work }: { readonly work: PhotosOfWork }) {
  const desk = useDesk();
  const { thing, body } = work.sculpture;
  const { now, result, take, stop, close } = useTaking(thing);
  const { run, refused } = useDeed();
  const keepExpected = (expected: PhotoExpected, file: File) =>
    void run(
      () => keptFor(expected, file),
      () => say(w.round.photo.kept),
    );
  const keptFor = async ({ station, sentinel, zone, round }: PhotoExpected, file: File) => {
    const facts = round ? { round } : {};
    if (station) return photoForStation(desk, thing, { station }, file, facts);
    if (sentinel) return photoForStation(desk, thing, { sentinel }, file, facts);
    const outcome = await keepPhoto(desk, thing, file, zone ? 'zone' : 'other', {
      ...facts,
      ...(zone ? { zone } : {}),
    });
    if (outcome.ok) await noPhotoExpected(desk);
    return outcome;
  };
  // The list stands still while many are taken in: drawn anew after each it would hold up every touch.
  const listed = useDeferredValue(useStill(work, now !== undefined));
  const unsorted = work.photos.filter(isUnsorted).length;
  return (
    <Page
      title={words.title}
      over={body.title}
      lead={work.photos.length > 0 ? words.lead(work.photos.length, unsorted) : undefined}
      back={{ to: pathTo.sculpture(thing), label: words.back }}
    >
      <PhotoExpectedNotice work={work} keep={keepExpected} />
      {refused && <Notice kind="problem" title={refused} />}
      <div className="not-printed">
        <Section title={words.take} lead={words.takeWhat}>
          {now ? (
            <TakingProgress now={now} stop={stop} />
          ) : (
            <div className="row">
              <ManyFiles onFiles={(files) => void take(files)} />
              <PhotoTake
                what={words.one}
                expect={() => expectPhoto(desk, { sculpture: thing }).then(() => true)}
                keep={(file) => void take([file])}
              />
            </div>
          )}
          {result && <TakingResult result={result} close={close} />}
          <KeepPlace />
        </Section>
      </div>
      {listed.photos.length === 0 ? (
        <EmptyState title={words.emptyTitle}>
          <p>{words.empty}</p>
        </EmptyState>
      ) : (
        <PhotoGroups work={listed} />
      )}
    </Page>
  );
}

/** The value as it was when it was last not to stand still. */
const useStill = <T,>(value: T, still: boolean): T => {
  const [held, setHeld] = useState(value);
  if (!still && held !== value) setHeld(value);
  return still ? held : value;
};

function KeepPlace() {
  const { keepPlace } = useQuestion(settings);
  return (
    <Tick
      label={words.keepPlace}
      detail={words.keepPlaceWhat}
      checked={keepPlace}
      onChange={(value) => setSetting('keepPlace', value)}
    />
  );
}
