import type { reasonsOfAgreement as english } from '../en/reasonsOfAgreement';
import type { Same } from '../tongue';

/** What has to be said beside a figure of how far two people agreed. */
export const reasonsOfAgreement: Same<typeof english> = {
  'agreement: too few': (s) =>
    `${s.times('n', 'Fall ist', 'Fälle sind')} zu wenig, um die Übereinstimmung in einer Zahl zu sagen; mindestens ${s.number('least', 0)} sind nötig.`,
  'agreement: all alike': (s) =>
    `Sie haben in ${s.times('n', 'Fall', 'Fällen')} stets dieselbe Antwort gegeben; keine Zahl kann Übereinstimmung von Zufall trennen.`,
  'agreement: carried left out': (s) =>
    `${s.times('count', 'aus einem früheren Rundgang übernommene Antwort ist', 'aus einem früheren Rundgang übernommene Antworten sind')} ausgelassen: nicht beurteilt.`,
  'agreement: no zone judged by both': () => 'Keine Zone wurde von Ihnen beiden beurteilt.',
  'agreement: rounds not alike': () =>
    'Die beiden Rundgänge sind nicht von gleicher Art und gleichem Zustand; ein Unterschied kann in der Oberfläche liegen und nicht im Auge.',
  'agreement: days apart': (s) =>
    `Die beiden Rundgänge liegen ${s.times('days', 'Tag', 'Tage')} auseinander; die Oberfläche kann sich dazwischen etwas verändert haben.`,
  'agreement: eyes differ as expected': () =>
    'Sie beide unterscheiden sich in der Bedeckung nicht mehr, als es zwei Personen gewöhnlich tun.',
  'agreement: eyes differ by more than expected': () =>
    'Sie beide unterscheiden sich in der Bedeckung mehr, als es zwei Personen gewöhnlich tun: Sehen Sie gemeinsam hin, bevor Sie Ihre Rundgänge vergleichen.',
};
