/** Where facts come from: by the English words they stand for, for rows of the engine keep one text. */
export const sourcesSaid: Readonly<Record<string, string>> = {
  'Chosen for this project': 'Für dieses Projekt gewählt',
  'Procedure: Benjamini & Hochberg 1995, J. R. Statist. Soc. B 57:289-300; the level of 10 % is chosen for this project':
    'Verfahren: Benjamini & Hochberg 1995, J. R. Statist. Soc. B 57:289-300; die Schwelle von 10 % ist für dieses Projekt gewählt',
  'Chosen for this project; small occurrences are overlooked: Morrison et al. 2020, J. Plant Ecology 13:641':
    'Für dieses Projekt gewählt; kleine Vorkommen werden übersehen: Morrison u. a. 2020, J. Plant Ecology 13:641',
  'Chosen for this project: the ladder step "<1"': 'Für dieses Projekt gewählt: die Stufe „<1“ der Leiter',
  'CIEDE2000 with factors of 1: ISO/CIE 11664-6; its check values: Sharma, Wu and Dalal 2005, Color Research and Application 30(1):21-30.':
    'CIEDE2000 mit Faktoren von 1: ISO/CIE 11664-6; Prüfwerte: Sharma, Wu und Dalal 2005, Color Research and Application 30(1):21-30.',
  'World Bank, Standard Request for Proposals, Selection of Consultants, quality- and cost-based selection: Sf = 100 x Fm / F, Fm the lowest price and F the price of the bid.':
    'Weltbank, Standard Request for Proposals, Selection of Consultants, Auswahl nach Qualität und Kosten: Sf = 100 x Fm / F, Fm der niedrigste Preis und F der Preis des Angebots.',
  'Our own choice.': 'Unsere eigene Wahl.',
  'Common practice, no source.': 'Gängige Praxis, ohne Quelle.',
  'Our own choice: patinated bronze is uneven, and the spot is never found again to the millimetre.':
    'Unsere eigene Wahl: Patinierte Bronze ist ungleichmäßig, und die Stelle wird nie auf den Millimeter wiedergefunden.',
  'Rule of thumb of colour measurement.': 'Faustregel der Farbmessung.',
  'CIE 142-2001: CIEDE2000 was fitted to small differences, up to 5 units of CIELAB.':
    'CIE 142-2001: CIEDE2000 wurde an kleine Unterschiede angepasst, bis 5 Einheiten CIELAB.',
  'Guidelines for the Technical Examination of Bronze Sculpture, II.2 on photography: light on each facet differs from that on a card, and bronze changes its colour with the angle.':
    'Guidelines for the Technical Examination of Bronze Sculpture, II.2 zur Fotografie: Das Licht auf jeder Facette ist ein anderes als auf einer Karte, und Bronze ändert ihre Farbe mit dem Winkel.',
  '95 % point of the normal distribution': '95-%-Punkt der Normalverteilung',
  '97.5 % point of the normal distribution': '97,5-%-Punkt der Normalverteilung',
  'Chosen inside the published error between observers: Sykes, Horrill and Mountford 1983 (abstract).':
    'Innerhalb der veröffentlichten Unsicherheit zwischen Beobachtern gewählt: Sykes, Horrill und Mountford 1983 (Kurzfassung).',
  'Chosen inside the published error of observers drawn at random, 10 to 20 points at 90 %: Sykes, Horrill and Mountford 1983 (abstract).':
    'Innerhalb der veröffentlichten Unsicherheit zufällig gewählter Beobachter, 10 bis 20 Prozentpunkte bei 90 %: Sykes, Horrill und Mountford 1983 (Kurzfassung).',
  'Our own choice: unclear is what the app assumes, and at 3 % two zones in three of a well-kept garden came out alike.':
    'Unsere eigene Wahl: „Unklar“ nimmt die App von sich aus an, und bei 3 % fielen zwei von drei Zonen eines gut gepflegten Gartens gleich aus.',
  'Chosen; shapes and tape follow a form only so far.': 'Gewählt; Körper und Maßband folgen einer Form nur so weit.',
  'Closed forms of elementary geometry.': 'Geschlossene Formeln der elementaren Geometrie.',
  'Chosen inside the published error of one observer repeating, 5 to 15 points of cover at 90 %: Sykes, Horrill and Mountford 1983, J. Ecology 71:437-450 (abstract).':
    'Innerhalb der veröffentlichten Unsicherheit eines wiederholenden Beobachters gewählt, 5 bis 15 Prozentpunkte Bedeckung bei 90 %: Sykes, Horrill und Mountford 1983, J. Ecology 71:437-450 (Kurzfassung).',
  'Two persons differ by the difference of their biases, half of its variance each.':
    'Zwei Personen unterscheiden sich um die Differenz ihrer Neigungen; auf jede entfällt die Hälfte der Varianz.',
  '365.25 / 12': '365,25 / 12',
  'A look and a photo one to two weeks after the work: common practice, no source':
    'Ein Kontrollblick und ein Foto ein bis zwei Wochen nach der Arbeit: gängige Praxis, ohne Quelle',
  'Yearly care is the usual least: common practice, no source; the cap is our own choice':
    'Jährliche Pflege ist das übliche Mindestmaß: gängige Praxis, ohne Quelle; die Obergrenze ist unsere eigene Wahl',
  'A second visit half a year after the first: common practice, no source; the cap is our own choice':
    'Ein zweiter Besuch ein halbes Jahr nach dem ersten: gängige Praxis, ohne Quelle; die Obergrenze ist unsere eigene Wahl',
  'Advice on spacing in point-intercept counts of plants, as told in field manuals.':
    'Rat zum Abstand bei Punktzählungen von Pflanzen, wie Feldhandbücher ihn geben.',
  'A flat face looked at squarely.': 'Eine ebene Fläche, senkrecht betrachtet.',
  'Chosen for gentle curves; half a cylinder seen from the front comes to 1.57.':
    'Für sanfte Wölbungen gewählt; ein halber Zylinder von vorn ergibt 1,57.',
  'Chosen for deep folds; common practice, no source.': 'Für tiefe Falten gewählt; gängige Praxis, ohne Quelle.',
  'ISO 9223:2012 Table 2, read in a public copy of DIN EN ISO 9223:2012-05':
    'ISO 9223:2012 Tabelle 2, gelesen in einem öffentlichen Exemplar der DIN EN ISO 9223:2012-05',
  'ISO 9223:2012 Tables B.3 and B.4, seen in a public implementation; the limits of 1992, still in handbooks, differ':
    'ISO 9223:2012 Tabellen B.3 und B.4, gesehen in einer öffentlichen Umsetzung; die Grenzen von 1992, noch in Handbüchern, weichen ab',
  'ISO 9223:2012 Table 3, seen in a public implementation':
    'ISO 9223:2012 Tabelle 3, gesehen in einer öffentlichen Umsetzung',
  'ISO 9223:2012, dose-response function of copper; coefficients from memory. ISO 9224:2012 Table 3: exponents, seen':
    'ISO 9223:2012, Dosis-Wirkungs-Funktion für Kupfer; Koeffizienten aus dem Gedächtnis. ISO 9224:2012 Tabelle 3: Exponenten, gesehen',
  'ISO 9223:2012, dose-response function of carbon steel, coefficients seen in a public implementation; ISO 9224:2012 Table 3, seen':
    'ISO 9223:2012, Dosis-Wirkungs-Funktion für unlegierten Stahl, Koeffizienten gesehen in einer öffentlichen Umsetzung; ISO 9224:2012 Tabelle 3, gesehen',
  'ISO 9223:2012, dose-response function of zinc; coefficients from memory. ISO 9224:2012 Table 3: exponents, seen':
    'ISO 9223:2012, Dosis-Wirkungs-Funktion für Zink; Koeffizienten aus dem Gedächtnis. ISO 9224:2012 Tabelle 3: Exponenten, gesehen',
  'ISO 9224:2012: attack up to 20 years as a power of time, seen in the abstract; the straight line beyond from memory':
    'ISO 9224:2012: Angriff bis 20 Jahre als Potenz der Zeit, gesehen in der Kurzfassung; die Gerade danach aus dem Gedächtnis',
  'ISO 9223:2012 Annex A: that the uncertainty is log-normal, seen in an excerpt; the level for copper, steel and zinc from memory':
    'ISO 9223:2012 Anhang A: dass die Unsicherheit lognormal ist, gesehen in einem Auszug; ihre Höhe für Kupfer, Stahl und Zink aus dem Gedächtnis',
  'Quarter of the working length: 29 CFR 1926.1053(b)(5)(i), read as quoted. Three points of contact: from memory.':
    'Ein Viertel der Arbeitslänge: 29 CFR 1926.1053(b)(5)(i), im Zitat gelesen. Drei Haltepunkte: aus dem Gedächtnis.',
  '29 CFR 1926.451(f)(3), read as quoted.': '29 CFR 1926.451(f)(3), im Zitat gelesen.',
  '35 ft and a watch of at least 30 minutes: 29 CFR 1910.252(a)(2), read as quoted; 60 minutes in NFPA 51B 2019, from memory.':
    '35 ft und eine Wache von mindestens 30 Minuten: 29 CFR 1910.252(a)(2), im Zitat gelesen; 60 Minuten in NFPA 51B 2019, aus dem Gedächtnis.',
  'After the classes of EN 16096:2012, in our own words; its class list recalled, its scope read on catalogue pages. The thresholds that propose a class are ours.':
    'Nach den Klassen der EN 16096:2012, in eigenen Worten; ihre Klassenliste aus dem Gedächtnis, ihr Anwendungsbereich auf Katalogseiten gelesen. Die Schwellen, die eine Klasse vorschlagen, sind unsere.',
  'Guidance for owners of outdoor sculpture and model requests for treatment, from memory.':
    'Ratgeber für Eigentümer von Außenskulpturen und Musteranfragen für Behandlungen, aus dem Gedächtnis.',
  'American Institute for Conservation, Code of Ethics and Guidelines for Practice, guidelines 24 to 28 on documentation and the treatment plan, from memory.':
    'American Institute for Conservation, Code of Ethics and Guidelines for Practice, Leitlinien 24 bis 28 zu Dokumentation und Behandlungsplan, aus dem Gedächtnis.',
  'Twelve steps, fine at the low end as in the grading of rust on painted steel; limits our own: half way to the next step, for the eye goes to the nearest one. Step "<1" ends at 1 %, as it says.':
    'Zwölf Stufen, fein am unteren Ende wie bei den Rostgraden beschichteten Stahls; die Grenzen unsere eigenen: auf halbem Weg zur nächsten Stufe, denn das Auge geht zur nächstliegenden. Stufe „<1“ endet bei 1 %, wie sie sagt.',
  'Wilson score interval of the dots counted: Newcombe 1998, Stat. Med. 17:857-872; its ends pushed out at one to three hits: Brown, Cai and DasGupta 2001, Statist. Sci. 16:101-133 (from memory).':
    'Wilson-Intervall der gezählten Punkte: Newcombe 1998, Stat. Med. 17:857-872; die Enden bei ein bis drei Treffern erweitert: Brown, Cai und DasGupta 2001, Statist. Sci. 16:101-133 (aus dem Gedächtnis).',
  'Half of the error by eye: tracing was closer and more repeatable in Dethier and others 1993, Mar. Ecol. Prog. Ser. 96:93-100 (abstract).':
    'Die Hälfte der Unsicherheit nach Augenmaß: Umfahren lag näher und war besser wiederholbar bei Dethier u. a. 1993, Mar. Ecol. Prog. Ser. 96:93-100 (Kurzfassung).',
  'What the mask and its check dots report, slips allowed for.':
    'Was die Maske und ihre Prüfpunkte ergeben, Versehen eingerechnet.',
  'Data after EN 572 on the page of a glass maker.': 'Daten nach EN 572 auf der Seite eines Glasherstellers.',
  'A data sheet, read.': 'Ein Datenblatt, gelesen.',
  'The strength of a weathered edge is an assumption of ours.':
    'Die Festigkeit einer verwitterten Kante ist unsere Annahme.',
  'Stresses left from casting are not known. Common practice, no source.':
    'Vom Guss verbliebene Spannungen sind nicht bekannt. Gängige Praxis, ohne Quelle.',
  'Pages of the glass industry; three agree.': 'Seiten der Glasindustrie; drei stimmen überein.',
  'Common practice, no source; distances are a beginning of our own, to be agreed on the spot.':
    'Gängige Praxis, ohne Quelle; die Abstände sind ein eigener Anfang, vor Ort zu vereinbaren.',
  'Handbook figures.': 'Handbuchwerte.',
  'Sellers’ figures.': 'Angaben von Händlern.',
  'Our own assumption: most of an open flame warms the air.':
    'Unsere eigene Annahme: Der größte Teil einer offenen Flamme erwärmt die Luft.',
  '29 CFR 1926.1053(b)(5)(i), read as quoted.': '29 CFR 1926.1053(b)(5)(i), im Zitat gelesen.',
  '29 CFR 1926.1053(b)(1), read as quoted.': '29 CFR 1926.1053(b)(1), im Zitat gelesen.',
  '29 CFR 1926.451(g)(1), read as quoted.': '29 CFR 1926.451(g)(1), im Zitat gelesen.',
  '29 CFR 1926.451(a)(1), read as quoted.': '29 CFR 1926.451(a)(1), im Zitat gelesen.',
  'NIOSH document, copy read; the 13 ppm of the pocket guide from memory.':
    'Dokument des NIOSH, Exemplar gelesen; die 13 ppm des Taschenführers aus dem Gedächtnis.',
  'Pages of CDC/NIOSH.': 'Seiten von CDC/NIOSH.',
  'NIOSH pocket guide.': 'Taschenführer des NIOSH.',
  '29 CFR 1926.1153, read; the last two from memory.':
    '29 CFR 1926.1153, gelesen; die letzten beiden aus dem Gedächtnis.',
  '35 ft (10.7 m): 29 CFR 1910.252(a)(2); NFPA 51B 2003; 29 CFR 1915.504, where 10.7 m is printed. Read on their pages.':
    '35 ft (10,7 m): 29 CFR 1910.252(a)(2); NFPA 51B 2003; 29 CFR 1915.504, wo 10,7 m gedruckt steht. Auf ihren Seiten gelesen.',
  '29 CFR 1910.252(a)(2)(iii); 29 CFR 1915.504. Read on their pages.':
    '29 CFR 1910.252(a)(2)(iii); 29 CFR 1915.504. Auf ihren Seiten gelesen.',
  'NFPA 51B, 2019 edition on.': 'NFPA 51B, ab Ausgabe 2019.',
  'Page of a foundry, 450 to 475 °F.': 'Seite einer Gießerei, 450 bis 475 °F.',
  'Page of a gallery, about 350 °F.': 'Seite einer Galerie, etwa 350 °F.',
  'Usually said, 200 to 400 °F.': 'Gewöhnlich genannt, 200 bis 400 °F.',
  'Ten degrees under the limit: common practice, no source. A quarter of a small limit, ten minutes, thirty degrees, six in the morning: our own choice.':
    'Zehn Grad unter der Grenze: gängige Praxis, ohne Quelle. Ein Viertel einer kleinen Grenze, zehn Minuten, dreißig Grad, sechs Uhr früh: unsere eigene Wahl.',
  'Handbook figure.': 'Handbuchwert.',
  'Hazard: our own judgement, no published weights exist. Behaviour: the five-stage course of outdoor bronze, US General Services Administration bronze standard.':
    'Gefährdung: unser eigenes Urteil, veröffentlichte Gewichte gibt es nicht. Verhalten: der fünfstufige Verlauf bei Bronze im Freien, Bronzestandard der US General Services Administration.',
  'Hazard: our own judgement, no published weights exist. Behaviour: common practice, no source.':
    'Gefährdung: unser eigenes Urteil, veröffentlichte Gewichte gibt es nicht. Verhalten: gängige Praxis, ohne Quelle.',
  'Hazard: our own judgement, no published weights exist. Behaviour: soluble copper compounds move with rain; Selwyn and others 1996, Studies in Conservation 41 (abstract).':
    'Gefährdung: unser eigenes Urteil, veröffentlichte Gewichte gibt es nicht. Verhalten: lösliche Kupferverbindungen wandern mit dem Regen; Selwyn u. a. 1996, Studies in Conservation 41 (Kurzfassung).',
  'Hazard: our own judgement, no published weights exist. Behaviour: chloride corrosion is told by a chemical spot test, not by eye; Guidelines for the Technical Examination of Bronze Sculpture, Getty 2025.':
    'Gefährdung: unser eigenes Urteil, veröffentlichte Gewichte gibt es nicht. Verhalten: Chloridkorrosion zeigt eine chemische Tüpfelprobe, nicht das Auge; Guidelines for the Technical Examination of Bronze Sculpture, Getty 2025.',
  'Hazard: our own judgement, no published weights exist. Behaviour: growing whitish spots tell of the core moving; US General Services Administration bronze standard.':
    'Gefährdung: unser eigenes Urteil, veröffentlichte Gewichte gibt es nicht. Verhalten: wachsende weißliche Flecken sprechen für Bewegung im Gusskern; Bronzestandard der US General Services Administration.',
  'Hazard: our own judgement, no published weights exist. Behaviour: casting faults are stable unless they hold water or let the core leak; terms after Getty 2025, tables 11 and 12.':
    'Gefährdung: unser eigenes Urteil, veröffentlichte Gewichte gibt es nicht. Verhalten: Gussfehler ruhen, solange sie kein Wasser halten und der Gusskern nicht ausläuft; Begriffe nach Getty 2025, Tabellen 11 und 12.',
  'US General Services Administration procedures for washing and cold waxing bronze, read on its pages.':
    'Verfahren der US General Services Administration zum Waschen und Kaltwachsen von Bronze, auf ihren Seiten gelesen.',
  'Conservation practice: about 0.5 to 1 % by volume, pH 6 to 8.':
    'Restauratorische Praxis: etwa 0,5 bis 1 % nach Volumen, pH 6 bis 8.',
  'Wax 6 to 24 months on outdoor metal, from reviews of coatings: from memory.':
    'Wachs 6 bis 24 Monate auf Metall im Freien, aus Übersichten zu Beschichtungen: aus dem Gedächtnis.',
  'Waxes and lacquer: US General Services Administration procedures for bronze, read on its pages.':
    'Wachse und Lack: Verfahren der US General Services Administration für Bronze, auf ihren Seiten gelesen.',
  'ASTM D610-08(2012), table 1, read on a page and agreeing with a second. Stains from rust do not count as rust there.':
    'ASTM D610-08(2012), Tabelle 1, auf einer Seite gelesen, mit einer zweiten übereinstimmend. Verfärbungen durch Rost zählen dort nicht als Rost.',
  'ISO 4628-3:2016, values read on a coatings reference page that sets it beside ASTM D610.':
    'ISO 4628-3:2016, Werte gelesen auf einer Nachschlageseite für Beschichtungen, die sie neben ASTM D610 stellt.',
  'Our thresholds, not a standard’s: no published index for outdoor bronze exists.':
    'Unsere Schwellen, nicht die einer Norm: Einen veröffentlichten Index für Bronze im Freien gibt es nicht.',
  'Hot and cold wax, wash, lacquer: US General Services Administration procedures for bronze, read on its pages. The rest: common practice.':
    'Heiß- und Kaltwachsen, Waschen, Lack: Verfahren der US General Services Administration für Bronze, auf ihren Seiten gelesen. Das Übrige: gängige Praxis.',
  'Coating practice told with ISO 8502-4 and ISO 12944-7, read on trade pages. ISO 8502-4 itself reckons how likely condensation is; the 3 K rule is practice built on it.':
    'Beschichtungspraxis, mit ISO 8502-4 und ISO 12944-7 überliefert, auf Fachseiten gelesen. ISO 8502-4 selbst schätzt, wie wahrscheinlich Kondensation ist; die 3-K-Regel ist darauf gebaute Praxis.',
  'Window of cold waxing, conservation practice.': 'Temperaturbereich für das Kaltwachsen, restauratorische Praxis.',
  'Our own assumption of what instruments held in the hand err by; the sheet of yours may say better.':
    'Unsere eigene Annahme, wie weit Handgeräte danebenliegen; das Datenblatt Ihres Geräts sagt es vielleicht besser.',
  'Our own weights; no published ones exist for outdoor bronze.':
    'Unsere eigenen Gewichte; für Bronze im Freien sind keine veröffentlicht.',
  'This project’s own reading of common practice: what each work is done for. How well it does it is not in it.':
    'Unsere eigene Lesart gängiger Praxis: wofür jede Arbeit getan wird. Wie gut sie gelingt, steckt nicht darin.',
  'Of two prices each is as odd as the other.': 'Von zwei Preisen ist jeder so auffällig wie der andere.',
  'Twice a year is asked for, once a year is the usual least. Common practice, no source.':
    'Zweimal im Jahr wird verlangt, einmal im Jahr ist das übliche Mindestmaß. Gängige Praxis, ohne Quelle.',
  'Chosen for this project, until the record tells her own pace':
    'Für dieses Projekt gewählt, bis die Einträge das eigene Tempo zeigen',
  'From one estimate for a small work of two figures, about 3 hours to wash and wax, as quoted; taken as 1 m2 an hour':
    'Aus einer Schätzung für ein kleines Werk mit zwei Figuren, etwa 3 Stunden zum Waschen und Wachsen, wie zitiert; als 1 m² je Stunde genommen',
};
