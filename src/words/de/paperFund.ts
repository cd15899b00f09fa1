import type { paperFund as english } from '../en/paperFund';
import type { Same } from '../tongue';

export const paperFund: Same<typeof english> = {
  title: 'Blatt für Geldgeber',
  reader: 'Spender oder Förderstellen',
  lead: (work: string, campaign: string) =>
    `Dieses Blatt sagt, was eine Spende möglich macht: ${campaign}, für ${work}, und die Pflege, die es so erhält.`,
  leadOfAll: (fund: string, collection: string) =>
    `Dieses Blatt sagt, was eine Spende möglich macht: ${fund}, für die Werke von ${collection}.`,

  significance: 'Warum dieses Werk wichtig ist',
  significanceLabel: 'Warum dieses Werk wichtig ist, in Ihren eigenen Worten',
  significanceHint: 'Wer es schuf, für wen, was es diesem Ort ist. Das kann niemand außer Ihnen schreiben.',
  identity: (title: string, maker: string, date: string, materials: string) =>
    [`${title}`, maker && `, ${maker}`, date && `, ${date}`, materials && `. ${materials}`, '.'].join(''),

  opportunity: 'Was jetzt getan werden kann',
  surface: (work: string, green: string, all: string, day: string) =>
    `Von den ${all} Oberfläche von ${work} waren beim Rundgang vom ${day} ${green} grün.`,
  surfaceHow: (low: string, high: string) =>
    `Zone für Zone nach Augenmaß geschätzt; in neun von zehn Fällen liegt es zwischen ${low} und ${high}.`,
  path: (title: string, does: string) => `Der gewählte Weg: ${title}. ${does}`,
  chosenBy: (day: string, roles: string) => `Entschieden am ${day}${roles && `, unterschrieben von: ${roles}`}.`,
  noPath: 'Welcher Weg gegangen wird, ist noch nicht entschieden.',
  cannot: (what: string) => `Was sich nicht zurücknehmen lässt, wird vorher gesagt: ${what}`,

  outcome: 'Woran wir sehen, dass es gelungen ist',
  outcomeMonths: (now: string, then: string, level: string) =>
    `Ein guter Monat ist einer, in dem auch die schlechteste Zone weniger als ${level} Grün zeigt. Jetzt sind es ${now} im Jahr; nach der Arbeit sollen es ${then} sein.`,
  outcomeMonthsOnly: (then: string, level: string) =>
    `Ein guter Monat ist einer, in dem auch die schlechteste Zone weniger als ${level} Grün zeigt. Nach der Arbeit sollen es ${then} im Jahr sein.`,
  outcomeNone: 'Wie viele gute Monate im Jahr die Arbeit bringen soll, ist noch nicht festgehalten.',
  outcomeHow:
    'Gezählt aus Kontrollblicken alle vier bis acht Wochen vom Frühjahr bis zum Herbst und aus einem jährlichen Rundgang über die ganze Oberfläche.',
  outcomeDate: (day: string) =>
    `Das Geld wird bis zum ${day} gebraucht. Ein Jahr nach der Arbeit erfahren die Geber schriftlich und mit Fotos vom selben Standpunkt, ob sie gehalten hat, was versprochen war.`,
  outcomeNoDate:
    'Ein Jahr nach der Arbeit erfahren die Geber schriftlich und mit Fotos vom selben Standpunkt, ob sie gehalten hat, was versprochen war.',
  outcomeLabel: 'Was Sie zu messen versprechen, und bis wann',
  outcomeHint: 'Eine Zahl und ein Tag. Was jetzt hier steht, ist aus den Unterlagen zusammengestellt.',

  budget: 'Was es kostet',
  caption: (day: string) => `Kosten zu den Preisen vom ${day}, und was sie bezahlt`,
  line: 'Kosten',
  amount: 'Betrag',
  today: 'Heute',
  inHand: 'Vorhanden oder ausgegeben',
  pledged: 'Zugesagt kommt dazu',
  hoped: 'Erhofft kommt dazu',
  sum: 'Zusammen',
  todayHow: (percent: string) =>
    `„Heute“: dieselben Kosten, seither um ${percent} % im Jahr gestiegen. Was Spenden bezahlen, ist daran gemessen; jede bezahlt nur, was ihr Geber erlaubt.`,
  later: (one: string, three: string, percent: string) =>
    `Steigen die Preise um ${percent} % im Jahr, sind es ein Jahr nach dem Tag der Preise ${one} und nach drei Jahren ${three}.`,
  quote: (who: string, day: string) =>
    `Der Preis der Arbeit selbst ist ein Angebot von ${who} und gilt bis zum ${day}.`,
  quoteOver: (who: string, day: string) =>
    `Der Preis der Arbeit selbst ist ein Angebot von ${who}; es endete am ${day} und ist zu erneuern.`,
  noLines: 'Was es kostet, ist noch nicht festgehalten.',
  noMoney: 'Die Beträge sind in mehr als einer Währung und werden nicht zusammengezählt.',

  state: 'Wie es um den Fonds steht',
  gifts: (n: number) => (n === 1 ? '1 Spende' : `${n} Spenden`),
  states: { inHand: 'Vorhanden', pledged: 'Zugesagt', hoped: 'Erhofft' },
  stateHow: {
    inHand: 'Es liegt auf dem Konto oder hat schon etwas bezahlt.',
    pledged: 'Jemand hat sein Wort gegeben; gekommen ist es noch nicht.',
    hoped: 'Erbeten, nicht beantwortet. Dieses Geld hat niemand.',
  },
  inKind: (amount: string) => `Vom Zugesagten oder Erhofften sind ${amount} Arbeit oder Sachen, kein Geld.`,
  open: (amount: string) => `Kommen alle Zusagen, haben ${amount} der heutigen Kosten noch keinen Geber.`,
  openNone: 'Kommen alle Zusagen, sind die heutigen Kosten bezahlt.',
  three: 'Das sind drei Summen, aus denen nie eine gemacht wird.',

  upkeep: 'Das Versprechen der Pflege',
  upkeepIs: (yearly: string, percent: string, endowment: string) =>
    `Die Pflege danach kostet ${yearly} im Jahr. Ein Stiftungsvermögen von ${endowment}, von dem jedes Jahr ${percent} % ausgegeben werden dürfen, trägt sie auf Dauer; es wird zusammen mit der Arbeit erbeten, damit nicht wieder verloren geht, was einmal gegeben wurde.`,
  upkeepNone:
    'Was die Pflege danach kostet, ist noch nicht festgehalten. Für ein Werk, dessen Unterhalt nicht genannt ist, sollte nichts gegeben werden.',
  promised: 'Was den Gebern versprochen ist',

  benefit: 'Was die Öffentlichkeit davon hat',
  benefitLabel: 'Was die Öffentlichkeit davon hat, in Ihren eigenen Worten',
  benefitHint: 'Wer kommt, was zu sehen ist, was erklärt wird, was während der Arbeit offen bleibt.',

  doing: 'Wer die Arbeit tut',
  whoTaken: (who: string, named: string) => `Gewählt wurde ${who}${named && `; bei der Arbeit: ${named}`}.`,
  whoOversees:
    'Ein Restaurator entscheidet, mit welchen Mitteln die Oberfläche behandelt wird, und beaufsichtigt es. Hitze und Gerüste sind Sache zugelassener und versicherter Firmen.',
  record:
    'Jeder Schritt wird fotografiert und aufgeschrieben. Die Unterlagen liegen in offenen Formaten, die sich ohne ein bestimmtes Programm lesen lassen; eine Kopie liegt an einem anderen Ort.',

  lacks: {
    significance: 'warum dieses Werk wichtig ist, in Ihren eigenen Worten',
    benefit: 'was die Öffentlichkeit davon hat, in Ihren eigenen Worten',
    upkeep: 'was der Unterhalt im Jahr kostet',
    promise: 'was den Gebern versprochen ist',
    lines: 'was bezahlt werden muss',
    wanted: 'der Tag, bis zu dem das Geld gebraucht wird',
    months: 'gute Monate im Jahr der gewählten Möglichkeit',
  },
};
