import type { reasonsOfTrend as english } from '../en/reasonsOfTrend';
import type { Same } from '../tongue';

/** What a series is made of, how sure its trend is, and how far it may be carried on. */
export const reasonsOfTrend: Same<typeof english> = {
  'trend: rounds of another kind left out': (s) =>
    `${s.times('rounds', 'Rundgang', 'Rundgänge')} von anderer Art oder anderem Zustand ${s.text('rounds') === '1' ? 'ist' : 'sind'} in der Reihe ausgelassen.`,
  'trend: rounds with too little seen left out': (s) =>
    `${s.times('rounds', 'Rundgang, in dem', 'Rundgänge, in denen')} weniger als die Hälfte der Oberfläche gesehen wurde, ${s.text('rounds') === '1' ? 'ist' : 'sind'} in der Reihe ausgelassen.`,
  'trend: zones left out': (s) =>
    `Über die Zonen, die in jedem Rundgang gesehen wurden: ${s.times('zones', 'Zone', 'Zonen')} mit ${s.percent('area')} der Fläche ${s.text('zones') === '1' ? 'ist' : 'sind'} ausgelassen, sonst sähe eine einmal versäumte Zone wie eine Veränderung aus.`,
  'trend: series broken': (s) =>
    `Die Reihe bricht bei „${s.treatment('treatment')}“, ${s.day('date')}, das ${s.percent('share')} der Fläche betraf: vorher und nachher sind nicht eine Reihe.`,
  'trend: perhaps broken between': (s) =>
    `„${s.treatment('treatment')}“, ${s.day('date')}, unterbricht die Reihe; das Datum ist ungenau, deshalb stehen Rundgänge, vor oder nach denen es liegen kann, in keinem Trend.`,
  'trend: broken since': (s) =>
    `„${s.treatment('treatment')}“, ${s.day('date')}, kam nach dem letzten Rundgang: Die Oberfläche ist seither eine andere, also wird von vorher nichts fortgeführt.`,
  'trend: other surveyor': (s) =>
    `Der Bearbeiter wechselte ${s.times('count', 'Mal', 'Mal')}; ein Teil eines Sprungs dort kann vom Auge kommen.`,
  'trend: too few rounds': (s) =>
    `${s.times('n', 'Rundgang', 'Rundgänge')} seit dem letzten Bruch ${s.text('n') === '1' ? 'ist' : 'sind'} zu wenig, um eine Richtung zu nennen; ${s.number('least', 0)} sind nötig.`,
  'trend: all pairs': (s) =>
    `Über ${s.number('n', 0)} Rundgänge entsteht ein solcher Verlauf zufällig mit p = ${s.number('p', 3)} (Vorzeichen aller Paare, alle Reihenfolgen gezählt).`,
  'trend: slope interval': (s) =>
    `Die Steigung ist der Median über alle Paare von Rundgängen; ihre Spanne enthält sie mit ${s.number('n', 0)} Rundgängen in ${s.percent('coverage')} der Fälle.`,
  'trend: not shown': (s) =>
    `Über ${s.number('n', 0)} Rundgänge geht es in keine Richtung sicher (p = ${s.number('p', 2)}).`,
  'trend: if care goes on': () => 'Wenn die Pflege bleibt wie bisher.',
  'trend: no trend to carry on': () => 'Es gibt keinen Trend fortzuführen, also keine Vorausschau.',
  'trend: too far to tell': (s) => `${s.number('years', 1)} Jahre voraus sind zu weit, um etwas zu sagen.`,
};
