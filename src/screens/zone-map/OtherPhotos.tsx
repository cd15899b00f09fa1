import type { SideOnMap } from '../../actions';
import { date, w } from '../../words';
import { Select } from '../parts/Select';

const words = w.zoneMap;
const own = '';

interface OtherPhotosProps {
  readonly side: SideOnMap;
  readonly chosen: string | undefined;
  readonly onChoose: (photo: string | undefined) => void;
}

/** Other years from the same station, under the same outlines. Nothing where there is none. */
export function OtherPhotos({ side, chosen, onChoose }: OtherPhotosProps) {
  if (side.others.length === 0) return null;
  return (
    <div className="not-printed">
      <Select
        label={words.photo}
        value={chosen ?? own}
        onChange={(photo) => onChoose(photo === own ? undefined : photo)}
        options={[
          { value: own, label: words.ownPhoto },
          ...side.others.map(({ photo, day }) => ({
            value: photo.thing,
            label: words.otherPhoto(day ? date(day) : words.dayNotKnown),
          })),
        ]}
      />
    </div>
  );
}
