import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** When a helper stops and calls, whatever is half done. */
export const stopRules: readonly { readonly id: string; readonly text: string; readonly source: Source }[] = named(
  'stopRules',
  [
    { id: 'people', text: 'Somebody is hurt, or stands where something may fall.', source: practice },
    { id: 'loose', text: 'A part moves, a crack shows, a plate is loose.', source: practice },
    { id: 'powder', text: 'Pale, powdery green mounds: not washed, not waxed, not touched.', source: practice },
    { id: 'metal', text: 'The cloth comes away brown or green, or bare metal shows.', source: practice },
    { id: 'film', text: 'A film lifts, flakes or turns white.', source: practice },
    { id: 'insert', text: 'An insert is cracked, clouded or loose.', source: practice },
    { id: 'product', text: 'The tin is not the one written here.', source: practice },
    { id: 'weather', text: 'Rain, wind on the ladder, dew on the metal.', source: practice },
  ],
);
