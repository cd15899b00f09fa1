/** Bringing in what a person has: lists of treatments, old photos, earlier reports. */
export { daysOfPhotos, giveToRound, type PhotosOfDay } from './dayOfPhotos';
export { type Encoding, listText } from './listText';
export { takeOverList } from './takeOverList';
export { type ReportFields, takeOverReport } from './takeOverReport';
export { worksHere } from './worksHere';
