import type { approvals as englishApprovals, card as englishCard, papers as englishPapers } from '../en/campaignPapers';
import { unitOf } from '../format';
import type { Same } from '../tongue';

export const papers: Same<typeof englishPapers> = {
  titles: {
    request: 'Angebotsanfrage',
    proposal: 'Behandlungsvorschlag',
    report: 'Behandlungsbericht',
  },
  leads: {
    request: 'Sehen Sie die Anfrage durch, bevor sie hinausgeht.',
    proposal: 'Was ein Vorschlag sagen sollte, bevor darüber entschieden wird.',
    report: 'Was ein Bericht enthalten sollte, bevor die letzte Zahlung erfolgt.',
  },
  whose: 'Wessen Vorschlag',
  whoseNone: 'Der eines Restaurators, unabhängig von den Angeboten',
  from: 'Von',
  states: { there: 'vorhanden', missing: 'fehlt', 'not asked': 'nicht nötig' },
  standing: (missing: number, unseen: number) =>
    missing + unseen === 0
      ? 'Vollständig'
      : [missing > 0 && (missing === 1 ? '1 fehlt' : `${missing} fehlen`), unseen > 0 && `${unseen} noch nicht gesucht`]
          .filter(Boolean)
          .join(', '),
  where: (where: string) => `Wo: ${where}`,
  source: 'Woher diese Liste kommt',
  hideSource: 'Herkunft verbergen',
  toLetter: 'Brief über das Fehlende',
  toList: 'Zurück zur Liste',
  nothingMissing: 'Nichts ist als fehlend gekennzeichnet; es gibt keinen Brief zu schreiben.',
  sent: 'Heute abgeschickt',
  sentSaid: 'Der Brief ist als heute abgeschickt vermerkt.',
  sentOn: (day: string) => `Brief abgeschickt am ${day}.`,
  letter: {
    to: (who: string) => `An: ${who}`,
    toWhom: 'An die zuständige Stelle',
    about: (work: string, title: string) => `${work}: ${title}`,
    request: 'Bevor unsere Anfrage hinausgeht, sind noch diese Punkte zu ergänzen:',
    proposal:
      'Vielen Dank für Ihren Vorschlag. Um ihn neben andere stellen und darüber entscheiden zu können, müssen wir noch wissen:',
    report: 'Vielen Dank für Ihren Bericht. Um ihn annehmen und beim Werk aufbewahren zu können, bitten wir noch um:',
    heldPayment: 'Die letzte Zahlung folgt wie vereinbart, sobald uns dies vorliegt.',
    thanks: 'Trifft einer der Punkte nicht zu, genügt uns eine Zeile, die das sagt. Mit freundlichen Grüßen',
    sign: 'Name, Funktion',
  },
};

export const approvals: Same<typeof englishApprovals> = {
  title: 'Freigaben und vereinbarter Farbton',
  lead: 'Wer zustimmen muss, tut es hier, bevor die Arbeit weitergeht: mit Foto, Worten und Unterschrift.',
  none: 'Noch wurde niemandem etwas vorgelegt',
  noneWhat: 'Das Erste ist meist eine Probefläche, bevor die ganze Oberfläche berührt wird.',
  add: 'Zur Freigabe vorlegen',
  addShort: 'Neue Freigabe',
  section: 'Freigaben',
  of: {
    'sample area': 'Probefläche',
    colour: 'Farbton',
    method: 'Methode',
    'insert protection': 'Schutz der Einlagen',
    handover: 'Übergabe',
  },
  answers: { yes: 'ja', no: 'nein', 'with changes': 'ja, mit Änderungen', open: 'noch offen' },
  answer: 'Antwort',
  signedBy: (who: string) => `Unterschrieben: ${who}`,
  notSigned: 'Nicht unterschrieben',
  signedOne: (role: string, name: string, day: string) => `${role}${name === '' ? '' : `, ${name}`}, ${day}`,
  onZone: (zone: string) => `Zone ${zone}`,
  size: (m2: string) => `${m2}`,
  edit: (what: string, day: string) => `Ändern: ${what}, ${day}`,
  change: 'Ändern',
  sheet: {
    add: 'Freigabe',
    edit: 'Freigabe ändern',
    of: 'Worum geht es?',
    zone: 'Zone',
    noZone: 'keine einzelne Zone',
    m2: 'Größe der Probefläche',
    m2Wrong: `Geben Sie eine Fläche über null ein, in ${unitOf('area')}, oder lassen Sie das Feld leer.`,
    date: 'Vorgelegt am',
    words: 'Was gezeigt und gesagt wurde',
    wordsMissing: 'Geben Sie an, was gezeigt wurde.',
    photos: 'was gezeigt wurde',
    signed: 'Unterschrieben von',
    signedHint: 'Ein Ja braucht mindestens eine Funktion und einen Tag.',
    save: 'Speichern',
    remove: 'Entfernen',
    saved: 'Die Freigabe ist gespeichert.',
    removed: 'Die Freigabe ist entfernt.',
    dayMissing: 'Geben Sie an, an welchem Tag.',
  },
};

export const card: Same<typeof englishCard> = {
  section: 'Farbtonkarten',
  lead: 'Der Farbton, wie er vereinbart wurde: vier Fotos, die Musterplatte, die Worte. Spätere Jahre werden dagegen gehalten, nicht gegen die Erinnerung.',
  add: 'Farbtonkarte anlegen',
  none: 'Noch keine Karte.',
  photos: {
    dryShade: 'trocken, im Schatten',
    drySun: 'trocken, in der Sonne',
    wetShade: 'nass, im Schatten',
    wetSun: 'nass, in der Sonne',
  },
  photoAlt: (how: string) => `Die Musterplatte an der Oberfläche, ${how}`,
  noPhoto: 'kein Foto',
  agreedOn: (day: string, zones: string) => `Vereinbart am ${day} für Zone ${zones}`,
  panel: (panel: string) => `Musterplatte: ${panel}`,
  kept: (where: string) => `Aufbewahrt: ${where}`,
  compareOne: (how: string) => `Ein späteres Foto dagegenhalten: ${how}`,
  noLater: 'Von diesen Zonen ist noch kein späteres Foto gespeichert.',
  notAlike:
    'War das spätere Foto nicht ebenso trocken oder das Licht von anderer Art, achten Sie auf Form und Ausbreitung, nicht auf den Ton.',
  instrument: 'Farbmessung mit dem Gerät',
  photosCaution:
    'Fotos halten das Licht ihres Tages fest. Vergleichen lassen sich zwei nur, wenn beide trocken oder beide nass und beide in der Sonne oder beide im Schatten waren.',
  edit: (day: string) => `Karte vom ${day} ändern`,
  change: 'Ändern',
  sheet: {
    add: 'Farbtonkarte',
    edit: 'Karte ändern',
    zones: 'Zonen, für die der Farbton gilt',
    date: 'Vereinbart am',
    words: 'Der Farbton in Worten',
    wordsHint: 'Wogegen er heller, wärmer, glänzender ist.',
    panel: 'Nummer der Musterplatte',
    kept: 'Wo sie aufbewahrt wird',
    agreedColour: 'Messung mit dem Gerät',
    noReading: 'keine',
    signed: 'Unterschrieben von',
    save: 'Karte speichern',
    remove: 'Entfernen',
    saved: 'Die Karte ist gespeichert.',
    removed: 'Die Karte ist entfernt.',
    dayMissing: 'Geben Sie an, an welchem Tag.',
  },
};
