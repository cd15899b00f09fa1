import { exposures } from '../../engine/trade';
import type { reasonsOfOptions as english } from '../en/reasonsOfOptions';
import type { Params } from '../en/sentence';
import { currency, number } from '../format';
import type { Same } from '../tongue';

const amount = (s: Params, key: string): string => `${currency(s.text('currency'))} ${s.number(key)}`;
const exposure = (id: string): string => exposures.find((row) => row.id === id)?.name ?? id;
const size = (s: Params): string => {
  const sizes: Readonly<Record<string, readonly [string, string]>> = {
    large: ['großen ', 'große '],
    small: ['kleinen ', 'kleine '],
  };
  const [one, many] = sizes[s.text('size')] ?? ['', ''];
  return s.text('count') === '1' ? `einen ${one}Schritt` : `${s.number('count')} ${many}Schritte`;
};
const fewMonths = (s: Params): string =>
  Number(s.text('months')) < 1 ? 'unter einem Monat' : `${s.number('months', 1)} Monate`;
const whatIf: Readonly<Record<string, string>> = {
  colour: 'Hält die Farbe kürzere Zeit',
  interval: 'Ist der Abstand ein anderer',
  growth: 'Steigen die Preise anders',
  rate: 'Ist der Zinssatz ein anderer',
  price: 'Liegen seine Preise daneben',
};
/** Of a share with a tenth of a per cent: rates are set so finely. */
const rate = (s: Params, key: string): string => {
  const value = Math.round(Number(s.text(key)) * 1000) / 10;
  return `${value < 0 ? '−' : ''}${number(Math.abs(value), 1)} %`;
};

