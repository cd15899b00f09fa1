import { changeMapOf } from '../../actions';
import { coverageNumbers, isRefused, type PhotoFit } from '../../engine/photo';
import { date, number, w } from '../../words';
import { Notice, PhotoStage, Reading, stageHeight, stagePath, stageWidth } from '../parts';
import { MapSwatch } from '../parts/MapSwatch';
import { Reasons } from '../parts/Reasons';
import { useDesk, useQuestion } from '../shell';
import '../parts/plainTable.css';
import { type Spots, tapsOf } from './keptSpots';
import type { Looked } from './looked';
import type { PartToCompare } from './partsToCompare';

const words = w.compare;

interface ChangeShownProps {
  readonly earlier: Looked;
  readonly later: Looked;
  readonly fit: PhotoFit;
  readonly part: PartToCompare;
  readonly before: Spots;
  readonly after: Spots;
}

/** To a tenth: small shares are what the first years of a return look like. */
const percent = (value: number): string => `${number(value * 100, 1)} %`;

/** The change map over the later photo, with what each marking means and how much there is of it. */
export function ChangeShown({ earlier, later, fit, part, before, after }: ChangeShownProps) {
  const asked = {
    earlier: earlier.row.photo.thing,
    later: later.row.photo.thing,
    fit,
    part: part.outline,
    samples: { earlier: tapsOf(before), later: tapsOf(after) },
    // Two photos lie no nearer on each other than a hand touches, and no nearer than their own pairs say.
    edge: Math.max(coverageNumbers.hand.value / 2, fit.residual.share),
  };
  const map = useQuestion(changeMapOf(useDesk(), asked));
  if (map === undefined) return <Reading>{words.working}</Reading>;
  if (isRefused(map))
    return (
      <Notice kind="caution" title={words.noMap}>
        <Reasons reasons={map.refused} />
      </Notice>
    );
  const rows = [
    { kind: 'newly', mark: 'newly', told: map.newly },
    { kind: 'noLonger', mark: 'no longer', told: map.noLonger },
    { kind: 'still', mark: 'still', told: map.still },
    { kind: 'neither', mark: undefined, told: { value: map.neither } },
    { kind: 'leftOut', mark: 'left out', told: { value: map.leftOut } },
  ] as const;
  const d = stagePath(part.outline, later.size);
  return (
    <figure className="stack change-shown">
      <figcaption className="strong">
        {part.name}: {date(earlier.row.day)} → {date(later.row.day)}
      </figcaption>
      <PhotoStage url={later.url} alt={words.mapAlt(date(later.row.day))} size={later.size}>
        <image href={map.overlay} width={stageWidth} height={stageHeight(later.size)} preserveAspectRatio="none" />
        {part.zone && (
          <g className="part-line">
            <path className="under" d={d} />
            <path d={d} />
          </g>
        )}
      </PhotoStage>
      <table className="plain-table change-table">
        <caption>{words.map}</caption>
        <thead>
          <tr>
            <th scope="col">{part.name}</th>
            <th scope="col" className="of-number">
              {words.shareOfPart}
            </th>
            <th scope="col" className="of-number">
              {words.range}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ kind, told, mark }) => (
            <tr key={kind}>
              <th scope="row">
                <span className="change-key">
                  {mark && <MapSwatch of={mark} />}
                  {words.kindsOfChange[kind]}
                </span>
              </th>
              <td className="of-number">{percent(told.value)}</td>
              <td className="of-number">{'low' in told ? `${number(told.low * 100, 1)}–${percent(told.high)}` : ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft small">{words.rangeWhat}</p>
      <Reasons reasons={map.reasons} />
    </figure>
  );
}
