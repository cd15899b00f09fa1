import { useRef, useState } from 'react';
import { expectPhoto, mayFeelLevel, type PhotosOfWork, photoForStation, photoUrl, takeFrame } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { cautionsAt } from '../../engine/trade';
import { date, w } from '../../words';
import { Button, CameraIcon, Choice, Notice, Page } from '../parts';
import { PhotoTake } from '../parts/PhotoTake';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';
import { type Over, Seen } from './Seen';
import { StationFacts } from './StationFacts';
import { TakenNotice } from './TakenNotice';
import { useCamera } from './useCamera';
import { useLean } from './useLean';
import './viewfinder.css';

const words = w.photos.viewfinder;
const lights = ['open shade', 'overcast', 'sun', 'artificial'] as const;
const overs = ['half', 'lines', 'none'] as const;

interface ViewfinderProps {
  readonly work: PhotosOfWork;
  readonly station: PhotosOfWork['stations'][number];
}

/** The camera is started by a touch; each photo is kept as it is taken. */
export function Viewfinder({ work, station }: ViewfinderProps) {
  const desk = useDesk();
  const { thing: sculpture, body: sculptureBody } = work.sculpture;
  const { stands, start } = useCamera();
  const video = useRef<HTMLVideoElement>(null);
  const [over, setOver] = useState<Over>('half');
  const [light, setLight] = useState<BodyOf<'photo'>['light']>();
  const [format, setFormat] = useState<'portrait' | 'landscape'>();
  const [kept, setKept] = useState(false);
  const { run, refused, busy } = useDeed();
  const lean = useLean(stands.is === 'on');
  // The one taken a moment ago is not what the next is laid on: the earliest this screen saw stays.
  const [before] = useState(() =>
    work.photos.find((row) => row.photo.body.station === station.thing && !row.photo.body.flaw),
  );
  const facts = light ? { light } : {};
  const keep = (file: Blob, taken?: string) =>
    photoForStation(desk, sculpture, { station: station.thing }, file, { ...facts, ...(taken ? { taken } : {}) });
  const told = () => {
    setKept(true);
    say(words.kept);
  };
  const take = () => {
    if (stands.is !== 'on' || !video.current) return;
    const seen = video.current;
    void run(async () => {
      const frame = await takeFrame(desk, stands.camera, seen);
      return frame.ok ? keep(frame.file, frame.taken) : frame;
    }, told);
  };
  const begin = () => {
    void mayFeelLevel();
    void start();
  };
  const name = w.photos.station(station.body.letter, station.body.aim);
  const earlier = before && formatOf(before.photo.body);
  return (
    <Page
      title={words.title(station.body.letter)}
      over={sculptureBody.title}
      lead={words.lead(station.body.aim)}
      back={{ to: pathTo.shots(sculpture), label: words.back }}
      actions={
        stands.is === 'on' && (
          <Button kind="main" size="big" icon={<CameraIcon />} disabled={busy} onClick={take}>
            {busy ? words.taking : words.take}
          </Button>
        )
      }
    >
      {stands.is !== 'on' && <StationFacts body={station.body} />}
      {refused && <Notice kind="problem" title={refused} />}
      {kept && <TakenNotice what={name} sculpture={sculpture} undone={() => setKept(false)} />}
      {stands.is === 'on' && earlier && format && earlier !== format && (
        <Notice kind="caution" title={words.otherWay[earlier]} />
      )}
      {stands.is === 'on' ? (
        <div className="viewfinder">
          <SeenWith photo={before?.photo.thing} camera={stands.camera} {...{ video, over, lean }} ready={setFormat} />
          <div className="viewfinder-side stack">
            {lean !== undefined && <p className="lean strong">{leans(lean)}</p>}
            <p className="soft">{before ? words.last(date(before.day)) : words.noLast}</p>
            {before && (
              <Choice
                label={words.over}
                size="round"
                tiles="narrow"
                value={over}
                onChange={setOver}
                options={overs.map((value) => ({ value, label: words.overs[value] }))}
              />
            )}
          </div>
        </div>
      ) : (
        <div className="stack">
          {cautionsAt('photo').map((caution) => (
            <Notice key={caution.id} kind="caution" title={caution.text} />
          ))}
          {stands.is === 'refused' && (
            <Notice kind="problem" title={words.noCamera}>
              {<p>{stands.why}</p>}
            </Notice>
          )}
          <p>{words.startWhat}</p>
          <Button kind="main" size="big" icon={<CameraIcon />} disabled={stands.is === 'starting'} onClick={begin}>
            {stands.is === 'starting' ? words.starting : words.start}
          </Button>
          <p className="soft">{words.own}</p>
          <div className="row">
            <PhotoTake
              what={name}
              expect={() => expectPhoto(desk, { sculpture, station: station.thing }).then(() => true)}
              keep={(file) => void run(() => keep(file), told)}
            />
          </div>
        </div>
      )}
      {stands.is === 'on' && <StationFacts body={station.body} />}
      <Choice
        label={w.photos.light}
        size="round"
        tiles="narrow"
        value={light}
        onChange={setLight}
        options={lights.map((value) => ({ value, label: w.photos.lights[value] }))}
      />
    </Page>
  );
}

type SeenWithProps = Omit<Parameters<typeof Seen>[0], 'last'> & { readonly photo: string | undefined };

function SeenWith({ photo, ...props }: SeenWithProps) {
  return photo ? <SeenOver photo={photo} {...props} /> : <Seen last={null} {...props} />;
}

function SeenOver({ photo, ...props }: SeenWithProps & { readonly photo: string }) {
  return <Seen last={useQuestion(photoUrl(useDesk(), photo, 'whole'))} {...props} />;
}

const formatOf = ({ width, height }: BodyOf<'photo'>): 'portrait' | 'landscape' | undefined => {
  if (!width || !height) return undefined;
  return width > height ? 'landscape' : 'portrait';
};

const leans = (lean: number): string => {
  if (lean === 0) return words.level;
  return lean > 0 ? words.leansRight(String(lean)) : words.leansLeft(String(-lean));
};
