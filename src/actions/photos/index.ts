/** Stations, outlines, photos laid on one another, measuring on photos, colour readings: one file a deed. */
export { type AgreedColourFields, editAgreedColour, removeAgreedColour, setAgreedColour } from './agreedColours';
export { type CardsOfWork, cardsToPrint } from './cardsToPrint';
export { type ChangeMap, type ChangeMapOf, changeMapOf } from './changeMapOf';
export { colourAt } from './colourAt';
export {
  answersOf,
  type DotAnswer,
  type DotList,
  judgeDot,
  layCheckDots,
  layDots,
  takeBackDot,
} from './judgeDot';
export { keepMeasure, removeMeasure } from './keepMeasure';
export { type Light, lightNow, sayLight } from './lightNow';
export { changeMapDraft, keepOutlineDrawn, keepScaleDrawn, type MapDraft, mapDraft } from './mapDraft';
export { type MaskOf, type MaskSeen, maskOf, type PhotoTaps } from './maskOf';
export {
  keepTouches,
  type MeasureAtHand,
  type MeasureDraft,
  type MeasureOf,
  measureAtHand,
  type WayOfMeasuring,
  type Working,
} from './measureAtHand';
export { type MeasureOfWork, measuresOf } from './measuresOf';
export { type Measuring, measuringOf } from './measuringOf';
export { type MeasuringPlace, type PlacePatch, setMeasuringPlace } from './measuringPlace';
export type { PartFrom } from './partOnPhoto';
export { expectPhoto, noPhotoExpected, type PhotoExpected, photoExpected } from './photoExpected';
export { expectShot, photoForShot, type ShotPlace } from './photoForShot';
export { type PhotoPlace, photoForStation } from './photoForStation';
export { type PhotoSeries, type PhotoSeriesOfWork, photoSeriesOf } from './photoSeriesOf';
export { type PhotoOfWork, type PhotosOfWork, photosOfWork } from './photosOfWork';
export { type PhotoOfZone, photosOfZone } from './photosOfZone';
export { pictureData } from './pictureData';
export { pixelsUnderWay } from './pixelsOf';
export { addReading, editReading, type ReadingFields, removeReading } from './readings';
export { addSentinel, editSentinel, removeSentinel, type SentinelFields } from './sentinels';
export { setElevationScale, setElevationStation } from './setElevationScale';
export { removeOutline, setObliquity, setOutline } from './setOutline';
export { type PhotosLaid, removePhotoFit, setPhotoFit } from './setPhotoFit';
export { removeRunOff, setRunOff } from './setRunOff';
export { type Shot, type ShotList, shotList } from './shotList';
export { type DrawnOutline, type Side, sidesOf, zoneAt } from './sidesOf';
export { type PhotoSorting, removePhoto, sortPhoto } from './sortPhoto';
export {
  addStation,
  addStations,
  editStation,
  orderStations,
  removeStation,
  type StationFields,
  setStandHere,
} from './stations';
export { type TakenMany, type TakenOne, type TakingMany, takeMany } from './takeMany';
export { thingsOf } from './thingsOf';
export { type Camera, feelLevel, mayFeelLevel, openViewfinder, takeFrame } from './viewfinder';
export { type OtherPhoto, type SideOnMap, type ZoneMap, zoneMapOf } from './zoneMapOf';
