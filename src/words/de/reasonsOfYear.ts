import { enClasses } from '../../engine/trade';
import type { reasonsOfYear as english } from '../en/reasonsOfYear';
import type { Params } from '../en/sentence';
import { date } from '../format';
import type { Same } from '../tongue';

const zones = (s: Params): string =>
  s.text('letters').includes(',') ? `Zonen ${s.text('letters')}` : `Zone ${s.text('letters')}`;
const inZones = (s: Params): string =>
  s.text('letters').includes(',') ? `in den Zonen ${s.text('letters')}` : `in Zone ${s.text('letters')}`;
const level = (family: keyof typeof enClasses, s: Params): string => {
  const row = enClasses[family][Number(s.text(family))];
  return row ? `${row.id}, ${row.name}` : s.text(family);
};
const paces: Readonly<Record<string, string>> = {
  oneTouch: 'Eine mit einer Berührung beantwortete Zone',
  withFinding: 'Eine Zone mit Befunden',
};

/** Why a year is proposed as it is, what its time rests on, and what stands against keeping it. */
export const reasonsOfYear: Same<typeof english> = {
  'year: away': (s) =>
    s.text('due') === ''
      ? `Das Werk ist fort: ${s.text('to')}.`
      : `Das Werk ist bis ${date(s.text('due'))} fort: ${s.text('to')}.`,
  'year: no round yet': () => 'Noch niemand hat hier einen Rundgang gemacht.',
  'year: danger': (s) => `${s.times('count', 'Stelle könnte', 'Stellen könnten')} jemanden verletzen.`,
  'year: urgency': (s) => `Dringlichkeit ${level('urgency', s)}.`,
  'year: condition': (s) => `Zustand ${level('condition', s)}.`,
  'year: stop word': (s) => `Ein Stoppbegriff wurde gesehen: ${s.kinds('kinds')}. Fragen Sie den Restaurator.`,
  'year: zones not seen': (s) => `Im letzten Rundgang nicht gesehen: ${zones(s)}.`,
  'year: no round the year before': (s) => `Der letzte Rundgang war am ${s.day('day')}; im Vorjahr keiner.`,
  'year: too few rounds': (s) =>
    `Nur ${s.times('rounds', 'Rundgang', 'Rundgänge')}; ab ${s.number('least')} darf ein Werk ruhig heißen.`,
  'year: a look will do': () =>
    'Im letzten Jahr gesehen, nichts ist dringlich: ein Kontrollblick vom Boden kann genügen.',
  'year: usual least': () => 'Ein voller Rundgang jedes Jahr ist das übliche Mindestmaß; gängige Praxis, ohne Quelle.',
  'year: never waxed': () => 'Es ist kein Wachs eingetragen. Ob damit begonnen wird, sagt ein Restaurator.',
  'year: waxed every so many years': (s) =>
    `Bisher alle ${s.number('years')} Jahre gewachst, zuletzt am ${s.day('last')}.`,
  'year: waxed every year': (s) => `Bisher jedes Jahr gewachst, zuletzt am ${s.day('last')}.`,
  'year: green is back': (s) => `Das Grün ist wieder da ${inZones(s)}.`,
  'year: holds short': (s) =>
    `Erwartete Standzeit unter ${s.number('months')} Monaten ${inZones(s)}, ${s.number('percent')} % der Fläche.`,
  'year: spray': (s) => `Sprühwasser kommt hin: ${zones(s)}. Wie lange Wachs dort hält, ist noch nicht bekannt.`,
  'year: wax does not hold': (s) =>
    `Wachsen hält nicht ${inZones(s)}: Fragen Sie den Restaurator. Mehr Wachs ist keine Lösung.`,
  'year: no wax before the stop word': () => 'Nicht, bevor der Restaurator sich zum Stoppbegriff geäußert hat.',
  'year: lift for zones': (s) => `Nur mit Hebebühne oder Gerüst erreichbar: ${zones(s)}.`,
  'year: own pace': (s) =>
    `${paces[s.text('what')] ?? s.text('what')}: Ihr eigenes Tempo, der Median aus ${s.number('count')}.`,
  'year: pace assumed': (s) =>
    `${paces[s.text('what')] ?? s.text('what')}: angenommen, bis genug Ihrer Zeiten gemessen sind.`,
  'year: labour own': (s) => `Wachsen: Ihr eigenes Tempo, aus ${s.number('count')} Einträgen im Logbuch mit Stunden.`,
  'year: labour estimated': () =>
    'Wachsen: 1 m² je Stunde und Person, nach einer veröffentlichten Schätzung; zwei Einträge im Logbuch mit Stunden ersetzen sie.',
  'year: all slow or all quick': () => 'Die Spanne ist, was sich ergibt, wenn alles schnell geht oder alles langsam.',
  'year: day too short for rounds': (s) =>
    `${s.day('day')}: Die Rundgänge allein brauchen etwa ${s.number('hours')} Stunden einer Person, mehr als einen Tag von ${s.number('most')}. Nehmen Sie zwei Tage.`,
  'year: day too short with waxing': (s) =>
    `${s.day('day')}: am selben Tag gewaschen und gewachst sind es etwa ${s.number('hours')} Stunden einer Person. Wachsen Sie an anderen Tagen, oder mit mehr Händen.`,
  'year: shortest of all orders': (s) =>
    `Von allen Reihenfolgen von ${s.times('works', 'Werk', 'Werken')} ist keine kürzer.`,
  'year: short walk': (s) => `Ein kurzer Weg an ${s.number('works')} Werken vorbei; vielleicht gibt es einen kürzeren.`,
  'year: no spot': (s) => `${s.times('works', 'Werk ist', 'Werke sind')} nicht im Geländeplan und kommen zuletzt.`,
  'year: campaign under way': (s) => `Eine Maßnahme läuft: ${s.text('title')}.`,
  'year: asks whether major treatment is due': () =>
    'Die Einträge legen die Frage nahe, ob eine umfassende Behandlung ansteht.',
  'year: recommendation': (s) => `Empfehlung ${level('recommendation', s)}.`,
  'year: incident open': (s) => `Der Vorfall vom ${s.day('day')} ist noch offen.`,
  'year: nothing presses': () => 'Nichts in den Einträgen ist dringlich.',
  'year: day outside the year': (s) =>
    `Der ${s.day('day')} liegt nicht in ${s.text('year')}. Geben Sie einen Tag dieses Jahres an.`,
  'year: work twice': () => 'Ein Werk steht dort zweimal. Nehmen Sie eines der beiden weg.',
  'year: dates out of order': (s) =>
    `Der ${s.day('second')} kommt vor dem ${s.day('first')}. Berichtigen Sie die Tage.`,
  'year: text missing': () => 'Etwas ist noch nicht gesagt. Sagen Sie es in wenigen Worten.',
  'year: name missing': () => 'Sagen Sie, wer: ein Name oder eine Funktion.',
};
