import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import {
  commitChanges,
  type Desk,
  recordTreatment,
  setElevationStation,
  setOutline,
  setRunOff,
} from '../../../src/actions';
import { type BodyOf, idPart, nameOf } from '../../../src/engine/record';
import { ZoneMapScreen } from '../../../src/screens/zone-map';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';
import { aSide, heronFromWest, square, type WorkWithSide } from './side';

const green = 'even-green-film';

const mapOf = (desk: Desk, sculpture: string) =>
  show(desk, <ZoneMapScreen sculpture={sculpture} elevation={undefined} />);

/** Links of the drawing, not those of the table. */
const onMap = (letter: string) =>
  screen.findByRole('link', { name: new RegExp(`^Zone ${letter}, part ${letter}: (?!open)`) });

describe('The zone map', () => {
  it('tells each zone by its index in words and leads to its visit of the last round; the table says the same', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1, 1], 2);
    const round = await aRound(desk, work, '2026-05-10', [{ [green]: 0.5 }, 'nothing', { notLooked: 'wet' }]);
    mapOf(desk, work.sculpture);
    const zone = await screen.findByRole('link', { name: /^Zone A, part A: \d+ \(\d+ to \d+\), / });
    expect(zone.getAttribute('href')).toBe(`/round/${idPart(round)}/zone/${idPart(work.zones[0]!)}`);
    expect((await onMap('B')).getAttribute('aria-label')).toMatch(/: 100 \(.*\), sound$/);
    const row = screen.getByRole('row', { name: /part C/ });
    expect(within(row).getByText('not looked at')).toBeDefined();
    expect(within(row).getByText('not drawn on this side')).toBeDefined();
    expect(screen.queryByRole('link', { name: /^Zone C, part C: not/ })).toBeNull();
    expect(screen.getByText('1 zone is not drawn on this side; it is in the table all the same.')).toBeDefined();
    expect(screen.getByText('From the round: Annual, 10 May 2026.')).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('leads into the round that is open, where there is one', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 2);
    await aRound(desk, work, '2025-05-10', ['nothing', 'nothing']);
    const open = await aRound(desk, work, '2026-05-10', [], { round: { ended: undefined } });
    mapOf(desk, work.sculpture);
    await onMap('A');
    await waitFor(() =>
      expect(document.querySelector('a.map-zone')?.getAttribute('href')).toBe(
        `/round/${idPart(open)}/zone/${idPart(work.zones[0]!)}`,
      ),
    );
  });

  it('is never told by colour alone: each step of the key has its own hatch, and each change its shape', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 2);
    await aRound(desk, work, '2025-05-10', [{ [green]: 0.03 }, 'nothing']);
    await aRound(desk, work, '2026-05-10', [{ [green]: 0.5 }, 'nothing']);
    mapOf(desk, work.sculpture);
    await onMap('A');
    const key = await screen.findByRole('region', { name: 'Key' });
    const hatches = within(key)
      .getAllByRole('listitem')
      .map((item) => item.querySelector('svg')?.innerHTML.replaceAll(/id="[^"]*"|url\([^)]*\)|level-\d/g, ''));
    expect(hatches).toHaveLength(6);
    expect(new Set(hatches).size).toBe(6);
    await userEvent.click(screen.getByRole('radio', { name: 'Change' }));
    expect((await screen.findByRole('link', { name: 'Zone A, part A: clearly worse' })).tagName.toLowerCase()).toBe(
      'a',
    );
    expect(screen.getByRole('link', { name: 'Zone B, part B: no sure change' })).toBeDefined();
    expect(screen.getByText('From 10 May 2025 to 10 May 2026.')).toBeDefined();
    expect(document.querySelectorAll('.map-letter .map-mark')).toHaveLength(2);
  });

  it('shows classes as proposed or set, and how the wax stands', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 2);
    await done(recordTreatment(desk, work.sculpture, { zones: [work.zones[0]!], type: 'wax', date: '2025-05-12' }));
    await aRound(desk, work, '2026-05-10', [{ [green]: 0.5 }, 'nothing']);
    mapOf(desk, work.sculpture);
    await userEvent.click(await screen.findByRole('radio', { name: 'Condition class' }));
    expect(await screen.findByRole('link', { name: /^Zone A, part A: CC[123], / })).toBeDefined();
    await userEvent.click(screen.getByRole('radio', { name: 'Urgency class' }));
    expect(await screen.findByRole('link', { name: /^Zone A, part A: UC[0123], / })).toBeDefined();
    await userEvent.click(screen.getByRole('radio', { name: 'Wax hold' }));
    expect(await screen.findByRole('link', { name: /^Zone A, part A: green is back/ })).toBeDefined();
    expect(screen.getByRole('link', { name: /^Zone B, part B: no coating known/ })).toBeDefined();
  });

  it('stands before the first round, and says that nobody has looked', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    mapOf(desk, work.sculpture);
    const zone = await screen.findByRole('link', { name: 'Zone A, part A: not looked at' });
    expect(zone.getAttribute('href')).toBe(`/sculpture/${idPart(work.sculpture)}/zone/${idPart(work.zones[0]!)}`);
    expect(screen.getByText('Nobody has looked yet. The map fills with the first round.')).toBeDefined();
    await userEvent.click(screen.getByRole('radio', { name: 'Change' }));
    expect(screen.getByText('Nobody has looked yet. The map fills with the first round.')).toBeDefined();
  });

  it('works without any picture: the table stands, and says what a map would need', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
    await aRound(desk, work, '2026-05-10', [{ [green]: 0.5 }, 'nothing']);
    mapOf(desk, work.sculpture);
    expect(await screen.findByText('No side has a picture yet')).toBeDefined();
    const row = await screen.findByRole('row', { name: /part A/ });
    expect(await within(row).findByText(/^\d+ \(\d+ to \d+\)/)).toBeDefined();
    expect(within(row).queryByRole('link', { name: /^Measure/ })).toBeNull();
    expect(await axeFaults()).toEqual([]);
  });

  it('keeps its zones where the photo is not on this device, and says so', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    mapOf(desk, work.sculpture);
    expect(await onMap('A')).toBeDefined();
    expect(await screen.findByText('This photo is not on this device.', { selector: 'p' })).toBeDefined();
  });

  it('stands with forty zones of long names, each with its letter and its link', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Frieze', number: '4', areas: Array.from({ length: 40 }, () => 1) });
    await done(
      commitChanges(
        desk,
        { code: 'deed: zone edited', params: {} },
        work.zones.map((thing, i) => ({
          thing,
          patch: { letter: `A${i + 1}`, name: `${'drapery of the '.repeat(12)}${i}` },
        })),
      ),
    );
    const { elevation } = await aSide(desk, work.sculpture);
    for (const [i, zone] of work.zones.entries())
      await done(setOutline(desk, elevation, zone, square(0.02 + (i % 8) * 0.12, 0.02 + Math.floor(i / 8) * 0.19)));
    await aRound(
      desk,
      work,
      '2026-05-10',
      work.zones.map(() => 'nothing' as const),
    );
    mapOf(desk, work.sculpture);
    await screen.findByRole('link', { name: /^Zone A40, .*: 100/ });
    expect(document.querySelectorAll('a.map-zone')).toHaveLength(40);
    expect([...document.querySelectorAll('.map-letter text')].map(({ textContent }) => textContent)).toEqual(
      expect.arrayContaining(['A1', 'A17', 'A40']),
    );
    expect(screen.getAllByRole('row')).toHaveLength(41);
  });

  it('tells of any round that is asked for, and stands as it was left when one comes back from a visit', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1], 2);
    const earlier = await aRound(desk, work, '2025-05-10', ['nothing', 'nothing']);
    await aRound(desk, work, '2026-05-10', [{ [green]: 0.5 }, 'nothing']);
    const view = mapOf(desk, work.sculpture);
    await screen.findByRole('link', { name: /^Zone A, part A: (?!100)\d+ \(/ });
    await userEvent.selectOptions(screen.getByLabelText('Round'), [earlier]);
    const zone = await screen.findByRole('link', { name: /^Zone A, part A: 100 / });
    expect(zone.getAttribute('href')).toContain(`/round/${idPart(earlier)}/`);
    expect(screen.getByText('From the round: Annual, 10 May 2025.')).toBeDefined();
    await userEvent.click(screen.getByRole('radio', { name: 'Condition class' }));
    view.unmount();
    mapOf(desk, work.sculpture);
    expect(await screen.findByRole('link', { name: /^Zone A, part A: CC0, / })).toBeDefined();
    expect((screen.getByLabelText('Round') as HTMLSelectElement).value).toBe(earlier);
  });

  it('takes water between zones in words too, where no side shows them, and refuses it from a zone to itself', async () => {
    const desk = await freshDesk();
    const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] });
    mapOf(desk, work.sculpture);
    await userEvent.click(await screen.findByRole('button', { name: 'Say where water runs' }));
    await userEvent.selectOptions(screen.getByLabelText('It runs to'), [work.zones[0]!]);
    await userEvent.click(screen.getByRole('button', { name: 'Add it' }));
    expect((await screen.findByRole('alert')).textContent).toMatch(/Water runs from one zone to another. Choose two/);
    await userEvent.selectOptions(screen.getByLabelText('It runs to'), [work.zones[1]!]);
    await userEvent.click(screen.getByRole('button', { name: 'Add it' }));
    expect(await screen.findByText('From A · part A to B · part B')).toBeDefined();
  });

  it('draws water between two zones of the side, and takes it away with an undo', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2, 1, 1], 3);
    await done(setRunOff(desk, work.zones[0]!, work.zones[2]!));
    mapOf(desk, work.sculpture);
    expect(await screen.findByText('From A · part A to C · part C')).toBeDefined();
    expect(document.querySelectorAll('.map-water .water-head')).toHaveLength(1);
    await userEvent.click(screen.getByRole('button', { name: 'Take away: from A · part A to C · part C' }));
    await waitFor(() => expect(document.querySelectorAll('.map-water .water-head')).toHaveLength(0));
  });
});

