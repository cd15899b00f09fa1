import { useEffect } from 'react';
import { settings } from '../../actions';
import { useQuestion } from './useQuestion';

/** Theme, hand and gloves as attributes of the page, where the style sheets read them. */
export function useDeviceSettings(): void {
  const { theme, hand, gloves } = useQuestion(settings);
  useEffect(() => {
    const { dataset } = document.documentElement;
    dataset.theme = theme;
    dataset.hand = hand;
    dataset.gloves = gloves ? 'yes' : 'no';
  }, [theme, hand, gloves]);
}
