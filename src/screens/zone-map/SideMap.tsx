import { useMemo } from 'react';
import { type OtherPhoto, photoUrl, type SideOnMap, type ZoneMap } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { PhotoStage } from '../parts';
import { useDesk, useQuestion } from '../shell';
import { LaidNotice } from './LaidNotice';
import { laidOn } from './laidOn';
import { MapDrawing } from './MapDrawing';
import { placedZones } from './placed';
import type { Shading } from './shading/shading';
import { sizeUnknown } from './sizeUnknown';

interface SideMapProps {
  readonly side: SideOnMap;
  readonly title: string;
  readonly zones: readonly Thing<'zone'>[];
  readonly shading: Shading | undefined;
  readonly map: ZoneMap;
  readonly to: (zone: string) => string;
  /** Another photo of the station in place of the side's own. */
  readonly other: OtherPhoto | undefined;
}

/** One side with its zones over the picture, or over another photo of its station where the outlines can be laid on that. */
export function SideMap({ side, title, zones, shading, map, to, other }: SideMapProps) {
  const photo = other?.photo ?? side.photo;
  const url = useQuestion(photoUrl(useDesk(), photo?.thing ?? side.elevation.body.photo, 'whole'));
  const laid = useMemo(() => laidOn(side, other, map.fits), [side, other, map.fits]);
  const placed = useMemo(() => {
    const { size, through } = laid;
    return through ? placedZones(zones, side.outlines, side.size ?? sizeUnknown, { size, through }) : [];
  }, [zones, side, laid]);
  const alt = w.zoneMap.mapOf(title, side.elevation.body.side);
  return (
    <div className="stack">
      <PhotoStage url={url} alt={alt} size={laid.size}>
        <MapDrawing placed={placed} shading={shading} runOffs={map.runOffs} to={to} />
      </PhotoStage>
      {other && <LaidNotice laid={laid} side={side} other={other} />}
    </div>
  );
}
