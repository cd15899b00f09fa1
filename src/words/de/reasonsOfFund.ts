import type { reasonsOfFund as english } from '../en/reasonsOfFund';
import type { Same } from '../tongue';
import { wordOf } from './codes';

/** Why a fund or a gift is not kept as it stands. */
export const reasonsOfFund: Same<typeof english> = {
  'fund: title missing': () => 'Sagen Sie, wofür der Fonds ist.',
  'fund: line without a name': () => 'Jeder Kostenpunkt braucht einen Namen: Sagen Sie, was bezahlt wird.',
  'fund: line twice': (s) => `„${s.text('name')}“ steht zweimal in der Liste. Nehmen Sie eines davon weg.`,
  'fund: wanted before priced': (s) =>
    `Das Geld wird am ${s.day('wanted')} gebraucht, vor dem Tag der Preise, ${s.day('priced')}. Geben Sie einen späteren Tag an.`,
  'fund: day of prices to come': (s) => `Preise können nicht vom ${s.day('day')} sein, der noch in der Zukunft liegt.`,
  'fund: nobody named': () => 'Sagen Sie, wer es gibt: ein Name, oder „ein Besucher“.',
  'fund: nothing given': () => 'Geben Sie den Betrag an; Arbeit und Sachspenden zählen mit dem, was sie kosten würden.',
  'fund: chance missing': () => 'Sagen Sie, wie wahrscheinlich eine erhoffte Spende ist, in Prozent.',
  'fund: came before it was here': (s) =>
    `Sie kann nicht am ${s.day('day')} eingegangen sein, der noch in der Zukunft liegt.`,
  'fund: day it came missing': () => 'Eingegangenes Geld ist gekommen: Sagen Sie, an welchem Tag.',
  'fund: not yet come': (s) =>
    `Eine Spende, die ${wordOf(s.text('state'))} ist, hat keinen Tag des Eingangs. Geben Sie an, dass sie vorhanden ist, oder nehmen Sie den Tag weg.`,
  'fund: line not known': () =>
    'Sie ist an einen Kostenpunkt gebunden, den dieser Fonds nicht hat. Wählen Sie neu, was sie bezahlen darf.',
};
