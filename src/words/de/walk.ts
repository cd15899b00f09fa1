import type { walk as english } from '../en/walk';
import type { Same } from '../tongue';

const zones = (n: number): string => (n === 1 ? '1 Zone' : `${n} Zonen`);
const restClear = (n: number): string => (n === 1 ? 'Die eine übrige ist frei' : `Alle ${n} übrigen sind frei`);

export const walk: Same<typeof english> = {
  title: 'Rundweg',
  lead: 'An allen Werken vorbei, vom Boden aus: Ist das Grün wieder da, wo gewachst wurde?',
  back: 'Skulpturen',
  setting: (wet: string, how: string) => `Oberfläche ${wet.toLowerCase()}, ${how.toLowerCase()}.`,
  settingChange: 'Ändern',
  settingDone: 'Fertig',
  watch: (left: number) =>
    left === 0 ? 'Nichts mehr auf der Liste dieses Rundwegs' : `${zones(left)} auf der Liste dieses Rundwegs`,
  progress: (looked: number, left: number) => `${zones(looked)} angesehen, noch ${left}`,
  dueWaits: 'Die fälligen Tage werden berechnet. Bis dahin folgt die Liste nur den Kontrollblicken und Beschichtungen.',
  dueCame: 'Die fälligen Tage sind berechnet.',
  dueTake: 'Zeigen',
  allClear: (n: number) => restClear(n),
  allClearFor: (n: number, work: string) => `${restClear(n)}: ${work}`,
  allKept: (n: number) => `${zones(n)} frei. Gespeichert.`,
  others: (n: number) =>
    n === 1 ? '1 Zone zeigen, die nicht auf der Liste steht' : `${n} Zonen zeigen, die nicht auf der Liste stehen`,
  othersHide: 'Zonen verbergen, die nicht auf der Liste stehen',
  noneHere: 'Hier ist diesmal nichts nachzusehen.',
  none: 'Es gibt noch kein Werk für einen Rundweg.',
  noneWhat:
    'Legen Sie eine Skulptur und ihre Zonen an und tragen Sie das erste Wachsen ein: Der Rundweg gilt dem, was gewachst wurde.',
  nothingDue: 'Auf diesem Rundweg ist nichts fällig.',
  why: {
    today: '',
    'not sure': (day: string) => `Beim letzten Mal nicht sicher, ${day}.`,
    due: (day: string) => `Am aufschlussreichsten ist ein Kontrollblick um den ${day}.`,
    'never looked at': (day: string) => `Beschichtung vom ${day}; seither hat niemand nachgesehen.`,
    'not known': (day: string) => `Beim letzten Kontrollblick frei, ${day}.`,
  },
  fromGround: 'Vom Boden aus: was Sie sehen können. Sonst wählen Sie „Nicht sicher“.',
  seenToday: (result: string) => `Heute: ${result}.`,
  lastSeen: (day: string, result: string) => `Letzter Kontrollblick ${day}: ${result}.`,
  never: 'Noch kein Kontrollblick.',
  done: 'Dieser Rundweg bisher',
  ended: (n: number) => `Das Grün ist wieder da in ${zones(n)}:`,
  endedNone: 'Bisher kein Grün gesehen.',
  next: (day: string) => `Der nächste Kontrollblick ist am ${day} fällig.`,
  nextNone: 'Noch ist kein weiterer Kontrollblick fällig.',
  finish: 'Rundweg beenden',
  cautions:
    'Achten Sie auf sich: Bleiben Sie am Boden, halten Sie Abstand vom Wasserrand und von Nestern, sagen Sie jemandem, wo Sie sind. Örtliche Regeln gehen dieser Liste vor.',
};
