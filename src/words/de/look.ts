import type { look as english } from '../en/look';
import type { Same } from '../tongue';

export const look: Same<typeof english> = {
  title: 'Kontrollblick',
  lead: 'Vom Boden aus, im Vorbeigehen: Ist das Grün wieder da?',
  back: 'Zurück zur Skulptur',
  surface: 'Die Oberfläche ist',
  surfaceWhat: 'Nur bei trockener Oberfläche ist sicher zu sehen, dass eine Zone frei ist.',
  wetName: { dry: 'Trocken', damp: 'Feucht', wet: 'Nass' },
  watched: 'Zonen unter Beobachtung',
  watchedWhat: 'Zonen, in denen früher Grün gefunden wurde.',
  all: 'Alle Zonen',
  showAll: (n: number) => (n === 1 ? '1 weitere Zone zeigen' : `${n} weitere Zonen zeigen`),
  clear: 'Frei',
  green: 'Grün ist wieder da',
  greenWhat:
    'Grün ist wieder da: ein hellgrüner Fleck von mehr als 1 cm², sicher gesehen. Sonst wählen Sie „Nicht sicher“.',
  unsure: 'Nicht sicher',
  answerFor: (answer: string, letter: string) => `Zone ${letter}: ${answer}`,
  last: (day: string, result: string) => `Letzter Kontrollblick ${day}: ${result}`,
  never: 'Noch kein Kontrollblick',
  today: (result: string) => `Heute: ${result}`,
  kept: (letter: string, result: string) => `Zone ${letter}: ${result}. Gespeichert.`,
  photoWhat: 'Fotografieren Sie es jetzt: Das Foto sagt es besser als Worte.',
  photoCount: (n: number) => (n === 1 ? '1 Foto' : `${n} Fotos`),
  noZones: 'Dieses Werk hat noch keine Zonen.',
  none: 'Bisher hatte keine Zone Grün. Sehen Sie eine beliebige Zone an.',
  planned: 'Geplant',
  passing: 'Nebenbei bemerkt',
  how: 'Dieser Kontrollblick war',
};
