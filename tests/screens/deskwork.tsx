import { render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { Router } from 'wouter';
import { memoryLocation } from 'wouter/memory-location';
import { addSculpture, addZone, type Change, commitChanges, type Desk, deskOn, type Outcome } from '../../src/actions';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { ladderStepOf } from '../../src/engine/trade';
import { DeskContext } from '../../src/screens/shell/DeskContext';
import { openFresh } from '../device/store/around';

/** A desk on a real store in memory, with ids by a seed and its calendar pinned to 15 October 2026. */
export const freshDesk = async (seed = 1): Promise<Desk> => {
  const { store, around } = await openFresh(seed);
  let minute = 0;
  return deskOn(store, {
    newId: around.newId,
    now: () => `2026-10-15T10:${String(minute++ % 60).padStart(2, '0')}:00.000+00:00`,
    today: () => '2026-10-15',
    surveyor: () => '',
  });
};

export const done = async <T extends object>(outcome: Promise<Outcome<T>>): Promise<T> => {
  const came = await outcome;
  if (!came.ok) throw new Error(came.reason.code);
  return came;
};

export interface Work {
  readonly sculpture: string;
  readonly zones: readonly string[];
}

/** A work with zones A, B, C … of so many m2. */
export const aWork = async (
  desk: Desk,
  { title, number, areas }: { readonly title: string; readonly number: string; readonly areas: readonly number[] },
): Promise<Work> => {
  const { sculpture } = await done(addSculpture(desk, { number, title }));
  const zones: string[] = [];
  for (const [i, m2] of areas.entries()) {
    const letter = String.fromCharCode(65 + i);
    const area = { m2, low: m2 * 0.9, high: m2 * 1.1, method: 'typed' as const };
    const fields = { letter, name: `part ${letter}`, exposure: ['open'], reach: 'ground', substrate: 'bronze' };
    const added = await done(addZone(desk, sculpture, { ...fields, significance: 1, area, since: '2024-01-01' }));
    zones.push(added.zone);
  }
  return { sculpture, zones };
};

/** What was seen in one zone: kinds with their share; 'nothing', or a reason not looked. */
export type SeenIn = Readonly<Record<string, number>> | 'nothing' | { readonly notLooked: string };

type Finding = Partial<Pick<BodyOf<'finding'>, 'severity' | 'activity' | 'origin' | 'count'>>;

/** A finished round, zone by zone in walking order. */
export const aRound = async (
  desk: Desk,
  work: Work,
  date: string,
  seen: readonly SeenIn[],
  given: { readonly round?: Partial<BodyOf<'round'>>; readonly finding?: Finding } = {},
): Promise<string> => {
  const { sculpture, zones } = work;
  const round = nameOf.round(desk.newId());
  const body: BodyOf<'round'> = {
    sculpture,
    type: 'annual',
    date,
    wet: 'dry',
    washed: 'before wash',
    ownEye: true,
    surveyor: '',
    ended: date,
    ...given.round,
  };
  const changes: Change[] = [{ thing: round, kind: 'round', within: sculpture, body }];
  for (const [i, zone] of zones.entries()) {
    const what = seen[i];
    if (what === undefined) continue;
    const where = { sculpture, round, zone };
    const notLooked = typeof what === 'object' && 'notLooked' in what ? String(what.notLooked) : undefined;
    const found = typeof what === 'object' && notLooked === undefined ? (what as Readonly<Record<string, number>>) : {};
    const state = notLooked ? 'not looked' : Object.keys(found).length > 0 ? 'found' : 'nothing';
    changes.push({
      thing: nameOf.visit(round, zone),
      kind: 'visit',
      within: sculpture,
      body: { ...where, zoneVersion: 1, state, ...(notLooked ? { reason: notLooked } : {}) },
    });
    for (const [kind, share] of Object.entries(found)) {
      const { low, high } = ladderStepOf(share);
      const { origin = 'metal', severity = 'moderate', activity = 'active', count } = given.finding ?? {};
      changes.push({
        thing: nameOf.finding(round, zone, kind, origin),
        kind: 'finding',
        within: sculpture,
        body: {
          ...where,
          kind,
          origin,
          severity,
          activity,
          ...(count ? { count } : { coverage: { value: share, low, high, method: 'ladder' } }),
        },
      });
    }
  }
  await done(commitChanges(desk, { code: 'deed: round started', params: { type: 'annual', date } }, changes));
  return round;
};

/** Shows a screen as it stands under the shell, at an address. */
export const show = (desk: Desk, screen: ReactNode, path = '/') => {
  const location = memoryLocation({ path, record: true });
  const view = render(
    <DeskContext value={desk}>
      <Router hook={location.hook}>{screen}</Router>
    </DeskContext>,
  );
  return { ...view, history: location.history };
};
