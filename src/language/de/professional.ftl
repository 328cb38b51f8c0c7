# Die Blätter für die Fachperson: Fachwörter sind hier willkommen.

professional-title = Für Ihre Fachperson für Augen
professional-later = Für Ihre Fachperson, Blatt { $number }
professional-description = Was das Buch ist, wofür es berechnet wurde und die Zahlen jeder Übungsseite.
professional-lead = Bitte zeigen Sie diese Blätter der Person, die Ihre Augen betreut.

professional-what = Was dieses Buch ist
professional-what-text = Übungsseiten für zwei Augen durch rote und cyanfarbene Filter, für Erwachsene, die allein üben. Sie sind kein Test und keine Behandlung; sie messen nichts und versprechen nichts. Sie wurden aus den Zahlen unten berechnet und aus nichts anderem. Ihr Rat geht allem vor, was hier steht.
professional-please = Worum wir Sie bitten
professional-please-text = Ist Übung dieser Art für diese Person sicher? Welche Seiten, aus welcher Entfernung, wie lange? Gibt es einen Grund, eine Suppression nicht zu schwächen? Bitte schreiben Sie es neben die Tabelle und streichen Sie, was die Person lassen soll.
professional-viewer = Wofür es berechnet wurde
professional-findings = Was sonst von den Augen bekannt ist
professional-glasses = Brille und Druckfarben
professional-columns = Was die Tabelle sagt
professional-columns-text = Grad: wie schwer eine Seite neben den anderen ist, 1 bis 10; über die Person sagt er nichts. Anforderung: gegenüber der Seite, in Prismendioptrien; nach vorn ist Basis außen, nach hinten ist Basis innen. Disparität: genauer Unterschied der Vergenz gegenüber der Seite; + ist gekreuzt. Ort: von den Augen aus, über alle Pupillendistanzen. Größe: des kleinsten und des größten Dings, das angesehen wird. Hilfe: 0 sind Punkte allein, 3 ein Umriss und mehr. Teile: nur vom linken Auge, nur vom rechten Auge, von beiden gesehen. Balance: was das stärkere Auge behält.
professional-columns-base = Anforderung und Disparität zählen ab der Grundverschiebung; ein Ort wird nicht genannt, weil die Augen gedreht stehen.

# Namen der Angaben und was daneben steht.

professional-head-what = Was
professional-head-value = Wert
professional-unknown = nicht bekannt; nichts wird geschätzt
professional-reader = Person
professional-distance = Augen bis Seite
professional-ipd = Pupillen­distanz
professional-ipd-value = { $ipd }; bei Lesenden { $low } bis { $high }
professional-reserve-toward = Fusionsbreite Basis außen
professional-reserve-away = Fusionsbreite Basis innen
professional-blur = Nebelpunkt { $n }
professional-break = Abreißpunkt { $n }
professional-recovery = Wieder­vereinigung { $n }
professional-reserve = { $amounts }; { $source }
professional-source-norm = veröffentlichte Mittelwerte einer Gruppe, { $norm }
professional-source-found = wie bei der Person gefunden
professional-zone = Höchstens verlangt
professional-zone-value = { $from } ({ $first }) bis { $to } ({ $second }): { $which }
professional-zone-whole = die ganzen Fusionsbreiten
professional-zone-everyday = der alltägliche Teil
professional-bound-percival = Percival
professional-bound-sheard = Sheard
professional-bound-reserve = Fusionsbreite
professional-phoria = Heterophorie
professional-phoria-eso = { $pd } Eso
professional-phoria-exo = { $pd } Exo
professional-near-point = Konvergenz­nahpunkt
professional-balance = Balance
professional-base = Grund­verschiebung
professional-base-none = keine
professional-base-out = { $pd } nach vorn (Basis außen)
professional-base-in = { $pd } nach hinten (Basis innen)
professional-base-right = { $pd } rechtes Bild höher
professional-base-left = { $pd } linkes Bild höher
professional-framed = Gerahmte Seiten
professional-decided = Bereich und Grund­verschiebung
professional-filters = Brille
professional-edition = Ausgabe
professional-edition-white = { $id }, { $page }, weißer Grund
professional-edition-black = { $id }, { $page }, schwarzer Grund
professional-seen-on = Gesehen auf
professional-inks = Druckfarben
professional-inks-value = linkes Auge { $left }, rechtes Auge { $right }
professional-ghost = Erwartetes Geisterbild
professional-ghost-value = linkes Auge { $left } %, rechtes Auge { $right } %
professional-ghost-ideal = linkes Auge { $left } %, rechtes Auge { $right } %, wenn Bildschirm und Filter ideal wären

# Die Tabelle der Seiten.

professional-page = Seite
professional-kind = Art
professional-level = Stufe
professional-grade = Grad
professional-demand = Anforderung, pdpt
professional-disparity = Disparität, Winkelsek.
professional-place = Ort, cm
professional-size = Größe, Grad
professional-cue = Hilfe
professional-parts = Teile
professional-range = { $from } bis { $to }
professional-none = –
professional-flat = Seite
professional-toward = { $n } vorn
professional-away = { $n } hinten
professional-very-far = sehr weit
professional-by-kind = durch Art
