import { type Measuring, measuringOf, photoUrl, setMeasuringPlace, tabs } from '../../actions';
import { date, w, workName } from '../../words';
import { EmptyState, LinkButton, Page, Reading } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';
import { largestTraced } from './largestTraced';
import { Overview } from './Overview';
import { PartTool } from './PartTool';
import { ToolScreen } from './ToolScreen';
import './measure.css';

const words = w.measure;

interface MeasureScreenProps {
  readonly photo: string;
  /** A zone, or a sentinel square. */
  readonly about: string;
}

/** Coverage measured on one photo: by patches traced, by dots, by its pixels. It opens where it stopped. */
export function MeasureScreen({ photo, about }: MeasureScreenProps) {
  const at = useQuestion(measuringOf(useDesk(), photo, about));
  if (at === undefined) return <Reading />;
  if (at === null)
    return (
      <EmptyState
        page
        title={words.notHere}
        actions={
          <LinkButton to={pathTo.sculptures()} kind="main">
            {w.sculptures.work.back}
          </LinkButton>
        }
      />
    );
  return <OnPhoto at={at} about={about} />;
}

function OnPhoto({ at, about }: { readonly at: Measuring; readonly about: string }) {
  const desk = useDesk();
  const photo = at.photo.thing;
  const url = useQuestion(photoUrl(desk, photo, 'whole'));
  const thumb = useQuestion(photoUrl(desk, photo, 'thumb'));
  const { mode } = useQuestion(tabs(desk));
  const fixed = mode !== 'writing';
  const { zone, sentinel, part, place, size, sculpture } = at;
  const zoneName = words.zone(zone.body.letter, zone.body.name);
  const name = sentinel ? words.sentinel(sentinel.body.which, zoneName) : zoneName;
  const kind = place.kind ?? at.kinds[0];
  const day = at.photo.body.taken?.slice(0, 10) ?? at.round?.body.date ?? '';
  const alt = words.photoOf(name, day && date(day));
  const onPlace = (patch: Parameters<typeof setMeasuringPlace>[3]) => void setMeasuringPlace(desk, photo, about, patch);
  const stop = () => onPlace({ open: undefined });
  const over = workName(sculpture);
  const open = fixed || url === null || size === null ? undefined : place.open;
  if (open === 'part' && size)
    return (
      <Page key="part" title={words.partTitle} over={name}>
        <PartTool at={at} about={about} size={size} url={url} alt={alt} />
      </Page>
    );
  if (open && open !== 'part' && kind && part && size)
    return (
      <Page key={open} title={words.way[open]} over={name}>
        {url && thumb ? (
          <ToolScreen
            of={{ photo, about, kind, way: open }}
            part={part.outline}
            size={size}
            urls={{ whole: url, thumb }}
            alt={alt}
            largestPatch={largestTraced(at, kind, size)}
            onStop={stop}
          />
        ) : (
          <Reading />
        )}
      </Page>
    );
  return (
    <Page
      key="all"
      title={name}
      over={`${over} · ${words.title}`}
      lead={words.lead}
      back={{ to: pathTo.zone(sculpture.thing, zone.thing), label: words.zoneShort(zone.body.letter) }}
    >
      <Overview at={at} about={about} name={name} kind={kind} url={url} alt={alt} fixed={fixed} onPlace={onPlace} />
    </Page>
  );
}
