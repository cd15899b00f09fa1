import { causeOf } from '../../engine/trade';
import type { reasonsOfCampaign as english } from '../en/reasonsOfCampaign';
import type { Params } from '../en/sentence';
import type { Same } from '../tongue';

const cause = (s: Params): string => causeOf(s.text('cause'))?.name ?? s.text('cause');
const onZones = (s: Params): string => (s.text('zones') === '' ? 'ganzes Werk' : `Zone ${s.text('zones')}`);
/** The paper, as the one something is done to and as the one something is in. */
const papers: Readonly<Record<string, readonly [string, string]>> = {
  request: ['die Anfrage', 'in der Anfrage'],
  proposal: ['den Behandlungsvorschlag', 'im Behandlungsvorschlag'],
  report: ['den Bericht', 'im Bericht'],
};
const paper = (s: Params): string => papers[s.text('of')]?.[0] ?? s.text('of');
const inPaper = (s: Params): string => papers[s.text('of')]?.[1] ?? s.text('of');
const approvals: Readonly<Record<string, string>> = {
  'sample area': 'Probefläche',
  colour: 'Farbe',
  method: 'Verfahren',
  'insert protection': 'Schutz der Einlagen',
  handover: 'Übergabe',
};
const approval = (s: Params): string => approvals[s.text('of')] ?? s.text('of');
const days: Readonly<Record<string, string>> = {
  opened: 'der Tag der Eröffnung',
  began: 'der erste Arbeitstag',
  ended: 'der letzte Arbeitstag',
  accepted: 'der Tag der Abnahme',
  warrantyUntil: 'das Ende der Gewährleistung',
  found: 'der Tag, an dem die Ursache gefunden wurde',
  changed: 'der Tag der Änderung',
  date: 'der eigene Tag',
  validUntil: 'der letzte Tag der Gültigkeit',
  withdrawn: 'der Tag der Rücknahme',
  letterSent: 'der Tag des Briefs',
};
const dayNamed = (s: Params, key: string): string => days[s.text(key)] ?? s.text(key);

