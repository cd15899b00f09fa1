import { screen } from '@testing-library/react';
import { describe, expect, it } from 'vitest';
import { database } from '../../../src/device/store/database';
import { PhotoAway } from '../../../src/screens/shell';
import { freshDesk, show } from '../deskwork';

const hash = 'c'.repeat(64);

describe('A photo that left this device to make room', () => {
  it('says in the bag of which day it is, and leads to carrying it in', async () => {
    const desk = await freshDesk();
    await desk.store.setMeta(`away ${hash}`, { name: 'patina-round-2026-10-14.survey.zip', day: '2026-10-14' });
    show(desk, <PhotoAway photo={`photo/${hash}`} />);
    expect(
      await screen.findByText(/in the bag of 14 October 2026: patina-round-2026-10-14\.survey\.zip/),
    ).toBeDefined();
    expect(screen.getByRole('link', { name: 'Carry a bag in' }).getAttribute('href')).toBe('/carry');
  });

  it('says nothing once it is here again, nor of one that never was here', async () => {
    const desk = await freshDesk();
    await desk.store.setMeta(`away ${hash}`, { name: 'a.survey.zip', day: '2026-10-14' });
    const db = database(desk.store.name);
    await db.open();
    await db.photoBytes.put({ sha256: hash, mime: 'image/jpeg', bytes: new ArrayBuffer(3) });
    db.close();
    URL.createObjectURL = () => 'blob:here';
    URL.revokeObjectURL = () => undefined;
    show(
      desk,
      <>
        <PhotoAway photo={`photo/${hash}`} />
        <PhotoAway photo={`photo/${'d'.repeat(64)}`} />
        <p>there</p>
      </>,
    );
    await screen.findByText('there');
    await new Promise((go) => setTimeout(go, 50));
    expect(screen.queryByRole('note')).toBeNull();
  });
});
