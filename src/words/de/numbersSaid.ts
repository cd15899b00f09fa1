/** What the numbers of the method are: by the English words they stand for, for rows of the engine keep one text. */
export const numbersSaid: Readonly<Record<string, string>> = {
  'Over this many times the line a change is called clear':
    'Über diesem Vielfachen der Grenze heißt eine Veränderung deutlich',
  'Share of false ones allowed among the changes of one page':
    'Zugelassener Anteil falscher unter den Veränderungen einer Seite',
  'Coverage that "nothing found" stands for against a finding of the other round, fraction':
    'Bedeckung, für die „ohne Befund“ gegenüber einem Befund des anderen Rundgangs steht, Anteil',
  'Error of "nothing found" on the logit of coverage, standard deviation':
    'Unsicherheit von „ohne Befund“ auf der Logit-Skala der Bedeckung, Standardabweichung',
  'A new finding whose bin ends here or below may have been missed before':
    'Ein neuer Befund, dessen Stufe hier oder darunter endet, kann früher übersehen worden sein',
  'Chance with which the range of a difference is to hold the true one':
    'Wahrscheinlichkeit, mit der die Spanne eines Unterschieds den wahren enthalten soll',
  'Placings of the instrument under which a reading is said to be thin':
    'Aufsetzungen, unter denen eine Messung dünn heißt',
  'Placings beyond the first, of both readings together, from which their own spread is believed; under it one is assumed':
    'Aufsetzungen über die erste hinaus, beider Messungen zusammen, ab denen ihrer eigenen Streuung geglaubt wird; darunter wird eine angenommen',
  'Spread of single placings that is assumed where their own is not known, units':
    'Streuung einzelner Messungen, die angenommen wird, wo ihre eigene nicht bekannt ist, Einheiten',
  'Units a placing may lie from the mean of the others before it is asked whether it was typed right':
    'Einheiten, die eine Aufsetzung vom Mittel der anderen liegen darf, bevor gefragt wird, ob sie richtig eingetippt ist',
  'Difference a practised eye just sees where two even surfaces touch in good light, units':
    'Unterschied, den ein geübtes Auge eben sieht, wo zwei gleichmäßige Flächen in gutem Licht aneinanderstoßen, Einheiten',
  'Difference over which the formula says “far apart”, and no more how far, units':
    'Unterschied, über dem die Formel „weit auseinander“ sagt und nicht mehr, wie weit, Einheiten',
  'Standard deviations to each end of a 90 % range': 'Standardabweichungen zu jedem Ende einer 90-%-Spanne',
  'Standard deviations to each end of a 95 % range': 'Standardabweichungen zu jedem Ende einer 95-%-Spanne',
  'Coverage is held this far from 0 and from 1 before its logit is taken, share':
    'So weit wird eine Bedeckung von 0 und von 1 ferngehalten, bevor ihr Logit gebildet wird, Anteil',
  'Error in points of cover that no eye gets under, share; where coverage is nearer to 0 or 1 than this, it is turned into the logit as if it stood here, or half a percent would become half the zone':
    'Unsicherheit in Prozentpunkten der Bedeckung, die kein Auge unterschreitet, Anteil; liegt die Bedeckung näher an 0 oder 1, wird ihr Logit gebildet, als stünde sie hier, sonst würde ein halbes Prozent zur halben Zone',
  'Light and damp of the day, one shift for all zones of a round: standard deviation on the logit':
    'Licht und Feuchte des Tages, eine Verschiebung für alle Zonen eines Rundgangs: Standardabweichung auf der Logit-Skala',
  'Two different persons: standard deviation of their difference on the logit, shared over a round':
    'Zwei verschiedene Personen: Standardabweichung ihres Unterschieds auf der Logit-Skala, gemeinsam über einen Rundgang',
  'No single finding takes more than this off a zone': 'Kein einzelner Befund nimmt mehr als das von einer Zone',
  'Extent of kinds told by length or presence':
    'Ausdehnung von Befundarten, die nach Länge oder Vorhandensein genannt werden',
  'Urgency class of a zone whose index is under the action level':
    'Dringlichkeitsklasse einer Zone, deren Index unter der Handlungsschwelle liegt',
  'Zone index from which findings are slight signs, CC1': 'Index der Zone, ab dem Befunde leichte Anzeichen sind, CC1',
  'Zone index from which findings are plain signs, CC2; under it strong signs, CC3':
    'Index der Zone, ab dem Befunde deutliche Anzeichen sind, CC2; darunter starke Anzeichen, CC3',
  'Condition class at least, at a stop word': 'Zustandsklasse mindestens, bei einem Stoppbegriff',
  'Urgency class at least, at a stop word: somebody waits for an answer':
    'Dringlichkeitsklasse mindestens, bei einem Stoppbegriff: jemand wartet auf Antwort',
  'Hazard from which a severe active finding is CC3 by itself':
    'Gefährdung, ab der ein schwerer aktiver Befund für sich CC3 ist',
  'Coverage from which a finding in the metal said to be active is UC1, share':
    'Bedeckung, ab der ein als aktiv bezeichneter Befund im Metall UC1 ist, Anteil',
  'Coverage from which a finding in the metal of unclear activity is UC1, share':
    'Bedeckung, ab der ein Befund im Metall von unklarer Aktivität UC1 ist, Anteil',
  'Recommendation class at least, at a severe active finding in the metal':
    'Empfehlungsklasse mindestens, bei einem schweren aktiven Befund im Metall',
  'Share of the area seen that is CC3, from which a conservator is asked about the whole':
    'Anteil der gesehenen Fläche mit CC3, ab dem ein Restaurator zum Ganzen gefragt wird',
  'Spread of one person from one time to the next that is assumed until it is known: standard deviation on the logit':
    'Streuung einer Person von Mal zu Mal, angenommen, bis sie bekannt ist: Standardabweichung auf der Logit-Skala',
  'Pairs the assumed spread counts for beside those really made':
    'Paare, für die die angenommene Streuung neben den wirklich gemachten zählt',
  'No eye is held to be steadier than this: standard deviation on the logit':
    'Kein Auge gilt als beständiger als das: Standardabweichung auf der Logit-Skala',
  'A known spread is told in steps of this, so that one more pair does not make every figure of the collection anew':
    'Eine bekannte Streuung wird in Schritten davon genannt, damit nicht ein weiteres Paar jede Zahl der Sammlung neu macht',
  'Patches in one eye check: about two minutes': 'Felder in einer Augenprobe: etwa zwei Minuten',
  'Patches from which a curve is drawn through what the eye said':
    'Felder, ab denen eine Kurve durch das gezogen wird, was das Auge sagte',
  'Chance of a mistake at which a bias is said to be shown':
    'Irrtumswahrscheinlichkeit, bei der eine Neigung als gezeigt gilt',
  'Redraws of the order': 'Neuziehungen der Reihenfolge',
  'Each hazard is redrawn evenly within this share to each side, one factor for a kind in all zones':
    'Jede Gefährdung wird gleichmäßig innerhalb dieses Anteils nach beiden Seiten neu gezogen, ein Faktor je Befundart in allen Zonen',
  'Share of redraws from which a place is called firm': 'Anteil der Neuziehungen, ab dem ein Platz fest heißt',
  'Bias of one person, shared by all that he or she judged by eye: standard deviation on the logit':
    'Neigung einer Person, gemeinsam für alles, was sie nach Augenmaß beurteilte: Standardabweichung auf der Logit-Skala',
  'Days in a month of a hold: a Julian year in twelve':
    'Tage in einem Monat einer Standzeit: ein Zwölftel des julianischen Jahres',
  'A dry look within this many days of the coating shows whether the start was clean, days':
    'Ein trockener Blick innerhalb so vieler Tage nach der Beschichtung zeigt, ob sie frei begann, Tage',
  'Coverage of green in the metal from which it counts as back where nobody makes looks, share':
    'Bedeckung durch Grün im Metall, ab der es als wieder da gilt, wo niemand zwischendurch nachsieht, Anteil',
  'Smallest bright green spot that counts as back in a look, cm2':
    'Kleinster hellgrüner Fleck, der bei einem Kontrollblick als wieder da gilt, cm²',
  'Chance that the green is back at which the next coating is due, share':
    'Wahrscheinlichkeit, dass das Grün wieder da ist, bei der die nächste Beschichtung fällig ist, Anteil',
  'A coating is renewed after this long at the latest, months':
    'Eine Beschichtung wird spätestens nach dieser Zeit erneuert, Monate',
  'The same where it faces up, lies open to rain, or in salt or fountain spray, months':
    'Dasselbe, wo sie nach oben gewandt, dem Regen oder Salz- oder Brunnensprühwasser ausgesetzt ist, Monate',
  'Under this a next coating is no advice; the conservator is asked, months':
    'Darunter ist eine nächste Beschichtung kein Rat; der Restaurator wird gefragt, Monate',
  'Holds of the zone itself the next date rests on; with fewer its group speaks':
    'Standzeiten der Zone selbst, auf denen der nächste Termin beruht; bei weniger spricht ihre Gruppe',
  'Ends a group needs before it gets a shape of its own':
    'Gesehene Enden, die eine Gruppe braucht, bevor sie eine eigene Form bekommt',
  'Zones a group needs before it gets a curve': 'Zonen, die eine Gruppe braucht, bevor sie eine Kurve bekommt',
  'Steepest shape a zone or a group borrows: years differ in rain and salt, so holds are never taken to be more alike':
    'Steilste Form, die eine Zone oder Gruppe entleiht: Jahre unterscheiden sich in Regen und Salz, also gelten Standzeiten nie als ähnlicher',
  'Draws of zones behind a range': 'Ziehungen von Zonen hinter einer Spanne',
  'Share of the draws inside a range': 'Anteil der Ziehungen innerhalb einer Spanne',
  'In the draws of large groups ends are rounded to this, months':
    'In den Ziehungen großer Gruppen werden Enden darauf gerundet, Monate',
  'Holds from which a group is large in that sense': 'Standzeiten, ab denen eine Gruppe in diesem Sinn groß ist',
  'A look tells nearly as much while the chance that it finds green lies between this and one less this, share':
    'Ein Blick sagt fast gleich viel, solange die Wahrscheinlichkeit, Grün zu finden, zwischen diesem Wert und eins minus diesem Wert liegt, Anteil',
  'The next coating is taken to come this long after the last, on the same weekday, days':
    'Die nächste Beschichtung wird so lange nach der letzten angenommen, am selben Wochentag, Tage',
  'Holds before they can be shown to get shorter': 'Standzeiten, bevor gezeigt werden kann, dass sie kürzer werden',
  'Each sum is shown at the rate set and this much under and over it, a year':
    'Jede Summe wird beim gesetzten Zinssatz und um so viel darunter und darüber gezeigt, im Jahr',
  'A coating that lasts less does not reach from one care of the year to the next, months':
    'Eine Beschichtung, die kürzer hält, reicht nicht von einer Pflege des Jahres zur nächsten, Monate',
  'A coating that lasts this long reaches from one year’s care to the next but for the winter, months':
    'Eine Beschichtung, die so lange hält, reicht bis auf den Winter von einer Jahrespflege zur nächsten, Monate',
  'Share of the surface that is green from which it is no matter of single places':
    'Anteil grüner Oberfläche, ab dem es keine Sache einzelner Stellen mehr ist',
  'Share of the surface that is green under which nothing presses':
    'Anteil grüner Oberfläche, unter dem nichts dringlich ist',
  'Share of all the green that lies in few places': 'Anteil am ganzen Grün, der an wenigen Stellen liegt',
  'Most of the area those few places may take, share':
    'Höchster Flächenanteil, den diese wenigen Stellen einnehmen dürfen, Anteil',
  'Share of the zones of which no hold is known, from which too little is known':
    'Anteil der Zonen ohne bekannte Standzeit, ab dem zu wenig bekannt ist',
  'A cause removed shows what it does within a full year, months':
    'Eine beseitigte Ursache zeigt innerhalb eines vollen Jahres, was das bewirkt, Monate',
  'A quote that ends within so many days is about to end':
    'Ein Kostenvoranschlag, der innerhalb so vieler Tage endet, läuft bald ab',
  'What if the interval of what comes every few years is this many times shorter or longer':
    'Was, wenn der Abstand dessen, was alle paar Jahre kommt, so viel Mal kürzer oder länger ist',
  'What if prices and effort rise by so much less or more a year':
    'Was, wenn Preise und Aufwand um so viel weniger oder mehr im Jahr steigen',
  'What if the rate is so much lower or higher': 'Was, wenn der Zinssatz um so viel niedriger oder höher ist',
  'A quote is met within this, share': 'Ein Kostenvoranschlag wird innerhalb davon eingehalten, Anteil',
  'An estimate is met within this, share': 'Eine Schätzung wird innerhalb davon eingehalten, Anteil',
  'A price nobody gave may be off by this, share':
    'Ein Preis, den niemand genannt hat, kann um so viel daneben liegen, Anteil',
  'Pixels a zone must have on the photo to be measured there, as much as 100 by 100':
    'Pixel, die eine Zone auf dem Foto haben muss, um dort gemessen zu werden, so viel wie 100 mal 100',
  'How far a tapped corner lies from where it should, one way: standard deviation, share of the photo width':
    'Wie weit eine angetippte Ecke in einer Richtung von ihrer Stelle liegt: Standardabweichung, Anteil der Fotobreite',
  'Dots that must be judged before a share is told from them':
    'Punkte, die beurteilt sein müssen, bevor ein Anteil daraus genannt wird',
  'Share of the dots, or of the zone, lost to glare and deep shade from which nothing is told of the zone':
    'Anteil der Punkte oder der Zone in Glanzlicht und tiefem Schatten, ab dem nichts über die Zone gesagt wird',
  'Share of the dots that may be left open: they lie row by row, and the first rows are not the zone':
    'Anteil der Punkte, die offen bleiben dürfen: sie liegen Reihe um Reihe, und die ersten Reihen sind nicht die Zone',
  'Share lost to glare and deep shade from which it is said':
    'Anteil in Glanzlicht und tiefem Schatten, ab dem er genannt wird',
  'Pixels between dots under which they fall on the same spot of the picture':
    'Pixel zwischen Punkten, unter denen sie auf dieselbe Stelle des Bildes fallen',
  'Distance of the dots, share of the width of the largest patch, under which neighbours are said to tell the same':
    'Abstand der Punkte, Anteil an der Breite des größten Flecks, unter dem Nachbarn dasselbe sagen',
  'Check dots laid over a mask and outside it': 'Prüfpunkte, die auf eine Maske und außerhalb gelegt werden',
  'Check dots that must be judged before a share is told from them':
    'Prüfpunkte, die beurteilt sein müssen, bevor ein Anteil daraus genannt wird',
  'Check dots that must be judged in the mask, and outside it, each':
    'Prüfpunkte, die in der Maske und außerhalb je beurteilt sein müssen',
  'Share of the zone up to which a mask, or what lies outside it, needs no check dots of its own':
    'Anteil der Zone, bis zu dem eine Maske, oder was außerhalb liegt, keine eigenen Prüfpunkte braucht',
  'Share of the check dots in a mask that are not green over which the mask is said to follow something else':
    'Anteil nicht grüner Prüfpunkte in einer Maske, ab dem es heißt, sie folge etwas anderem',
  'Judgements of check dots that may be slips of the hand or the eye, either way, share':
    'Urteile über Prüfpunkte, die Versehen der Hand oder des Auges sein können, nach beiden Seiten, Anteil',
  'Spots to tap of green, and of sound surface, each': 'Anzutippende Stellen mit Grün und mit intakter Oberfläche, je',
  'Distance of green from sound in a*b* under which the two are too alike to be told apart pixel by pixel':
    'Abstand des Grüns von intakter Oberfläche in a*b*, unter dem beide zu ähnlich sind, um Pixel für Pixel unterschieden zu werden',
  'Value of red, green or blue from which a pixel is taken for glare, of 255':
    'Wert von Rot, Grün oder Blau, ab dem ein Pixel als Glanzlicht gilt, von 255',
  'L* over which a pixel is left out as glare': 'L*, über dem ein Pixel als Glanzlicht ausgelassen wird',
  'L* under which a pixel is left out as deep shade': 'L*, unter dem ein Pixel als tiefer Schatten ausgelassen wird',
  'Residual, share of the width of the photo lain on, up to which a change map is drawn of two photos':
    'Restabweichung, Anteil an der Breite des unteren Fotos, bis zu der eine Karte der Veränderung zweier Fotos gezeichnet wird',
  'Residual, share of the width of the photo lain on, up to which two photos are of the same station':
    'Restabweichung, Anteil an der Breite des unteren Fotos, bis zu der zwei Fotos vom selben Standpunkt sind',
  'Spread of the pairs (root mean square from their middle, along where they lie longest), share of the width, under which they lie in one place':
    'Streuung der Paare (quadratisches Mittel von ihrer Mitte, in ihrer längsten Richtung), Anteil der Breite, unter dem sie an einer Stelle liegen',
  'The same across: share of the width under which the pairs lie on one line':
    'Dasselbe quer dazu: Anteil der Breite, unter dem die Paare auf einer Linie liegen',
  'Share of the picture between the outermost pairs under which it is said that they take up little of it':
    'Anteil des Bildes zwischen den äußersten Paaren, unter dem es heißt, sie nähmen wenig davon ein',
  'Distance of the two places of a scale, share of the width, under which a hand off by half a hundredth makes the area uncertain by more than its own range':
    'Abstand der beiden Stellen eines Maßstabs, Anteil der Breite, unter dem eine um ein halbes Hundertstel verrutschte Hand die Fläche unsicherer macht als ihre eigene Spanne',
  'Difference of the lenses of two photos, share of the shorter, from which it is said':
    'Unterschied der Brennweiten zweier Fotos, Anteil an der kürzeren, ab dem er genannt wird',
  'How many times the residual without it a pair leaves, from which it is named as standing out':
    'Wievielmal die Restabweichung ohne es ein Paar übrig lässt, ab dem es als abweichend genannt wird',
  'Rounds from which the word trend may be used: with four, even a series that only rises comes by chance one time in twelve':
    'Rundgänge, ab denen das Wort Trend gebraucht werden darf: bei vieren ergibt der Zufall selbst eine stets steigende Reihe in einem von zwölf Fällen',
  'Chance at most of a series going one way so far, for the word trend':
    'Höchste Wahrscheinlichkeit, dass eine Reihe zufällig so weit in eine Richtung geht, für das Wort Trend',
  'Rounds from which "each time so far" is said': 'Rundgänge, ab denen „bisher jedes Mal“ gesagt wird',
  'Coverage asked of the interval of ranked slopes; what is attained is printed':
    'Verlangte Überdeckung des Intervalls der geordneten Steigungen; die erreichte steht gedruckt',
  'Times the observed span, from its first round on, past which a forecast is too far to tell':
    'Vielfaches der beobachteten Zeit, vom ersten Rundgang an, nach dem eine Vorausschau zu weit ist',
  'Share of the area that has to be seen in a round for it to stand in the series of the work':
    'Flächenanteil, der in einem Rundgang gesehen sein muss, damit er in der Reihe des Werks steht',
  'A look this long before a warranty ends, days': 'Ein Blick so lange vor dem Ende einer Gewährleistung, Tage',
  'A round or looks from this long before its end count as that look, days':
    'Ein Rundgang oder Kontrollblicke ab so lange vor ihrem Ende zählen als dieser Blick, Tage',
  'From one yearly round to the next, months': 'Von einem jährlichen Rundgang zum nächsten, Monate',
  'A quote is told of this long before it ends, days':
    'Ein Kostenvoranschlag wird so lange vor seinem Ende gemeldet, Tage',
  'A product is told of this long before it ends, days': 'Ein Mittel wird so lange vor seinem Ende gemeldet, Tage',
  'A review or a visit is told of this long before, days':
    'Eine Überprüfung oder ein Besuch wird so lange vorher gemeldet, Tage',
  'What is due within this long is due soon, days': 'Was innerhalb dieser Zeit fällig ist, ist bald fällig, Tage',
  'Setting up and putting away at a work, minutes': 'Aufbauen und Wegräumen an einem Werk, Minuten',
  'A zone answered in one touch, minutes': 'Eine mit einer Berührung beantwortete Zone, Minuten',
  'A zone with findings to judge, minutes': 'Eine Zone mit Befunden zum Beurteilen, Minuten',
  'A photo from a station, minutes': 'Ein Foto von einem Standpunkt, Minuten',
  'Moving ladder or lift to a zone, minutes': 'Leiter oder Hebebühne zu einer Zone umsetzen, Minuten',
  'A look from the ground, minutes': 'Ein Kontrollblick vom Boden, Minuten',
  'Washing and waxing, m2 an hour for one person': 'Waschen und Wachsen, m² je Stunde und Person',
  'Two answers closer together than this were typed in, not walked, seconds':
    'Zwei Antworten dichter hintereinander wurden eingetippt, nicht abgegangen, Sekunden',
  'Two answers further apart than this had a pause between, minutes':
    'Zwischen zwei Antworten weiter auseinander lag eine Pause, Minuten',
  'Zones timed before her own pace takes the place of the assumed one':
    'Zonen mit gemessener Zeit, bevor das eigene Tempo an die Stelle des angenommenen tritt',
  'Waxings with hours before her own pace takes the place of the estimate':
    'Wachsarbeiten mit Stunden, bevor das eigene Tempo an die Stelle der Schätzung tritt',
  'Rounds before a work may be called quiet': 'Rundgänge, bevor ein Werk ruhig heißen darf',
  'Where a coating is expected to keep the green away no longer than this, a second wax, months':
    'Wo eine Beschichtung das Grün voraussichtlich nicht länger fernhält, ein zweites Wachsen, Monate',
  'Share of the area from which that counts for the work': 'Flächenanteil, ab dem das für das Werk zählt',
  'Share of the area from which a coating counts as one of the work':
    'Flächenanteil, ab dem eine Beschichtung als eine des Werks zählt',
  'Works up to which the shortest walk is sought among all orders':
    'Werke, bis zu denen der kürzeste Weg unter allen Reihenfolgen gesucht wird',
  'A round tells the state before or after a move up to this many days from it, days':
    'Ein Rundgang zeigt den Zustand vor oder nach einer Umsetzung bis zu so vielen Tagen davon, Tage',
  'Hours of work in a day outdoors, setting up and meals included, hours':
    'Arbeitsstunden eines Tages im Freien, mit Aufbau und Mahlzeiten, Stunden',
  'Minutes in an hour': 'Minuten in einer Stunde',
};
