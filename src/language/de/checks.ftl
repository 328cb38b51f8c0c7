# Die Prüfseiten: Brille, Geisterbild und Größe.

# What every check ends in

check-go = Weiter
check-fix = Beheben
check-ask = Fragen

# Glasses

glasses-title = Prüfen Sie Ihre Brille
glasses-lead = Setzen Sie die Brille auf: { $glasses }. Sehen Sie die drei Formen an.
glasses-picture = Linkes Auge: ein flacher Balken und ein Ring. Rechtes Auge: ein Ring und ein Keil. Beide Augen zusammen: Balken, Ring und Keil.
glasses-bar = Balken: linkes Auge
glasses-ring = Ring: beide Augen
glasses-wedge = Keil: rechtes Auge
glasses-should = Was Sie sehen sollten
glasses-close = Schließen Sie immer nur ein Auge; drücken Sie nicht darauf.
glasses-with = Schauen Sie mit
glasses-see = Sie sollten sehen
glasses-left-alone = Linkes Auge allein
glasses-left-alone-see = Balken und Ring, kein Keil
glasses-right-alone = Rechtes Auge allein
glasses-right-alone-see = Ring und Keil, kein Balken
glasses-both = Beide Augen
glasses-both-see = Balken, Ring und Keil
glasses-go = Alles wie in der Tabelle, und die Farben eine halbe Minute lang angenehm? Gehen Sie zur nächsten Seite.
glasses-fix-swapped = Balken und Keil vertauscht? Die Brille ist falsch herum. Richtig ist: { $left } vor dem linken Auge, { $right } vor dem rechten.
glasses-fix-missing = Fehlt eine Form für ihr eigenes Auge? Putzen Sie die Brille, machen Sie mehr Licht, schauen Sie noch einmal.
glasses-fix-comes = Kommt und geht eine Form bei zwei offenen Augen? Blinzeln Sie, warten Sie etwas, schauen Sie auf den Ring.
glasses-fix-ghost = Eine blasse Spur der Form des anderen Auges? Das ist ein Geisterbild: Die Geisterbild-Seite misst es.
glasses-ask = Fehlt immer noch eine Form, oder stören die Farben Sie? Nehmen Sie die Brille ab und machen Sie nicht weiter. Fragen Sie Ihre Fachperson für Augen. Das kommt oft vor und ist nicht Ihre Schuld.

# Ghost

ghost-title = Suchen Sie ein Geisterbild
ghost-lead = Ein Geisterbild ist eine Spur vom Zeichen des anderen Auges. Es zeigt, wo Filter, Farben und Licht nicht zusammenpassen.
ghost-lead-off-base = Ein Geisterbild ist eine Spur vom Zeichen des anderen Auges. Es zeigt, wo Filter, Farben und Licht nicht zusammenpassen. Diese Seite hat keine Grundverschiebung: Es schaut immer nur ein Auge.
ghost-description = Nummerierte Felder für jedes Auge: Sie zeigen, wie viel vom Zeichen des anderen Auges zu sehen ist.
ghost-left-open = Linkes Auge offen, rechtes geschlossen
ghost-right-open = Rechtes Auge offen, linkes geschlossen
ghost-left-picture = Nummerierte Felder. Auf jedem steht ein Keil für das rechte Auge. Für das linke Auge verblasst er auf einem davon.
ghost-right-picture = Nummerierte Felder. Auf jedem steht ein Balken für das linke Auge. Für das rechte Auge verblasst er auf einem davon.
ghost-number = Nummer
ghost-left-percent = Linkes Auge, %
ghost-right-percent = Rechtes Auge, %
ghost-look = So schauen Sie
ghost-look-on = Brille auf: { $glasses }. Nehmen Sie das Licht, in dem Sie üben.
ghost-look-left = Schließen Sie das rechte Auge. Auf welchem Feld der Reihe für das linke Auge verblasst der Keil am meisten? Notieren Sie die Nummer.
ghost-look-right = Schließen Sie das linke Auge. Finden Sie die Nummer für die Balken in der anderen Reihe. Zwischen zwei Nummern gilt die höhere.
ghost-hint-white = Durch seinen Filter sieht das offene Auge jedes Feld als Grund, der etwas dunkler ist als der davor. Bei kleinen Nummern ist das Zeichen dunkler als sein Feld, bei großen heller; dazwischen versinkt es.
ghost-hint-black = Durch seinen Filter sieht das offene Auge jedes Feld als Grund, der etwas heller ist als der davor. Bei kleinen Nummern ist das Zeichen heller als sein Feld, bei großen dunkler; dazwischen versinkt es.
ghost-range = { $first } bis { $last }
ghost-go-little = Ihre Nummer ist { $left } für das linke Auge und { $right } für das rechte? Diese Seiten zeigen Ihnen kaum oder kein Geisterbild. Gehen Sie zur nächsten Seite.
ghost-go-weak = Ihre Nummer ist { $left } für das linke Auge und { $right } für das rechte? Diese Seiten zeigen Ihnen höchstens ein schwaches Geisterbild. Gehen Sie zur nächsten Seite.
ghost-go-none = Bei keiner Nummer ist das Geisterbild auf diesen Seiten schwach: Wer sie gemacht hat, nahm ein starkes in Kauf. Siehe unten.
ghost-fix = Eine andere Nummer: Ein Geisterbild ist möglich.
ghost-fix-print = Drucken Sie neu: in Farbe, in bester Qualität, auf mattem Papier.
ghost-fix-lamp = Nehmen Sie eine andere Lampe.
ghost-fix-colours = Schalten Sie Nachtfarben aus, senken Sie die Helligkeit.
ghost-fix-wipe = Wischen Sie Bildschirm und Filter ab.
ghost-fix-straight = Schauen Sie gerade auf den Bildschirm.
ghost-fix-again = Schauen Sie dann noch einmal.
ghost-ask = Immer noch eine andere Nummer, oder verblasst das Zeichen auf keinem Feld? Üben Sie nicht mit diesen Seiten. Bitten Sie die Person, die sie macht, um Seiten mit Farben für Ihre Nummern.
ghost-maker = Für die Person, die die Seiten macht
ghost-holds-print = Die Felder sind gedruckte Farbtöne: Die Nummern gelten für dieses Papier, diesen Drucker und diese Lampe. Notieren Sie alle drei.
ghost-holds-screen = Die Nummern gelten für diesen Bildschirm bei dieser Helligkeit.
ghost-write = Schreiben Sie die Prozente unter [glasses] in set.toml und erzeugen Sie alles neu. Für links 3, rechts 6:

