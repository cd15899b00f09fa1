import type { photos as english } from '../en/photos';
import { unitOf } from '../format';
import type { Same } from '../tongue';

const some = (n: number): string => (n === 1 ? '1 Foto' : `${n} Fotos`);

export const photos: Same<typeof english> = {
  title: 'Fotos',
  back: 'Zurück zum Werk',
  count: (n: number) => (n === 0 ? 'Noch kein Foto' : some(n)),
  lead: (n: number, unsorted: number) =>
    `${some(n)}${unsorted === 0 ? ', alle zugeordnet' : `, ${unsorted} noch nicht zugeordnet`}.`,
  emptyTitle: 'Von diesem Werk noch kein Foto',
  empty:
    'Wählen Sie Fotos, die das Gerät hat, viele auf einmal, oder nehmen Sie jetzt eines auf. Sie bleiben so, wie die Kamera sie gemacht hat.',

  take: 'Aufnehmen und wählen',
  takeWhat:
    'Jedes Foto wird gespeichert, sobald es gelesen ist, und bleibt, wenn das nächste scheitert. Ordnen Sie sie danach zu.',
  one: 'ein Foto des Werks',
  many: 'Mehrere wählen',
  keepPlace: 'Ortsangabe in den Fotos lassen',
  keepPlaceWhat:
    'Kameras schreiben ins Foto, wo sie standen. Das wird vor dem Speichern entfernt, außer dies ist eingeschaltet. Was Hersteller in eigene, geheime Felder schreiben, bleibt unberührt.',
  progress: (done: number, of: number, name: string) => `Foto ${Math.min(done + 1, of)} von ${of}: ${name}`,
  progressName: 'Bisher gespeicherte Fotos',
  stop: 'Nach diesem aufhören',
  stopping: 'Wird beendet …',
  keptMany: (n: number) => `${some(n)} gespeichert.`,
  leftMany: (n: number) =>
    n === 1 ? '1 Datei kam nicht mehr an die Reihe.' : `${n} Dateien kamen nicht mehr an die Reihe.`,
  refusedMany: (n: number) => (n === 1 ? '1 Datei wurde nicht gespeichert' : `${n} Dateien wurden nicht gespeichert`),
  toKnowMany: (n: number) => (n === 1 ? 'Zu 1 Foto ist etwas zu wissen' : `Zu ${n} Fotos ist etwas zu wissen`),
  blankedMany: (n: number) =>
    n === 1 ? 'In 1 Foto wurde die Ortsangabe entfernt.' : `In ${n} Fotos wurde die Ortsangabe entfernt.`,
  fileSaid: (name: string, said: string) => `${name}: ${said}`,
  closeResult: 'Schließen',

  show: 'Zeigen',
  allRounds: 'Alle Rundgänge',
  noRound: 'Außerhalb eines Rundgangs',
  allPlaces: 'Alles',
  unsorted: 'Noch nicht zugeordnet',
  unsortedWhat: 'Tippen Sie ein Foto an und sagen Sie, was es zeigt.',
  noneSuch: 'Kein Foto passt. Wählen Sie einen anderen Rundgang oder alles.',

  station: (letter: string, aim: string) => `Standpunkt ${letter}: ${aim}`,
  square: (which: 'best' | 'worst', zone: string) =>
    `${which === 'best' ? 'Bestes' : 'Schlechtestes'} Quadrat${zone ? `, ${zone}` : ''}`,
  roles: {
    finding: 'Befund',
    zone: 'Zone',
    elevation: 'Ansicht des Werks',
    look: 'Kontrollblick',
    station: 'Standpunkt',
    sentinel: 'Quadrat',
    other: 'Noch nicht zugeordnet',
  },
  alt: (what: string, day: string) => `${what}, ${day}`,
  flaw: { 'cut short': 'Abgeschnitten', 'size untrue': 'Nicht geöffnet', 'not shown': 'Hier nicht gezeigt' },
  flawWhat: {
    'cut short': 'Die Datei endet vor dem Bild. Sie ist so gespeichert, wie sie kam.',
    'size untrue':
      'Die Datei enthält nicht so viele Pixel, wie sie angibt, und wird deshalb nicht geöffnet. Sie ist so gespeichert, wie sie kam.',
    'not shown': 'Der Browser, der sie aufnahm, konnte sie nicht zeigen. Sie ist so gespeichert, wie sie kam.',
  },

  where: 'Was es zeigt',
  whereStation: 'Standpunkt',
  whereSquare: 'Quadrat',
  whereZone: 'Zone',
  whereRound: 'Rundgang',
  none: 'Keine Angabe',
  light: 'Licht',
  lights: {
    'open shade': 'Offener Schatten',
    overcast: 'Bedeckt',
    sun: 'Sonne',
    artificial: 'Lampe oder Blitz',
  },
  wet: 'Oberfläche',
  wetness: { dry: 'Trocken', damp: 'Feucht', wet: 'Nass' },
  washed: 'Gewaschen?',
  washing: { 'before wash': 'Vor dem Waschen', 'after wash': 'Nach dem Waschen' },
  notSaid: 'Keine Angabe',
  note: 'Notiz',
  keepNote: 'Notiz speichern',
  sorted: 'Gespeichert.',
  measure: 'Darauf messen',
  compare: 'Auf ein anderes Jahr legen',
  remove: 'Aus den Einträgen entfernen',
  removed: 'Das Foto ist aus den Einträgen entfernt.',
  facts: 'Die Datei',
  file: (mime: string, size: string) => `${mime}, ${size}`,
  pixels: (width: number, height: number, megapixels: string) => `${width} × ${height} Pixel (${megapixels} Millionen)`,
  taken: (when: string) => `Aufgenommen ${when}, nach der Uhr der Kamera`,
  takenUnknown: 'Die Kamera sagt nicht, wann es aufgenommen wurde.',
  lens: (mm: string) => `Brennweite ${mm} mm`,
  lens35: (mm: string) => `Brennweite wie ${mm} mm bei Kleinbild`,
  placeBlanked: 'Die Ortsangabe wurde vor dem Speichern entfernt.',
  placeKept: 'Die Ortsangabe wurde wie gewählt belassen.',
  placeNone: 'Es wurde keine Ortsangabe darin gefunden.',
  hash: (start: string) => `Die Prüfsumme der Bytes (SHA-256) beginnt mit ${start}`,

  expectedOther: 'des Werks',
  expectedTitle: 'Ein Foto wurde erwartet und ist nicht angekommen',
  expectedLink: (title: string) => `Zu den Fotos von „${title}“`,

  viewfinder: {
    title: (letter: string) => `Sucher, Standpunkt ${letter}`,
    lead: (aim: string) => `Die Bildmitte zielt auf: ${aim}.`,
    missing: 'Dieser Standpunkt ist nicht auf diesem Gerät',
    missingWhat: 'Vielleicht wurde er entfernt. Gehen Sie zurück und öffnen Sie die Liste der Standpunkte noch einmal.',
    back: 'Zurück zur Aufnahmeliste',
    start: 'Kamera starten',
    starting: 'Die Kamera startet …',
    startWhat:
      'Beim ersten Mal fragt der Browser um Erlaubnis. Nichts wird gespeichert, bevor Sie „Aufnehmen“ berühren.',
    own: 'Mit der Kamera des Tablets aufnehmen',
    noCamera: 'Die Kamera lässt sich hier nicht zeigen',
    over: 'Über dem Bild',
    overs: { none: 'Nichts', half: 'Letztes Foto', lines: 'Seine Umrisse' },
    last: (day: string) => `Letztes Foto, ${day}`,
    noLast:
      'Von diesem Standpunkt gibt es noch kein Foto: Nehmen Sie das erste mit Sorgfalt auf, jedes spätere wird darauf gelegt.',
    seen: 'Was die Kamera sieht',
    take: 'Aufnehmen',
    taking: 'Wird gespeichert …',
    kept: 'Foto gespeichert.',
    keptWhat: (what: string) => `${what} ist gespeichert. Nehmen Sie ein weiteres auf, oder gehen Sie weiter.`,
    on: 'Zurück zur Liste',
    level: 'Waagerecht',
    leansLeft: (degrees: string) => `Neigt sich ${degrees}° nach links`,
    leansRight: (degrees: string) => `Neigt sich ${degrees}° nach rechts`,
    distance: (metres: string) => `${metres}\u00a0${unitOf('length')} vom Werk`,
    height: (metres: string) => `Objektiv ${metres}\u00a0${unitOf('length')} über dem Boden`,
    bearing: (degrees: string) => `Blickrichtung ${degrees}°`,
    lens: (mm: string) => `wie ${mm} mm bei Kleinbild`,
    mark: (mark: string) => `Stehen Sie hier: ${mark}`,
    format: { portrait: 'hochkant halten', landscape: 'quer halten' },
    otherWay: {
      portrait: 'Die früheren Fotos sind im Hochformat. Drehen Sie das Tablet.',
      landscape: 'Die früheren Fotos sind im Querformat. Drehen Sie das Tablet.',
    },
  },
};
