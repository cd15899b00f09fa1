import { describe, expect, it } from 'vitest';
import { type EarlierFinding, startDraft, type ZoneDraft } from '../../../src/engine/record/zoneDraft';
import { asking } from '../../../src/engine/record/zoneDraftAsks';
import { type Leaving, refusal } from '../../../src/engine/record/zoneDraftBodies';
import { applyTouch, type ZoneTouch } from '../../../src/engine/record/zoneDraftTouch';

/**
 * A round of 24 zones with last year's data: 16 unchanged, 6 with one changed coverage, 2 with one new finding.
 *
 *   own eye first off   16 x 1 (As last year) + 6 x 3 (row, step, next) + 2 x 6 (group, kind, origin, step, severity, next) = 46
 *   own eye first on    one step for each of 40 earlier findings + 24 x next + 6 x "really changed" + 2 x 5 for the new ones = 80
 */
const zones = 24;
const findingsAt = (zone: number): number => (zone % 3 === 0 ? 1 : zone % 3 === 1 ? 2 : 2);
const changedAt = (zone: number): boolean => zone % 4 === 1;
const newAt = (zone: number): boolean => zone === 3 || zone === 14;

const step = (value: number) => ({ value, low: value * 0.9, high: value * 1.1, method: 'ladder' as const });

const earlier = (zone: number, nth: number): EarlierFinding => ({
  body: {
    sculpture: 'sculpture/s',
    round: 'round/2025',
    zone: `zone/${zone}`,
    kind: `kind-${nth}`,
    origin: 'metal',
    coverage: step(0.2),
    severity: 'moderate',
    activity: 'unclear',
  },
  measure: 'area',
  stop: false,
  judgedIn: 'round/2025',
});

const openZone = (zone: number, ownEye: boolean): ZoneDraft =>
  startDraft({
    sculpture: 'sculpture/s',
    round: 'round/2026',
    zone: `zone/${zone}`,
    zoneVersion: 1,
    ownEye,
    before: { round: 'round/2025', judgedIn: 'round/2025', date: '2025-05-13' },
    earlier: Array.from({ length: findingsAt(zone) }, (_, nth) => earlier(zone, nth)),
  });

const newFinding: ZoneTouch[] = [
  { do: 'group', group: 'green' },
  { do: 'kind', kind: 'green-spots', measure: 'area' },
  { do: 'origin', origin: 'metal' },
  { do: 'cover', coverage: step(0.03) },
  { do: 'severity', severity: 'slight' },
];

/** Walks the round as a person would and counts each touch, the one that leaves the zone too. */
const walk = (ownEye: boolean): number => {
  let touches = 0;
  for (let zone = 0; zone < zones; zone += 1) {
    let draft = openZone(zone, ownEye);
    const touch = (t: ZoneTouch) => {
      draft = applyTouch(draft, t);
      touches += 1;
    };
    if (ownEye) {
      for (let at = asking(draft); at.what === 'extent'; at = asking(draft)) {
        const changed = changedAt(zone) && at.finding.kind === 'kind-0';
        touch({ do: 'cover', coverage: step(changed ? 0.4 : 0.2) });
        if (asking(draft).what === 'against') touch({ do: 'against', against: 'changed' });
      }
    } else if (changedAt(zone)) {
      touch({ do: 'open', key: 'kind-0/metal' });
      touch({ do: 'cover', coverage: step(0.4) });
    }
    if (newAt(zone)) newFinding.forEach(touch);
    const leaving: Leaving = ownEye || changedAt(zone) || newAt(zone) ? { how: 'next' } : { how: 'as last year' };
    expect(refusal(draft, leaving)).toBeUndefined();
    touches += 1;
  }
  return touches;
};

describe('the touches of a whole round', () => {
  it('is a fair sample: 1.6 findings a zone or more, 6 zones changed, 2 with something new', () => {
    const all = Array.from({ length: zones }, (_, zone) => zone);
    const sum = all.reduce((n, zone) => n + findingsAt(zone), 0);
    expect(sum / zones).toBeGreaterThanOrEqual(1.6);
    expect(all.filter(changedAt)).toHaveLength(6);
    expect(all.filter((zone) => newAt(zone) && !changedAt(zone))).toHaveLength(2);
  });

  it('stay within 48 with own eye first off', () => {
    expect(walk(false)).toBe(46);
  });

  it('stay within 96 with own eye first on', () => {
    expect(walk(true)).toBe(80);
  });
});
