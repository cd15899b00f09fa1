import { afterEach, describe, expect, it } from 'vitest';
import { midSentence } from '../../src/words';
import { speak, tongueOf } from '../../src/words/tongue';

afterEach(() => speak(tongueOf('en-GB', 'metric')));

describe('A name inside a sentence', () => {
  it('is written small in English', () => {
    expect(midSentence('Green spots')).toBe('green spots');
  });

  it('keeps the capital of a German noun, and of nothing else', () => {
    speak(tongueOf('de-DE', 'metric'));
    expect(midSentence('Vogelkot')).toBe('Vogelkot');
    expect(midSentence('Grüne Punkte')).toBe('grüne Punkte');
    expect(midSentence('Blasse, pulvrige Häufchen')).toBe('blasse, pulvrige Häufchen');
    expect(midSentence('Mäßig')).toBe('mäßig');
    expect(midSentence('')).toBe('');
  });
});
