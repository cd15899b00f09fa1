import type { reasonsOfPhoto as english } from '../en/reasonsOfPhoto';
import type { Same } from '../tongue';
import { wordOf } from './codes';

const lights: Readonly<Record<string, string>> = {
  'open shade': 'offener Schatten',
  overcast: 'bedeckter Himmel',
  sun: 'Sonne',
  artificial: 'Lampe oder Blitz',
};
const lightOf = (light: string): string => lights[light] ?? light;
const unsaid: Readonly<Record<string, string>> = {
  light: 'Das Licht ist nicht für beide Fotos angegeben',
  wet: 'Ob die Oberfläche nass war, ist nicht für beide Fotos angegeben',
  'light, wet': 'Weder das Licht noch, ob die Oberfläche nass war, ist für beide Fotos angegeben',
};

/** Why a figure of a photo is as it is, or why there is none. */
export const reasonsOfPhoto: Same<typeof english> = {
  'coverage: share of this photo': () => 'Das ist der Anteil an dem, was dieses Foto zeigt, nicht an der ganzen Zone.',
  'coverage: working not kept': () =>
    'Wie hier gemessen wurde, ist nicht in einer Form gespeichert, die diese Version liest; die Spanne lässt sich nicht neu berechnen.',
  'coverage: zone too small on the photo': (s) =>
    `Die Zone nimmt ${s.number('pixels')} Pixel dieses Fotos ein; es sollten ${s.number('least')} oder mehr sein. Fotografieren Sie aus größerer Nähe, oder die Zone allein.`,
  'coverage: traced': (s) =>
    s.text('patches') === '0'
      ? 'Kein Fleck wurde umfahren: Vom Befund war auf diesem Foto nichts zu sehen.'
      : `${s.times('patches', 'Fleck', 'Flecken')} umfahren. Etwas verrutschte Ecken verschieben den Anteil um ${s.percent('points')}; die Spanne enthält auch, wie verschieden ein Rand beim zweiten Umfahren ausfällt.`,
  'coverage: patch crosses itself': (s) =>
    `Die Linie kreuzt sich bei ${s.times('patches', 'Fleck', 'Flecken')}: Was sie umschließt, ist vielleicht nicht gemeint. Sehen Sie die Ecken an.`,
  'coverage: dots counted': (s) => `${s.number('hits')} von ${s.number('judged')} Punkten liegen auf dem Befund.`,
  'coverage: glare skipped': (s) =>
    `${s.times('glare', 'Punkt liegt', 'Punkte liegen')} im Glanzlicht und ${s.text('glare') === '1' ? 'ist' : 'sind'} ausgelassen, von ${s.number('laid')}: Der Anteil gilt für das, was zu sehen war.`,
  'coverage: a wrong dot is not in the range': () =>
    'Die Spanne sagt, wo die Punkte zufällig lagen. Falsch beurteilte Punkte kommen hinzu: Einer von zwanzig verschiebt einen kleinen Anteil um bis zu 5 Prozentpunkte.',
  'coverage: dots left open': (s) => `${s.number('open')} von ${s.number('laid')} Punkten sind noch nicht beurteilt.`,
  'coverage: dots not judged yet': (s) =>
    `${s.number('open')} von ${s.number('laid')} Punkten sind noch nicht beurteilt. Sie liegen Reihe um Reihe; die ersten sprechen also nur für einen Teil der Zone.`,
  'coverage: dots closer than a patch': (s) =>
    `Die Punkte liegen ${s.percent('spacing')} der Fotobreite auseinander, und der größte Fleck ist ${s.percent('patch')} breit: Nachbarn sagen fast dasselbe. Für so große Flecken ist Umfahren der bessere Weg.`,
  'coverage: dots closer than pixels tell': (s) =>
    `Die Punkte liegen ${s.number('pixels', 1)} Pixel auseinander, und ${s.number('least')} sind nötig, um eine Stelle von der nächsten zu unterscheiden. Legen Sie weniger Punkte, oder fotografieren Sie aus größerer Nähe.`,
  'coverage: too much glare': (s) =>
    `${s.percent('share')} der Punkte liegen im Glanzlicht. Fotografieren Sie noch einmal im offenen Schatten oder bei bedecktem Himmel.`,
  'coverage: too few dots judged': (s) =>
    `Bisher ${s.times('judged', 'Punkt ist', 'Punkte sind')} beurteilt; ein Anteil wird ab ${s.number('fewest')} genannt.`,
  'coverage: mask and check dots': (s) =>
    `Die Maske umfasst ${s.percent('share')}. Von ${s.times('inside', 'Prüfpunkt', 'Prüfpunkten')} darin waren ${s.number('wrong')} nicht grün; von ${s.number('outside')} außerhalb waren es ${s.number('missed')}.`,
  'coverage: mask mostly wrong': (s) =>
    `${s.number('wrong')} von ${s.number('inside')} Prüfpunkten in der Maske waren nicht grün: Sie folgt etwas anderem, einem Fleck oder Laub, das sich spiegelt. Tippen Sie andere Stellen an, oder zählen Sie Punkte.`,
  'coverage: slips allowed for': (s) =>
    `Die Spanne lässt Versehen zu: bis zu ${s.percent('share')} der Punkte falsch beurteilt.`,
  'coverage: left out of the mask': (s) =>
    `${s.percent('share')} der Zone liegen in Glanzlicht oder tiefem Schatten und sind ausgelassen: Der Anteil gilt für den Rest.`,
  'coverage: too dark or too bright': (s) =>
    `${s.percent('share')} der Zone liegen in tiefem Schatten oder Glanzlicht, zu viel, um vom Rest auf das Ganze zu schließen. Fotografieren Sie noch einmal in gleichmäßigem Licht.`,
  'coverage: too few check dots judged': (s) =>
    `Bisher ${s.times('judged', 'Prüfpunkt ist', 'Prüfpunkte sind')} beurteilt. Mindestens ${s.number('fewest')} sind nötig, ${s.number('each')} in der Maske und ${s.number('each')} außerhalb.`,
  'coverage: too few spots tapped': (s) =>
    `${s.times('usable', 'Stelle', 'Stellen')} mit ${s.text('sort') === 'green' ? 'Grün' : 'gesunder Oberfläche'} ${s.text('usable') === '1' ? 'ist' : 'sind'} brauchbar; tippen Sie ${s.number('least')} an, fern von Glanzlicht und tiefem Schatten.`,
  'coverage: green and sound too alike': (s) =>
    s.text('strays') === '0'
      ? 'Auf diesem Foto sind das Grün und die intakte Oberfläche in der Farbe zu ähnlich, um sie zu unterscheiden. Zählen Sie stattdessen Punkte.'
      : `${s.times('strays', 'angetippte Stelle ähnelt', 'angetippte Stellen ähneln')} eher der anderen Sorte. Tippen Sie neu, oder zählen Sie Punkte.`,
  'fit: too few pairs': (s) =>
    `${s.times('pairs', 'Paar', 'Paare')} von ${s.number('needed')}. Jedes ist eine Stelle des Werks, auf beiden Fotos berührt; eines mehr als nötig zeigt, ob sie übereinstimmen.`,
  'fit: pairs in one place': () =>
    'Die Paare liegen zu nah beieinander, um zu sagen, wie der Rest des Fotos liegt. Berühren Sie weit entfernte Stellen: oben und unten, links und rechts.',
  'fit: pairs on one line': (s) =>
    s.text('off') === '0'
      ? 'Die Paare liegen auf einer Linie; das Foto könnte sich um sie drehen. Berühren Sie eine Stelle deutlich neben dieser Linie.'
      : 'Alle Paare bis auf eines oder zwei liegen auf einer Linie. Berühren Sie noch eine Stelle deutlich neben dieser Linie.',
  'fit: mirrored': () =>
    'Nach diesen Paaren ist ein Foto das Spiegelbild des anderen. Prüfen Sie, ob in einem Paar links und rechts vertauscht sind oder ein Foto seitenverkehrt ist.',
  'fit: folded': () =>
    'Nach diesen Paaren würde sich ein Teil des Fotos auf sich selbst falten. Nehmen Sie das falsche Paar weg, oder wählen Sie eine andere Art des Auflegens.',
  'fit: residual': (s) =>
    `Jedes der ${s.number('pairs')} Paare liegt etwa ${s.number('percent', 2)} % der Fotobreite (${s.number('px', 1)} Pixel) von der Stelle, an die die anderen es setzen.`,
  'fit: blink only': (s) =>
    `Das sind über ${s.percent('most')}: Die beiden lassen sich abwechselnd ansehen, eine Karte der Veränderung wird nicht gezeichnet.`,
  'fit: not the same station': (s) =>
    `Das sind über ${s.percent('most')}: Diese beiden Fotos wurden nicht vom selben Standpunkt aufgenommen, oder ein Paar ist falsch. Sie werden nur nebeneinander gezeigt.`,
  'fit: one pair stands out': (s) =>
    `Paar ${s.number('pair')} stimmt nicht mit den anderen überein; ohne es liegen sie innerhalb von ${s.number('percent', 2)} % der Breite. Berühren Sie es neu, oder nehmen Sie es weg.`,
  'fit: pairs take up little of the picture': (s) =>
    `Die Paare umfassen ${s.percent('share')} des Bildes. Wie weit es außerhalb daneben liegt, können sie nicht sagen.`,
  'fit: homography only where flat': () =>
    'Es wurde eine schräge Ebene angepasst: Sie gilt, wo das Werk fast eben ist, und sonst nirgends.',
  'photos: light not alike': (s) =>
    `Das Licht war damals ein anderes (${lightOf(s.text('earlier'))}) als jetzt (${lightOf(s.text('later'))}): Farben und Schatten weichen schon deshalb ab.`,
  'photos: wet not alike': (s) =>
    `Die Oberfläche war damals ${wordOf(s.text('earlier'))} und ist jetzt ${wordOf(s.text('later'))}: Nasse Bronze sieht dunkler aus und verbirgt blasses Grün.`,
  'photos: washed not alike': (s) =>
    `Eines wurde ${wordOf(s.text('earlier'))} aufgenommen, das andere ${wordOf(s.text('later'))}: Schmutz kann wie eine Veränderung aussehen.`,
  'photos: light or wet not said': (s) =>
    `${unsaid[s.text('what')] ?? s.text('what')}; niemand kann sagen, ob sie unter gleichen Bedingungen aufgenommen wurden.`,
  'photos: lens not alike': (s) =>
    `Die Brennweite war damals ${s.number('earlier')} mm und ist jetzt ${s.number('later')} mm, bezogen auf Kleinbild: Die kürzere zeichnet nahe Teile größer.`,
  'photos: one upright, one lengthwise': () =>
    'Ein Foto ist hochkant, eines quer: Jedes zeigt Teile, die das andere nicht zeigt.',
  'area: scale too short': (s) =>
    `Die beiden Stellen des Maßstabs liegen ${s.percent('length')} der Fotobreite auseinander; es sollten ${s.percent('least')} oder mehr sein. Wählen Sie eine längere Strecke am Werk.`,
  'area: no outline': () => 'Der Umriss umfasst keine Fläche. Zeichnen Sie ihn zuerst.',
};
