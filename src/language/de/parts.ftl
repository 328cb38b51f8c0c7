# Die Teile eines Buchs neben Vorsicht, Prüfseiten und Übungen.

# Who the book is for

audience-title = Für wen dieses Buch ist
audience-lead = Üben mit beiden Augen passt für manche und für andere nicht. Bitte lesen Sie diese Seite ganz.
audience-description = Für wen das Buch ist, wer zuerst fragen sollte und für wen es nicht ist.
audience-one-heading = Nur für eine Person
audience-one = { $by } hat dieses Buch für eine Person eingestellt. Sind Sie das nicht? Dann benutzen Sie es nicht.
audience-for = Es kann passen, wenn
audience-for-1 = Sie erwachsen sind oder eine erwachsene Person neben Ihnen sitzt;
audience-for-2 = Sie üben möchten, beide Augen gemeinsam zu benutzen;
audience-for-3 = eine Fachperson für Augen Sie vor höchstens einem Jahr untersucht hat;
audience-for-4 = diese Person gesagt hat, dass Üben für Sie sicher ist.
audience-ask = Fragen Sie zuerst, wenn
audience-ask-1 = ein Auge schielt oder viel schwächer ist als das andere;
audience-ask-2 = Sie manchmal doppelt sehen oder ein neues Prisma haben;
audience-ask-3 = etwas aus den Hinweisen zur Vorsicht auf Sie zutrifft.
audience-not = Es ist nicht für Sie, wenn
audience-not-1 = Sie neu oder plötzlich doppelt sehen: Holen Sie sofort ärztliche Hilfe;
audience-not-2 = eine Fachperson gesagt hat, dass Sie nicht mit beiden Augen zusammen üben sollen;
audience-not-3 = Sie nur mit einem Auge sehen;
audience-not-4 = Sie wissen möchten, was Ihren Augen fehlt: Diese Seiten können es nicht sagen;
audience-not-5 = es eine Brille, ein Augenpflaster, Medikamente oder eine Operation ersetzen soll;
audience-not-6 = Sie unter 18 sind und keine erwachsene Person dabei ist.
audience-expect = Was Sie erwarten können
audience-expect-1 = Niemand kann versprechen, was Üben bei Ihnen bewirkt. Manche sehen bald Tiefe, manche spät, manche nie.
audience-expect-2 = Gehen Sie in Ihrem Tempo vor. Sie dürfen jederzeit aufhören, und das ist in Ordnung.

# What the reader needs

needs-title = Was Sie brauchen
needs-lead = Legen Sie alles bereit, bevor Sie anfangen. Dann stört Sie nichts.
needs-description = Brille, Papier oder Bildschirm, Licht, Tisch und Zeit.
needs-eyes = Für die Augen
needs-glasses = Eine Brille mit zwei Filtern: { $glasses }.
needs-own-glasses = Ihre eigene Brille darunter, wenn Sie mit Brille lesen. Nehmen Sie ein Prisma nicht ab.
needs-clean = Ein weiches Tuch. Saubere Filter lassen das richtige Licht durch.
needs-paper = Für die Seiten
needs-paper-1 = Ein Farbdrucker. Drucken Sie mit 100 %, in bester Qualität, ohne Tinte zu sparen.
needs-paper-2 = Weißes mattes Papier, 100 bis 120 g. Glänzendes Papier spiegelt.
needs-paper-3 = Lassen Sie die Druckfarbe trocknen. Halten Sie die Seiten flach und schützen Sie sie vor Sonne.
needs-paper-4 = Keine Fotokopien: Sie ändern die Druckfarben und oft die Größe.
needs-screen = Für die Seiten
needs-screen-1 = Ein Bildschirm, mindestens 32 cm breit. Ein Telefon ist zu klein.
needs-screen-2 = Zeigen Sie die Seiten mit 100 %, im Vollbild. Die Prüfung der Größe sagt, wie.
needs-screen-3 = Schalten Sie Nachtfarben und automatische Helligkeit aus. Wischen Sie den Bildschirm ab.
needs-light = Licht
needs-light-1 = Gleichmäßiges Licht auf der Seite, ohne Spiegelung oder Schatten.
needs-light-2 = Jedes Mal dieselbe Lampe: Eine andere kann ein Geisterbild bringen.
needs-desk = Am Tisch
needs-ruler = Ein Lineal und eine Schnur von { $distance }, um den Abstand zu halten.
needs-pencil = Ein Bleistift für Übungstagebuch und Kästchen.
needs-flat = Die Seite flach und gerade vor Ihrem Gesicht.
needs-upright = Ein Stuhl, auf dem Sie aufrecht sitzen. Ein schiefer Kopf zieht die zwei Bilder auseinander.
needs-time = Zeit
needs-minutes = { $minutes ->
    [one] Höchstens eine ruhige Minute am Tag.
   *[other] Höchstens { $minutes } ruhige Minuten am Tag.
    }
