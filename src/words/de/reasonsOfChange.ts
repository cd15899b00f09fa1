import type { reasonsOfChange as english } from '../en/reasonsOfChange';
import type { Same } from '../tongue';
import { wordOf } from './codes';
import { eyeRests } from './reasonsOfEye';

/** Why a verdict of this round against an earlier one is what it is. */
export const reasonsOfChange: Same<typeof english> = {
  'change: other sculpture': () => 'Die beiden Rundgänge gehören zu zwei Skulpturen.',
  'change: same round': () => 'Beide sind derselbe Rundgang.',
  'change: other type of round': (s) =>
    `Der frühere war ein anderer Rundgang (${wordOf(s.text('earlier'))}) als dieser (${wordOf(s.text('later'))}).`,
  'change: other washing': (s) =>
    `Der frühere wurde ${wordOf(s.text('earlier'))} gemacht, dieser ${wordOf(s.text('later'))}.`,
  'change: other wetness': (s) =>
    `Die Oberfläche war damals ${wordOf(s.text('earlier'))} und ist jetzt ${wordOf(s.text('later'))}.`,
  'change: rounds not alike': () =>
    'Die beiden Rundgänge sind nicht gleichartig; darauf allein wird nichts für dringlich erklärt.',
  'change: other surveyor': (s) =>
    `Zwei Personen haben hingesehen: ${s.thing('earlier')} damals, ${s.thing('later')} jetzt. Ihre Augen können sich unterscheiden; es braucht mehr, bevor eine Veränderung so genannt wird.`,
  'change: surveyor not said': () =>
    'Wer hingesehen hat, ist nicht für beide Rundgänge gesagt; sie gelten als zwei Personen.',
  'change: own eye': (s) =>
    `Für diese Urteile gilt die eigene Unsicherheit der Person (${s.thing('surveyor')}), nicht die übliche: bekannt aus: ${eyeRests(s)}.`,
  'change: no earlier round': () => 'Es gibt keinen früheren Rundgang.',
  'change: earlier rounds are of another kind or state': (s) =>
    `${s.times('rounds', 'früherer Rundgang ist', 'frühere Rundgänge sind')} von anderer Art oder anderem Zustand.`,
  'change: not looked then': (s) => `Damals nicht angesehen: ${s.notLooked('why')}.`,
  'change: not looked now': (s) => `Jetzt nicht angesehen: ${s.notLooked('why')}.`,
  'change: not visited then': () => 'Damals war niemand bei dieser Zone.',
  'change: not visited now': () => 'Jetzt war niemand bei dieser Zone.',
  'change: carried then': (s) => `Damals übernommen, nicht neu beurteilt; Herkunft: ${s.thing('from')}.`,
  'change: carried now': (s) => `Jetzt übernommen, nicht neu beurteilt; Herkunft: ${s.thing('from')}.`,
  'change: zone new since': (s) => `Seither neu: ${s.thing('zone')}.`,
  'change: zone ended since': (s) => `Seither beendet: ${s.thing('zone')}.`,
  'change: kind not known': (s) => `${s.kind('kind')} ist eine Befundart, die diese Version nicht kennt.`,
  'change: no coverage given': () => 'Für einen der beiden ist keine Bedeckung angegeben.',
  'change: not spoken of': (s) => `Dazu wurde nichts gesagt: ${s.thing('round')}.`,
  'change: earlier said to be wrong': () => 'Der frühere Wert wurde für falsch erklärt, als dieser entstand.',
  'change: some findings left out': (s) =>
    `${s.times('count', 'Befund ist', 'Befunde sind')} im Vergleich der Zone ausgelassen: nicht beide Male beurteilt.`,
  'change: no zone looked at both times': () => 'Keine Zone wurde beide Male angesehen.',
  'change: zones compared': (s) =>
    `Verglichen über ${s.number('both')} von ${s.number('all')} Zonen, ${s.percent('areaShare')} der Fläche.`,
  'change: zone area changed': (s) =>
    `Fläche damals ${s.area('earlier')}, jetzt ${s.area('later')}: ${s.thing('zone')}.`,
  'change: zone substrate changed': (s) =>
    `Oberfläche damals ${s.substrate('earlier')}, jetzt ${s.substrate('later')}: ${s.thing('zone')}.`,
  'change: zone redrawn': (s) =>
    `Dazwischen neu gezeichnet (damals Fassung ${s.text('earlier')}, jetzt ${s.text('later')}): ${s.thing('zone')}.`,
  'change: zone split or joined': (s) =>
    `Dazwischen geteilt oder zusammengelegt: ${s.thing('zone')}; beide Seiten gelten für das Ganze.`,
  'change: new, small: may have been missed before': () => 'Neu, klein: kann früher übersehen worden sein.',
  'change: new, small: photos of both rounds': () =>
    'Neu, klein, und es gibt Fotos beider Rundgänge: Sehen Sie sie nebeneinander an.',
  'change: counted, error not known': () =>
    'Es ist gezählt, und wie weit eine Zählung danebenliegen kann, ist nicht bekannt.',
  'change: told by presence, error not known': () =>
    'Es wird danach gesagt, ob es da ist oder nicht, und wie weit das danebenliegen kann, ist nicht bekannt.',
  'change: rests on a step': () =>
    'Es beruht auf einer Stufe der Schwere, der Aktivität oder der Zahl, deren Unsicherheit nicht bekannt ist.',
  'change: judged in different ways': (s) =>
    `Beurteilt auf verschiedene Weise: damals ${s.method('earlier')}, jetzt ${s.method('later')}.`,
  'change: said to be the same': () =>
    'Wer hingesehen hat, bekam den früheren Wert gezeigt und nannte ihn unverändert.',
  'change: alone, could be chance': (s) =>
    `Für sich allein, könnte Zufall sein: Von ${s.number('comparisons')} Vergleichen sähen etwa ${s.number('expected', 1)} verändert aus, obwohl nichts geschah.`,
  'change: two versions, not settled': (s) =>
    `Es beruht auf ${s.times('things', 'Eintrag', 'Einträgen')} mit zwei Fassungen, die noch niemand geklärt hat.`,
  'change: done between': (s) => `Dazwischen getan: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'change: perhaps done between': (s) => `Vielleicht dazwischen getan: ${s.treatment('treatment')}, ${s.day('date')}.`,
  'change: series broken': (s) =>
    `Dazwischen getan: ${s.treatment('treatment')}, ${s.day('date')}. Die Oberfläche ist seither eine andere; vorher und nachher sagen nicht, wie die Pflege weitergeht.`,
  'change: series perhaps broken': (s) =>
    `Vielleicht dazwischen getan: ${s.treatment('treatment')}, ${s.day('date')}. Wenn ja, ist die Oberfläche seither eine andere.`,
};
