import type { paperPacket as english } from '../en/paperPacket';
import type { Same } from '../tongue';

export const paperPacket: Same<typeof english> = {
  title: 'Mappe für die Restaurierung',
  reader: 'Restauratoren, zusammen mit der Tasche',
  lead: 'Diese Seite geht mit einer Tasche des Werks hinaus: einer Zip-Datei mit allem, was über das Werk eingetragen ist. Hier steht, was darin liegt und was wir fragen. Wir haben hingesehen und aufgeschrieben; was es bedeutet, sagen Sie.',
  own: {
    questions: 'Fragen',
    questionsHint:
      'Eine je Zeile. Solange Sie nichts schreiben, steht hier, was die Einträge selbst nicht beantworten.',
  },
  questions: 'Was wir fragen',
  questionsNone: 'Nichts in den Einträgen verlangt von sich aus nach Ihnen.',
  stop: (zone: string, kind: string, day: string) =>
    `${zone}: Am ${day} haben wir „${kind}“ aufgeschrieben. Was ist das, und darf die Zone gewaschen und gewachst werden, bis Sie sie gesehen haben?`,
  holds: (zone: string) =>
    `${zone}: Wachs hält nicht. Was kann stattdessen geschehen, und was sollte zuerst versucht werden?`,
  cause: (what: string, zones: string) =>
    `${what}${zones ? ` (${zones})` : ''} wirkt weiter. Lässt sich am Metall etwas tun, solange das so ist?`,
  room: 'Antworten und Bemerkungen',
  bag: 'Was in der Tasche liegt',
  bagColumns: { what: 'Was', where: 'Wo', much: 'Wie viel' },
  bagHow:
    'Gezählt für dieses Werk am Tag dieser Seite; die Tasche selbst führt jede Datei mit ihrer Prüfsumme in manifest-sha256.txt auf. Was beim Packen ausgelassen wurde, steht in den ersten Zeilen von README.txt.',
  rows: {
    report: ['Die Bestandsaufnahme zum Lesen', 'data/report.html'],
    rounds: ['Rundgänge mit jedem Befund', 'data/survey.json, data/findings.csv'],
    looks: ['Kontrollblicke zwischen den Rundgängen', 'data/survey.json'],
    photos: ['Fotos, wie sie aus der Kamera kamen', 'data/photos'],
    papers: ['Papiere', 'data/papers'],
    treatments: ['Einträge des Logbuchs: Mittel, Schichten, Personen', 'data/survey.json'],
    readings: ['Messungen mit Geräten', 'data/survey.json'],
    causes: ['Ursachen und wie es um sie steht', 'data/survey.json'],
    thoughts: ['Vermutungen von Personen', 'data/survey.json'],
  },
  count: (n: number, figure: string) => (n === 0 ? 'keine' : figure),
  span: (n: string, first: string, last: string) => `${n}, ${first} bis ${last}`,
  papersListed: 'aufgeführt in data/report.html',
  products: 'Was aufgetragen wurde',
  productColumns: { what: 'Behandlung', product: 'Mittel', times: 'Wie oft', last: 'Zuletzt', coats: 'Schichten' },
  productNone: 'nicht genannt',
  productsNone: 'Das Logbuch enthält keine Behandlung.',
  lasted: 'Wie lange es hielt',
  lastedColumns: { zone: 'Zone', coated: 'Beschichtet', held: 'Monate ohne Grün', end: 'Jetzt' },
  lastedHow:
    'Vom letzten Blick, der kein Grün sah, bis zum ersten, der es sah; wo dazwischen niemand nachsah, ist die Spanne weit. Je Zone die letzte Beschichtung, von der sich etwas sagen lässt.',
  lastedNone:
    'Zwischen den Rundgängen hat niemand nachgesehen: Über die Standzeit einer Beschichtung lässt sich nichts sagen.',
  held: (low: string, high: string) => `${low} bis ${high}`,
  heldOpen: (low: string) => `${low} oder mehr`,
  ends: { returned: 'Grün wieder da', 'coated again': 'erneut beschichtet', 'still clear': 'beim letzten Blick frei' },
  causes: 'Gesuchte Ursachen',
  causesNone: 'Keine Ursache wurde aufgeschrieben.',
  causeRow: (what: string, zones: string, state: string, day: string, seen: string) =>
    `${what}${zones ? `, ${zones}` : ''}: ${state} (festgestellt am ${day}). ${seen}`.trim(),
  thoughtRow: (what: string, by: string, day: string) => `${what} (${by}, ${day})`,
  thoughtNone: 'Niemand hat eine Vermutung aufgeschrieben.',
  lacks: {
    photos: 'Fotos des letzten Rundgangs.',
    looks:
      'Kontrollblicke zwischen den Rundgängen: Ohne sie lässt sich über die Standzeit einer Beschichtung nichts sagen.',
  },
};