needs-time-usual = Höchstens 10 bis 15 ruhige Minuten am Tag.
needs-distance-rest = Ein Fenster oder ein langer Raum, um in die Ferne zu schauen.
needs-aloud = Wenn Sie mögen: jemand, der Ihnen die Worte vorliest.

# The level map

map-title = Ihre Karte
map-lead = Jeder Kreis ist eine Seite. Malen Sie ihn aus, wenn die Seite leicht geworden ist. Es eilt nicht, und kein Kreis muss voll werden.
map-description = Jede Übungsseite als Kreis zum Ausmalen, nach Strängen.
map-grade = Grad { $n }
map-go = Zu Seite { $n }
map-check = Zum Anfangen
map-check-about = Machen beide Augen mit?
map-toward = Nach vorn
map-toward-about = Formen stehen vor der Seite. Ihre Augen drehen sich nach innen.
map-away = Nach hinten
map-away-about = Formen stehen hinter der Seite. Ihre Augen drehen sich nach außen.
map-jump = Sprünge
map-jump-about = Sie schauen von einer Tiefe in die andere.
map-smooth = Einen Weg entlang
map-smooth-about = Sie folgen einer Linie durch die Tiefe.
map-depth = Tiefe sehen
map-depth-about = Sie finden heraus, was näher steht.

# Glossary: each word, and what it means

glossary-title = Wörter in diesem Buch
glossary-lead = Einfach erklärt, so wie dieses Buch die Wörter benutzt.
glossary-description = Was die Fachwörter bedeuten, in einfachen Sätzen.
glossary-word = { $word }:
glossary-anaglyph = Anaglyphe
    .means = Ein Bild in zwei Farben, eine für jedes Auge. Eine Brille mit zwei Filtern trennt es.
glossary-arc-second = Winkelsekunde (Winkelsek.)
    .means = Ein sehr kleiner Winkel: 3600 davon sind ein Winkelgrad. Kleine Tiefen werden darin angegeben.
glossary-away = hinten, nach hinten
    .means = Etwas scheint hinter der Seite zu stehen. Ihre Augen drehen sich etwas nach außen.
glossary-base = Grundverschiebung (bei Schielen)
    .means = Das ganze Bild ist verschoben. Nur eine Fachperson stellt das ein, für eine Person.
glossary-base-in-out = Basis außen, Basis innen
    .means = Namen von Prismen. Ein Prisma mit Basis außen dreht die Augen nach innen, wie Bilder nach vorn. Basis innen dreht sie nach außen.
glossary-comfort = Befinden
    .means = Wie es Ihnen geht, von 0 bis 10: 0 ist gut, 10 ist schlecht.
glossary-convergence = Konvergenz
    .means = Beide Augen drehen sich nach innen, zu etwas Nahem.
glossary-demand = Anforderung
    .means = Wie weit sich Ihre Augen für eine Seite drehen sollen, gezählt von der Seite selbst.
glossary-divergence = Divergenz
    .means = Beide Augen drehen sich nach außen, zu etwas Fernerem.
glossary-double = doppelt
    .means = Sie sehen etwas zweimal, das es nur einmal gibt.
glossary-eye-turn = Schielen
    .means = Ein Auge schaut an dem vorbei, was das andere ansieht.
glossary-fusion = verschmelzen (Fusion)
    .means = Ihr Gehirn macht aus den Bildern beider Augen eines.
glossary-ghost = Geisterbild
    .means = Eine Spur vom Bild des einen Auges, die auch das andere sieht.
glossary-grade = Grad
    .means = Wie viel eine Seite verlangt, von 1 bis 10. Der Grad ist keine Note für Sie.
