import type { reasonsOfActions as english } from '../en/reasonsOfActions';
import { measure } from '../format';
import type { Same } from '../tongue';

export { namesOfDeeds } from './namesOfDeeds';

const stationFigures: Readonly<Record<string, string>> = {
  bearing: 'Die Richtung, in Grad von Norden,',
  distance: 'Der Abstand vom Werk, in Metern,',
  height: 'Die Höhe des Objektivs, in Metern,',
  lens: 'Die Brennweite, in Millimetern,',
};
const climateFigures: Readonly<Record<string, string>> = {
  temperature: 'Ein Jahresmittel der Temperatur',
  humidity: 'Die relative Luftfeuchte',
  so2: 'Die Ablagerung von Schwefeldioxid',
  chloride: 'Die Ablagerung von Chlorid',
};

/** Why a deed was not done: what is wrong, where, what to do. Nothing was stored. */
export const reasonsOfActions: Same<typeof english> = {
  'nothing to undo': () => 'Es gibt nichts zurückzunehmen.',
  'nothing changed': () => 'Es wurde nichts geändert, also nichts gespeichert.',
  'not here': (s) =>
    `Nicht auf diesem Gerät: ${s.thing('thing')}. Vielleicht wurde es entfernt; gehen Sie zurück und öffnen Sie die Liste neu.`,
  'title missing': () => 'Die Skulptur hat keinen Titel. Schreiben Sie einen.',
  'number missing': () => 'Die Skulptur hat keine Nummer. Schreiben Sie eine.',
  'name missing': () => 'Der Name fehlt. Schreiben Sie einen.',
  'text missing': () => 'Der Text fehlt. Schreiben Sie etwas, oder verlassen Sie die Seite ohne zu speichern.',
  'field not possible': (s) =>
    `Was unter „${s.text('field')}“ steht, kann nicht gespeichert werden: Es ist zu lang, fehlt oder liegt außerhalb des Möglichen. Ändern Sie es und speichern Sie noch einmal.`,
  'list too large': (s) =>
    `Diese Datei ist größer als ${s.number('most')} MB. Speichern Sie die Liste allein, als CSV, und wählen Sie sie noch einmal.`,
  'source missing': () => 'Es ist nicht gesagt, woher das kommt. Nennen Sie die Liste oder den Bericht.',
  'nothing to take over': () => 'Hier ist nichts, was übernommen werden kann.',
  'statement too long': (s) => `Eine Zeile ist länger als ${s.number('most')} Zeichen. Teilen Sie sie.`,
  'statement missing': () => 'Die Vermutung hat keinen Text. Schreiben Sie, was Sie denken.',
  'role missing': () => 'Die Funktion fehlt. Schreiben Sie, was diese Person tut, etwa Kuratorin.',
  'side missing': () => 'Es ist nicht gesagt, welche Seite das Bild zeigt. Wählen oder schreiben Sie eine.',
  'aim missing': () =>
    'Es ist nicht gesagt, worauf die Bildmitte zielt. Schreiben Sie es: die Gürtelschnalle, der linke Flügel.',
  'find missing': () =>
    'Es ist nicht gesagt, wie das Quadrat wiedergefunden wird. Schreiben Sie es so, dass ein Fremder den Rahmen dort anlegen könnte.',
  'station not possible': (s) =>
    `${stationFigures[s.text('what')] ?? s.text('what')} liegt zwischen ${s.number('low', 1)} und ${s.number('high')}. Prüfen Sie die Zahl.`,
  'station letter taken': (s) =>
    `Den Buchstaben ${s.text('letter')} hat schon ein anderer Standpunkt, oder er steht auf der Karte in dessen Fotos. Wählen Sie einen anderen.`,
  'day not valid': (s) =>
    `„${s.text('day')}“ ist kein Tag zwischen den Jahren 1000 und 2200. Wählen Sie den Tag noch einmal.`,
  'area not valid': () =>
    'Die Fläche kann nicht stimmen. Schreiben Sie eine Fläche über 0 und eine Spanne, in der der Wert liegt.',
  'letter taken': (s) => `Den Buchstaben ${s.text('letter')} hat schon eine andere Zone. Wählen Sie einen anderen.`,
  'zone has visits': (s) =>
    `Zone ${s.text('letter')} wurde ${s.times('visits', 'Mal', 'Mal')} angesehen und kann nicht entfernt werden. Teilen Sie sie oder legen Sie sie mit einer anderen zusammen: Ihre Geschichte bleibt.`,
  'zone has ended': (s) => `Zone ${s.text('letter')} ist beendet. Öffnen Sie die Zone, in der sie weiterlebt.`,
  'split needs two': () => 'Zum Teilen braucht es mindestens zwei neue Zonen. Fügen Sie eine hinzu.',
  'shares do not sum': (s) =>
    `Die Anteile der neuen Zonen ergeben ${s.percent('sum')} und sollten 100 % ergeben. Ändern Sie einen davon.`,
  'join needs two': () => 'Zum Zusammenlegen braucht es mindestens zwei Zonen. Wählen Sie eine weitere.',
  'join across sculptures': () =>
    'Zonen zweier Skulpturen lassen sich nicht zusammenlegen. Wählen Sie Zonen einer Skulptur.',
  'day before last visit': (s) =>
    `Der ${s.day('day')} liegt vor dem letzten Besuch dieser Zone, ${s.day('last')}. Wählen Sie einen späteren Tag.`,
  'order incomplete': () => 'Die neue Reihenfolge nennt nicht jede Zone einmal. Öffnen Sie die Liste neu.',
  'level not valid': () => 'Die Handlungsschwelle muss eine Zahl von 0 bis 100 sein.',
  'hazard not valid': (s) => `Die Gefährdung bei ${s.kind('kind')} muss eine Zahl von 0 bis 1 sein.`,
  'climate not possible': (s) =>
    `${climateFigures[s.text('what')] ?? s.text('what')} liegt zwischen ${s.number('low')} und ${s.number('high')}. Prüfen Sie Zahl und Einheit.`,
  'return level not valid': () => 'Die Schwelle muss ein Anteil von 0,5 bis 100 % sein.',
  'chance not valid': () => 'Die Wahrscheinlichkeit muss ein Anteil von 5 bis 95 % sein.',
  'class not valid': () => 'Eine Klasse ist eine Zahl von 0 bis 3. Wählen Sie eine der vier.',
  'nothing to settle': () => 'Hier ist nichts mehr zu klären: Es gibt nur eine Fassung.',
  'version not here': () => 'Diese Fassung ist nicht auf diesem Gerät. Öffnen Sie die Liste neu.',
  'rounds of two sculptures': () => 'Es sind Rundgänge zweier Skulpturen, sie können also nicht einer sein.',
  'already closed': () => 'Diese Gefahrenmeldung ist schon geschlossen.',
  'value not valid': () => 'Der Wert muss ein Geldbetrag von 0 oder mehr sein.',
  'count not valid': () => 'Die Stückzahl muss eine ganze Zahl ab 1 sein.',
  'nothing to carry': () => 'Mit dieser Auswahl gibt es nichts mitzugeben. Wählen Sie mindestens eine Skulptur.',
  'file not read': (s) =>
    `Die Datei „${s.text('name')}“ ließ sich nicht lesen (${s.text('said')}). Kopieren Sie sie noch einmal auf dieses Gerät und öffnen Sie diese Kopie.`,
  'file has problems': (s) =>
    `Die Datei kann nicht hereingeholt werden: ${s.times('count', 'Fehler wurde', 'Fehler wurden')} gefunden. Bitten Sie um die Datei noch einmal von dem Gerät, von dem sie kommt.`,
  'other collection': (s) =>
    `Die Datei gehört zu „${s.text('theirs')}“, hier ist „${s.text('here')}“. Zusammengelegt werden beide nur, wenn Sie es sagen.`,
  'carrying in left off': () => 'Abgebrochen. Es wurde nichts hereingeholt.',
  'invented into real': () =>
    'Die erfundene Sammlung kann nicht in eine echte geholt werden. Öffnen Sie sie stattdessen von der ersten Seite aus.',
  'import done already': () => 'Diese Datei wurde schon hereingeholt.',
  'nothing measured': () =>
    'Noch wurde nichts gemessen, also gibt es keine Zahl zu speichern. Umfahren Sie zuerst einen Fleck oder beurteilen Sie die Punkte.',
  'no dots laid': () => 'Auf diesem Foto liegen keine Punkte. Legen Sie zuerst welche.',
  'photo size not known': () =>
    'Die Größe dieses Fotos ist nicht bekannt, also lässt sich darauf nichts messen. Fügen Sie das Foto noch einmal aus seiner Datei hinzu.',
  'photo laid on itself': () => 'Ein Foto lässt sich nicht auf sich selbst legen. Wählen Sie ein anderes.',
  'erasing reason missing': () =>
    'Der Grund fehlt. Schreiben Sie, warum gelöscht wird: Das bleibt in den Einträgen, wenn alles andere fort ist.',
  'reason holds the name': () =>
    'Der Grund enthält gerade den Namen, der verschwinden soll. Schreiben Sie ihn ohne den Namen.',
  'no name to erase': () => 'Für diesen Bearbeiter ist kein Name gespeichert, also gibt es keinen zu löschen.',
  'photo in use': (s) =>
    `${s.times('count', 'Befund, Zone oder Messung zeigt', 'Befunde, Zonen oder Messungen zeigen')} dieses Foto, also bleibt es. Nehmen Sie es dort zuerst heraus.`,
  'nothing drawn': () =>
    'Hier wird gerade nichts gezeichnet. Wählen Sie eine Zone und berühren Sie die Ecken ihres Umrisses.',
  'colour missing': () =>
    'Es ist keine Aufsetzung eingetragen. Tragen Sie die drei Werte von mindestens einer ein: L*, a* und b*.',
  'colour not possible': (s) =>
    `${s.text('what')}* liegt auf jeder Oberfläche zwischen ${s.number('low')} und ${s.number('high')}. Prüfen Sie Zahl, Komma und Vorzeichen.`,
  'aperture not possible': () => 'Die Messöffnung des Geräts ist einige Millimeter weit. Prüfen Sie die Zahl.',
  'agreed by missing': () => 'Es ist nicht gesagt, wer den Farbton vereinbart hat. Schreiben Sie, wer.',
  'outline too few corners': () =>
    'Ein Umriss braucht mindestens drei Ecken. Berühren Sie weitere Stellen am Rand der Zone.',
  'outline crosses itself': () =>
    'Die Linie kreuzt sich selbst, also ist unklar, was innen liegt. Nehmen Sie die letzte Ecke zurück oder verschieben Sie eine.',
  'outline too small': () =>
    'Dieser Umriss ist so gut wie nichts. Vergrößern Sie das Bild und berühren Sie die Ecken noch einmal.',
  'outline pieces overlap': () =>
    'Dieses Stück liegt auf einem anderen derselben Zone. Lassen Sie es weg, oder nehmen Sie zuerst das frühere weg.',
  'length not valid': () =>
    `Das ist keine Länge. Schreiben Sie eine Zahl über 0, höchstens ${measure('length', 1000, 0)}.`,
  'scale ends in one place': () =>
    'Beide Enden liegen an einer Stelle. Berühren Sie zwei Stellen, die weiter auseinander liegen.',
  'water runs to itself': () => 'Wasser läuft von einer Zone zu einer anderen. Wählen Sie zwei.',
  'checking left off': () => 'Abgebrochen, bevor alles durchgesehen war. Es wurde nichts geändert.',
  'bag holds none of them': (s) =>
    `„${s.text('name')}“ enthält keines der gewählten Fotos. Öffnen Sie die Tasche, mit der sie mitgegeben wurden.`,
  'no photos chosen': () => 'Es sind keine Fotos gewählt, die auf diesem Gerät liegen. Wählen Sie eine Skulptur.',
  'no eye check under way': () => 'Hier läuft keine Augenprobe. Beginnen Sie eine.',
  'demo not here': (s) =>
    `Die erfundene Sammlung ließ sich nicht laden (${s.text('said')}). Versuchen Sie es noch einmal mit Netz.`,
};
