import type { parts as english } from '../en/parts';
import type { Same } from '../tongue';

/** Words of the controls all screens share. */
export const parts: Same<typeof english> = {
  optional: 'freiwillig',
  currency: 'Währung',
  currencyHint: 'Drei Buchstaben, zum Beispiel EUR. Wird einmal gefragt: Alle Beträge dieser Sammlung stehen in ihr.',
  closeSheet: 'Schließen',
  reading: 'Wird gelesen …',
  leaveOff: 'Abbrechen',
  notKnown: 'nicht bekannt',
  notLooked: 'nicht angesehen',
  photoElsewhere: 'Dieses Foto ist nicht auf diesem Gerät.',
  photoAway: (day: string, bag: string) =>
    day === '' ? `Dieses Foto liegt in der Tasche ${bag}.` : `Dieses Foto liegt in der Tasche vom ${day}: ${bag}`,
  notice: { note: 'Hinweis', caution: 'Vorsicht', stop: 'Halt', problem: 'Etwas stimmt nicht' },
  photosHere: {
    alt: (what: string, n: number) => `${what}, Foto ${n}`,
    off: 'Wegnehmen',
    offOf: (what: string, n: number) => `Foto ${n} wegnehmen: ${what}`,
  },
  level: { 1: 'gut', 2: 'leichte Mängel', 3: 'deutliche Mängel', 4: 'schlecht', 5: 'sehr schlecht' },
  dial: (of: string, value: string, low: string, high: string, word: string) =>
    `${of}: Zustandsindex ${value} von 100, zwischen ${low} und ${high}, ${word}`,
  dialNone: (of: string) => `${of}: kein Zustandsindex, nicht angesehen`,
  notShown: (n: number) =>
    n === 1 ? 'Eine weitere Zone wird nicht gezeigt.' : `${n} weitere Zonen werden nicht gezeigt.`,
  showMore: (n: number) => `${n} weitere zeigen`,
  stage: {
    larger: 'Größer',
    smaller: 'Kleiner',
    keys: 'Die Pfeiltasten bewegen ein Kreuz, mit der Umschalttaste weiter. Die Eingabetaste setzt es.',
    arrows: { left: 'nach links', up: 'nach oben', down: 'nach unten', right: 'nach rechts' },
    move: (what: string, where: string) => `${what} ${where} bewegen`,
    moveWhat: (what: string) => `${what} bewegen`,
  },
  print: 'Diese Seite drucken',
  how: 'Wie wird das berechnet?',
};
