import type { measure as english } from '../en/measure';
import type { Same } from '../tongue';

const square = (which: 'best' | 'worst'): string => (which === 'best' ? 'Bestes Quadrat' : 'Schlechtestes Quadrat');

export const measure: Same<typeof english> = {
  title: 'Auf einem Foto messen',
  link: 'Messen',
  lead: 'Wie viel von einer Zone ein Befund bedeckt, auf einem Foto gemessen. Der Wert steht neben dem, was das Auge im Rundgang sagte, und tritt nie an dessen Stelle.',
  zone: (letter: string, name: string) => `Zone ${letter}, ${name}`,
  zoneShort: (letter: string) => `Zone ${letter}`,
  sentinel: (which: 'best' | 'worst', zone: string) => `${square(which)}, ${zone}`,
  notHere: 'Dieses Foto, oder was darauf zu messen war, ist nicht hier',
  photoOf: (zone: string, day: string) => `Foto: ${zone}${day && `, ${day}`}`,
  photoElsewhere: 'Das Bild selbst ist nicht auf diesem Gerät',
  photoElsewhereWhat:
    'Was darauf gemessen wurde, steht unten. Zum Messen braucht es das Bild: Holen Sie es mit seinen Fotos herein.',
  noSize: 'Die Größe dieses Bildes ist nicht bekannt',
  noSizeWhat: 'Darauf lässt sich nichts messen. Fügen Sie das Foto noch einmal aus seiner Datei hinzu.',
  readingOnly: 'Diese Seite liest nur; hier lässt sich nichts messen.',

  part: 'Welcher Teil des Fotos',
  partFrom: {
    drawn: 'Der Teil, wie er hier gezeichnet wurde.',
    measured: 'Der Teil, in dem ein früherer Wert dieses Fotos gemessen wurde.',
    outline: 'Der Umriss dieser Zone auf der Karte.',
    'laid on':
      'Der Umriss dieser Zone von einem anderen Foto, durch die auf beiden angetippten Stellen auf dieses gelegt. Zeichnen Sie den Teil hier, wo er nicht passt.',
  },
  partNone: (what: string) =>
    `Noch ist nicht bekannt, welcher Teil dieses Fotos dies ist: ${what}. Zeichnen Sie ihn zuerst.`,
  partDraw: 'Teil zeichnen',
  partDrawAnew: 'Anderen Teil zeichnen',
  partFromMap: 'Den hier gezeichneten Teil verwerfen',
  partTitle: 'Teil zeichnen',
  partLead:
    'Tippen Sie am Rand entlang, Ecke für Ecke, und schließen Sie ihn dann. Besteht er aus mehreren Stücken, wird Stück für Stück gezeichnet.',
  partWhole: 'Das ganze Bild',
  partDone: 'Das ist der Teil',
  partIs: (pixels: string) => `Darin liegen ${pixels} Pixel.`,

  kind: 'Was gemessen wird',
  kindOther: 'Eine andere Art',
  kindChoose: 'Art wählen',
  kindFirst: 'Wählen Sie zuerst, was gemessen wird.',
  kindEye: (share: string) => `nach Augenmaß ${share}`,
  kindNoEye: 'in diesem Rundgang nicht nach Augenmaß angegeben',

  ways: 'Drei Wege',
  way: {
    traced: 'Flecken umfahren',
    dots: 'Punkte beurteilen',
    photo: 'Die Pixel auswerten und prüfen',
  },
  wayShort: { traced: 'umfahren', dots: 'Punkte', photo: 'Pixel, geprüft', eye: 'nach Augenmaß' },
  wayWhat: {
    traced: 'Für wenige Flecken mit klarem Rand. Tippen Sie die Ecken jedes Flecks an.',
    dots: 'Für viele kleine Stellen. Eine Berührung je Punkt: darauf, nicht darauf oder Glanz.',
    photo:
      'Ein zweiter Zeuge für den Schreibtisch. Tippen Sie drei Stellen jeder Art an; 30 Prüfpunkte sagen dann, wie weit die Pixel recht haben.',
  },
  open: { traced: 'Umfahren', dots: 'Punkte beurteilen', photo: 'Pixel verwenden' },
  goOn: { traced: 'Weiter umfahren', dots: 'Weiter mit den Punkten', photo: 'Weiter mit den Pixeln' },
  lookAgain: { traced: 'Flecken ändern', dots: 'Neu beurteilen', photo: 'Noch einmal ansehen' },
  underWay: 'Nicht fertig: Es ergibt noch keinen Wert.',
  changed: 'Geändert, seit der Wert gespeichert wurde.',
  dotsDone: (done: number, all: number) => `${done} von ${all} Punkten sind beurteilt.`,
  stop: 'Für jetzt aufhören',
  back: 'Zurück zu den Werten',

  corner: 'Ecke setzen',
  cornerUndo: 'Letzte Ecke zurücknehmen',
  cornerBefore: 'Vorige Ecke',
  cornerAfter: 'Nächste Ecke',
  corners: (n: number) =>
    n === 0 ? 'Noch keine Ecke.' : n === 1 ? '1 Ecke, nicht geschlossen.' : `${n} Ecken, nicht geschlossen.`,
  cornerChosen: (n: number, all: number) => `Ecke ${n} von ${all} ist gewählt; die Pfeile bewegen sie.`,
  movedCorner: 'die Ecke',
  close: 'Schließen',
  closeNeeds: 'Ab drei Ecken lässt sich schließen.',
  crosses: 'Die Linie kreuzt sich selbst. Nehmen Sie eine Ecke zurück oder bewegen Sie sie, dann schließen Sie.',
  ringUndo: { patch: 'Letzten Fleck wieder öffnen', piece: 'Letztes Stück wieder öffnen' },
  ringAway: { patch: 'Letzten Fleck entfernen', piece: 'Letztes Stück entfernen' },
  rings: {
    patch: (n: number) =>
      n === 0
        ? 'Noch ist kein Fleck geschlossen.'
        : n === 1
          ? '1 Fleck ist geschlossen.'
          : `${n} Flecken sind geschlossen.`,
    piece: (n: number) =>
      n === 0
        ? 'Noch ist kein Stück geschlossen.'
        : n === 1
          ? '1 Stück ist geschlossen.'
          : `${n} Stücke sind geschlossen.`,
  },

  traceLead: (what: string) =>
    `Tippen Sie am Rand jedes Flecks entlang, Ecke für Ecke, und schließen Sie ihn dann. Gesucht: ${what}.`,
  traceAll: 'Das ist alles',
  traceNone: (what: string) => `Hier nicht vorhanden: ${what}`,
  traceOpen:
    'Ein Fleck ist offen. Schließen Sie ihn oder nehmen Sie seine Ecken zurück, bevor Sie sagen, das ist alles.',
  soFar: 'Bisher',
  kept: 'Der Wert ist neben den anderen gespeichert.',
  keep: 'Diesen Wert speichern',

  dotsLead:
    'Die Punkte sind durch Zufall über den Teil verteilt. Beurteilen Sie, was unter der Mitte jedes Punktes liegt, nicht, was daneben ist.',
  howMany: 'Wie viele Punkte',
  dotsCount: { 49: '49 Punkte', 100: '100 Punkte' },
  dotsFor: { 49: 'im Freien, etwa eine Minute', 100: 'am Schreibtisch, für eine engere Spanne' },
  dotsLay: 'Punkte auslegen',
  dotsAnew: 'Neue Punkte auslegen',
  dotsAnewWhat:
    'Die bisher beurteilten Punkte werden verworfen; ein gespeicherter Wert bleibt, bis der neue vollständig ist.',
  dot: (n: number, all: number) => `Punkt ${n} von ${all}`,
  checkDot: (n: number, all: number) => `Prüfpunkt ${n} von ${all}`,
  dotCloseUp: (n: number) => `Das Foto um Punkt ${n}`,
  dotWhole: 'Das ganze Foto mit den Punkten',
  ask: (what: string) => `Liegt das unter der Mitte: ${what}?`,
  answer: {
    green: { y: 'Grün', n: 'Kein Grün', g: 'Glanz' },
    other: { y: 'Ja', n: 'Nein', g: 'Glanz' },
  },
  dotBack: 'Voriger Punkt',
  closer: 'Näher',
  wider: 'Weiter',
  progress: (done: number, all: number) => `${done} von ${all} beurteilt`,
  allJudged: 'Alle Punkte sind beurteilt',
  noFigure: 'Daraus ergibt sich kein Wert',
  partChanged: 'Der Teil wurde seither neu gezeichnet',
  partChangedWhat: 'Was hier berührt wurde, wurde in dem Teil berührt, wie er war.',
  partTake: 'Zum neuen Teil wechseln',
  green: 'Grün',

  maskLead: (green: string, sound: string) =>
    `Tippen Sie von beiden drei oder mehr Stellen bei gleichmäßigem Licht an, einige helle, einige dunkle: ${green} und ${sound}. Allein ihre Farben unterscheiden die Pixel.`,
  sorts: {
    green: { green: 'Grün', sound: 'Intakte Oberfläche' },
    other: { green: 'Der Befund', sound: 'Oberfläche ohne ihn' },
  },
  spots: (name: string, n: number, of: number) =>
    `${name}: ${n < of ? `${n} von ${of} Stellen` : n === 1 ? '1 Stelle' : `${n} Stellen`}`,
  spotTap: (name: string) => `Stelle antippen: ${name}`,
  dab: (name: string) => `Pinsel: ${name}`,
  touchDoes: 'Eine Berührung auf dem Bild',
  doing: { tap: 'tippt eine weitere Stelle an', brush: 'berichtigt die Maske' },
  tapWhat: 'Die Stelle ist',
  brushWhat: 'Was der Pinsel setzt',
  brushSize: 'Pinsel',
  brushSizes: { small: 'Klein', middle: 'Mittel', large: 'Groß' },
  spotUndo: (name: string) => `Letzte Stelle zurücknehmen: ${name}`,
  dabUndo: 'Letzte Pinselberührung zurücknehmen',
  maskWaits: 'Die Pixel werden gezählt …',
  maskSays: (share: string) =>
    `Die Maske erfasst ${share}. Das ist noch kein Wert: Die Prüfpunkte sagen, wie weit sie recht hat.`,
  maskKey: 'schraffiert: in der Maske',
  maskLeftOut: (share: string) => `${share} des Teils liegen in Glanz oder tiefem Schatten und bleiben weg.`,
  maskChange: 'Maske ändern',
  maskOther: 'Diese Prüfpunkte gehören zu einer anderen Maske',
  maskOtherWhat:
    'Dieser Browser liest das Bild etwas anders. Ändern Sie die Maske, und legen Sie die Prüfpunkte neu aus.',
  checkLay: 'Prüfpunkte auslegen',

  table: 'Nebeneinander',
  tableCaption: (kind: string) => `${kind}: was jeder Weg sagt, mit seiner 95-%-Spanne`,
  tableNone: 'Zu dieser Art ist noch nichts angegeben, weder nach Augenmaß noch auf diesem Foto.',
  columns: { how: 'Wie', share: 'Anteil', range: 'Spanne', of: 'Wovon', when: 'Wann' },
  of: { photo: 'von diesem Foto', zone: 'von der Zone', square: 'von diesem Foto' },
  otherPart: 'in einem anderen Teil des Fotos gemessen',
  why: 'Worauf es beruht',
  remove: (way: string) => `Wert entfernen: ${way}`,
  removeShort: 'Entfernen',
  removed: 'Der Wert ist entfernt.',
  apart:
    'Weichen zwei Wege weiter voneinander ab, als ihre Spannen erlauben, ist das ein Grund, das Werk noch einmal anzusehen, nicht, einen davon zu wählen.',

  onPhotos: 'Auf Fotos gemessen',
  onPhotosWhat: 'Anteile eines Fotos, neben dem, was das Auge sagte. Kein Index und kein Urteil verwendet sie.',
  photosNone: 'Von dieser Zone gibt es noch kein Foto, auf dem sich messen ließe.',
  photoNamed: (which: 'best' | 'worst' | undefined, day: string) =>
    `${which === undefined ? 'Foto' : square(which)}${day && `, ${day}`}`,
  measureOn: (photo: string) => `Darauf messen: ${photo}`,
  beside: (way: string, value: string, low: string, high: string) =>
    `auf einem Foto, ${way}: ${value} (${low} bis ${high})`,
};
