import { moneyOf } from '../../engine/money';
import type { reasonsOfWatch as english } from '../en/reasonsOfWatch';
import type { Params } from '../en/sentence';
import { money } from '../format';
import type { Same } from '../tongue';
import { wordOf } from './codes';

/** "zwischen 1,4 und 2,5 Monate", "bisher mindestens 6,7 Monate". */
const months = (s: Params): string =>
  s.text('last') === ''
    ? `bisher mindestens ${s.number('first', 1)} Monate`
    : `zwischen ${s.number('first', 1)} und ${s.number('last', 1)} Monate`;

const heldFrom = (s: Params): string => `Die Beschichtung vom ${s.day('date')} hielt ${months(s)}`;

/** Own words at the head of a sentence: their own full stop is left off. */
const said = (s: Params, key: string): string =>
  s
    .text(key)
    .trim()
    .replace(/[.\s]+$/, '');

/** What a tripwire of a form asks for, by the name of its field. */
const asked: Readonly<Record<string, string>> = { zone: 'eine Zone', level: 'eine Schwelle', by: 'ein Tag' };

const sum = (s: Params, key: string): string => money(moneyOf(Number(s.text(key)), s.text('currency')));

/** Where tripwires stand, why something is due, what came of a treatment, and why a form was not kept. */
export const reasonsOfWatch: Same<typeof english> = {
  'tripwire: hold over': (s) => `${heldFrom(s)}: nachweislich über ${s.number('level', 1)}.`,
  'tripwire: hold under': (s) => `${heldFrom(s)}: nachweislich nicht über ${s.number('level', 1)}.`,
  'tripwire: hold between': (s) =>
    `${heldFrom(s)}: ob über oder unter ${s.number('level', 1)}, lässt sich nicht sagen.`,
  'tripwire: seasons seen': (s) => `Bisher ${s.number('seen')} von ${s.number('times')} Saisons in Folge.`,
  'tripwire: no holds known': (s) =>
    `Seit der Entscheidung ist keine Standzeit bekannt: ${s.thing('zone')}. Eine Beschichtung und Kontrollblicke danach würden es sagen.`,
  'tripwire: green share': (s) =>
    `Nicht ruhendes Grün (${s.thing('zone')}): ${s.percent('share')} (${s.percent('low')} bis ${s.percent('high')}) am ${s.day('date')}; Schwelle: ${s.percent('level')}.`,
  'tripwire: area': (s) =>
    `Nicht ruhend (${s.text('what') === 'bare' ? 'blankes Metall' : 'Grün'}): ${s.area('m2')} (${s.area('low')} bis ${s.area('high')}) am ${s.day('date')}; Schwelle: ${s.area('level')}.`,
  'tripwire: index': (s) =>
    `Zustandsindex ${s.number('index')} (${s.number('low')} bis ${s.number('high')}) am ${s.day('date')}; Schwelle: ${s.number('level')}.`,
  'tripwire: zone not judged': (s) => `Der Rundgang vom ${s.day('date')} hat sie nicht beurteilt.`,
  'tripwire: not all seen': (s) =>
    `Nur ${s.percent('percent')} der Oberfläche wurden gesehen; der Rest könnte noch den Ausschlag geben.`,
  'tripwire: nobody looked': () => 'Seit der Entscheidung gibt es keinen Rundgang.',
  'tripwire: round before decision': (s) =>
    `Der letzte Rundgang, vom ${s.day('date')}, war bei der Entscheidung bekannt. Der nächste wird es sagen.`,
  'tripwire: surely worse': (s) =>
    `Der Rundgang vom ${s.day('date')} findet deutlich mehr Grün als der davor: ${s.thing('zone')}.`,
  'tripwire: not surely worse': (s) =>
    `Der Rundgang vom ${s.day('date')} findet keine Zone deutlich schlechter als der davor.`,
  'tripwire: nothing to compare': (s) =>
    `Es gibt keinen früheren Rundgang, mit dem der vom ${s.day('date')} verglichen werden darf.`,
  'tripwire: stop word': (s) => `${s.kind('kind')}, ${s.thing('zone')}, ${s.day('date')}: Fragen Sie den Restaurator.`,
  'tripwire: no stop word': () =>
    'Kein Rundgang seit der Entscheidung sah etwas, wonach sofort ein Restaurator zu fragen wäre.',
  'tripwire: fund': (s) =>
    `${sum(s, 'sum')} vorhanden; nötig: ${sum(s, 'level')}. Zugesagtes und Erhofftes zählen nicht.`,
  'tripwire: no fund': () => 'Zu diesem Werk gehört kein offener Fonds.',
  'tripwire: fund of several currencies': () =>
    'Die vorhandenen Spenden sind in mehreren Währungen, und die werden nie addiert. Geben Sie sie in der Währung des Fonds an.',
  'tripwire: quote ended': (s) =>
    `Der Kostenvoranschlag von ${s.text('who')} endete am ${s.day('date')}, und keiner trat an seine Stelle.`,
  'tripwire: quotes stand': (s) => `${s.times('count', 'Kostenvoranschlag gilt', 'Kostenvoranschläge gelten')}.`,
  'tripwire: no quote': () => 'Es ist kein Kostenvoranschlag aufgeschrieben.',
  'tripwire: day': (s) => `Der genannte Tag: ${s.day('date')}.`,
  'tripwire: sort not known': (s) =>
    `„${s.text('sort')}“ kennt diese Version nicht und beobachtet es hier nicht. Eine neuere tut es.`,

  'due: danger': (s) => `${said(s, 'what')}. Offen seit ${s.day('date')}, bis eine benannte Person sie schließt.`,
  'due: incident open': (s) => `${said(s, 'what')}. Aufgeschrieben am ${s.day('date')} und noch offen.`,
  'due: incident with danger': (s) =>
    `${said(s, 'what')}. Personen können in Gefahr sein. Aufgeschrieben am ${s.day('date')}.`,
  'due: tripwire': (s) => `„${s.text('title')}“: ein Grund, neu zu entscheiden, gesehen am ${s.day('date')}.`,
  'due: look': (s) =>
    `Ein Kontrollblick vom Boden auf ${s.times('count', 'Zone', 'Zonen')} sagt am meisten um den ${s.day('date')}.`,
  'due: wax': (s) => `${s.times('count', 'Zone', 'Zonen')} neu zu wachsen, die erste bis ${s.day('date')}.`,
  'due: round': (s) => `Der letzte jährliche Rundgang war am ${s.day('date')}.`,
  'due: round, none yet': () => 'Es gibt noch keinen jährlichen Rundgang.',
  'due: round, as planned': (s) => `Der Tag steht im Plan für ${s.text('year')}.`,
  'due: watch': (s) =>
    `Ein Kontrollblick ${s.times('months', 'Monat', 'Monate')} nach der Behandlung, die am ${s.day('date')} endete: Hält die Farbe, und wo kommt zuerst Grün?`,
  'due: warranty': (s) =>
    `Die Gewährleistung${s.text('who') === '' ? '' : ` (${s.text('who')})`} endet am ${s.day('date')}. Sehen Sie das ganze Werk ${s.number('days')} Tage vorher an, solange noch jemand zurückgerufen werden kann.`,
  'due: quote ends': (s) => `${ofWhom(s)} gilt bis ${s.day('date')}.`,
  'due: quote ended': (s) => `${ofWhom(s)} endete am ${s.day('date')}. Fragen Sie neu danach.`,
  'due: review': (s) => `„${s.text('title')}“, entschieden am ${s.day('date')}, sollte wieder angesehen werden.`,
  'due: agreement': (s) => `Vereinbart mit ${s.text('who')} am ${s.day('date')}; gehen Sie es gemeinsam durch.`,
  'due: product': (s) => `${s.text('name')} ist haltbar bis ${s.day('date')}.`,
  'due: loan back': (s) =>
    `Die Leihgabe (${s.text('to')}) endet am ${s.day('date')}. Machen Sie einen Rundgang, wenn das Werk zurück ist.`,
  'due: task': (s) => `Aufgabe: ${said(s, 'what')}.`,
  'due: lift': (s) => `Die Hebebühne ist für den ${s.day('date')} geplant.`,
  'due: gift': (s) => `${s.text('who')}: ${wordOf(s.text('state'))}, erwartet am ${s.day('date')}.`,
  'due: hot day open': (s) => `Der Tag mit Heißarbeit vom ${s.day('date')} wurde nicht abgeschlossen.`,
  'due: put off': (s) => `Verschoben auf ${s.day('date')}.`,

  'held: still clear': (s) => `Beim letzten Blick, am ${s.day('last')}, noch frei.`,
  'held: back between': (s) => `Das Grün kam zwischen ${s.day('first')} und ${s.day('last')} zurück.`,
  'held: nobody looked since': (s) => `Seit der Beschichtung vom ${s.day('date')} hat niemand nachgesehen.`,
  'held: before': (s) => `Davor: ${months(s)}, ab ${s.day('date')}.`,
  'held: nothing before': () => 'Von vorher ist keine Standzeit bekannt, also gibt es nichts zum Vergleich.',
  'held: no coating since': (s) => `Seit der Behandlung vom ${s.day('date')} ist keine Beschichtung aufgeschrieben.`,
  'held: no clean start': (s) =>
    `Aus der Beschichtung vom ${s.day('date')} lässt sich nichts sagen: Sie begann nicht frei, oder niemand sah nach.`,

  'watch: title missing': () => 'Sagen Sie in wenigen Worten, worum es geht.',
  'watch: review before decision': (s) =>
    `Entschieden wird am ${s.day('date')}, wieder angesehen schon am ${s.day('review')}, also davor. Bringen Sie die Tage in Ordnung.`,
  'watch: signed before decision': (s) =>
    `Jemand hat am ${s.day('signed')} unterschrieben, vor der Entscheidung am ${s.day('date')}. Bringen Sie die Tage in Ordnung.`,
  'watch: tripwire incomplete': (s) =>
    `Einem Auslöser fehlt etwas: ${asked[s.text('field')] ?? s.text('field')}. Ohne das ließe sich nie etwas sagen.`,
  'watch: tripwire level': (s) =>
    `Die Schwelle eines Auslösers muss zwischen ${s.number('least')} und ${s.number('most')} liegen.`,
  'watch: two tripwires of one name': () =>
    'Zwei Auslöser tragen denselben Namen. Entfernen Sie einen und fügen Sie ihn neu hinzu.',
  'watch: replaced by itself': () => 'Eine Entscheidung kann nicht an ihre eigene Stelle treten.',
  'watch: answer without name': () => 'Sagen Sie, wer antwortet: eine Funktion oder ein Name.',
  'watch: put off without a day': () => 'Sagen Sie, bis wann es verschoben ist.',
  'watch: put off to the past': (s) =>
    `Der ${s.day('date')} liegt nicht in der Zukunft. Wählen Sie einen späteren Tag.`,
  'watch: task ends before it begins': (s) =>
    `Die Aufgabe beginnt am ${s.day('first')} und endet am ${s.day('last')}, also davor. Bringen Sie die Tage in Ordnung.`,
};

/** A bid says in its lines what for; a quote in its words. */
function ofWhom(s: Params): string {
  const what = s.text('what');
  return what === '' ? `Das Angebot von ${s.text('who')}` : `Der Preis von ${s.text('who')} für ${what}`;
}