# Size

scale-title = Prüfen Sie die Größe
scale-description = Ein Balken von 100 mm, ein Quadrat von 50 mm und der Umriss einer Bankkarte, zum Messen.
scale-lead-paper = Messen Sie den Balken mit einem Lineal und legen Sie eine Bankkarte auf ihren Umriss. Tiefen stimmen nur in wahrer Größe.
scale-lead-screen = Halten Sie ein Lineal an den Balken oder eine Bankkarte an ihren Umriss. Ändern Sie im Vollbild den Zoom, bis beide passen.
scale-lead-paper-off-base = Messen Sie den Balken mit einem Lineal und legen Sie eine Bankkarte auf ihren Umriss. Tiefen stimmen nur in wahrer Größe. Diese Seite hat keine Grundverschiebung: Sie wird gemessen, nicht durch die Brille angesehen.
scale-lead-screen-off-base = Halten Sie ein Lineal an den Balken oder eine Bankkarte an ihren Umriss. Ändern Sie im Vollbild den Zoom, bis beide passen. Diese Seite hat keine Grundverschiebung: Sie wird gemessen, nicht durch die Brille angesehen.
scale-bar = Balken: 100 mm von Ende zu Ende
scale-bar-picture = Ein Balken von 100 mm.
scale-square = Quadrat: 50 mm je Seite
scale-square-picture = Ein Quadrat von 50 mm.
scale-card = Bankkarte: 85,6 × 54 mm
scale-card-picture = Der Umriss einer Bankkarte, 85,60 mal 53,98 mm.
scale-go = Der Balken ist 100 mm lang, oder die Karte passt in ihren Umriss? Gehen Sie zur nächsten Seite.
scale-off = Wenn die Größe falsch ist
scale-measures = Balken misst
scale-from = Abstand
scale-fix-print = Drucken Sie neu mit 100 %, „tatsächliche Größe“, ohne „an Seite anpassen“.
scale-fix-keep = Geht das nicht, behalten Sie die Seite und ändern Sie den Abstand wie in der Tabelle.
scale-fix-zoom = Ändern Sie den Zoom, bis der Balken 100 mm lang ist.
scale-fix-distance = Geht das nicht, ändern Sie den Abstand wie in der Tabelle.
scale-ask-paper = Mehr als 6 mm daneben? Benutzen Sie den Druck nicht. Bitten Sie um Hilfe mit dem Drucker.
scale-ask-screen = Mehr als 6 mm daneben? Nehmen Sie einen größeren Bildschirm oder die Ausgabe auf Papier. Fragen Sie danach die Person, die die Seiten macht.