/** What ways to go on cost, what the record says for and against them, and why money is refused. */
export const reasonsOfOptions: Same<typeof english> = {
  'option: years and rate': (s) =>
    `Über ${s.number('years')} Jahre mit ${rate(s, 'rate')} im Jahr über dem Anstieg der Preise.`,
  'option: rules not set': () =>
    'Niemand hat hier Zinssatz, Preisanstieg und Jahre festgelegt: Sie sind unsere eigene Annahme.',
  'option: prices made up': (s) =>
    `${s.percent('share')} davon beruhen auf erfundenen Preisen, die niemand genannt hat.`,
  'option: good months not known': () =>
    'Wie viele gute Monate im Jahr es ergibt, ist nicht bekannt, also gibt es keine Kosten je gutem Monat.',
  'option: no good month': () => 'Es ergibt keinen einzigen guten Monat, also keine Kosten je gutem Monat.',
  'option: no costs': () => 'Noch keine Kosten.',

  'option: cheapest a year': (s) => `Am billigsten in Geld: ${s.thing('option')}.`,
  'option: dearest a year': (s) => `Am teuersten in Geld: ${s.thing('option')}.`,
  'option: cheapest per good month': (s) => `Am billigsten je gutem Monat: ${s.thing('option')}.`,
  'option: dearest per good month': (s) => `Am teuersten je gutem Monat: ${s.thing('option')}.`,
  'option: overtakes': (s) =>
    `${s.thing('option')} hat bis zum Jahr ${s.number('year')} mehr gekostet als ${s.thing('other')}; erst von da an insgesamt nicht mehr als diese, in heutigem Wert.`,
  'option: dearer throughout': (s) =>
    `${s.thing('option')} hat über alle ${s.number('years')} Jahre mehr gekostet als ${s.thing('other')}.`,
  'option: never dearer': (s) => `${s.thing('option')} kostet nie mehr als ${s.thing('other')}.`,
  'option: order turns at rate': (s) => `Bei ${rate(s, 'rate')} ist ${s.thing('other')} günstiger.`,
  'option: order turns if': (s) =>
    `${whatIf[s.text('what')] ?? s.text('what')}, kann ${s.thing('other')} günstiger sein.`,
  'option: steps that cannot be taken back': (s) =>
    `Diese Möglichkeit verlangt ${size(s)}, ${s.text('count') === '1' ? 'der' : 'die'} nicht rückgängig zu machen ${s.text('count') === '1' ? 'ist' : 'sind'}.`,
  'option: good months only said': () => 'Die guten Monate sind angegeben, nicht beobachtet.',
  'option: months from elsewhere': () => 'Die guten Monate kommen aus veröffentlichten Spannen anderer Werke.',
  'option: ranges overlap': (s) =>
    `Die Preise sind so ungenau, dass ${s.thing('other')} je gutem Monat günstiger sein kann.`,
  'option: beyond the years': (s) =>
    `„${s.text('line')}“ fällt hinter die betrachteten ${s.number('years')} Jahre und wird nicht gezählt.`,

  'option: hold short': (s) =>
    Number(s.text('months')) === 0
      ? `Gleich nach der Beschichtung stand dort Grün: ${s.thing('zone')}.`
      : `Erwartete Standzeit einer Beschichtung ${fewMonths(s)}: ${s.thing('zone')}.`,
  'option: hold long': (s) =>
    `Selbst in der schlechtesten Zone ist für eine Beschichtung eine Standzeit von ${s.number('months', 1)} Monaten zu erwarten.`,
  'option: waxing does not hold': (s) => `Wachsen hält nicht in ${s.times('zones', 'Zone', 'Zonen')}.`,
  'option: holds getting shorter': (s) => `Die Standzeiten werden kürzer in ${s.times('zones', 'Zone', 'Zonen')}.`,
  'option: green grows surely': (s) =>
    `Das Grün wächst um etwa ${s.area('m2')} im Jahr: ein Trend über ${s.number('rounds')} Rundgänge.`,
  'option: stop word': (s) => `Gesehen: ${s.kinds('kinds')}. Fragen Sie vor allem anderen den Restaurator.`,
  'option: cause open': (s) => `${s.times('count', 'Ursache ist', 'Ursachen sind')} noch nicht beseitigt.`,
  'option: cause within reach': (s) =>
    `In ${s.times('zones', 'Zone', 'Zonen')}: ${exposure(s.text('exposure'))}. Niemand hat gesagt, ob es eine Ursache ist.`,
  'option: cause just removed': (s) =>
    `Eine Ursache wurde am ${s.day('date')} beseitigt; was das bewirkt, zeigt sich innerhalb von ${s.number('months')} Monaten.`,
  'option: nothing presses': (s) =>
    `${s.percent('share')} der gesehenen Oberfläche sind grün, und sonst ist nichts dringlich.`,
  'option: green wide': (s) => `${s.percent('share')} der gesehenen Oberfläche sind grün.`,
  'option: green in few places': (s) =>
    `${s.percent('green')} des Grüns liegen in ${s.times('zones', 'Zone', 'Zonen')}, ${s.percent('area')} der Oberfläche.`,
  'option: too little known of holds': (s) =>
    `Bei ${s.number('unknown')} von ${s.times('zones', 'Zone', 'Zonen')} kann niemand sagen, wie lange eine Beschichtung hält.`,
  'option: no round yet': () => 'Es wurde noch kein Rundgang gemacht.',
  'option: stripped before': (s) =>
    `Schon früher bis aufs Metall freigelegt: ${s.times('times', 'Mal', 'Mal')} laut Logbuch.`,
  'option: inserts near': (s) =>
    `Es trägt ${s.times('count', 'Einlage, der', 'Einlagen, denen')} Hitze und Strahlmittel schaden können.`,

  'months: worst zone': (s) =>
    `Für das Werk spricht die Zone mit der kürzesten Standzeit, etwa ${fewMonths(s)}: ${s.thing('zone')}.`,
  'months: no clean start': (s) =>
    `Gleich nach der Beschichtung stand dort Grün, also war kein Monat frei: ${s.thing('zone')}.`,
  'months: zones not known': (s) =>
    `${s.times('count', 'Zone ist', 'Zonen sind')} ausgelassen: über ihre Standzeiten ist nichts bekannt.`,
  'months: coated once a year': () => 'Angenommen: einmal im Jahr gewachst, und jede Zone in öffentlicher Sicht.',
  'months: own holds of treated': (s) =>
    `Aus ${s.times('zones', 'Zone', 'Zonen')} von ${s.times('works', 'Werk', 'Werken')} hier, die so behandelt wurden: Die Standzeiten seither, schlechteste Zone.`,
  'months: still holding': (s) =>
    `In ${s.times('count', 'Zone', 'Zonen')} war es beim letzten Blick noch frei; es kann also mehr sein.`,
  'months: published': (s) =>
    `Noch nichts Eigenes. Für solche Beschichtungen veröffentlicht: ${s.number('low')} bis ${s.number('high')} Monate.`,
  'months: nothing to go by': () =>
    'Weder diese Sammlung noch eine veröffentlichte Spanne sagt es. Fragen Sie die Person, die es vorschlägt.',

  'waiting: prices rise': (s) => `Die Preise steigen um ${rate(s, 'growth')} im Jahr.`,
  'waiting: care meanwhile': (s) => `Pflege bis dahin: ${s.thing('option')}.`,
  'waiting: no care named': () =>
    'Kein Weg, die Oberfläche bis dahin zu erhalten, hat einen Preis; es ist keine Pflege gerechnet.',
  'waiting: green grows': (s) => `Das Grün wächst um etwa ${s.area('m2')} im Jahr, zu ${amount(s, 'unit')} je m².`,
  'waiting: whole surface priced': () => 'Der Preis gilt für die ganze Oberfläche; mehr Grün erhöht ihn nicht.',
  'waiting: growth not known': () => 'Zu wenige Rundgänge sagen, wie das Grün wächst; dafür ist nichts gerechnet.',
  'waiting: upkeep spared': (s) =>
    `Der Unterhalt nach der Behandlung, ${amount(s, 'amount')} im Jahr, entfällt beim Warten; er ist hier nicht abgezogen.`,

  'quote: renewed': () => 'Durch einen späteren erneuert.',
  'quote: expired': (s) =>
    `Abgelaufen am ${s.day('date')}, vor ${s.times('days', 'Tag', 'Tagen')}. Bitten Sie um Erneuerung.`,
  'quote: ends soon': (s) =>
    s.text('days') === '0' ? 'Endet heute.' : `Endet am ${s.day('date')}, in ${s.times('days', 'Tag', 'Tagen')}.`,
  'quote: valid': (s) => `Gültig bis ${s.day('date')}: noch ${s.times('days', 'Tag', 'Tage')}.`,
  'quote: no end said': () => 'Es ist nicht gesagt, bis wann er gilt. Fragen Sie danach.',
  'quote: paid': () => 'Bezahlt: was es gekostet hat.',

  'option: last before first': (s) => `„${s.text('line')}“ endet, bevor es beginnt. Berichtigen Sie die Jahre.`,
  'option: months out of order': () =>
    'Die guten Monate sind nicht in Ordnung: die wenigsten zuerst, die meisten zuletzt.',
  'quote: ends before it begins': () =>
    'Der Kostenvoranschlag endet vor seinem eigenen Datum. Berichtigen Sie eines von beiden.',
  'quote: dated after today': () => 'Der Kostenvoranschlag trägt ein Datum in der Zukunft. Berichtigen Sie es.',
  'quote: renews itself': () => 'Ein Kostenvoranschlag kann sich nicht selbst erneuern.',
  'money: currency in use': (s) =>
    `${s.times('count', 'Eintrag ist', 'Einträge sind')} in ${currency(s.text('currency'))}. Ändern oder entfernen Sie sie vor der Währung.`,
  'money: not the currency here': (s) =>
    `Diese Sammlung rechnet in ${currency(s.text('here'))}, und ${currency(s.text('currency'))} wird nie dazugezählt.`,
};
