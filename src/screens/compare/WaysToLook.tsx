import { useState } from 'react';
import type { PhotoSeriesOfWork } from '../../actions';
import type { PhotoFit } from '../../engine/photo';
import { w } from '../../words';
import { Choice } from '../parts';
import { Beside } from './Beside';
import { Blink } from './Blink';
import { ChangeOnPhoto } from './ChangeOnPhoto';
import type { Looked } from './looked';
import { Wipe } from './Wipe';

const words = w.compare;

type Way = keyof typeof words.ways;

interface WaysToLookProps {
  readonly work: PhotoSeriesOfWork;
  readonly earlier: Looked;
  readonly later: Looked;
  readonly fit: PhotoFit | undefined;
}

/** What a residual allows: on each other up to the line of one station, the change map only where pixels meet. */
const allowed = (fit: PhotoFit | undefined): readonly Way[] => {
  if (!fit || fit.verdict === 'not the same station') return ['beside'];
  return fit.verdict === 'same' ? ['beside', 'wipe', 'blink', 'change'] : ['beside', 'wipe', 'blink'];
};

export function WaysToLook({ work, earlier, later, fit }: WaysToLookProps) {
  const [chosen, setChosen] = useState<Way>('wipe');
  const ways = allowed(fit);
  const way = ways.includes(chosen) ? chosen : 'beside';
  return (
    <>
      {ways.length > 1 && (
        <div className="not-printed">
          <Choice
            label={words.look}
            labelUnseen
            tiles="narrow"
            options={ways.map((value) => ({ value, label: words.ways[value] }))}
            value={way}
            onChange={setChosen}
          />
        </div>
      )}
      {way === 'beside' || !fit ? (
        <Beside earlier={earlier} later={later} />
      ) : way === 'wipe' ? (
        <Wipe earlier={earlier} later={later} fit={fit} />
      ) : way === 'blink' ? (
        <Blink earlier={earlier} later={later} fit={fit} />
      ) : (
        <ChangeOnPhoto work={work} earlier={earlier} later={later} fit={fit} />
      )}
    </>
  );
}
