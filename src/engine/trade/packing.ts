import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** What of a day asks for a thing to be taken along. Worked out from the works of that day. */
export type PackedFor =
  | 'every day'
  | 'survey'
  | 'look'
  | 'stations'
  | 'squares'
  | 'step'
  | 'ladder'
  | 'lift'
  | 'water'
  | 'wash'
  | 'wax'
  | 'inserts'
  | 'access';

export interface PackingItem {
  readonly id: string;
  readonly name: string;
  /** Any of them asks for it. */
  readonly for: readonly PackedFor[];
  /** Counted by what is planned: so many stations, works. */
  readonly counted?: 'stations' | 'squares' | 'works';
  readonly source: Source;
}

const item = (
  id: string,
  name: string,
  asked: readonly PackedFor[],
  counted?: PackingItem['counted'],
): PackingItem => ({
  id,
  name,
  for: asked,
  ...(counted ? { counted } : {}),
  source: practice,
});

export const packingItems: readonly PackingItem[] = named('packingItems', [
  item('tablet', 'Tablet, charged, tried without a network', ['every day']),
  item('battery', 'Spare battery and cable', ['every day']),
  item('phone', 'Telephone, and the numbers to call', ['every day']),
  item('first-aid', 'First aid, water, sun and rain', ['every day']),
  item('gloves', 'Gloves', ['survey', 'wash', 'wax']),
  item('zone-cards', 'Zone cards on paper and a pencil, for when the tablet dies', ['survey']),
  item('access', 'Keys and leave to go there', ['access']),
  item('station-cards', 'Station cards', ['stations'], 'stations'),
  item('square-cards', 'Cards of the best and worst squares, and the frame', ['squares'], 'squares'),
  item('grey-card', 'Grey card and scale bar', ['survey', 'stations']),
  item('spray', 'Spray bottle with clean water', ['survey']),
  item('torch', 'Torch and a mirror on a stick', ['survey']),
  item('tape', 'Measuring tape', ['survey', 'stations']),
  item('shade', 'A board or umbrella to shade the photo', ['stations']),
  item('step', 'Step', ['step']),
  item('ladder', 'Ladder, looked over today, and one to foot it', ['ladder']),
  item('lift', 'Lift: booked, for the right height and ground, with somebody trained', ['lift']),
  item('cones', 'Cones and tape to keep people out from below', ['ladder', 'lift', 'wash', 'wax']),
  item('lines', 'Lines for tools used above heads', ['ladder', 'lift']),
  item('water', 'Waders or boots; pump and lights locked off by an electrician', ['water']),
  item('hose', 'Hose with a plain nozzle, buckets', ['wash']),
  item('detergent', 'Neutral non-ionic detergent, measured out', ['wash']),
  item('brushes', 'Soft brushes, sponges, clean cloths', ['wash']),
  item('cover-plants', 'Sheets for plants, plaques and paving', ['wash', 'wax']),
  item('dryers', 'Dry cloths, and time to dry', ['wax']),
  item('thermometer', 'Thermometers for air and surface, humidity meter', ['wax']),
  item('product', 'Wax: the tin of last time, with its safety sheet', ['wax']),
  item('wax-brushes', 'Wax brushes and buffing cloths', ['wax']),
  item('rag-bin', 'Closed metal bin for wax rags', ['wax']),
  item('mask', 'What the safety sheet asks to wear', ['wax']),
  item('insert-pads', 'Soft padding and tape that leaves nothing, for the inserts', ['inserts']),
  item('binoculars', 'Binoculars, for the look from the ground', ['look']),
  item('briefing', 'Briefing for the helper, printed', ['survey', 'wash', 'wax']),
]);
