/** What was found, done, said and decided in the garden, year by year. */
export const yearsInGerman: Readonly<Record<string, string>> = {
  'Cold paste wax': 'Kalte Wachspaste',
  'Tool shed, red folder, tab 3': 'Geräteschuppen, rote Mappe, Register 3',
  'white spirit': 'Testbenzin',
  'Tool shed at the landward gate': 'Geräteschuppen am landseitigen Tor',
  'Stone arcade': 'Steinerne Arkade',
  'On its base, lifted by slings under the plate, never by a neck':
    'Auf ihrer Fußplatte, mit Gurten unter der Platte gehoben, nie an einem Hals',
  'Foyer of the ferry hall, Vesperhythe': 'Foyer der Fährhalle, Vesperhythe',
  'Riggers, with a curator beside': 'Schwertransporteure, eine Kuratorin dabei',
  'The colour of the table top is gone; wax holds no longer than a summer.':
    'Die Farbe der Tischplatte ist weg; Wachs hält nicht länger als einen Sommer.',
  'Colour anew': 'Neue Farbe',
  Conservator: 'Restaurator',
  'Sticky film under the limes every June.': 'Jeden Juni klebriger Film unter den Linden.',
  'Two branches cut back.': 'Zwei Äste zurückgeschnitten.',
  'Colour gone, even green film, about 40 %; stain of leaves':
    'Farbe weg, gleichmäßiger grüner Film, etwa 40 %; Flecken von Laub',
  'A Table top': 'A Tischplatte',
  'Green spots round the lenses, about 20 %': 'Grüne Stellen um die Linsen, etwa 20 %',
  'B Bezels round the lenses': 'B Fassungen um die Linsen',
  'Even green film, about 22 %': 'Gleichmäßiger grüner Film, etwa 22 %',
  'C Left figure, upper': 'C Linke Figur, oben',
  'Even green film, about 10 %': 'Gleichmäßiger grüner Film, etwa 10 %',
  'D Left figure, lower': 'D Linke Figur, unten',
  'Even green film, about 25 %': 'Gleichmäßiger grüner Film, etwa 25 %',
  'E Right figure, upper': 'E Rechte Figur, oben',
  'F Right figure, lower': 'F Rechte Figur, unten',
  'Green line at the water, about 25 %': 'Blaugrüne Linie am Wasser, etwa 25 %',
  'G Stools and base': 'G Hocker und Fußplatte',
  'B: Cast glass, lens L1': 'B: Gegossenes Glas, Linse L1',
  'B: Cast glass, lens L2': 'B: Gegossenes Glas, Linse L2',
  'B: Cast glass, lens L3': 'B: Gegossenes Glas, Linse L3',
  'B: Cast glass, lens L4': 'B: Gegossenes Glas, Linse L4',
  'B: Cast glass, lens L5': 'B: Gegossenes Glas, Linse L5',
  'Photographs, layer log and report': 'Fotos, Schichtenprotokoll und Bericht',
  Patineur: 'Patineurin',
  Foreman: 'Vorarbeiter',
  'Foundry team': 'Gießereimannschaft',
  'Grounds staff': 'Gartenpersonal',
  'Sprinkler head moved.': 'Regner versetzt.',
  'The head on the west side stays where it is now and does not reach the metal.':
    'Der Regner auf der Westseite bleibt, wo er jetzt steht, und erreicht das Metall nicht.',
  'Head gardener': 'Leiter der Gärtnerei',
  'Path on the quay side, two days.': 'Weg auf der Kaiseite, zwei Tage.',
  'Granite setts, level.': 'Granitpflaster, eben.',
  'Hot work: fire office of the harbour, one permit a day.':
    'Heißarbeit: Brandschutzstelle des Hafens, ein Erlaubnisschein je Tag.',
  'Post at the ticket hut, 40 m.': 'Säule am Kassenhäuschen, 40 m.',
  'Six screws through the bezel': 'Sechs Schrauben durch die Fassung',
  'Bezel seized': 'Fassung sitzt fest',
  'Glass conservator': 'Glasrestauratorin',
  'Wet felt and a sheet of copper before it, as the foundry put it in writing; a sensor at the rim.':
    'Nasser Filz und davor ein Kupferblech, wie die Gießerei es schriftlich angegeben hat; ein Fühler am Rand.',
  'One edge chip at the lower left, 4 mm, known since before 2023.':
    'Eine Absplitterung am Rand links unten, 4 mm, schon vor 2023 bekannt.',
  'Fine nut shell; sample area approved 6 September.': 'Feine Nussschale; Probefläche am 6. September freigegeben.',
  'L1, L3 and L4 are out and packed. L2 and L5 stay, shielded, with a sensor on the rim: 60 degrees and 40 K at most.':
    'L1, L3 und L4 sind ausgebaut und verpackt. L2 und L5 bleiben, abgeschirmt, mit einem Fühler am Rand: höchstens 60 Grad und 40 K.',
  'Fine nut shell at low pressure. Tool marks and the foundry stamp stand as before.':
    'Feine Nussschale bei niedrigem Druck. Werkspuren und Gießerstempel stehen wie zuvor.',
  'Estate of the artist': 'Nachlass des Künstlers',
  'Panel 3 of the sample board, looked at dry and wet, in shade and in sun.':
    'Platte 3 der Mustertafel, trocken und nass betrachtet, im Schatten und in der Sonne.',
  'Store, drawer 4, in the dark': 'Depot, Schublade 4, im Dunkeln',
  'Panel 3 of the sample board': 'Platte 3 der Mustertafel',
  'Deep brown with red in the recesses, a shade warmer than the board of 1991; satin, not gloss.':
    'Tiefes Braun mit Rot in den Tiefen, eine Spur wärmer als die Tafel von 1991; seidenmatt, nicht glänzend.',
  'Fire office of the harbour': 'Brandschutzstelle des Hafens',
  'Hot work 7 of 2023, harbour fire office': 'Heißarbeit 7 von 2023, Brandschutzstelle des Hafens',
  'rim, towards the flame': 'Rand, zur Flamme hin',
  'Nothing smoked.': 'Nichts rauchte.',
  'Four layers, hot; test panel approved 8 September with two sign-offs.':
    'Vier Schichten, heiß; Musterplatte am 8. September mit zwei Unterschriften freigegeben.',
  '15 °C, dry, no wind': '15 °C, trocken, kein Wind',
  'Liver of sulphur, cold ground': 'Schwefelleber, kalter Grund',
  'Ferric nitrate': 'Eisennitrat',
  'Ferric nitrate with a little cupric': 'Eisennitrat mit etwas Kupfernitrat',
  'hot then cold paste wax': 'erst heiße, dann kalte Wachspaste',
  'Steward and foundry team': 'Kuratorin und Gießereimannschaft',
  'Drawer 2 of the plan chest': 'Schublade 2 des Planschranks',
  'The layer log was missing at first and came on 20 November.':
    'Das Schichtenprotokoll fehlte zunächst und kam am 20. November.',
  'Grit on the quay path, no salt within 5 m of a work.':
    'Splitt auf dem Kaiweg, kein Salz im Umkreis von 5 m um ein Werk.',
  'Report whole, work walked round dry. Call-back for 36 months from today.':
    'Bericht vollständig, Werk trocken umgangen. Nachbesserung 36 Monate lang ab heute.',
  'Comes back for colour that fails where it was laid; not for touch, spray or a blow.':
    'Nachgebessert wird Farbe, die dort versagt, wo sie aufgetragen wurde; nicht, was Berührung, Gischt oder ein Schlag bewirkt.',
  'No pressure, no hot water, no solvent near the lenses: L2 and L5 are seized in their bezels.':
    'Kein Druck, kein heißes Wasser, kein Lösemittel in der Nähe der Linsen: L2 und L5 sitzen in ihren Fassungen fest.',
  'The ground line of the fluke is trimmed by hand, 50 cm all round.':
    'An der Bodenlinie der Fluke wird von Hand geschnitten, 50 cm ringsum.',
  'Neutral detergent': 'Neutralreiniger',
  'White tile, that morning': 'Weiße Kachel, am selben Morgen',
  'Lent by the conservator': 'Vom Restaurator geliehen',
  'Under the printed frame, its corner on the seam between the two plates':
    'Unter dem gedruckten Rahmen, seine Ecke auf der Naht zwischen den beiden Platten',
  'Wax missed: the lift came, the basin was not drained.':
    'Wachsen ausgefallen: Die Hebebühne kam, das Becken war nicht abgelassen.',
  'Nobody in the basin before the pump is locked off.':
    'Niemand betritt das Becken, bevor die Pumpe abgeschaltet und gegen Wiedereinschalten gesichert ist.',
  'Knees, laps, hands and rope.': 'Knie, Schoß, Hände und Seil.',
  'Wash and wax, longer each year': 'Waschen und wachsen, jedes Jahr länger',
  'Yearly wax only': 'Nur jährlich wachsen',
  'Wash and wax': 'Waschen und wachsen',
  'Green off and colour anew in the worst zones': 'Grün abnehmen und neue Farbe in den schlechtesten Zonen',
  'Wax, and local treatment every second year': 'Wachs, und jedes zweite Jahr örtliche Behandlung',
  'Strip, desalt, hot patina, wax': 'Freilegen, entsalzen, heiß patinieren, wachsen',
  'Scaffold and draining the basin': 'Gerüst und Ablassen des Beckens',
  'Conservator oversight and documentation': 'Restauratorische Aufsicht und Dokumentation',
  'Strip, hot patina, then yearly wax': 'Freilegen, heiß patinieren, dann jährlich wachsen',
  'Foundry of the quay (invented)': 'Gießerei am Kai (erfunden)',
  Reserve: 'Rücklage',
  'Upkeep for twenty years, and each spring a page with the same view as on the leaflet.':
    'Unterhalt für zwanzig Jahre, und jedes Frühjahr eine Seite mit derselben Ansicht wie auf dem Faltblatt.',
  'A new skin for the stair': 'Eine neue Haut für die Treppe',
  'Strip, hot patina, then wax every year, as soon as the money for the work and for its upkeep is there. Until then wax every May as before.':
    'Freilegen, heiß patinieren, dann jedes Jahr wachsen, sobald das Geld für die Arbeit und für den Unterhalt da ist. Bis dahin wie bisher jeden Mai wachsen.',
  'Treasurer of the board': 'Schatzmeister des Vorstands',
  'Head of grounds': 'Leiter der Außenanlagen',
  'Head of grounds: draining the basin for six weeks costs the planting round it a season.':
    'Leiter der Außenanlagen: Wird das Becken sechs Wochen lang abgelassen, kostet das die Bepflanzung ringsum eine Saison.',
  'Round of 14 May 2024: green on all nine zones, most on the base ring and the spray band, 60 % each.':
    'Rundgang vom 14. Mai 2024: Grün in allen neun Zonen, am meisten am Sockelring und am Gischtband, je 60 %.',
  'Zone H: green stands right after the wax, so no hold has a clean start.':
    'Zone H: Grün ist gleich nach dem Wachsen da, deshalb beginnt keine Standzeit sauber.',
  'Conservator, April 2021: the colour of 1974 is gone from the upper faces.':
    'Restaurator, April 2021: Die Farbe von 1974 ist auf den Oberseiten weg.',
  'Quote of October 2024 for strip, desalting, hot patina and wax, good for 180 days.':
    'Angebot vom Oktober 2024 für Freilegen, Entsalzen, heißes Patinieren und Wachsen, 180 Tage gültig.',
  'The cheapest in money and the dearest a good month: on the spray band the green stands the day after waxing.':
    'Am billigsten in Geld und am teuersten je gutem Monat: Am Gischtband ist das Grün am Tag nach dem Wachsen da.',
  'Ten small steps that cannot be taken back, and the spray band comes back each time.':
    'Zehn kleine Schritte, die sich nicht zurücknehmen lassen, und das Gischtband kommt jedes Mal wieder.',
  'Member of the board': 'Mitglied des Vorstands',
  'Chair of the board': 'Vorsitzende des Vorstands',
  'Wax, mend or strip the stair': 'Die Treppe wachsen, ausbessern oder freilegen',
  'Strip and hot patina': 'Freilegen und heiß patinieren',
  'In a westerly the jet reaches the lower arcs; the green line ends where it ends.':
    'Bei Westwind erreicht der Strahl die unteren Bögen; die grüne Linie endet, wo er endet.',
  'Seen by the conservator on photos: wax only.': 'Vom Restaurator auf Fotos gesehen: nur wachsen.',
  'Photographed, branch lifted off by two, tips wiped.': 'Fotografiert, Ast zu zweit abgehoben, Spitzen abgewischt.',
  Insurer: 'Versicherer',
  'A lime branch lay across the fluke tips after the westerly. No dent seen; two scratches in the wax.':
    'Nach dem Weststurm lag ein Lindenast über den Spitzen der Fluke. Keine Delle zu sehen; zwei Kratzer im Wachs.',
  'The garden’s own purse': 'Die eigene Kasse des Gartens',
  'Brown water from the second weld three days after rain.':
    'Drei Tage nach Regen braunes Wasser aus der zweiten Schweißnaht.',
  'Cleared with a wooden rod; dry since.': 'Mit einem Holzstab freigemacht; seither trocken.',
  'The lift goes back tonight, and the wind dries it.':
    'Die Hebebühne geht heute Abend zurück, und der Wind trocknet es.',
  'A family on the quay': 'Eine Familie vom Kai',
  'A family from the hill': 'Eine Familie vom Hügel',
  'Spot test for chloride: positive in I, negative in H. A desalting step belongs before any colouring.':
    'Tüpfeltest auf Chlorid: positiv in I, negativ in H. Vor jede Färbung gehört ein Entsalzen.',
  'Pale powdery mounds on zone I, base ring, 9 October 2025: ask the conservator.':
    'Helle, pudrige Häufchen in Zone I, Sockelring, 9. Oktober 2025: den Restaurator fragen.',
  'Chloride in I, says the conservator. The proposal gets a desalting step before any colour; the decision stands.':
    'Chlorid in I, sagt der Restaurator. In den Behandlungsvorschlag kommt vor jeder Farbe ein Entsalzen; die Entscheidung bleibt.',
  'No treatment. A round every May, wax every second year, and nothing else.':
    'Keine Behandlung. Jeden Mai ein Rundgang, jedes zweite Jahr Wachs, sonst nichts.',
  'Rounds of 2023, 2024 and 2025: green spots under 1 % on the backs, at rest, no zone worse.':
    'Rundgänge von 2023, 2024 und 2025: grüne Flecken unter 1 % auf den Rücken, ruhend, keine Zone schlechter.',
  'Wax every year': 'Jedes Jahr wachsen',
  'Nothing comes of it here: the green spots stay under 1 % with wax every second year.':
    'Hier bringt es nichts: Mit Wachs jedes zweite Jahr bleiben die grünen Flecken unter 1 %.',
  'Take the green spots off': 'Die grünen Flecken abnehmen',
  'They are at rest, and rubbing costs more surface than they do.':
    'Sie ruhen, und Reiben kostet mehr Oberfläche als sie.',
  'Leave the geese alone': 'Die Gänse so belassen',
  'People may go on sitting on the bench. Knees, hands and seat may stay bright; the local colour of 2024 is not renewed.':
    'Die Leute dürfen sich weiter auf die Bank setzen. Knie, Hände und Sitzfläche dürfen blank bleiben; die örtliche Farbe von 2024 wird nicht erneuert.',
  'Conservator: nobody has measured how much metal the hands take.':
    'Restaurator: Niemand hat gemessen, wie viel Metall die Hände wegnehmen.',
  'Round of 13 May 2025: bare metal is back on knees and laps, eleven months after the local colour.':
    'Rundgang vom 13. Mai 2025: An Knien und Schoß ist wieder blankes Metall, elf Monate nach der örtlichen Farbe.',
  'A fence': 'Ein Zaun',
  'The bench was made to be sat on.': 'Die Bank wurde gemacht, damit man darauf sitzt.',
  'Local colour every second year': 'Jedes zweite Jahr örtliche Farbe',
  'A year of hands wore through it, and each time the bright metal is worked on again.':
    'Ein Jahr voller Hände hat sie durchgerieben, und jedes Mal wird wieder am blanken Metall gearbeitet.',
  'Let visitors polish the rope': 'Das Seil von den Besuchern blank reiben lassen',
  'Chloride found in zone I. The proposal desalts there before any patina.':
    'Chlorid in Zone I gefunden. Der Behandlungsvorschlag sieht dort vor jeder Patina ein Entsalzen vor.',
  'On the weather side wax holds under three months, for the third year.':
    'Auf der Wetterseite hält das Wachs keine drei Monate, im dritten Jahr.',
  'Half of it is green and the base ring is not sound; money is being gathered.':
    'Die Hälfte ist grün, und der Sockelring ist nicht intakt; Geld wird gesammelt.',
  'The colour of 2023 stands; the bezels are looked at.': 'Die Farbe von 2023 hält; die Fassungen werden beobachtet.',
  'Fine under its arcade. Waxed every second year.': 'Unter seiner Arkade in Ordnung. Jedes zweite Jahr gewachst.',
  'The knees are being polished again.': 'Die Knie werden wieder blank gerieben.',
  'The scale fades since the sprinkler was moved.': 'Seit der Regner versetzt ist, geht der Kalkbelag zurück.',
  'Pump house and isolator of the basin': 'Pumpenhaus und Hauptschalter des Beckens',
  'Key board in the tool shed, hook 7': 'Schlüsselbrett im Geräteschuppen, Haken 7',
  'One lens cast with the five, chipped': 'Eine mit den fünf gegossene Linse, abgesplittert',
  'Store, drawer 4, wrapped': 'Depot, Schublade 4, eingewickelt',
  'Powder of zone I, three vials, November 2025': 'Pulver aus Zone I, drei Röhrchen, November 2025',
  'With the conservator': 'Beim Restaurator',
  'Bag of each December, on two disks': 'Die Tasche von jedem Dezember, auf zwei Platten',
  'Office safe, and the town archive of Vesperhythe': 'Bürotresor und Stadtarchiv Vesperhythe',
  'Steward: the number on the shed door\nConservator: the card in the logbook\nEmergency: 112':
    'Kuratorin: die Nummer an der Schuppentür\nRestaurator: die Karte im Logbuch\nNotruf: 112',
  'Helper on both lift days, Stand-in in May': 'Hilfskraft an beiden Tagen der Hebebühne, Vertretung im Mai',
  'Boom over the basin, 6 m': 'Ausleger über dem Becken, 6 m',
  'The same, to wax': 'Dasselbe, zum Wachsen',
  'Basin drained, quay path narrowed, no loading at spring tide.':
    'Becken abgelassen, Kaiweg verengt, kein Verladen bei Springtide.',
  'Scaffold firm': 'Gerüstfirma',
  'Basin floor under 0.35 to 0.6 m of water; feed pipe along the north edge.':
    'Beckenboden unter 0,35 bis 0,6 m Wasser; Zuleitung an der Nordkante.',
  'Scaffold licence of the port; hot work for each day.': 'Gerüst: Genehmigung des Hafens; Heißarbeit für jeden Tag.',
  'Pump cabinet, to be locked off.': 'Pumpenschrank, abzuschalten und gegen Wiedereinschalten zu sichern.',
  'Two people, a line, the gate on the landward side kept free.':
    'Zwei Personen, eine Leine, das Tor auf der Landseite bleibt frei.',
  'Mains at the ferry hut.': 'Netzanschluss am Fährhäuschen.',
  'Draining the basin with their own pumps.': 'Das Becken mit eigenen Pumpen ablassen.',
  'Harbour works yard': 'Betriebshof des Hafens',
  'Even green film, about 65 %; wax worn through in places':
    'Gleichmäßiger grüner Film, etwa 65 %; Wachs stellenweise durchgerieben',
  'A Top arc, upper face': 'A Oberster Bogen, Oberseite',
  'Green spots, about 8 %': 'Grüne Flecken, etwa 8 %',
  'B Top arc, underside': 'B Oberster Bogen, Unterseite',
  'Even green film, about 50 %; a thin dark area': 'Gleichmäßiger grüner Film, etwa 50 %; eine dünne dunkle Stelle',
  'C Second arc, outer': 'C Zweiter Bogen, außen',
  'Green spots, about 15 %': 'Grüne Flecken, etwa 15 %',
  'D Second arc, inner': 'D Zweiter Bogen, innen',
  'Even green film, about 45 %; black crust, a little': 'Gleichmäßiger grüner Film, etwa 45 %; etwas schwarze Kruste',
  'E Third arc, outer': 'E Dritter Bogen, außen',
  'Green spots, about 12 %': 'Grüne Flecken, etwa 12 %',
  'F Third arc, inner': 'F Dritter Bogen, innen',
  'Green streaks from the welds, about 30 %; an open joint':
    'Grüne Ablaufspuren von den Schweißnähten, etwa 30 %; eine offene Fuge',
  'G Joints and weld lines': 'G Fugen und Schweißnähte',
  'Even green film, about 65 %; new pits, many': 'Gleichmäßiger grüner Film, etwa 65 %; neue Grübchen, viele',
  'H Lower arcs, spray band': 'H Untere Bögen, Gischtband',
  'Green line at the water, about 70 %; new pits; salts to be drawn out first':
    'Blaugrüne Linie am Wasser, etwa 70 %; neue Grübchen; zuerst sind Salze zu entziehen',
  'I Base ring': 'I Sockelring',
  'Patineur, on site throughout': 'Patineurin, die ganze Zeit vor Ort',
  'before the round of May': 'vor dem Rundgang im Mai',
  'Condition report: SW-02 Half-Tide Stair': 'Zustandsbericht: SW-02 Treppe bei halber Tide',
  'three bidders, with the request': 'drei Bieter, mit der Anfrage',
  'Conservator of metals': 'Metallrestaurator',
  'Workshop inland (invented)': 'Werkstatt im Binnenland (erfunden)',
  'Priced from the photographs.': 'Nach den Fotos bepreist.',
  'Studio of the headland (invented)': 'Atelier an der Landspitze (erfunden)',
  'the quay': 'Kai',
  'the basin edge': 'Beckenrand',
  'the path': 'Weg',
  'the arcade': 'Arkade',
  'the bench front': 'Vorderseite der Bank',
  'the south lawn': 'Südrasen',
  'Arts grant': 'Kunstförderung',
  'Spring appeal': 'Spendenaufruf im Frühjahr',
  'Marker on the bench seat, a hand wide. Left as it is.': 'Filzstift auf der Sitzfläche, eine Handbreit. So belassen.',
  'Rope off the bench of SW-05': 'Seil von der Bank von SW-05',
  'Made up for this demo': 'Für dieses Beispiel erdacht',
};
