import type { paperKept as english } from '../en/paperKept';
import type { Same } from '../tongue';

export const paperKept: Same<typeof english> = {
  title: 'Wo etwas aufbewahrt wird',
  lead: 'Was zur Pflege der Werke gehört und in keinem Tablet steckt: Schlüssel, Musterplatten, Proben, Negative, Zeichnungen, Kopien dieses Archivs. Es steht im Brief an die Nachfolge.',
  add: 'Etwas aufschreiben',
  edit: 'Wo es aufbewahrt wird',
  empty: 'Noch ist nichts aufgeschrieben.',
  emptyWhat:
    'Beginnen Sie mit dem, was sonst niemand fände: dem Schlüssel der Sockeltür, der Musterplatte mit dem vereinbarten Farbton.',
  sort: 'Art der Sache',
  what: 'Was es ist',
  whatHint: 'So, dass man es von anderem unterscheiden kann: eine Nummer, ein Zeichen.',
  where: 'Wo es aufbewahrt wird',
  whereHint: 'Wie Sie es jemandem am Telefon sagen würden.',
  whereMissing: 'Sagen Sie, wo es aufbewahrt wird.',
  who: 'Wer es hat oder davon weiß',
  found: 'Dort gesehen am',
  work: 'Zu welchem Werk',
  ofAll: 'Zur ganzen Sammlung',
  note: 'Notiz',
  save: 'Speichern',
  saved: 'Gespeichert.',
  remove: 'Entfernen',
  removed: 'Entfernt.',
  change: 'Ändern',
  changeOf: (what: string) => `Ändern: ${what}`,
  seenOn: (day: string) => `dort gesehen am ${day}`,
  stays: 'Eine Datei ohne Standorte oder ohne Zugang lässt dies aus.',
};
