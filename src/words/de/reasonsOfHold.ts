import type * as english from '../en/reasonsOfHold';
import type { Same } from '../tongue';

const silences: Readonly<Record<string, readonly [string, string]>> = {
  wet: ['Blick auf eine feuchte oder nasse Oberfläche', 'Blicke auf eine feuchte oder nasse Oberfläche'],
  unsure: ['unsicherer Blick', 'unsichere Blicke'],
  carried: ['übernommene Antwort', 'übernommene Antworten'],
  'no word on green': ['Besuch ohne ein Wort zum vorhandenen Grün', 'Besuche ohne ein Wort zum vorhandenen Grün'],
  'no coverage': ['grüner Befund ohne Bedeckung', 'grüne Befunde ohne Bedeckung'],
};

/** 0 Sunday to 6 Saturday. */
export const weekdays: Same<typeof english.weekdays> = [
  'Sonntag',
  'Montag',
  'Dienstag',
  'Mittwoch',
  'Donnerstag',
  'Freitag',
  'Samstag',
];

/** How holds came about, what they tell, and why a date is given or is not. */
export const reasonsOfHold: Same<typeof english.reasonsOfHold> = {
  'hold: told by looks': () =>
    'Hier wird zwischendurch nachgesehen; der erste hellgrüne Fleck über 1 cm² gilt als Rückkehr, auch in einem Rundgang.',
  'hold: told by cover': (s) =>
    `Hier sieht zwischendurch niemand nach; Grün im Metall ab ${s.percent('level')} in einem Rundgang gilt als Rückkehr.`,

  'hold: no coating recorded': () => 'Für diese Zone ist keine Beschichtung eingetragen.',
  'hold: nobody looked at all': () => 'Weder ein Kontrollblick noch ein Rundgang sagt etwas über diese Zone.',
  'hold: date not readable': (s) =>
    `${s.treatment('treatment')}, „${s.text('date')}“: Aus diesem Datum lässt sich kein Tag lesen; es ist ausgelassen. Geben Sie mindestens ein Jahr an.`,
  'hold: dated after today': (s) =>
    `${s.treatment('treatment')} trägt das Datum ${s.day('date')}, nach dem heutigen Tag, und ist ausgelassen.`,
  'hold: zone ended': (s) => `Die Zone wurde am ${s.day('date')} geteilt oder zusammengelegt; ihre Teile beginnen neu.`,

  'hold: start seen clear': (s) => `Frei gesehen am ${s.day('date')}, innerhalb von zwei Wochen nach der Beschichtung.`,
  'hold: start assumed clear': () =>
    'Niemand sah sie innerhalb von zwei Wochen nach der Beschichtung frei und trocken; dass sie es war, ist angenommen.',
  'hold: green stood before': (s) =>
    `Am ${s.day('date')}, vor der Beschichtung, stand dort Grün; dass es fort war, hat niemand eingetragen.`,
  'hold: cleaned before': (s) =>
    `Das Grün wurde vor der Beschichtung abgenommen: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'hold: coating day vague': (s) =>
    `Der Tag der Beschichtung ist nicht bekannt: Er liegt zwischen ${s.day('first')} und ${s.day('last')}, und um so viel ist die Standzeit weiter.`,
  'hold: coatings counted as one': (s) =>
    `${s.times('count', 'Beschichtung', 'Beschichtungen')} eines Tages, oder ohne bekannte Reihenfolge, zählen als eine.`,

  'hold: returned': (s) =>
    s.text('first') === ''
      ? `Grün wurde zuerst am ${s.day('last')} gesehen; vorher sah sie niemand frei.`
      : `Zuletzt frei gesehen am ${s.day('first')}, Grün zuerst gesehen am ${s.day('last')}.`,
  'hold: coated again': (s) =>
    `Am ${s.day('date')} neu beschichtet, noch frei: Die Standzeit zählt bis zum letzten Blick, der sie frei sah.`,
  'hold: broken off': (s) =>
    `Die Reihe ist dort unterbrochen: ${s.treatment('treatment')}, ${s.day('date')}. Die Standzeit zählt bis zum letzten Blick davor, der sie frei sah.`,
  'hold: still clear': (s) => `Beim letzten Blick, am ${s.day('date')}, noch frei.`,
  'hold: noticed in passing': () => 'Im Vorbeigehen bemerkt, außerhalb der geplanten Kontrollblicke.',
  'hold: looks of one day disagree': (s) =>
    `Am ${s.day('date')} sah eine Person sie frei und eine andere Grün: Es gilt, wer Grün sah.`,
  'hold: seen clear again': (s) =>
    `Am ${s.day('date')} wurde sie wieder frei genannt, ohne Beschichtung dazwischen. Es zählt das erste Grün.`,
  'hold: proves nothing': (s) => {
    const [one, many] = silences[s.text('why')] ?? [s.text('why'), s.text('why')];
    return `Ausgelassen, weil es nichts beweist: ${s.times('count', one, many)}.`;
  },
  'hold: two versions, not settled': (s) =>
    `Sie beruht auf ${s.times('things', 'Eintrag', 'Einträgen')} mit zwei Fassungen, die noch niemand geklärt hat.`,

  'hold: no clean start': (s) =>
    `Kein freier Anfang: am ${s.day('date')}, innerhalb von zwei Wochen nach der Beschichtung, war Grün da.`,
  'hold: perhaps no clean start': (s) =>
    `Vielleicht kein freier Anfang: am ${s.day('date')} war Grün da, und der Tag der Beschichtung ist nicht genau genug bekannt.`,
  'hold: coated again before a look': (s) => `Am ${s.day('date')} neu beschichtet, bevor jemand nachsah.`,
  'hold: broken off before a look': (s) =>
    `Bevor jemand nachsah, wurde die Reihe unterbrochen: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'hold: zone ended before a look': (s) =>
    `Die Zone wurde am ${s.day('date')} geteilt oder zusammengelegt, bevor jemand nachsah.`,
  'hold: nobody has looked since': () => 'Seither hat niemand nachgesehen.',
  'hold: coating and break not in order': (s) =>
    `Was zuerst war, ist nicht bekannt: die Beschichtung oder ${s.treatment('treatment')}, ${s.day('date')}. Geben Sie den Tag von beidem an.`,

  'hold: too few zones': (s) =>
    `${s.times('holds', 'Standzeit', 'Standzeiten')}, ${s.times('zones', 'Zone', 'Zonen')}: unter ${s.number('least')} Zonen keine Kurve, denn alle Standzeiten einer Zone sind eine Geschichte.`,
  'hold: too few ends': (s) =>
    `Nur bei ${s.times('ends', 'Standzeit', 'Standzeiten')} wurde das Ende gesehen; eine eigene Form braucht ${s.number('least')}.`,
  'hold: shape borrowed': (s) =>
    `Die Form der Kurve (${s.number('shape', 2)}) ist aus der ganzen Sammlung entliehen: ${s.times('holds', 'Standzeit', 'Standzeiten')}, bei ${s.number('ends')} davon wurde das Ende gesehen.`,
  'hold: shape within zones': (s) =>
    `Wie ähnlich sich die Standzeiten einer Zone sind (Form ${s.number('shape', 2)}), ist entliehen aus ${s.times('holds', 'Standzeit', 'Standzeiten')} von ${s.times('zones', 'Zone', 'Zonen')} der Sammlung.`,
  'hold: nothing to borrow': () => 'Auch die ganze Sammlung gibt keine Form her, also gibt es weder Kurve noch Median.',
  'hold: no look in between': (s) =>
    `Von ${s.times('ends', 'beendeten Standzeit', 'beendeten Standzeiten')} wurde bei keiner zwischen der Beschichtung und dem Tag, an dem Grün gefunden wurde, nachgesehen; nichts sagt, wann dazwischen es zurückkam. Kontrollblicke dazwischen würden es sagen.`,
  'hold: zones drawn anew': (s) =>
    `Die Spanne kommt aus ${s.number('draws')} Ziehungen der ${s.number('zones')} Zonen, stets ganzer Zonen, und daraus, wie weit die Standzeiten bekannt sind: die weitere von beiden.`,
  'hold: no lower end in the draws': () => 'Die Spanne hat kein unteres Ende: zu wenige Zonen geben Auskunft.',
  'hold: no upper end in the draws': () => 'Die Spanne hat kein oberes Ende: zu wenige Zonen geben Auskunft.',
  'hold: earlier spans left out': (s) =>
    `${s.times('holds', 'frühere Standzeit ist', 'frühere Standzeiten sind')} ausgelassen: vor einer Behandlung oder der Beseitigung einer Ursache, nach der die Oberfläche eine andere ist.`,
  'hold: noticed in passing, so many': (s) =>
    `${s.times('holds', 'Standzeit endet', 'Standzeiten enden')} mit etwas im Vorbeigehen Bemerktem, und das ist öfter Grün als frei.`,

  'hold: from its own holds': (s) => `Aus den letzten ${s.number('holds')} Standzeiten dieser Zone.`,
  'hold: from its group': (s) =>
    `Zu wenige eigene Standzeiten; aus ${s.times('holds', 'Standzeit', 'Standzeiten')} von ${s.times('zones', 'Zone', 'Zonen')}, die ähnlich liegen.`,
  'hold: from the last coating': (s) =>
    `Gezählt ab der Beschichtung vom ${s.day('date')}; seither sah sie niemand frei.`,
  'hold: clear at the last look': (s) => `Vorausgesetzt, dass sie am ${s.day('date')} noch frei war.`,
  'hold: chance': (s) =>
    `Bis dahin erreicht die Wahrscheinlichkeit, dass das Grün wieder da ist, ${s.number('percent')} %.`,
  'hold: capped': (s) =>
    `Keine Beschichtung bleibt länger als ${s.number('months')} Monate, was auch ihre Standzeiten sagen.`,
  'hold: severe exposure': (s) =>
    `Nach oben gewandt, dem Regen oder Sprühwasser ausgesetzt bleibt keine Beschichtung länger als ${s.number('months')} Monate, was auch ihre Standzeiten sagen.`,
  'hold: level reached in between': (s) =>
    `Die Wahrscheinlichkeit, dass das Grün wieder da ist, erreicht ${s.number('percent')} % irgendwann zwischen ${s.day('first')} und ${s.day('last')}. Nur Kontrollblicke dazwischen können sagen, wann.`,
  'hold: does not hold here': (s) =>
    `Die Wahrscheinlichkeit, dass das Grün wieder da ist, wird zu groß, bevor ${s.number('months')} Monate vorbei sind. Wachsen hält hier nicht: Fragen Sie den Restaurator.`,
  'hold: green right after the coating': (s) =>
    `Am ${s.day('date')}, gleich nach der Beschichtung, war Grün da; Wachsen hält hier nichts ab: Fragen Sie den Restaurator.`,
  'hold: green is back': (s) => `Das Grün ist wieder da: gesehen am ${s.day('date')}.`,
  'hold: too few holds, no group': (s) =>
    `${s.times('holds', 'eigene Standzeit ist', 'eigene Standzeiten sind')} zu wenig, und zu wenige Zonen liegen ähnlich.`,
  'hold: none came back': (s) =>
    `In keiner ihrer letzten ${s.number('holds')} Standzeiten sah man das Grün zurückkommen: Derzeit ist kein Termin nötig.`,
  'hold: no coating on now': () => 'Es ist keine Beschichtung bekannt, die jetzt darauf liegt.',

  'hold: tells most': (s) =>
    `Ein Blick sagt dann am meisten: Die Wahrscheinlichkeit, dass er das Grün findet, ist etwa ${s.number('percent')} %.`,
  'hold: sooner is better': () => 'Inzwischen ist es eher wieder da als nicht; je früher, desto besser.',
  'hold: walk day': (s) =>
    `Auf den nächsten Wochentag gelegt, an dem hier meist nachgesehen wurde: ${weekdays[Number(s.text('weekday'))] ?? s.text('weekday')}.`,
  'hold: no walk day yet': (s) =>
    `Auf den nächsten Wochentag der Beschichtung gelegt, solange niemand nachgesehen hat: ${weekdays[Number(s.text('weekday'))] ?? s.text('weekday')}.`,
  'hold: look after the next coating': () => 'Der nächste Blick, der etwas sagt, kommt nach der nächsten Beschichtung.',
  'hold: look from the whole collection': (s) =>
    `Der Blick ist gelegt nach ${s.times('holds', 'Standzeit', 'Standzeiten')} von ${s.times('zones', 'Zone', 'Zonen')} der ganzen Sammlung.`,
  'hold: never came back, yearly round will do': (s) =>
    `Sie wurde bis zu ${s.number('months', 1)} Monate lang frei gesehen, und nie kam das Grün zurück: der jährliche Rundgang genügt.`,
  'hold: clear past all that was seen': (s) =>
    `Sie ist seit ${s.number('months', 1)} Monaten frei, länger als jede Standzeit, deren Ende gesehen wurde: der jährliche Rundgang genügt.`,
};
