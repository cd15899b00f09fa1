import type { reasonsOfHeat as english } from '../en/reasonsOfHeat';
import type { Same } from '../tongue';

const minutes = ['Minute', 'Minuten'] as const;
const figures: Readonly<Record<string, string>> = {
  thickness: 'die Dicke des Metalls',
  area: 'die erwärmte Oberfläche',
  rise: 'um wie viel wärmer es werden soll',
  power: 'die Leistung der Flamme',
  time: 'die Zeit',
  distance: 'den Abstand',
};

/** Heat near inserts, and the day of hot work: what is open, and what stands against closing it. */
export const reasonsOfHeat: Same<typeof english> = {
  'heat: share of the flame': (s) =>
    `Zwischen ${s.percent('low')} und ${s.percent('high')} der Wärme einer offenen Flamme gehen in das Metall: unsere eigene Annahme.`,
  'heat: more through air': () => 'Unterwegs gilt keine Wärme als verloren; Wind und dicke Fugen verlängern die Zeit.',
  'heat: a sixth arrives': () =>
    'Dort ist etwa ein Sechstel der Erwärmung der beheizten Stelle angekommen: so viel, nicht nichts. Es gilt für dickes Metall, einseitig erwärmt.',
  'heat: carries on along metal': () =>
    'Von dort geht die Wärme weiter, solange das Metall heiß ist, auch wenn die Flamme aus ist, und heißes Gas reicht weiter, als Metall sie leitet.',
  'heat: practice limit leads': (s) =>
    `Glashersteller erlauben ${s.measure('limit', 'difference')} zwischen zwei Seiten, bei unbeschädigtem Flachglas. Weniger, wenn der zuständige Restaurator weniger sagt.`,
  'heat: strength says more': (s) =>
    `Aus Festigkeit und Dehnung solchen Glases ergibt die Theorie ${s.number('low')} bis ${s.measure('high', 'difference')}; eine verwitterte Kante nur etwa ${s.measure('weathered', 'difference')}. Es gilt die Grenze der Praxis, nicht die Theorie.`,
  'heat: glass not known': (s) =>
    `Glas dieser Art (${s.text('kind')}): Niemand kann von hier aus sagen, welche Hitze es verträgt. Bauen Sie es vor der Hitze aus. Lässt es sich nicht ausbauen, nennt ein Glasrestaurator die Grenze und den Weg.`,
  'heat: figure not possible': (s) => `Geben Sie ${figures[s.text('what')] ?? s.text('what')} als Zahl über null an.`,

  'heat: no reading': () => 'Es wurde nicht gemessen: Wie heiß diese Einlage war, weiß niemand.',
  'heat: over the limit': (s) =>
    `Um ${s.text('time')} waren es ${s.measure('celsius', 'temperature', 1)}, an oder über der Grenze von ${s.measure('limit', 'temperature', 1)}. Nehmen Sie die Hitze weg und rufen Sie die Person an, die die Grenze gesetzt hat.`,
  'heat: near the limit': (s) =>
    `Um ${s.text('time')} waren es ${s.measure('celsius', 'temperature', 1)}, nahe der Grenze von ${s.measure('limit', 'temperature', 1)}. Nehmen Sie die Hitze jetzt weg.`,
  'heat: sides apart': (s) =>
    `Um ${s.text('time')} betrug der Unterschied zwischen zwei Seiten ${s.measure('kelvin', 'difference', 1)}, an oder über der Grenze von ${s.measure('limit', 'difference', 1)}. Nehmen Sie die Hitze weg, kühlen Sie nicht.`,
  'heat: sides near apart': (s) =>
    `Um ${s.text('time')} betrug der Unterschied zwischen zwei Seiten ${s.measure('kelvin', 'difference', 1)}, nahe der Grenze von ${s.measure('limit', 'difference', 1)}. Nehmen Sie die Hitze jetzt weg.`,
  'heat: rises fast': (s) =>
    `Um ${s.text('time')} stieg die Temperatur um ${s.measure('perMinute', 'difference', 1)} je Minute; die Grenze ist ${s.measure('limit', 'difference', 1)}.`,
  'heat: gap in the log': (s) =>
    `Von ${s.text('since')} bis ${s.text('until')}, ${s.times('minutes', ...minutes)}, ist über „${s.text('spot')}“ nichts bekannt. ${s.text('could') === '' ? 'Wie heiß es wurde, kann niemand sagen: Kein Anstieg wurde abgelesen.' : `Beim schnellsten Anstieg des Tages können es ${s.measure('could', 'temperature')} gewesen sein.`}`,
  'heat: one side only': () =>
    'Nur eine Seite wurde gemessen: wie groß der Unterschied zwischen den Seiten war, ist nicht bekannt, obwohl eine Grenze dafür gesetzt ist.',
  'heat: two values at once': (s) =>
    `Zwei verschiedene Werte für „${s.text('spot')}“ um ${s.text('time')}: Einer davon ist falsch. Beide bleiben stehen.`,
  'heat: no limit set': () =>
    'Für diese Einlage ist keine Grenze gesetzt, also lässt sich keine Messung niedrig nennen.',
  'heat: limit by nobody': () =>
    'Eine Grenze braucht Namen oder Funktion der Fachperson, die sie gesetzt hat, und den Tag.',

  'heat: clock went back': (s) =>
    `Die Uhr dieses Tablets wurde seit dem Ende der Arbeit um etwa ${s.times('minutes', ...minutes)} zurückgestellt.`,
  'heat: not counted': (s) =>
    `Während ${s.times('minutes', ...minutes)} nach der Uhr schlief das Tablet, war die App geschlossen oder die Uhr verstellt: Diese Zeit wird nicht gezählt.`,

  'heat: no permit': () => 'Es ist kein Erlaubnisschein genannt. Die Heißarbeit wartet darauf.',
  'heat: nobody authorised': () => 'Niemand ist genannt, der die Arbeit erlaubt hat.',
  'heat: no watcher': () => 'Keine Brandwache ist genannt.',
  'heat: clear zone short': (s) =>
    `Der Freibereich misst ${s.measure('metres', 'length', 1)}; veröffentlichte Regeln verlangen ${s.measure('rule', 'length', 1)} oder Abschirmung. Fragen Sie die Brandschutzbehörde.`,
  'heat: watch short': (s) =>
    `Eine Wache von ${s.times('minutes', ...minutes)} ist kürzer als die ${s.number('rule')}, die veröffentlichte Regeln mindestens verlangen. Fragen Sie Brandschutzbehörde und Versicherer.`,
  'heat: checks open': (s) => `${s.times('count', 'Prüfpunkt ist', 'Prüfpunkte sind')} noch offen.`,
  'heat: insert not on the list': (s) =>
    `Am Werk, aber nicht auf der Liste dieses Tages: ${s.thing('insert')}. Setzen Sie die Einlage darauf, oder bauen Sie sie aus.`,
  'heat: insert without limit': (s) =>
    `Ohne Grenze einer benannten Fachperson: ${s.thing('insert')}. Bauen Sie die Einlage aus, oder lassen Sie sich ihre Grenze nennen.`,
  'heat: insert without a way': (s) =>
    `Niemand hat gesagt, wie diese Einlage vor Hitze geschützt wird: ${s.thing('insert')}. Ausgebaut, abgeschirmt, von Hitze ferngehalten, oder die Heißarbeit verschoben.`,

  'heat: work not ended': () => 'Das Ende der Arbeit ist nicht angegeben: Von da an zählt die Wache.',
  'heat: watch has no length': () =>
    'Die Dauer der Brandwache ist nicht angegeben. Brandschutzbehörde und Versicherer sagen, wie lange sie dauert.',
  'heat: watch running': (s) =>
    `Die Brandwache ist nicht vorbei: noch ${s.times('minutes', ...minutes)} sind zu zählen. Hat das Tablet nicht weitergezählt, geben Sie die Zeiten nach der Uhr der Brandwache an.`,
  'heat: watch not said kept': (s) =>
    `Die Brandwache hat nicht bestätigt, dass die Wache von ${s.times('minutes', ...minutes)} bis zum Ende gehalten wurde.`,
  'heat: watch too short': (s) =>
    `Die Wache dauerte ${s.times('kept', ...minutes)}; verlangt sind ${s.number('asked')}.`,
  'heat: no photo after': (s) => `Kein Foto nach der Hitze: ${s.thing('insert')}.`,

  'heat: day is closed': () => 'Dieser Tag ist abgeschlossen. Öffnen Sie ihn wieder, bevor etwas daran geändert wird.',
  'heat: days not in order': () => 'Tage oder Zeiten sind nicht in Ordnung: Das Ende liegt vor dem Anfang.',
  'heat: not of this day': () =>
    'Das Ende der Arbeit liegt nicht am Tag dieser Karte. Legen Sie für jeden Tag eine Karte an, oder ändern Sie den Tag dieser Karte.',
  'heat: a watch of no time': () => 'Die beiden Zeiten nach der Uhr der Brandwache sind gleich.',
  'heat: own watch turned round': (s) =>
    `Von ${s.text('since')} bis ${s.text('until')} ist mehr als ein halber Tag: Die beiden Zeiten stehen in der falschen Reihenfolge.`,
  'heat: own watch before the end': (s) =>
    `Die Wache beginnt um ${s.text('since')}, bevor die Flamme um ${s.text('ended')} aus war. Sie zählt erst von da an. Ging die Uhr dieses Geräts falsch, sagen Sie das Ende der Arbeit neu an.`,
  'heat: no solution': () => 'Sagen Sie, was aufgetragen wurde: die Lösung, wie der Ausführende sie nennt.',
  'heat: signed by nobody': () => 'Sagen Sie, wer: ein Name oder eine Funktion.',
  'heat: limit under the air': () =>
    'Eine Grenze unter der Lufttemperatur im Freien ist ein Versehen: Prüfen Sie Zahl und Einheit.',
};
