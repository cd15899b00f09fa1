import { daysOfPhotos, giveToRound, type PhotosOfDay, type PhotosOfWork, photosOfWork, photoUrl } from '../../actions';
import { date, roundName, w } from '../../words';
import { LinkButton, Notice, Reading, Section } from '../parts';
import { LongList } from '../parts/LongList';
import { Select } from '../parts/Select';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';

const words = w.bring;
/** Of one day: enough to see what it was. */
const thumbsShown = 8;
const daysAtOnce = 20;
const several = 'several';

interface PhotoDaysProps {
  readonly sculpture: string;
  readonly photos: readonly string[];
}

/** The photos just brought in, day by day; each day is given to a round by hand, or to none. */
export function PhotoDays({ sculpture, photos }: PhotoDaysProps) {
  const work = useQuestion(photosOfWork(useDesk(), sculpture));
  if (!work) return <Reading />;
  return (
    <Section
      title={words.days}
      lead={words.daysLead}
      actions={<LinkButton to={pathTo.photos(sculpture)}>{words.toPhotos}</LinkButton>}
    >
      <LongList
        rows={daysOfPhotos(work, photos)}
        className="bring-rows"
        atOnce={daysAtOnce}
        show={(day) => (
          <li key={day.day}>
            <Day day={day} work={work} />
          </li>
        )}
      />
    </Section>
  );
}

function Day({ day, work }: { readonly day: PhotosOfDay; readonly work: PhotosOfWork }) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const name = day.day === '' ? words.noDay : date(day.day);
  const rest = day.photos.length - thumbsShown;
  const give = (round: string) => {
    if (round === several) return;
    void run(
      () => giveToRound(desk, day.photos, round || undefined),
      () => say(words.given),
    );
  };
  return (
    <div className="stack tight">
      <p className="strong">
        {name} · {words.photos(day.photos.length)}
      </p>
      <div className="bring-thumbs">
        {day.photos.slice(0, thumbsShown).map((photo) => (
          <Small key={photo} photo={photo} />
        ))}
      </div>
      {rest > 0 && <p className="soft">{words.more(rest)}</p>}
      {refused && <Notice kind="problem" title={refused} />}
      <Select
        label={day.day === '' ? words.roundOfNoDay : words.roundOf(name)}
        value={day.round ?? several}
        onChange={give}
        options={[
          ...(day.round === undefined ? [{ value: several, label: words.several }] : []),
          { value: '', label: words.noRound },
          ...work.rounds.map((round) => ({ value: round.thing, label: roundName(round) })),
        ]}
      />
    </div>
  );
}

function Small({ photo }: { readonly photo: string }) {
  const url = useQuestion(photoUrl(useDesk(), photo, 'thumb'));
  return url ? <img src={url} alt="" loading="lazy" decoding="async" /> : <span className="bring-no-thumb" />;
}
