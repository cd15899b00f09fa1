import { addDays, areaOn, endOf, type Reason } from '../record';
import { exposures, treatmentOf } from '../trade';
import { optionNumbers } from './numbers';
import { because } from './reasonCodes';
import { monthsByZone, type Situation } from './situation';
import { speaks } from './speaks';

/** What the record shows of a work that bears on the choice, the gravest first. */
export const signsOf = (situation: Situation): readonly Reason[] => [
  ...stopWords(situation),
  ...causesOf(situation),
  ...holdsSay(situation),
  ...greenSays(situation),
  ...historySays(situation),
];

/** The signs that speak for a way to go on, and those against it. */
export const speaking = (
  sort: string,
  signs: readonly Reason[],
): { readonly for: Reason[]; readonly against: Reason[] } => {
  const rows: Readonly<Record<string, { readonly for: readonly string[]; readonly against: readonly string[] }>> =
    speaks;
  return {
    for: signs.filter(({ code }) => rows[code]?.for.includes(sort)),
    against: signs.filter(({ code }) => rows[code]?.against.includes(sort)),
  };
};

const stopWords = ({ need }: Situation): Reason[] => {
  const kinds = [...new Set(need?.classes.zones.flatMap(({ stopWords: seen }) => seen))];
  return kinds.length > 0 ? [because('option: stop word', { kinds: kinds.join(', ') })] : [];
};

const isCause = new Set(exposures.filter(({ sort }) => sort === 'cause').map(({ id }) => id));

const causesOf = ({ record, causes, today }: Situation): Reason[] => {
  const open = causes.filter(({ body }) => body.state === 'open' || body.state === 'being removed');
  const months = optionNumbers.waitAfterCause.value;
  const since = addDays(today, -Math.round(months * 30.4375));
  const removed = [
    ...causes.flatMap(({ body }) => (body.state === 'removed' && body.changed ? [body.changed] : [])),
    ...record.treatments.flatMap(({ body }) => (body.type === 'cause removed' ? [body.date] : [])),
  ].filter((date) => date > since && date <= today);
  const last = removed.sort().at(-1);
  const spoken = new Set(causes.flatMap(({ body }) => body.zones));
  const within = new Map<string, number>();
  for (const zone of record.zones) {
    if (endOf(zone) !== undefined || spoken.has(zone.thing)) continue;
    for (const code of zone.body.exposure) if (isCause.has(code)) within.set(code, (within.get(code) ?? 0) + 1);
  }
  return [
    ...(open.length > 0 ? [because('option: cause open', { count: open.length })] : []),
    ...[...within].map(([exposure, zones]) => because('option: cause within reach', { zones, exposure })),
    ...(last === undefined ? [] : [because('option: cause just removed', { date: last, months })]),
  ];
};

const holdsSay = (situation: Situation): Reason[] => {
  const { advice, holds, record } = situation;
  const zones = monthsByZone(situation);
  if (zones.length === 0) return [];
  const known = zones.flatMap(({ zone, months }) => (months ? [{ zone, value: months.value }] : []));
  const worst = known.reduce<(typeof known)[number] | undefined>(
    (a, b) => (a && a.value <= b.value ? a : b),
    undefined,
  );
  const living = new Set(record.zones.filter((zone) => endOf(zone) === undefined).map(({ thing }) => thing));
  const asks = advice.filter(({ zone, asksConservator }) => asksConservator && living.has(zone)).length;
  const shorter = holds.filter(
    ({ zone, shortening }) => shortening.word === 'getting shorter' && living.has(zone),
  ).length;
  const unknown = zones.length - known.length;
  const { shortHold, longHold, unknownShare } = optionNumbers;
  return [
    ...(asks > 0 ? [because('option: waxing does not hold', { zones: asks })] : []),
    ...(worst && worst.value < shortHold.value
      ? [because('option: hold short', { zone: worst.zone, months: worst.value })]
      : []),
    ...(shorter > 0 ? [because('option: holds getting shorter', { zones: shorter })] : []),
    ...(worst && unknown === 0 && worst.value >= longHold.value
      ? [because('option: hold long', { months: worst.value })]
      : []),
    ...(unknown / zones.length > unknownShare.value
      ? [because('option: too little known of holds', { unknown, zones: zones.length })]
      : []),
  ];
};

const greenSays = ({ need, growth }: Situation): Reason[] => {
  if (!need) return [because('option: no round yet')];
  const { score } = need;
  const area = score.zones.reduce((sum, zone) => sum + zone.area.m2, 0);
  if (area <= 0) return [];
  const green = score.active.green.value;
  const share = green / area;
  const few = fewPlaces(need.score.zones.map((zone) => ({ green: zone.active.green.value, area: zone.area.m2 })));
  const { littleShare, wideShare } = optionNumbers;
  const stop = need.classes.zones.some(({ stopWords: seen }) => seen.length > 0);
  return [
    ...(growth?.surely && growth.perYear.low > 0
      ? [because('option: green grows surely', { m2: growth.perYear.value, rounds: growth.rounds })]
      : []),
    ...(share >= wideShare.value ? [because('option: green wide', { share })] : []),
    ...(few && share >= littleShare.value ? [because('option: green in few places', few)] : []),
    ...(share < littleShare.value && !stop ? [because('option: nothing presses', { share })] : []),
  ];
};

/** The fewest zones that hold most of the green, where they are a small part of the surface. */
const fewPlaces = (zones: readonly { readonly green: number; readonly area: number }[]) => {
  const all = zones.reduce((sum, { green }) => sum + green, 0);
  const surface = zones.reduce((sum, { area }) => sum + area, 0);
  if (all <= 0 || zones.length < 2) return undefined;
  const { fewPlacesGreen, fewPlacesArea } = optionNumbers;
  let [count, green, area] = [0, 0, 0];
  for (const zone of [...zones].sort((a, b) => b.green / b.area - a.green / a.area)) {
    if (green / all >= fewPlacesGreen.value) break;
    count += 1;
    green += zone.green;
    area += zone.area;
  }
  return area / surface <= fewPlacesArea.value ? { zones: count, green: green / all, area: area / surface } : undefined;
};

const historySays = ({ record }: Situation): Reason[] => {
  const strips = record.treatments.filter(({ body }) => treatmentOf(body.type)?.takes === 'metal');
  const dates = new Set(strips.map(({ body }) => body.date));
  return [
    ...(dates.size > 0 ? [because('option: stripped before', { times: dates.size })] : []),
    ...(record.inserts.length > 0 ? [because('option: inserts near', { count: record.inserts.length })] : []),
  ];
};

/** m2 of some zones as they are now; of all living ones where none are named. */
export const treatedArea = (
  { record, today }: Pick<Situation, 'record' | 'today'>,
  zones: readonly string[] | undefined,
): { readonly m2: number; readonly whole: boolean } => {
  const living = record.zones.filter((zone) => endOf(zone) === undefined);
  const some = zones?.length ? living.filter(({ thing }) => zones.includes(thing)) : living;
  return { m2: some.reduce((sum, zone) => sum + areaOn(zone, today).m2, 0), whole: some.length === living.length };
};
