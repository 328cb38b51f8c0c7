# Hinweise zur Vorsicht, und wie das Buch benutzt wird.

# Cautions

cautions-title = Bitte lesen Sie dies zuerst
cautions-description = Hinweise zur Vorsicht: wen Sie fragen, wann Sie Hilfe holen, wann Sie aufhören.
cautions-ask = Fragen Sie, bevor Sie anfangen
cautions-ask-1 = Ihre letzte Augenuntersuchung darf höchstens ein Jahr her sein. Fragen Sie: „Ist es sicher für mich, das Sehen mit beiden Augen zu üben?“
cautions-ask-2 = Fragen Sie zuerst bei Schielen, Doppeltsehen, einem viel schwächeren Auge, zitternden Augen oder einem neuen Prisma. Ebenso nach einer Augenoperation oder Kopfverletzung.
cautions-ask-3 = Fragen Sie zuerst bei Krankheiten von Schilddrüse, Nerven oder Muskeln und bei Krampfanfällen. Ebenso bei Schwindel, Migräne durch Muster oder Übelkeit in der Schwangerschaft.
cautions-ask-4 = In großen Studien fehlen viele Menschen, die schielen oder am Auge operiert wurden. Niemand kann sagen, was Üben bei Ihnen bewirkt.
cautions-ask-5 = Unter 18 nur neben einer erwachsenen Person, höchstens fünf Minuten, auf einer Stufe, die eine Fachperson festlegt.
cautions-stop = Stoppregel
cautions-help = Holen Sie sofort ärztliche Hilfe
cautions-help-words = Neues oder plötzliches Doppeltsehen, auch wenn es vorbeigeht. Ein hängendes Lid, ungleiche Pupillen, Sehverlust. Neue oder sehr starke Kopfschmerzen. Schwäche in Gesicht oder Arm, Mühe beim Sprechen, Schmerzen an Kiefer oder Kopfhaut. Etwas davon nach einem Schlag auf den Kopf. Wählen Sie den Notruf; das gehört nie zum Üben.
cautions-safe = Zu Ihrer Sicherheit
cautions-safe-1 = Üben Sie nicht, während oder bevor Sie Auto oder Rad fahren, klettern, schwimmen, kochen oder Maschinen benutzen. Warten Sie nach dem Üben mindestens 30 Minuten und bis Sie wieder einfach und klar sehen.
cautions-safe-2 = Nicht nach Alkohol oder Beruhigungsmitteln, nicht mit Fieber, nicht, wenn Sie sehr müde sind.
cautions-safe-3 = Höchstens 10 bis 15 Minuten am Tag. Schauen Sie nach jeder Seite eine halbe Minute in die Ferne.
cautions-safe-4 = Wenn Farben oder Muster Sie stören, nehmen Sie die Brille ab und hören Sie auf. Das ist in Ordnung.
cautions-about = Über dieses Buch
cautions-about-words = Dieses Buch dient nur der Information, ohne jede Garantie. Es ist ein Satz Übungsseiten, kein Test und keine Behandlung. Was Ihre zugelassene Fachperson für Augen und die Regeln an Ihrem Wohnort sagen, geht vor.
cautions-base = Alle Bilder haben eine Grundverschiebung ({ $base }), von { $by } für eine Person eingestellt. Benutzen, verleihen oder kopieren Sie das Buch nicht für andere. Die Verschiebung gilt nur bei { $distance }. Ändern Sie selbst nichts.

# How to use the book

how-title = So benutzen Sie diese Seiten
how-description = Was nötig ist, wie eine Seite aufgebaut ist, wann Sie weitergehen und wann zurück.
how-needs = Was Sie brauchen
how-needs-glasses = Brille: { $glasses }. Tragen Sie Ihre eigene Brille darunter.
how-needs-paper = Eine Seite, mit 100 % gedruckt, flach und gerade.
how-needs-screen = Ein Bildschirm, der die Seite mit 100 % zeigt, flach und gerade.
how-needs-ruler = Ein Lineal oder eine Schnur von { $distance }.
how-needs-light = Gleichmäßiges Licht, das nicht spiegelt, und ein Bleistift für das Tagebuch.
how-each-day = Jeden Tag
how-day-check = Prüfen Sie Brille, Geisterbild und Größe (drei Prüfseiten).
how-day-start = Beginnen Sie mit der ersten Übung. Abstand von den Augen zur Seite: { $distance }.
how-day-practise = Üben Sie zwei oder drei Minuten, schauen Sie in die Ferne, dann weiter.
how-day-end = Schauen Sie am Ende jedes Mal in die Ferne.
how-works = So ist eine Seite aufgebaut
how-works-pictures = Jedes Auge bekommt sein eigenes Bild. Ihr Gehirn fügt beide zusammen. Formen, die auseinandergeschoben sind, scheinen näher bei Ihnen oder weiter weg zu stehen. Ein Rahmen geht mit einer Form mit und hilft Ihren Augen, bei ihr zu bleiben.
how-picture = Linkes Auge: ein Ring mit einem flachen Balken darin. Rechtes Auge: derselbe Ring mit einem Keil darin. Beide Augen zusammen: ein Ring mit Balken und Keil.
how-works-marks = Der flache Balken ist nur für das linke Auge, der Keil nur für das rechte. Sehen Sie beide, machen beide Augen mit.
how-works-grade = Der Grad oben auf einer Seite, 1 bis 10, sagt, wie viel die Seite verlangt. Er ist keine Note für Sie.
how-move-on = Wann Sie weitergehen
how-move-on-1 = Es war an drei verschiedenen Tagen leicht, und beide Zeichen waren da.
how-move-on-2 = Das Befinden blieb gut: 0 bis 2 von 10, wobei 10 schlecht ist.
how-step-back = Wann Sie zurückgehen
how-step-back-1 = Ein Zeichen fehlt, oder alles ist doppelt.
how-step-back-2 = Das Befinden erreicht 4 von 10. Machen Sie Pause, dann eine leichtere Seite.
