import { describe, expect, it } from 'vitest';
import { cardPhotos, laterPhoto } from '../../../src/engine/campaign';
import { type BodyOf, nameOf, type Thing } from '../../../src/engine/record';
import { sculpture, thing, zone } from './drawnUp';

const photo = (id: string, taken: string, body: Partial<BodyOf<'photo'>> = {}): Thing<'photo'> =>
  thing(nameOf.photo(id), {
    ...{ sculpture, sha256: id, mime: 'image/webp', bytes: 1, role: 'zone', zone: zone('A') },
    ...{ taken: `${taken}T10:00:00`, wet: 'dry', light: 'overcast' },
    ...body,
  });
const own = photo('own', '2023-09-08');
const card = (body: Partial<BodyOf<'colourCard'>> = {}): Thing<'colourCard'> =>
  thing(nameOf.colourCard('k'), {
    ...{ sculpture, zones: [zone('A')], date: '2023-09-08', words: 'brown', signed: [], dryShade: own.thing },
    ...body,
  });
const [dryShade, drySun] = cardPhotos;
const found = (photos: readonly Thing<'photo'>[], of = card(), slot: (typeof cardPhotos)[number] = dryShade) => {
  const later = laterPhoto(of, slot, [own, ...photos]);
  return later && { photo: later.photo.body.sha256, alike: later.alike };
};

describe('The photo held against an agreed-colour card', () => {
  it('is the latest of its zones, as dry and in the same sort of light', () => {
    expect(found([photo('2024', '2024-05-14'), photo('2025', '2025-05-13')])).toEqual({ photo: '2025', alike: true });
    expect(found([photo('other', '2025-05-13', { zone: zone('B') })])).toBeUndefined();
  });

  it('is one alike before a later one that is not, and says where none is', () => {
    const wet = photo('wet', '2026-05-12', { wet: 'wet' });
    expect(found([photo('2025', '2025-05-13'), wet])).toEqual({ photo: '2025', alike: true });
    expect(found([wet])).toEqual({ photo: 'wet', alike: false });
    expect(found([photo('shade', '2026-05-12')], card(), drySun)).toEqual({ photo: 'shade', alike: false });
    expect(found([photo('sun', '2026-05-12', { light: 'sun' })], card(), drySun)).toEqual({
      photo: 'sun',
      alike: true,
    });
  });

  it('is of the same station where the card’s own photo has one', () => {
    const at = { station: nameOf.station('s') };
    const stationed = photo('own', '2023-09-08', at);
    const later = [photo('zone', '2025-05-13'), photo('station', '2024-05-14', { ...at, zone: undefined })];
    const came = laterPhoto(card({ dryShade: stationed.thing }), dryShade, [stationed, ...later]);
    expect(came?.photo.body.sha256).toBe('station');
  });

  it('is never the card’s own, one of its day or before, or one that does not say when it was taken', () => {
    const undated = photo('undated', '2025-05-13', { taken: undefined });
    expect(found([photo('same day', '2023-09-08'), photo('before', '2022-05-10'), undated])).toBeUndefined();
  });
});
