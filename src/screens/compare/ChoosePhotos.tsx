import type { PhotoSeriesOfWork } from '../../actions';
import { w } from '../../words';
import { LinkButton } from '../parts';
import { Select } from '../parts/Select';
import { pathTo } from '../shell';
import { type ChosenPair, firstPairOf } from './chosenPair';
import '../parts/plainTable.css';
import { photoName, seriesName } from './seriesNames';

const words = w.compare;

interface ChoosePhotosProps {
  readonly work: PhotoSeriesOfWork;
  readonly pair: ChosenPair;
  readonly onChoose: (one: string, other: string) => void;
}

/** From where, and which two. Only spots with two photos can be chosen. */
export function ChoosePhotos({ work, pair, onChoose }: ChoosePhotosProps) {
  const { earlier, later, series } = pair;
  const open = work.series.filter(firstPairOf);
  const options = pair.photos.map((row) => ({ value: row.photo.thing, label: photoName(row) })).reverse();
  const take = (of: string) => {
    const chosen = open.find((one) => one.of.thing === of);
    const two = chosen && firstPairOf(chosen);
    if (two) onChoose(two[0].photo.thing, two[1].photo.thing);
  };
  return (
    <>
      {series && <p className="only-printed strong">{seriesName(work, series)}</p>}
      <div className="stack not-printed">
        <div className="fields compare-choose">
          {series && (
            <Select
              label={words.from}
              value={series.of.thing}
              onChange={take}
              options={open.map((one) => ({
                value: one.of.thing,
                label: words.seriesOption(seriesName(work, one), one.photos.length),
              }))}
            />
          )}
          <Select
            label={words.earlier}
            value={earlier.photo.thing}
            onChange={(photo) => onChoose(photo, later.photo.thing)}
            options={options}
          />
          <Select
            label={words.later}
            value={later.photo.thing}
            onChange={(photo) => onChoose(earlier.photo.thing, photo)}
            options={options}
          />
        </div>
        {series && 'letter' in series.of.body && (
          <div className="row">
            <LinkButton kind="quiet" to={pathTo.strip(work.sculpture.thing, series.of.thing)}>
              {words.toStrip}
            </LinkButton>
          </div>
        )}
      </div>
    </>
  );
}
