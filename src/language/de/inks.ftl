# Die Blätter der Druckfarben: Farbfelder mit dem, was jedes Auge davon sieht, und die Spektren dahinter.

medium-unsaid = ein idealer Bildschirm, da nichts gesagt ist
medium-screen = Bildschirm { $name }
medium-print = Druck { $solids } unter Lampe { $lamp }
inks-percent = { $n } %
inks-lead-white = { $left } links, { $right } rechts; weißer Grund; { $medium }
inks-lead-black = { $left } links, { $right } rechts; schwarzer Grund; { $medium }

inks-title = Druckfarben der Ausgabe { $id }
inks-description = Felder der Druckfarben und wie hell jedes Auge sie sieht. Dazu Kontrast und Geisterbild, die zu erwarten sind.
inks-marks-picture = Ein flacher Balken für das linke Auge, ein Keil für das rechte. Zwei Ringe, die sich kreuzen, einer für jedes Auge.
inks-ground = Grund
inks-left-mark = Linkes Zeichen
inks-right-mark = Rechtes Zeichen
inks-overlap = Über­lappung
inks-words = Text
inks-on-page = Auf der Seite
inks-to-left = Für das linke Auge
inks-to-right = Für das rechte Auge
inks-swatches-note = Grautöne und Prozente: wie hell jedes Auge eine Farbe sieht, gezählt vom Weiß hinter dem eigenen Filter.
inks-swatches-picture = Felder der Druckfarben: { $codes }.

inks-expect = Was zu erwarten ist
inks-eye = Auge
inks-contrast = Kontrast
inks-ghost = Geister­bild
inks-crossing = Über­lappung
inks-brightness = Helligkeit
inks-eye-left = Links
inks-eye-right = Rechts
inks-expect-note = Kontrast: wie weit sich das eigene Zeichen vom Grund abhebt. Geisterbild: wie weit das Zeichen des anderen Auges es tut, als Anteil des eigenen. Überlappung: wie weit sich eine Kreuzung vom eigenen Zeichen abhebt. Helligkeit: das Hellste, was dieses Auge sieht, vom Weiß der Seite ohne Filter.

inks-go = Weiter
inks-fix = Beheben
inks-ghost-fine = Das Geisterbild bleibt bei höchstens 2 %.
inks-ghost-faint = Das Geisterbild liegt über 2 %, aber nicht über 5 %: Es kann auffallen.
inks-ghost-strong = Das Geisterbild liegt über 5 %. Tönen Sie den Grund oder versuchen Sie eine andere Brille, anderes Papier oder Licht. Sehen Sie dann die Geisterbild-Seite an.
inks-ghost-refused = Das Geisterbild liegt über 15 %. Diese Brille trennt die beiden Zeichen auf diesem Medium nicht.
inks-imbalance = Die Helligkeit der beiden Augen verhält sich wie { $n } zu 1.
inks-imbalance-more = Die Helligkeit der beiden Augen verhält sich wie { $n } zu 1. Ziel sind höchstens 2 zu 1.
inks-text-contrast = Der Text hebt sich { $n } zu 1 vom Grund ab.

inks-traded = Was eingetauscht wurde
inks-traded-nothing = Nichts: Das sind die vollen Druckfarben der Brille.
inks-role-left = die linke Druckfarbe
inks-role-right = die rechte Druckfarbe
inks-role-overlap = die Druckfarbe der Überlappung
inks-role-ground = die Druckfarbe des Grunds
inks-traded-tint = der Grund ist auf { $ground } getönt: links { $left } von Weiß, rechts { $right }; das Geisterbild geht von { $before } auf { $after }
inks-traded-ink = { $ink } ist nicht das volle { $full }: Ihr Signal ist { $signal } statt { $whole }
inks-traded-pinned = { $ink } ist vom Autor gewählt; berechnet wäre sie { $solved }, mit einem Geisterbild von { $ghost } statt { $pinned }
inks-traded-ghost = das Geisterbild ist links { $left } und rechts { $right }, Grenze { $limit }
inks-traded-ghost-tinted = das Geisterbild ist links { $left } und rechts { $right }, Grenze { $limit }; ein getönter Grund brächte es auf { $tinted }

# Spektren.

spectra-title = Licht, Filter und was durchkommt
spectra-description = Vier Kurvenbilder über der Wellenlänge: das Licht, die Filter und was zu jedem Auge durchkommt.
spectra-red = rot
spectra-green = grün
spectra-blue = blau
spectra-ground = Grund
spectra-left-mark = linkes Zeichen
spectra-right-mark = rechtes Zeichen
spectra-page-sends = Was die Seite sendet
spectra-screen-sends = Was der Bildschirm sendet
spectra-peak = Licht, Anteil der Spitze
spectra-filters = Was die Filter durchlassen
spectra-share = Anteil, der durchkommt
spectra-left-filter = links: { $filter }
spectra-right-filter = rechts: { $filter }
spectra-passes-left = Was zum linken Auge durchkommt
spectra-passes-right = Was zum rechten Auge durchkommt
spectra-scale = Licht, gleicher Maßstab
spectra-light = { $light } { $share } %
spectra-note = Prozente: wie hell dieses Licht für das Auge ist, vom Weiß der Seite ohne Filter.
spectra-note-leak = Prozente: wie hell dieses Licht für das Auge ist, vom Weiß der Seite ohne Filter. Ein Auge, von dem nur das Leck bekannt ist, hat die Kurve eines idealen Filters. Seine Prozente zählen das Leck mit.
spectra-wavelength = Wellenlänge, nm
spectra-picture = { $title }, über der Wellenlänge von 380 bis 780 nm. Kurven: { $curves }.
