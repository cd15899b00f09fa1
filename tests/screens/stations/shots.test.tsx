import { screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import sharp from 'sharp';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import {
  addSentinel,
  addStations,
  commitChanges,
  type Desk,
  expectPhoto,
  keepPhoto,
  photoExpected,
  setStandHere,
} from '../../../src/actions';
import { idPart } from '../../../src/engine/record';
import { cautionsAt } from '../../../src/engine/trade';
import { EndRoundScreen } from '../../../src/screens/round';
import { ShotListScreen } from '../../../src/screens/stations';
import { w } from '../../../src/words';
import { axeFaults } from '../axe';
import { aRound, aWork, done, freshDesk, show } from '../deskwork';

const words = w.stations.shots;

/** A photo of one colour; each grey is another file. */
const aFile = async (grey: number): Promise<File> => {
  const background = { r: grey, g: grey, b: grey };
  const bytes = await sharp({ create: { width: 32, height: 24, channels: 3, background } })
    .jpeg()
    .toBuffer();
  return new File([new Uint8Array(bytes)], 'photo.jpg', { type: 'image/jpeg' });
};

// The hash is Node's own and takes no bytes of jsdom's world: it is handed a copy. Nor does the database; that bytes are kept
// and read back is promised in tests/device and tests/browser.
const { digest } = crypto.subtle;
beforeEach(() => {
  vi.spyOn(crypto.subtle, 'digest').mockImplementation((name, data) =>
    digest.call(crypto.subtle, name, Buffer.from(data as ArrayBuffer)),
  );
});

/** A work with a station, a square, and a round under way; last year's photo of the station is there. */
const underWay = async (seed: number) => {
  const desk = await freshDesk(seed);
  vi.spyOn(desk.store, 'keepPhoto').mockResolvedValue();
  const work = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
  const { sculpture, zones } = work;
  const { stations } = await done(
    addStations(desk, sculpture, [
      { aim: 'beak', mark: 'brass stud', light: 'open shade', wet: 'dry' },
      { aim: 'tail' },
    ]),
  );
  await done(addSentinel(desk, sculpture, { zone: zones[0] ?? '', which: 'worst', find: 'under the seam' }));
  const [station = ''] = stations.map((each) => each.station);
  const earlier = await aRound(desk, work, '2025-05-10', ['nothing']);
  await done(keepPhoto(desk, sculpture, await aFile(40), 'station', { station, round: earlier }));
  const round = await aRound(desk, work, '2026-10-15', [], { round: { ended: undefined, wet: 'damp' } });
  return { desk, work, sculpture, station, round, earlier };
};

const rowOf = async (name: string) => within(await screen.findByRole('listitem', { name }));
const photosIn = async (desk: Desk, sculpture: string, round: string) =>
  (await desk.store.within(sculpture, ['photo']))
    .filter(({ gone, lead }) => !gone && lead.body.round === round)
    .map(({ lead }) => lead.body);
const stationA = w.stations.nameOf('A', 'beak');

describe('The shot list', () => {
  it('says what is there and what is not, with last year’s photo beside what is to be taken', async () => {
    const { desk, sculpture, station } = await underWay(1);
    show(desk, <ShotListScreen sculpture={sculpture} />);
    const row = await rowOf(stationA);
    expect(row.getByText('brass stud')).toBeDefined();
    expect(row.getByText(words.missing)).toBeDefined();
    expect(row.getByText(words.before('10 May 2025'))).toBeDefined();
    expect(row.getByRole('link', { name: words.viewfinderOf(stationA) }).getAttribute('href')).toContain(
      idPart(station),
    );
    expect((await rowOf('Worst square, zone A')).getByText('under the seam')).toBeDefined();
    expect((await rowOf('Zone A, part A')).getByText(words.missing)).toBeDefined();
    expect(screen.getByText(words.there('0', '3'))).toBeDefined();
    expect(await axeFaults()).toEqual([]);
  });

  it('warns once of stepping back, and names what a station asks for and does not get', async () => {
    const user = userEvent.setup();
    const { desk, sculpture } = await underWay(2);
    show(desk, <ShotListScreen sculpture={sculpture} />);
    const row = await rowOf(stationA);
    expect(cautionsAt('photo').map(({ name }) => screen.getAllByText(name).length)).toEqual([1]);
    expect(row.getByText(words.asksSurface('dry', 'damp'))).toBeDefined();
    expect(row.queryByText(/Asks for open shade/)).toBeNull();
    await user.click(screen.getByRole('radio', { name: words.lights.sun }));
    expect(row.getByText(words.asksLight('open shade', 'sun'))).toBeDefined();
  });

  it('keeps a photo with its station, round, light and surface, ticks the row, and takes back the note that one is expected', async () => {
    const user = userEvent.setup();
    const { desk, sculpture, station, round } = await underWay(3);
    show(desk, <ShotListScreen sculpture={sculpture} />);
    const row = await rowOf(stationA);
    await user.click(screen.getByRole('radio', { name: words.lights.overcast }));
    await user.click(row.getByRole('button', { name: w.round.photo.takeOf(stationA) }));
    await waitFor(async () => expect(await photoExpected(desk)).toMatchObject({ sculpture, station, round }));
    await user.upload(row.getByLabelText(w.round.photo.takeOf(stationA), { selector: 'input' }), await aFile(90));
    expect(await row.findByText(words.ticked(1))).toBeDefined();
    expect(await photosIn(desk, sculpture, round)).toEqual([
      expect.objectContaining({ role: 'station', station, light: 'overcast', wet: 'damp', washed: 'before wash' }),
    ]);
    expect(await photoExpected(desk)).toBeUndefined();
    expect(screen.getByText(words.there('1', '3'))).toBeDefined();
  });

  it('keeps a photo of a square and of a whole zone where they belong', async () => {
    const user = userEvent.setup();
    const { desk, sculpture, round } = await underWay(4);
    show(desk, <ShotListScreen sculpture={sculpture} />);
    for (const [i, name] of ['Worst square, zone A', 'Zone A, part A'].entries()) {
      const row = await rowOf(name);
      await user.upload(
        row.getByLabelText(w.round.photo.chooseOf(name), { selector: 'input' }),
        await aFile(100 + 20 * i),
      );
      expect(await row.findByText(words.ticked(1))).toBeDefined();
    }
    const kept = await photosIn(desk, sculpture, round);
    expect(kept.map(({ role }) => role).sort()).toEqual(['sentinel', 'zone']);
  });

  it('asks again for a photo that did not come back from the camera, and forgets it when told to', async () => {
    const user = userEvent.setup();
    const { desk, sculpture, station, round } = await underWay(9);
    await expectPhoto(desk, { sculpture, station, round });
    show(desk, <ShotListScreen sculpture={sculpture} />);
    expect(await screen.findByText(w.round.photo.expected(stationA))).toBeDefined();
    await user.click(screen.getByRole('button', { name: w.round.photo.without }));
    await waitFor(() => expect(screen.queryByText(w.round.photo.expected(stationA))).toBeNull());
    expect(await photoExpected(desk)).toBeUndefined();
  });

  it('shows where to stand until the photo is there', async () => {
    const { desk, sculpture, station, round } = await underWay(10);
    await done(setStandHere(desk, station, await aFile(200)));
    show(desk, <ShotListScreen sculpture={sculpture} />);
    expect(await (await rowOf(stationA)).findByText(words.standHere)).toBeDefined();
    await done(keepPhoto(desk, sculpture, await aFile(210), 'station', { station, round }));
    await waitFor(async () => expect((await rowOf(stationA)).queryByText(words.standHere)).toBeNull());
    expect((await rowOf(stationA)).getByText(words.ticked(1))).toBeDefined();
  });

  it('says what is wrong with a file that is no photo, and ticks nothing', async () => {
    const user = userEvent.setup({ applyAccept: false });
    const { desk, sculpture } = await underWay(5);
    show(desk, <ShotListScreen sculpture={sculpture} />);
    const row = await rowOf(stationA);
    const file = new File(['<svg/>'], 'drawing.svg', { type: 'image/svg+xml' });
    await user.upload(row.getByLabelText(w.round.photo.chooseOf(stationA), { selector: 'input' }), file);
    expect(await row.findByRole('alert')).toBeDefined();
    expect(row.getByText(words.missing)).toBeDefined();
  });

  it('shows an earlier round with what it has, and offers the camera only for a round under way', async () => {
    const user = userEvent.setup();
    const { desk, sculpture, earlier } = await underWay(6);
    show(desk, <ShotListScreen sculpture={sculpture} />);
    await rowOf(stationA);
    await user.selectOptions(screen.getByRole('combobox', { name: words.round }), earlier);
    expect(await (await rowOf(stationA)).findByText(words.ticked(1))).toBeDefined();
    expect(screen.getByText(words.ended('10 May 2025'))).toBeDefined();
    expect(screen.queryByRole('button', { name: /^Take a photo/ })).toBeNull();
    expect((await rowOf(stationA)).getByLabelText(w.round.photo.chooseOf(stationA))).toBeDefined();
  });

  it('leads to the stations where none is set, and to a round where none is under way', async () => {
    const desk = await freshDesk(7);
    const work = await aWork(desk, { title: 'Heron', number: '2', areas: [1] });
    show(desk, <ShotListScreen sculpture={work.sculpture} />);
    expect(await screen.findByText(words.stationsNone)).toBeDefined();
    expect(screen.getByText(words.squaresNone)).toBeDefined();
    expect(screen.getByRole('link', { name: words.toStations }).getAttribute('href')).toMatch(/stations$/);
    expect(screen.getByRole('link', { name: words.start }).getAttribute('href')).toMatch(/round\/start$/);
    expect(await axeFaults()).toEqual([]);
  });
});

describe('The end of a round', () => {
  it('names the stations and squares without a photo, and is quiet once all are there', async () => {
    const { desk, sculpture, station, round } = await underWay(8);
    show(desk, <EndRoundScreen round={round} />);
    expect(await screen.findByText(words.missingTitle(3))).toBeDefined();
    expect(screen.getByText(stationA)).toBeDefined();
    expect(screen.getByText('Worst square, zone A')).toBeDefined();
    expect(screen.getByRole('link', { name: words.missingLink }).getAttribute('href')).toMatch(/shots$/);
    await done(keepPhoto(desk, sculpture, await aFile(130), 'station', { station, round }));
    expect(await screen.findByText(words.missingTitle(2))).toBeDefined();
    for (const kind of ['station', 'sentinel'])
      for (const { thing } of await desk.store.within(sculpture, [kind]))
        if (thing !== station)
          await done(commitChanges(desk, { code: 'deed: station removed', params: {} }, [{ thing, gone: true }]));
    await waitFor(() => expect(screen.queryByText(/of the shot list/)).toBeNull());
  });
});