glossary-jump = Sprung
    .means = Sie schauen mit einem Mal von einer Tiefe in eine andere.
glossary-level = Stufe
    .means = Ein Schritt einer Übung. Höhere Stufen verlangen mehr.
glossary-lock-frame = Halterahmen
    .means = Ein Rahmen, der mit einer Form mitgeht. Er hilft Ihren Augen, bei ihr zu bleiben.
glossary-parallax = Parallaxe
    .means = Wie weit die zwei Bilder einer Form auf der Seite auseinanderliegen.
glossary-prism-dioptre = Prismendioptrie (pdpt)
    .means = Ein Maß dafür, wie weit sich Augen drehen. 1 pdpt ist 1 cm auf 1 m Abstand.
glossary-random-dots = Zufallspunkte
    .means = Punkte, vom Zufall gestreut. Nur beide Augen zusammen finden darin die Form.
glossary-reserve = Reserve (Fusionsbreite)
    .means = Wie weit sich Ihre Augen drehen können, bis alles unscharf oder doppelt wird. Eine Fachperson misst sie.
glossary-single = einfach
    .means = Sie sehen etwas nur einmal, mit beiden Augen offen.
glossary-stereopsis = Stereosehen
    .means = Tiefe sehen, weil Ihre zwei Augen von zwei Orten aus schauen.
glossary-stop-rule = Stoppregel
    .means = Wann Sie sofort aufhören. Sie steht auf jeder Übungsseite.
glossary-strand = Strang
    .means = Seiten einer Art, die von leicht zu schwer ansteigen.
glossary-suppression = Unterdrückung (Suppression)
    .means = Ihr Gehirn lässt das Bild eines Auges weg, oft um nicht doppelt zu sehen.
glossary-toward = vorn, nach vorn
    .means = Etwas scheint vor der Seite zu stehen. Ihre Augen drehen sich etwas nach innen.
glossary-vergence = Vergenz
    .means = Die zwei Augen drehen sich gegeneinander: nach innen oder nach außen.
glossary-watch-marks = Kontrollzeichen
    .means = Der flache Balken ist für das linke Auge, der Keil für das rechte. Sehen Sie beide, machen beide Augen mit.

# Sources

sources-title = Quellen
sources-lead = Zahlen und Regeln in diesem Buch stützen sich auf diese Arbeiten. Manche wurden nur als Zusammenfassung gelesen. Sie stützen die Zahlen; keine hat dieses Buch untersucht.
sources-description = Die veröffentlichten Arbeiten, auf die sich Zahlen und Regeln des Buchs stützen.
sources-depth = Tiefe und Abstand
sources-limits = Wie weit Augen drehen und verschmelzen können
sources-grades = Was eine Seite schwerer macht
sources-dots = Zufallspunkte
sources-ghost = Farben und Geisterbilder
sources-safety = Streifen und Muster
sources-page = Größe und Druck
sources-none = Ohne Quelle
sources-none-words = Minuten am Tag, Länge der Pausen, Schritte zwischen Stufen und wann es weitergeht: Das folgt dem, was üblich ist. Keine veröffentlichte Arbeit legt es fest.

# Licence and credits

licence-title = Lizenz und Mitwirkende
licence-description = Was Sie mit dem Buch tun dürfen und wessen Arbeit darin steckt.
licence-book = Dieses Buch
licence-author = { $title } ist von { $author }.
licence-credits = Mitwirkende
licence-typeface = Schrift
licence-typeface-words = Die Worte sind in Atkinson Hyperlegible Next gesetzt, unter der SIL Open Font License 1.1.
licence-contact = Fehler und Fragen
licence-contact-words = Bitte schreiben Sie an { $contact }.

# Versions and errors

versions-title = Versionen und Fehler
versions-lead = Sie haben Version { $version } vom { $date }. Unten steht, was sich geändert hat, das Neueste zuerst.
versions-description = Die Versionen des Buchs mit dem, was sich in jeder geändert hat.
versions-release = Version { $version } · { $date }
versions-error = Einen Fehler gefunden?
versions-error-words = Notieren Sie Version und Seitenzahl. Sieht eine Seite für Sie falsch aus? Lassen Sie sie weg.
versions-contact = Bitte schreiben Sie an { $contact }.