/** What stands in the way of a campaign, what is there, what a bid or paper lacks, and why an entry is not taken. */
export const reasonsOfCampaign: Same<typeof english> = {
  'campaign: cause open': (s) =>
    `${cause(s)}: noch wirksam (${onZones(s)}). Was behandelt wird, bevor die Ursache fort ist, kann bald wieder so aussehen.`,
  'campaign: cause being removed': (s) => `${cause(s)}: wird beseitigt (${onZones(s)}).`,
  'campaign: cause removed lately': (s) =>
    `${cause(s)}: beseitigt am ${s.day('date')}. Sehen Sie nach dem ${s.day('until')} wieder hin: ein Jahr ohne sie kann genügen.`,
  'campaign: cause cannot be removed': (s) =>
    `${cause(s)}: nicht zu beseitigen. Die erwartete Standzeit einer Behandlung muss das berücksichtigen.`,
  'campaign: nobody looked for causes': () =>
    'Niemand hat aufgeschrieben, was den Schaden nährt. Suchen Sie zuerst nach Ursachen.',
  'campaign: causes settled': (s) => `${s.times('count', 'Ursache ist', 'Ursachen sind')} geklärt.`,
  'campaign: no schedule': () => 'Es gibt noch kein Leistungsverzeichnis.',
  'campaign: zones without a line': (s) =>
    `Keine Position behandelt Zone ${s.text('zones')}: Prüfen Sie, ob das so gemeint ist.`,
  'campaign: zone ended': (s) => `Zone ${s.text('letter')} gibt es nicht mehr, doch eine Position behandelt sie.`,
  'campaign: area changed since': (s) =>
    `Zone ${s.text('letter')} hatte ${s.area('before')}, als die Position angelegt wurde, und hat jetzt ${s.area('now')}.`,
  'campaign: insert without protection': (s) => `Keine Position schützt diese Einlage: ${s.thing('insert')}.`,
  'campaign: schedule of so many lines': (s) =>
    `${s.times('count', 'Position', 'Positionen')} im Leistungsverzeichnis.`,
  'campaign: rate on the schedule': (s) =>
    `Auf die Fläche des Leistungsverzeichnisses, ${s.number('low', 2)} bis ${s.number('high', 2)}.`,
  'campaign: rate on own area': (s) => `Auf ${s.number('measured', 2)}, wie der Bieter gemessen hat.`,
  'campaign: area measured otherwise': (s) =>
    `Gemessene ${s.number('measured', 2)} liegen außerhalb von ${s.number('low', 2)} bis ${s.number('high', 2)}: gemeinsam nachmessen.`,
  'campaign: price out of line': (s) =>
    `Das ${s.number('times', 1)}-Fache des Medians dieser Position, mehr als das ${s.number('factor', 1)}-Fache: Fragen Sie, was darin steckt.`,
  'campaign: price far below': (s) =>
    `Der Median dieser Position ist das ${s.number('times', 1)}-Fache: Fragen Sie, ob dieselbe Arbeit gemeint ist.`,
  'campaign: priced at nothing': () => 'Mit null angeboten: Fragen Sie, ob es in einer anderen Position steckt.',
  'campaign: too few prices to compare': (s) =>
    `Bei weniger als ${s.number('least')} Angeboten in einer Währung lässt sich kein Preis auffällig nennen: Jeder ist so auffällig wie der andere.`,
  'campaign: lines not priced': (s) =>
    `${s.times('count', 'Position ist', 'Positionen sind')} ohne Preis: Die Summe ist nicht der Preis der ganzen Arbeit.`,
  'campaign: lines no longer in the schedule': (s) =>
    `${s.times('count', 'Preis gilt', 'Preise gelten')} für Positionen, die nicht mehr im Leistungsverzeichnis stehen, und in keiner Summe.`,
  'campaign: insert protection not priced': (s) =>
    `${s.times('count', 'Position', 'Positionen')} zum Schutz von Einlagen ohne Preis.`,
  'campaign: bid past its day': (s) => `Es galt bis ${s.day('date')}: Bitten Sie um Erneuerung.`,
  'campaign: bid valid until': (s) => `Gültig bis ${s.day('date')}, noch ${s.times('days', 'Tag', 'Tage')}.`,
  'campaign: bid without a last day': () => 'Es sagt nicht, wie lange es gilt.',
  'campaign: site not visited': () => 'Es ist keine Ortsbegehung aufgeschrieben.',
  'campaign: sheets that count': (s) =>
    `Blätter, die zählen: ${s.number('count')} von ${s.number('all')}. Ein Blatt zählt, sobald es mit einer Note für jedes Angebot abgegeben ist.`,
  'campaign: no price points': () =>
    'Ein Angebot zu null lässt nichts zu teilen: Der Preis gibt keine Punkte, und es gibt keine Summe.',
  'campaign: price points on shared lines': (s) =>
    s.number('all') === '1'
      ? 'Die Punkte des Preises beruhen auf der Position, die alle bepreist haben.'
      : `Die Punkte des Preises beruhen auf ${s.number('lines')} von ${s.number('all')} Positionen: denen, die alle bepreist haben.`,
  'campaign: one scorer tells none apart': (s) =>
    `Nicht zu unterscheiden von: ${s.thing('bid')}. Bei nur einem Blatt weiß niemand, wie weit zwei auseinanderlägen.`,
  'campaign: scorers differ on the order': (s) =>
    `Nicht zu unterscheiden von: ${s.thing('bid')}. Nicht alle Wertenden setzen dasselbe voran.`,
  'campaign: totals too close': (s) =>
    `Nicht zu unterscheiden von: ${s.thing('bid')}. ${s.number('gap', 1)} Punkte Abstand, nicht mehr als die ${s.number('apart', 1)} einer Note beim schwersten Kriterium.`,
  'campaign: bids so many': (s) => `${s.times('count', 'Angebot liegt', 'Angebote liegen')} vor.`,
  'campaign: no bids': () => 'Es gibt noch keine Angebote.',
  'campaign: none taken': () => 'Keines der Angebote ist als angenommen gekennzeichnet.',
  'campaign: bid taken': (s) => `Angenommen: ${s.thing('bid')}.`,
  'campaign: paper not looked through': (s) => `Niemand hat bisher ${paper(s)} durchgesehen.`,
  'campaign: paper lacks': (s) =>
    `${s.times('count', 'Punkt fehlt', 'Punkte fehlen')} ${inPaper(s)} oder ${s.text('count') === '1' ? 'wurde' : 'wurden'} nicht gesucht.`,
  'campaign: paper whole': (s) => `Alles Verlangte steht ${inPaper(s)}.`,
  'campaign: last payment waits': () => 'Bis dahin wartet die letzte Zahlung.',
  'campaign: no proposal': () => 'Noch kein Vorschlag eines Restaurators wurde durchgesehen.',
  'campaign: no option chosen': () => 'Keine Möglichkeit ist gewählt und keine Entscheidung geschrieben.',
  'campaign: option or decision written': () => 'Was gewählt wurde, ist aufgeschrieben.',
  'campaign: no fund': () => 'Es gehört noch kein Fonds dazu.',
  'campaign: fund there': () => 'Ein Fonds gehört dazu.',
  'campaign: no access sheet': () => 'Für das Werk gibt es kein Zugangsblatt.',
  'campaign: access sheet there': () => 'Das Zugangsblatt liegt vor.',
  'campaign: insert without a way': (s) =>
    `Es ist nicht gesagt, wie diese Einlage vor Hitze geschützt wird: ${s.thing('insert')}.`,
  'campaign: insert limit without a name': (s) =>
    `Niemand ist genannt, der die Grenze dieser Einlage gesetzt hat: ${s.thing('insert')}.`,
  'campaign: inserts provided for': (s) => `Für ${s.times('count', 'Einlage', 'Einlagen')} ist gesorgt.`,
  'campaign: no round before': () =>
    'Kein abgeschlossener Rundgang „vor der Behandlung“. Nach dem ersten Arbeitstag ist es zu spät.',
  'campaign: round before': (s) => `Rundgang vor der Behandlung: ${s.day('date')}.`,
  'campaign: not approved': (s) => `Noch von niemandem freigegeben: ${approval(s)}.`,
  'campaign: approved': (s) => `Freigegeben am ${s.day('date')}: ${approval(s)}.`,
  'campaign: refused': (s) => `${approval(s)}: das letzte Wort, vom ${s.day('date')}, ist kein klares Ja.`,
  'campaign: no colour card': () => 'Es gibt keine Farbtonkarte.',
  'campaign: colour card lacks photos': (s) => `Auf der Farbtonkarte fehlen von vier Fotos noch ${s.number('count')}.`,
  'campaign: colour card': (s) => `Farbtonkarte vom ${s.day('date')}.`,
  'campaign: no layers written': () => 'Keine Schicht ist aufgeschrieben.',
  'campaign: layers written': (s) => `${s.times('count', 'Schicht ist', 'Schichten sind')} aufgeschrieben.`,
  'campaign: no wax written': () => 'Seit Beginn der Arbeit steht kein Wachs im Logbuch.',
  'campaign: wax written': (s) => `Wachs im Logbuch: ${s.day('date')}.`,
  'campaign: no round after': () =>
    'Kein abgeschlossener Rundgang „nach der Behandlung“: Ohne ihn fehlt späteren Jahren der Vergleich.',
  'campaign: round after': (s) => `Rundgang nach der Behandlung: ${s.day('date')}.`,
  'campaign: no warranty written': () => 'Es ist nicht aufgeschrieben, bis wann die Firma dafür einsteht.',
  'campaign: warranty until': (s) => `Die Firma steht bis ${s.day('date')} dafür ein.`,
  'campaign: warranty over': (s) => `Die Gewährleistung endete am ${s.day('date')}.`,
  'campaign: days out of order': (s) =>
    `${dayNamed(s, 'later')}, ${s.day('last')}, liegt vor einem anderen Tag: ${dayNamed(s, 'earlier')}, ${s.day('first')}. Berichtigen Sie einen davon.`,
  'campaign: say when it changed': () => 'Sagen Sie, an welchem Tag die Ursache beseitigt wurde.',
  'campaign: say why': () => 'Sagen Sie, warum: Wer nach Ihnen kommt, wird fragen.',
  'campaign: line without an amount': (s) =>
    `„${s.text('line')}“ hat keine Menge. Geben Sie eine über null an, oder nehmen Sie die Position heraus.`,
  'campaign: line range out of order': (s) =>
    `Die Spanne von „${s.text('line')}“ enthält ihre Menge nicht. Berichtigen Sie sie.`,
  'campaign: line twice': (s) => `„${s.text('line')}“ steht zweimal da. Nehmen Sie eine der beiden heraus.`,
  'campaign: weights come to': (s) =>
    `Die Gewichte ergeben ${s.number('sum', 1)}. Ändern Sie sie, bis sie ${s.number('whole')} ergeben.`,
  'campaign: criterion twice': () => 'Ein Kriterium steht zweimal da. Nehmen Sie eines der beiden heraus.',
  'campaign: criterion without a name': () =>
    'Ein Kriterium hat ein Gewicht und keinen Namen. Geben Sie ihm einen, oder nehmen Sie es heraus.',
  'campaign: weights changed after a bid': () =>
    'Ein Angebot liegt schon vor. Sagen Sie, warum sich die Gewichte ändern: Es wird mit ihnen aufbewahrt.',
  'campaign: mark twice': () => 'Eine Note steht für ein Angebot zweimal da. Nehmen Sie eine der beiden heraus.',
  'campaign: sheet was handed in': (s) =>
    `Dieses Blatt wurde am ${s.day('date')} abgegeben: Seine Noten bleiben, wie sie sind. Noten für später gekommene Angebote können dazukommen.`,
  'campaign: sheet not whole': (s) =>
    `${s.times('count', 'Note fehlt', 'Noten fehlen')}. Geben Sie jedem Angebot zu jedem Kriterium eine Note, dann geben Sie ab.`,
  'campaign: decided by nobody': () => 'Geben Sie an, wer entschieden hat, wenigstens in welcher Rolle.',
  'campaign: yes without a signature': () =>
    'Ein Ja gehört jemandem: Sagen Sie mindestens, in welcher Funktion es gegeben wurde und an welchem Tag.',
  'campaign: signed before': (s) =>
    `Eine Unterschrift liegt vor dem ${s.day('date')}, dem Tag der Frage. Berichtigen Sie einen der Tage.`,
  'campaign: card without words': () =>
    'Sagen Sie in Worten, welche Farbe vereinbart wurde: Fotos verblassen zuerst im Gedächtnis.',
  'campaign: card without a zone': () => 'Wählen Sie mindestens eine Zone, für die der Farbton gilt.',
};