describe('Other years under the same outlines', () => {
  const size = { width: 300, height: 400 };
  /** A photo of another year from the station of the side, a tenth of the width to the right; and pairs that say so, or do not. */
  const withYear = async (desk: Desk, work: WorkWithSide, pairs?: BodyOf<'photoFit'>['pairs'], round?: string) => {
    const { sculpture } = work;
    const station = nameOf.station('s1');
    const photo = nameOf.photo('b'.repeat(64));
    const fit = nameOf.photoFit(work.photo, photo);
    const facts = {
      ...{ role: 'station' as const, station, taken: '2024-05-10T10:00:00' },
      ...(round ? { round } : {}),
    };
    await done(
      commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
        { thing: station, kind: 'station', within: sculpture, body: { sculpture, letter: 'A', aim: 'neck', order: 1 } },
        {
          thing: photo,
          kind: 'photo',
          within: sculpture,
          body: { sculpture, sha256: 'b'.repeat(64), mime: 'image/jpeg', bytes: 9, ...size, ...facts },
        },
        ...(pairs
          ? [
              {
                thing: fit,
                kind: 'photoFit' as const,
                within: sculpture,
                body: {
                  ...{ sculpture, photo: work.photo, onto: photo, kind: 'similarity' as const },
                  ...{ size, ontoSize: size, pairs },
                },
              },
            ]
          : []),
      ]),
    );
    await done(setElevationStation(desk, work.elevation, station));
    return photo;
  };
  const places: readonly (readonly [number, number])[] = [
    [0.1, 0.1],
    [0.7, 0.15],
    [0.2, 0.8],
    [0.8, 0.85],
  ];
  const chooseYear = async (photo: string) => userEvent.selectOptions(await screen.findByLabelText('Photo'), [photo]);
  const shapeOf = () => document.querySelector('a.map-zone path')?.getAttribute('d');

  it('carries the outlines over by the tapped pairs, and says to how much of the width', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    const photo = await withYear(
      desk,
      work,
      places.map(([x, y]) => ({ from: [x, y], onto: [x + 0.1, y] })),
    );
    mapOf(desk, work.sculpture);
    await onMap('A');
    expect(shapeOf()).toBe('M50 133.33L150 133.33L150 266.67L50 266.67Z');
    await chooseYear(photo);
    await waitFor(() => expect(shapeOf()).toBe('M150 133.33L250 133.33L250 266.67L150 266.67Z'));
    expect(screen.getByText(/laid on this photo by tapped places, to about 0 % of its width/)).toBeDefined();
    // The photo is what was asked for: nothing covers it but lines.
    expect((screen.getByRole('radio', { name: 'Outlines only' }) as HTMLInputElement).checked).toBe(true);
    expect(document.querySelectorAll('.map-fill.bare')).toHaveLength(1);
    await userEvent.click(screen.getByRole('radio', { name: 'Condition index' }));
    expect(shapeOf()).toMatch(/^M150 /);
  });

  it('speaks of the round a photo was taken in, never of a later one', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    const then = await aRound(desk, work, '2024-05-10', ['nothing']);
    await aRound(desk, work, '2026-05-10', [{ [green]: 0.5 }]);
    const pairs = places.map(([x, y]): { from: [number, number]; onto: [number, number] } => ({
      from: [x, y],
      onto: [x, y],
    }));
    const photo = await withYear(desk, work, pairs, then);
    mapOf(desk, work.sculpture);
    await screen.findByRole('link', { name: /^Zone A, part A: (?!100)\d+ \(/ });
    await chooseYear(photo);
    await userEvent.click(screen.getByRole('radio', { name: 'Condition index' }));
    expect(await screen.findByRole('link', { name: /^Zone A, part A: 100 / })).toBeDefined();
    expect(screen.getByText('From the round: Annual, 10 May 2024.')).toBeDefined();
  });

  it('leaves a photo bare that no pairs lie on, and says so with the way to tap them', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    const photo = await withYear(desk, work);
    mapOf(desk, work.sculpture);
    await onMap('A');
    await chooseYear(photo);
    const notice = await screen.findByRole('note', { name: /The outlines are not laid on this photo/ });
    expect(within(notice).getByRole('link', { name: 'Compare the two photos' })).toBeDefined();
    expect(document.querySelectorAll('a.map-zone')).toHaveLength(0);
  });

  it('never lays outlines by pairs that contradict each other', async () => {
    const desk = await freshDesk();
    const work = await heronFromWest(desk, [2], 1);
    const wild = [0.1, -0.08, 0.12, -0.1];
    const photo = await withYear(
      desk,
      work,
      places.map(([x, y], i) => ({ from: [x, y], onto: [Math.max(0, x + wild[i]!), y] })),
    );
    mapOf(desk, work.sculpture);
    await onMap('A');
    await chooseYear(photo);
    expect(await screen.findByRole('note', { name: /The outlines cannot be laid on this photo/ })).toBeDefined();
    expect(document.querySelectorAll('a.map-zone')).toHaveLength(0);
  });
});
