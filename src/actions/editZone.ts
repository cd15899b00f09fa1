import { type BodyOf, sameContent } from '../engine/record';
import { freeLetter, soundArea, type ZoneFields } from './addZone';
import { calendarDay } from './calendarDay';
import { type Change, commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing, thingsWithin } from './theThing';
import { lastVisitDay } from './visitsOfZone';

type Version = BodyOf<'zone'>['versions'][number];

/**
 * Name, letter, exposure, reach, weight and note are edited. A new area or substrate after the zone's first visit makes a
 * new version of it (from `since`, today when left out), so that earlier figures keep the area they were made with;
 * before the first visit it is a plain correction.
 */
export const editZone = (
  desk: Desk,
  zone: string,
  patch: Partial<ZoneFields>,
): Promise<Outcome<{ readonly versioned: boolean }>> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'zone', zone);
    const { area, substrate, since, letter: asked, ...plain } = patch;
    const others = (await thingsWithin(desk, 'zone', body.sculpture)).filter((z) => z.thing !== zone);
    const letter = asked === undefined || asked === body.letter ? body.letter : freeLetter(others, asked);
    const name = (patch.name ?? body.name).trim() || refuse(refusal('name missing', {}));
    const last = body.versions[body.versions.length - 1] as Version;
    const next = { ...last, substrate: substrate ?? last.substrate, area: soundArea(area ?? last.area) };
    const redrawn = !sameContent(next, last);
    const visited = redrawn ? await lastVisitDay(desk, body.sculpture, zone) : undefined;
    const versioned = redrawn && visited !== undefined;
    const day = calendarDay(since ?? (versioned ? desk.today() : last.since));
    if (versioned && day < last.since) refuse(refusal('day before last visit', { day, last: last.since }));
    const versions = versioned
      ? [...body.versions, { ...next, n: last.n + 1, since: day }]
      : [...body.versions.slice(0, -1), { ...next, since: visited === undefined ? day : last.since }];
    must(
      await commitChanges(desk, deedName(versioned ? 'deed: zone versioned' : 'deed: zone edited', { letter, name }), [
        { thing: zone, patch: { ...plain, name, letter, versions } },
      ]),
    );
    return { versioned };
  });

/** The zones of a work in the order she walks; the letters stay with their zones unless new ones are asked for. */
export const orderZones = (
  desk: Desk,
  sculpture: string,
  zones: readonly string[],
  options: { readonly relettered?: boolean } = {},
): Promise<Outcome> =>
  attempt(async () => {
    const here = (await thingsWithin(desk, 'zone', sculpture)).filter((z) => !z.body.split && !z.body.joined);
    const named = new Set(zones);
    if (named.size !== zones.length || here.length !== zones.length || !here.every((z) => named.has(z.thing)))
      refuse(refusal('order incomplete', {}));
    const letters = here.map((z) => z.body.letter).sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
    const changes: Change[] = zones.map((thing, i) => ({
      thing,
      patch: { order: i + 1, ...(options.relettered ? { letter: letters[i] } : {}) },
    }));
    return must(await commitChanges(desk, deedName('deed: zones ordered', {}), changes));
  });

/** Only a zone nobody has looked at yet can be removed; one with visits is ended by a split or a join. */
export const removeZone = (desk: Desk, zone: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'zone', zone);
    const visits = (await thingsWithin(desk, 'visit', body.sculpture)).filter((v) => v.body.zone === zone).length;
    if (visits > 0) refuse(refusal('zone has visits', { letter: body.letter, visits }));
    return must(
      await commitChanges(desk, deedName('deed: zone removed', { letter: body.letter, name: body.name }), [
        { thing: zone, gone: true },
      ]),
    );
  });
