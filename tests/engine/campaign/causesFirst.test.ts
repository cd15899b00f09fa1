import { describe, expect, it } from 'vitest';
import { causesFirst } from '../../../src/engine/campaign';
import { causes, exposures } from '../../../src/engine/trade';
import { codes } from '../change/invented';
import { cause, today, work, zone } from './drawnUp';

const record = work();
const zones = record.zones.map((one) => ({ ...one, body: { ...one.body, exposure: ['open'] } }));
const withExposure = (exposure: string) =>
  zones.map((one) => (one.thing === zone('A') ? { ...one, body: { ...one.body, exposure: [exposure] } } : one));

describe('Causes first', () => {
  it('waits where nobody has looked for any', () => {
    const found = causesFirst(zones, [], today);
    expect(found.waits).toBe(true);
    expect(codes(found.reasons)).toEqual(['campaign: nobody looked for causes']);
  });

  it('names a cause that is at work, and the zones it reaches', () => {
    const found = causesFirst(zones, [cause('sprinkler', { zones: [zone('A'), zone('B')] })], today);
    expect(found.waits).toBe(true);
    expect(found.reasons).toEqual([{ code: 'campaign: cause open', params: { cause: 'sprinkler', zones: 'A, B' } }]);
    expect(found.open).toHaveLength(1);
  });

  it('still waits while a cause is being removed', () => {
    expect(causesFirst(zones, [cause('tree', { state: 'being removed' })], today).waits).toBe(true);
  });

  it('waits a season after a cause was removed, and no day longer', () => {
    const on = (changed: string) => causesFirst(zones, [cause('tree', { state: 'removed', changed })], today);
    expect(on('2025-10-16').waits).toBe(true);
    expect(on('2025-10-16').reasons[0]).toEqual({
      code: 'campaign: cause removed lately',
      params: { cause: 'tree', date: '2025-10-16', until: '2026-10-16' },
    });
    expect(on('2025-10-15').waits).toBe(false);
  });

  it('goes on where what was found cannot be removed, and keeps saying so', () => {
    const found = causesFirst(zones, [cause('birds', { state: 'cannot be removed', why: 'a roost' })], today);
    expect(found.waits).toBe(false);
    expect(codes(found.reasons)).toContain('campaign: cause cannot be removed');
  });

  it('asks to look for what the exposure of a zone makes likely, until it is answered for that zone', () => {
    const suspect = withExposure('sprinkler');
    expect(causesFirst(suspect, [], today).lookFor).toMatchObject([{ cause: { id: 'sprinkler' }, zones: [zone('A')] }]);
    const elsewhere = cause('sprinkler', { zones: [zone('B')], state: 'not a cause', why: 'out of reach' });
    expect(causesFirst(suspect, [elsewhere], today).lookFor).toHaveLength(1);
    const everywhere = cause('sprinkler', { state: 'not a cause', why: 'turned off for years' });
    expect(causesFirst(suspect, [everywhere], today).lookFor).toEqual([]);
  });

  it('knows every exposure it goes by', () => {
    const known = new Set(exposures.map(({ id }) => id));
    expect(causes.flatMap((row) => row.exposures).filter((id) => !known.has(id))).toEqual([]);
  });
});
