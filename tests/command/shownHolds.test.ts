import { describe, expect, it } from 'vitest';
import { saidWith } from '../../src/command/said';
import { shownHolds, shownLives } from '../../src/command/shownHolds';
import { adviceOf, holdsOf, livesOf } from '../../src/engine/hold';
import { demoDay, saltlamp } from '../engine/hold/saltlamp';

const said = saidWith(() => undefined);
const all = saltlamp.map((record) => ({ record, zones: holdsOf(record, demoDay) }));
const lives = livesOf(all, 1);

describe('holds and lives at the terminal', () => {
  it('come back from JSON as they went in: nothing in them is endless or no number', () => {
    const shown = {
      holds: all.map(({ record, zones }) => shownHolds(zones, adviceOf(record, zones, lives, demoDay), said)),
      lives: shownLives(lives, said),
    };
    expect(JSON.parse(JSON.stringify(shown))).toEqual(JSON.parse(JSON.stringify(shown, (_, value) => value ?? null)));
    const ends = JSON.stringify(shown, (_, value) => {
      if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      return value;
    });
    expect(ends).toContain('Waxing does not hold here');
    expect(ends).not.toContain('"draws":[');
  });

  it('say each reason in words', () => {
    const [first] = all;
    const [zone] = shownHolds(first?.zones ?? [], [], said);
    expect(zone?.reasons[0]?.says).toMatch(/counts as back/);
    expect(zone?.advice).toBeNull();
  });
});
