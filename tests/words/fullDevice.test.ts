import { expect, test } from 'vitest';
import { sayReason } from '../../src/words';

test.each([
  ['deed: sculpture added', 'Not stored: “sculpture added”.'],
  ['touch', 'Not stored: the last touch.'],
  ['photo', 'Not stored: the photo.'],
  ['', 'Not stored: what was just done.'],
])(
  'a full device names the deed it did not store (%s), and that what was stored can still be carried out',
  (deed, said) => {
    const sentence = sayReason({ code: 'device full', params: { deed } });
    expect(sentence).toContain(said);
    expect(sentence).toContain('can be carried out');
    expect(sayReason({ code: 'connection lost', params: { deed } })).toContain(said);
    expect(sayReason({ code: 'store failed', params: { deed, said: 'AbortError' } })).toContain(said);
  },
);
