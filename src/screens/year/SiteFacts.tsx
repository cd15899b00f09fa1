import { useState } from 'react';
import { keepPhoto, type YearAround } from '../../actions';
import type { OrderOfVisits } from '../../engine/year';
import { fieldText, measureNumber, sayReason, typedMeasure, w, workName } from '../../words';
import { Button, CameraIcon, Field, FileButton, Notice, Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { keepSite } from './keepSite';

const words = w.year.sitePlan;
const widest = 100_000;

interface SiteFactsProps {
  readonly around: YearAround;
  readonly walk: OrderOfVisits;
  readonly chosen: string;
  /** Its name, in words. */
  readonly what: string;
  readonly placed: boolean;
}

/** The walk in words, the picture under it, and how many metres it is wide. */
export function SiteFacts({ around, walk, chosen, what, placed }: SiteFactsProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const [fault, setFault] = useState('');
  const { site, works } = around;
  const [wide, setWide] = useState(fieldText('length', site?.body.metresWide));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['width of the site', 'all'], { wide: [wide, setWide] });
  const metres = typedMeasure('length', wide);
  const right = metres !== undefined && metres > 0 && metres <= widest;
  const kept = site?.body.metresWide;
  const names = new Map(works.map(({ sculpture }) => [sculpture.thing, workName(sculpture)]));
  const keepPicture = async (file: File) => {
    const [first] = works;
    if (!first) return;
    // A photo belongs to a work; that of the site is kept with the first.
    const came = await keepPhoto(desk, first.sculpture.thing, file, 'other', { note: words.title });
    setFault(came.ok ? '' : sayReason(came.reason));
    if (came.ok)
      await run(
        () => keepSite(desk, site, { photo: came.photo }),
        () => say(words.saved),
      );
  };
  const takeOff = () =>
    run(
      () =>
        keepSite(
          desk,
          site,
          chosen === 'start'
            ? { start: undefined }
            : { spots: (site?.body.spots ?? []).filter(({ work }) => work !== chosen) },
        ),
      () => say(words.saved),
    );
  return (
    <>
      {(refused || fault) && <Notice kind="problem" title={refused ?? fault} />}
      <div className="row not-printed">
        {placed && (
          <Button kind="quiet" disabled={busy} onClick={takeOff}>
            {words.takeOff(what)}
          </Button>
        )}
        <FileButton accept="image/*" icon={<CameraIcon />} onFile={(file) => void keepPicture(file)}>
          {words.picture}
        </FileButton>
        {site?.body.photo && (
          <Button
            kind="quiet"
            disabled={busy}
            onClick={() =>
              run(
                () => keepSite(desk, site, { photo: undefined }),
                () => say(words.saved),
              )
            }
          >
            {words.pictureOff}
          </Button>
        )}
      </div>
      <Section title={words.walk}>
        {walk.order.length < 2 ? (
          <p className="soft">{words.walkNone}</p>
        ) : (
          <>
            <ol>
              {walk.order.map((work) => (
                <li key={work}>{names.get(work) ?? work}</li>
              ))}
            </ol>
            {kept && <p className="strong">{words.walkMetres(measureNumber('length', walk.length * kept, 0))}</p>}
            <Reasons reasons={walk.reasons} />
          </>
        )}
        {typed.line}
        <div className="row not-printed">
          <div className="grow">
            <Field
              label={words.wide}
              hint={words.wideHint}
              takes="length"
              value={wide}
              onChange={setWide}
              error={tried && !right ? words.wideWrong : undefined}
              short
              optional
            />
          </div>
          <Button
            disabled={busy}
            onClick={() => {
              setTried(true);
              if (right)
                void run(
                  () => keepSite(desk, site, { metresWide: metres }),
                  () => {
                    typed.kept();
                    say(words.saved);
                  },
                );
            }}
          >
            {words.wideSave}
          </Button>
        </div>
      </Section>
    </>
  );
}
