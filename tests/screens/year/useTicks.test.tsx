import { act, renderHook, waitFor } from '@testing-library/react';
import { expect, it } from 'vitest';
import type { Planned } from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { DeskContext } from '../../../src/screens/shell/DeskContext';
import { useTicks } from '../../../src/screens/year/useTicks';
import { freshDesk } from '../deskwork';

it('a tick that follows while earlier ones are still being kept loses none of them, whatever was read meanwhile', async () => {
  const desk = await freshDesk();
  const none = { listTicks: [] } as unknown as Planned;
  // What the store had come to when it was asked in the middle of it.
  const first = {
    listTicks: [
      {
        thing: nameOf.listTicks('packing', '2026-10-20'),
        body: { list: 'packing', of: '2026-10-20', ticked: [{ item: 'gloves', on: '2026-10-15' }] },
      },
    ],
  } as unknown as Planned;
  const { result, rerender } = renderHook(({ planned }) => useTicks(planned, 'packing', '2026-10-20'), {
    initialProps: { planned: none },
    wrapper: ({ children }) => <DeskContext value={desk}>{children}</DeskContext>,
  });
  act(() => result.current.turn('gloves', true));
  act(() => result.current.turn('tape', true));
  rerender({ planned: first });
  act(() => result.current.turn('torch', true));
  await waitFor(async () => {
    const [kept] = await desk.store.ofKind('listTicks');
    const ticked = (kept?.lead.body.ticked ?? []) as readonly { readonly item: string }[];
    expect(ticked.map(({ item }) => item).sort()).toEqual(['gloves', 'tape', 'torch']);
  });
  expect(result.current.tickedOn('tape')).toBe('2026-10-15');
});
