import type { PhotoOfWork, PhotoSeries, PhotoSeriesOfWork } from '../../actions';

export interface ChosenPair {
  readonly series: PhotoSeries | undefined;
  /** What the two can be chosen from, oldest first. */
  readonly photos: readonly PhotoOfWork[];
  readonly earlier: PhotoOfWork;
  readonly later: PhotoOfWork;
}

const lastTwo = ({ photos }: PhotoSeries): readonly [PhotoOfWork, PhotoOfWork] | undefined => {
  const [earlier, later] = photos.slice(-2);
  return earlier && later ? [earlier, later] : undefined;
};

/**
 * The two photos an address names, the earlier first whichever way round it names them, with the series both are of. Without an
 * address the last two of the first series that has two. 'gone' where one of them is no more.
 */
export const chosenPair = (
  work: PhotoSeriesOfWork,
  one: string | undefined,
  other: string | undefined,
): ChosenPair | 'gone' | undefined => {
  if (!one || !other) {
    const series = work.series.find(lastTwo);
    const two = series && lastTwo(series);
    return two && { series, photos: series.photos, earlier: two[0], later: two[1] };
  }
  const named = (thing: string) => work.photos.find(({ photo }) => photo.thing === thing);
  const [first, second] = [named(one), named(other)];
  if (!first || !second) return 'gone';
  const series = work.series.find(({ photos }) => photos.includes(first) && photos.includes(second));
  const turned = first.day > second.day;
  return {
    series,
    photos: series?.photos ?? work.photos,
    earlier: turned ? second : first,
    later: turned ? first : second,
  };
};

/** The two of another series that are looked at first: its last. */
export const firstPairOf = lastTwo;
