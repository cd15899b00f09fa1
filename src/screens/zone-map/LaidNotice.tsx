import type { OtherPhoto, SideOnMap } from '../../actions';
import { number, w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo } from '../shell';
import type { Laid } from './laidOn';

const words = w.zoneMap;

interface LaidNoticeProps {
  readonly laid: Laid;
  readonly side: SideOnMap;
  readonly other: OtherPhoto;
}

/** How far the outlines can be trusted on another photo, or why they are not on it. */
export function LaidNotice({ laid, side, other }: LaidNoticeProps) {
  const off = `${number(laid.off * 100, 1)} %`;
  if (laid.how === 'own') return null;
  if (laid.how === 'laid') return <p className="soft small">{words.laid(off)}</p>;
  if (laid.how === 'roughly') return <Notice kind="caution" title={words.blinkOnly(off)} />;
  const unfitted = laid.how === 'not fitted';
  return (
    <Notice
      kind={unfitted ? 'note' : 'caution'}
      title={unfitted ? words.notLaid : words.notSameStation}
      actions={
        <LinkButton to={pathTo.compare(side.elevation.body.sculpture, other.photo.thing, side.elevation.body.photo)}>
          {words.toCompare}
        </LinkButton>
      }
    >
      <p>{unfitted ? words.notLaidWhat : words.notSameStationWhat}</p>
    </Notice>
  );
}
