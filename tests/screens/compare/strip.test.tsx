import { screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { setPhotoFit } from '../../../src/actions';
import { StripScreen } from '../../../src/screens/compare';
import { axeFaults } from '../axe';
import { done, show } from '../deskwork';
import { type OnStation, onStation } from './onStation';

beforeEach(() => {
  URL.createObjectURL = () => 'blob:picture';
  URL.revokeObjectURL = vi.fn();
});

const opened = ({ desk, work, station }: OnStation) =>
  show(desk, <StripScreen sculpture={work.sculpture} station={station} />);
const yearOf = async (day: RegExp): Promise<HTMLElement> =>
  (await screen.findByText(day, { selector: '.strong' })).closest('li') as HTMLElement;

describe('All years of a station in a row', () => {
  it('stand in order, oldest first, under the name of the station', async () => {
    opened(await onStation(61, [{}, {}, {}, {}, {}, {}]));
    expect(await screen.findByRole('heading', { name: 'Station A: the beak' })).toBeDefined();
    expect(screen.getByText('6 photos, 12 May 2021 to 12 May 2026.')).toBeDefined();
    const days = screen.getAllByRole('listitem').map((item) => item.querySelector('.strong')?.textContent);
    expect(days[0]).toBe('12 May 2021, overcast, dry, before washing');
    expect(days).toHaveLength(6);
    expect(await axeFaults()).toEqual([]);
  });

  it('say which was taken against the station’s rule, or unlike the others, or without a word on it', async () => {
    opened(await onStation(62, [{ light: 'sun' }, { washed: 'after wash' }, {}, { light: undefined, wet: undefined }]));
    expect(within(await yearOf(/2021/)).getByText('Not by the station’s rule: in sun.')).toBeDefined();
    expect(within(await yearOf(/2022/)).getByText('Not as the others: after washing.')).toBeDefined();
    expect(within(await yearOf(/2023/)).queryByText(/^Not/)).toBeNull();
    expect(within(await yearOf(/2024/)).getByText('Light and surface not said.')).toBeDefined();
  });

  it('are laid on the latest where pairs were touched, with how far off, and can be seen as taken', async () => {
    const at = await onStation(63, [{}, {}, {}]);
    const [photo = '', , onto = ''] = at.photos;
    const spots = [
      [0.2, 0.2],
      [0.7, 0.2],
      [0.2, 0.8],
      [0.7, 0.8],
    ] as const;
    const pairs = spots.map(([x, y]) => ({ from: [x, y], onto: [x + 0.05, y] }) as const);
    await done(setPhotoFit(at.desk, { photo, onto, kind: 'similarity', pairs }));
    opened(at);
    expect(within(await yearOf(/2021/)).getByText('Laid on the latest, 0 % of the width off.')).toBeDefined();
    expect(within(await yearOf(/2022/)).getByText('Not laid on the latest: shown as taken.')).toBeDefined();
    await userEvent.click(screen.getByRole('radio', { name: 'As taken' }));
    expect(screen.queryByText(/Laid on the latest,/)).toBeNull();
  });

  it('lead to each pair of years', async () => {
    opened(await onStation(64, [{}, {}, {}]));
    const link = within(await yearOf(/2022/)).getByRole('link', { name: 'Compare with 12 May 2021' });
    expect(link.getAttribute('href')).toMatch(/compare\/1{64}\/2{64}$/);
  });

  it('say so where there is no photo yet, and where the station is not here', async () => {
    const at = await onStation(65, []);
    opened(at).unmount();
    opened(at);
    expect(await screen.findByText('No photo from this station yet')).toBeDefined();
    show(at.desk, <StripScreen sculpture={at.work.sculpture} station="station/gone" />);
    expect(await screen.findByText('This station is not on this device')).toBeDefined();
  });
});
