import type { shell as english } from '../en/shell';
import type { Same } from '../tongue';

export const shell: Same<typeof english> = {
  nav: {
    label: 'Hauptmenü',
    sculptures: 'Werke',
    nextSteps: 'Schritte',
    plan: 'Planung',
    carry: 'Mitgeben',
    method: 'Methode',
    settings: 'Einstel\u00adlungen',
  },
  skip: 'Zum Inhalt springen',
  undo: 'Rückgängig',
  undoOf: (deed: string) => `Rückgängig: ${deed}`,
  undone: (deed: string) => `Zurückgenommen: ${deed}`,
  surveyor: (role: string) => `Bei der Arbeit: ${role}`,
  nobody: 'Wer ist da?',
  invented: 'Erfundene Sammlung',
  inventedWhat: 'Nichts hiervon ist echt.',
  leaveDemo: 'Beispiel verlassen',
  tour: 'Zur Führung',
  help: 'Hilfe zu dieser Ansicht',
  readingOnly: 'Dieser Tab liest nur',
  readingOnlyWhat: 'Patina Round ist in einem anderen Tab geöffnet, und nur einer darf schreiben.',
  takeOver: 'Hier übernehmen',
  takenOver: 'Dieser Tab schreibt jetzt.',
  update: 'Eine neue Version liegt bereit',
  updateWhat: 'Sie startet beim nächsten Öffnen oder jetzt. Nichts von dem, was Sie eingegeben haben, geht verloren.',
  updateNow: 'Jetzt starten',
  broken: 'Diese Seite konnte nicht angezeigt werden',
  brokenWhat:
    'Was Sie eingegeben haben, ist auf diesem Gerät gespeichert. Laden Sie die Seite noch einmal; bleibt der Fehler, sichern Sie zuerst die Bestandsaufnahme als Datei.',
  brokenAgain: 'Noch einmal laden',
  brokenCarry: 'Bestandsaufnahme mitgeben',
  brokenBack: 'Zurück zu den Skulpturen',
  brokenDetail: 'Was das Gerät meldet',
  lost: 'Diese Seite gibt es nicht',
  lostWhat: 'Die Adresse ist vielleicht veraltet, oder das, worauf sie verwies, wurde entfernt.',
  opening: 'Die Bestandsaufnahme wird geöffnet …',
  cannotOpen: 'Die Bestandsaufnahme konnte nicht geöffnet werden',
  removed: 'Die Bestandsaufnahme wurde von diesem Gerät entfernt',
  lastFiles: 'Zuletzt von diesem Gerät mitgegeben:',
  lastFile: {
    bag: (day: string, entries: string, photos: string) => `eine Tasche, ${day}: Einträge ${entries}, Fotos ${photos}`,
    survey: (day: string, entries: string, _photos: string) =>
      `eine Bestandsdatei, ${day}: Einträge ${entries}, ohne die Fotos`,
    step: (day: string, entries: string, photos: string) =>
      `mit diesem Ordner abgeglichen bis ${day}: Einträge ${entries}, Fotos ${photos}. Beginnen Sie leer und schalten Sie „Abgleichen“ dann wieder ein.`,
  },
  lastFilesNone:
    'Von diesem Gerät wurde keine Datei mit allem mitgegeben. Hat ein anderes Gerät die Bestandsaufnahme, sichern Sie sie dort als Datei, und öffnen Sie die Datei hier.',
  lostSince: (entries: string) =>
    `Danach kamen noch Einträge hinzu (bis zu ${entries}). Sie stehen in keiner Datei dieses Geräts; sehen Sie auf anderen Geräten nach, die die Bestandsaufnahme hatten.`,
  openLast: 'Letzte Datei öffnen',
  startAfresh: 'Leer beginnen',
  startAfreshWhat:
    'Mit der Datei kommt alles zurück, was darin stand. Wenn Sie leer beginnen, geht nichts verloren: Die Datei lässt sich auch später öffnen.',
  loadAgain: 'Neu laden',
};
