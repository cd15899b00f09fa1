import type { photoMethod as english } from '../en/photoMethod';
import type { Same } from '../tongue';

export const photoMethod: Same<typeof english> = {
  coverage: 'Auf einem Foto gemessene Bedeckung',
  coverageText: [
    'Es gibt drei Wege, und jeder steht neben dem, was das Auge im Rundgang sagte. Keiner tritt an dessen Stelle, und keiner wird durch einen anderen berichtigt. Alle drei nennen den Anteil dessen, was dieses Foto zeigt, nicht der ganzen Zone.',
    'Umfahren: die Fläche in den gezeichneten Flecken, geteilt durch die Fläche des Zonenumrisses. Übereinander liegende Flecken zählen einmal, und nur innerhalb der Zone. Die Spanne enthält, was eine an jeder Ecke etwas ungenaue Hand bewirkt, und die Unsicherheit, wo ein Fleck endet.',
    'Punkte: ein Raster über der Zone, jeder Punkt durch Zufall etwas verschoben, damit es mit keinem Muster des Werks zusammenfällt. Sie sagen von jedem, ob er auf Grün liegt. Der Anteil ist die Zahl der Punkte auf Grün, geteilt durch die der beurteilten; Punkte im Glanz werden übergangen. Die Spanne ist die eines Anteils aus so vielen Punkten: nach Wilson, an den Enden erweitert, wo es nur einen bis drei Treffer oder Nichttreffer gibt.',
    'Pixel, geprüft: Sie berühren drei grüne und drei intakte Stellen. Jedes Pixel geht zu der Art, der es in a* und b* näher liegt, die Helligkeit bleibt außer Betracht; Glanz und tiefer Schatten bleiben ebenfalls weg. Was die Pixel sagen, ist nur ein erstes Wort: Sie beurteilen Prüfpunkte in der Maske und außerhalb, ohne dass Ihnen gezeigt wird, welche welche sind, und der Anteil kommt aus beidem: Maske × Grün der Punkte darin + Rest × Grün der Punkte außerhalb. So sieht die Spanne, was die Pixel verwechselt haben.',
    'Nichts wird angegeben, wo die Zone auf dem Foto zu klein ist, wo zu viel von ihr in Glanz oder Schatten liegt, wo zu wenige Punkte beurteilt sind oder wo Grün und intakte Oberfläche sich zu ähnlich sind.',
    'Umfahren eignet sich für wenige große Flecken, Punkte für viele kleine, Pixel für ein Foto bei gleichmäßigem Licht. Weichen zwei Wege um mehr als ihre Spannen voneinander ab, sehen Sie das Werk noch einmal an.',
  ],
  dotsTell: 'Was so viele Punkte sagen (95 %)',
  dotsHeads: { dots: 'Beurteilte Punkte', none: 'Keiner grün' },
  dotsSeen: (share: string) => `${share} gesehen`,
  dotsUpTo: (share: string) => `bis ${share}`,
  fromTo: (low: string, high: string) => `${low} bis ${high}`,

  fits: 'Ein Foto auf ein anderes gelegt',
  fitsText: (n: { readonly similarity: string; readonly affine: string; readonly homography: string }) => [
    `Sie berühren dieselben Stellen auf beiden Fotos: ${n.similarity} Paare, wenn das Foto nur gedreht und in der Größe geändert wird, ${n.affine}, wenn es auch gestreckt wird, ${n.homography}, wenn es als schräge Ebene gelegt wird, was nur für nahezu ebene Teile taugt. Es sind jeweils mehr als nötig, damit etwas zum Prüfen bleibt.`,
    'Jedes Paar wird der Reihe nach weggelassen, die übrigen legen das Foto, und es zeigt sich, wie weit dieses Paar von seiner Stelle zu liegen kommt. Das quadratische Mittel davon ist die Restabweichung, angegeben in Pixeln und als Anteil der Fotobreite.',
    'Was die Restabweichung erlaubt, steht in der Tabelle: eine Veränderungskarte, nur das abwechselnde Ansehen, oder keines von beiden.',
    'Eine Skulptur ist nicht eben. Von einer anderen Stelle aus verschieben sich ihre Teile gegeneinander, und kein Legen behebt das: Stellen Sie sich an dieselbe Stelle.',
    'Fotos bei ungleichem Licht, ungleicher Nässe oder ungleichem Waschen lassen sich aufeinanderlegen; dass sie ungleich sind, steht daneben. Eine Veränderungskarte zählt Grün nur dort als neu oder verschwunden, wo es sich weiter bewegt hat als die Restabweichung.',
  ],
  fitNumbers: 'Zahlen zum Aufeinanderlegen von Fotos',

  areas: 'Flächen aus Umrissen',
  areasText: (error: string) => [
    'Die Fläche, die ein Umriss eben zeigt, nach den beiden Stellen auf dem Foto, deren Abstand am Werk gemessen wurde, mal dem Verhältnis, um das die Oberfläche größer ist als das, was sich zeigt: siehe Tabelle.',
    `Die Spanne beträgt ${error} nach jeder Seite. Eine Messung am Werk selbst ist besser.`,
  ],
  obliquity: 'Oberfläche im Verhältnis zu dem, was sich eben zeigt',
  obliquityNames: { flat: 'Eben, gerade angesehen', curved: 'Gewölbt', folded: 'Tiefe Falten' },

  colour: 'Farbe',
  colourText: [
    'Ein Farbwert kommt von einem auf die Oberfläche gesetzten Gerät und von nichts anderem. Fotos werden nebeneinander angesehen.',
    'Eine Messung ist das Mittel ihrer Aufsetzungen. Zwei Messungen werden nur verglichen, wenn Lichtart, Beobachter, Geometrie, Öffnung und Nässe gleich sind und dazwischen nichts getan wurde, was eine andere Oberfläche ergibt. Passt eine nicht, wird die davor genommen, und das wird gesagt.',
    'Der Unterschied ist CIEDE2000, alle Faktoren 1. Seine Spanne ist nach beiden Seiten so groß, wie ein F mit 3 und n − 1 Freiheitsgraden (beide Messungen zusammen) sie aus der Streuung einzelner Aufsetzungen bei 90 % zulässt: Drei Werte können sich zugleich unterscheiden.',
    'Ein vereinbarter Farbton gilt, wie er eingetragen wurde, und hat keine eigene Unsicherheit. Verwendet wird der am Tag der Messung zuletzt vereinbarte, der einer Zone vor dem des ganzen Werks.',
    'In Prüfungen mit gezogenen Messungen nennt dies in höchstens einem Zehntel der Fälle eine Veränderung, wo keine ist.',
  ],
  colourNumbers: 'Zahlen zur Farbe',
  numbersOfCoverage: 'Zahlen zur Bedeckung auf Fotos',
  what: 'Was',
  value: 'Wert',
  source: 'Quelle',
};
