import { act, fireEvent } from '@testing-library/react';
import { holdFor } from '../../src/screens/parts/HoldButton';

/** Holds a finger on a button for as long as it takes. */
export const hold = async (button: HTMLElement): Promise<void> => {
  fireEvent.pointerDown(button);
  await act(() => new Promise((go) => setTimeout(go, holdFor + 50)));
  fireEvent.pointerUp(button);
};
