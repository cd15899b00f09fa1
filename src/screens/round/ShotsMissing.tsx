import { type ShotList, shotList } from '../../actions';
import { w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.stations.shots;

/** Stations and sentinel squares this round has no photo of yet, while there is still light to take one. */
export function ShotsMissing({ sculpture, round }: { readonly sculpture: string; readonly round: string }) {
  const list = useQuestion(shotList(useDesk(), sculpture, round));
  const missing = list?.shots.filter(({ of, photos }) => of !== 'zone' && photos.length === 0) ?? [];
  if (!list || missing.length === 0) return null;
  return (
    <Notice
      kind="caution"
      title={words.missingTitle(missing.length)}
      actions={
        <LinkButton to={pathTo.shots(sculpture)} size="round">
          {words.missingLink}
        </LinkButton>
      }
    >
      <ul className="listed">
        {missing.map(({ thing }) => (
          <li key={thing}>{nameIn(list, thing)}</li>
        ))}
      </ul>
    </Notice>
  );
}

const nameIn = ({ stations, sentinels, zones }: ShotList, thing: string): string => {
  const station = stations.find((each) => each.thing === thing)?.body;
  if (station) return w.stations.nameOf(station.letter, station.aim);
  const square = sentinels.find((each) => each.thing === thing)?.body;
  const zone = zones.find((each) => each.thing === square?.zone)?.body;
  return square ? w.stations.squareOf(square.which, zone?.letter ?? '') : '';
};
