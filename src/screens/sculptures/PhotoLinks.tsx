import { thingsOf } from '../../actions';
import { w } from '../../words';
import { Section } from '../parts';
import { LinkLines } from '../parts/LinkLines';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.photoLinks;

/** What is photographed of the work, and what can be done with it. */
export function PhotoLinks({ sculpture }: { readonly sculpture: string }) {
  const desk = useDesk();
  const photos = useQuestion(thingsOf(desk, 'photo', sculpture))?.length;
  const stations = useQuestion(thingsOf(desk, 'station', sculpture))?.length;
  const squares = useQuestion(thingsOf(desk, 'sentinel', sculpture))?.length;
  const readings = useQuestion(thingsOf(desk, 'reading', sculpture))?.length;
  const rows = [
    { to: pathTo.map(sculpture), name: words.map, what: words.mapWhat },
    {
      to: pathTo.stations(sculpture),
      name: words.stations,
      what: stations === undefined || squares === undefined ? undefined : words.stationsWhat(stations, squares),
    },
    { to: pathTo.shots(sculpture), name: words.shots, what: words.shotsWhat },
    {
      to: pathTo.photos(sculpture),
      name: words.all,
      what: photos === undefined ? undefined : words.allWhat(photos),
    },
    { to: pathTo.compare(sculpture), name: words.compare, what: words.compareWhat },
    {
      to: pathTo.colour(sculpture),
      name: words.colour,
      what: readings === undefined ? undefined : words.colourWhat(readings),
    },
  ];
  return (
    <div className="not-printed">
      <Section title={words.title}>
        <LinkLines rows={rows} />
      </Section>
    </div>
  );
}
