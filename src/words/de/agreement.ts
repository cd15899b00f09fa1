import type { agreement as english } from '../en/agreement';
import type { Same } from '../tongue';

export const agreement: Same<typeof english> = {
  title: 'Zwei Personen, ein Rundgang',
  link: 'Zwei Personen',
  lead: 'Wo zwei Personen dieselben Zonen unabhängig voneinander beurteilt haben: wie weit sie übereinstimmen, und wo gemeinsam hinzusehen ist.',
  back: 'Zurück zur Skulptur',
  gone: 'Diese Skulptur ist nicht auf diesem Gerät.',
  none: 'Von diesem Werk wurde noch kein Rundgang doppelt gemacht.',
  how: 'Dazu macht eine zweite Person innerhalb von zwei Wochen denselben Rundgang, auf ihrem eigenen Tablet und ohne den ersten zu sehen. Holen Sie ihn herein, und geben Sie an, dass es zwei Rundgänge sind, nicht einer.',
  toCarry: 'Zu „Mitgeben“',
  choose: 'Die beiden Rundgänge',
  pair: (day: string, one: string, other: string) => `${day}: ${one} und ${other}`,
  someone: 'jemand',

  short: 'Kurz gesagt',
  zones: (both: number, all: number) =>
    both === all
      ? all === 1
        ? 'Die eine Zone wurde von beiden beurteilt.'
        : `Alle ${all} Zonen wurden von beiden beurteilt.`
      : both === 1
        ? `1 von ${all} Zonen wurde von beiden beurteilt.`
        : `${both} von ${all} Zonen wurden von beiden beurteilt.`,
  kinds: (both: number, all: number) =>
    all === 1
      ? `Von dem 1 Befund, den eine der beiden Personen erfasste, erfassten beide ${both}.`
      : `Von ${all} Befunden, die mindestens eine Person erfasste, erfassten beide ${both}.`,
  onlyOne: (who: string, n: number) => `Nur ${who} erfasste: ${n}.`,
  severity: (alike: number, n: number) =>
    n === 1
      ? `Von dem 1 Befund, den beide erfassten, erhielten ${alike} dieselbe Schwere.`
      : `Von den ${n} Befunden, die beide erfassten, ${alike === 1 ? 'erhielt 1' : `erhielten ${alike}`} dieselbe Schwere.`,
  coverage: (who: string, other: string, share: string, range: string) =>
    `Wo ${who} 20 % sagt, sagt ${other} etwa ${share} (${range}).`,
  nothing: 'Keine der beiden Personen hat in diesen Zonen etwas erfasst.',

  figures: 'In Zahlen',
  what: 'Was',
  figure: 'Wert',
  n: 'Fälle',
  kappa: 'Was da ist: Cohens Kappa',
  weighted: 'Schwere: gewichtetes Kappa',
  icc: 'Bedeckung: ICC(2,1), auf der Logit-Skala',
  figuresWhat: '1 ist volle Übereinstimmung, 0 nicht mehr als Zufall. Jeder Wert mit seiner 90-%-Spanne.',
  notTold: 'lässt sich nicht angeben',

  apart: 'Wo die Urteile auseinandergehen',
  apartWhat: 'Sehen Sie dies gemeinsam an, am Werk, und einigen Sie sich, wie Sie es nennen.',
  apartNone: 'Die Urteile gehen nirgends auseinander.',
  zone: 'Zone',
  kind: 'Art',
  why: {
    'found by one only': 'nur von einer Person erfasst',
    origin: 'andere Herkunft',
    severity: 'andere Schwere',
    coverage: 'andere Bedeckung',
  },
  differs: 'Unterschied',
  notRecorded: 'nicht erfasst',
  sources:
    'Kappa nach Cohen 1960 und 1968, seine Spanne nach Fleiss, Cohen und Everitt 1969; ICC nach Shrout und Fleiss 1979. Alle können niedrig sein, wenn fast alles gleich ist: Lesen Sie zuerst die Sätze.',
};
