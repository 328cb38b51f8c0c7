# Words of every exercise page.

page-stop-rule = Stoppregel.
page-stop = Hören Sie sofort auf bei Schmerzen, Kopfweh, Übelkeit oder Schwindel. Hören Sie auch auf, wenn Sie trotz 5–10 Minuten Ruhe mit Blick in die Ferne unscharf oder doppelt sehen. Hält es bis zum nächsten Tag an oder kommt es zweimal wieder? Dann legen Sie das Buch weg und fragen Sie Ihre Fachperson für Augen.
page-glasses = { $left } links, { $right } rechts
page-ground-white = weißer Grund
page-ground-black = schwarzer Grund
page-set-up = Vorbereitung:
page-set-up-words = { $distance } von den Augen, { $glasses }. Seite flach und gerade.
page-badge-level = Stufe { $n } von { $of }
page-badge-grade = Grad { $n }
page-title-level = { $title }, Stufe { $n }
page-do = So geht es
page-see = Das sollten Sie sehen
page-only = Sie sehen nur …
page-only-row = { $seen }:
page-easier = Leichter:
page-harder = Schwerer:
page-first = das ist die erste Seite
page-last = das ist die letzte Seite
page-answers = Lösungen:
page-number = Seite { $n }
page-key-apart = eigene Datei
page-way = { $name } Seite { $page }
page-go-to = Zur Seite { $page }

# An exercise on two sheets: its picture, and its words.

page-words-title = { $title }: Worte
page-words-description = Was auf der Seite „{ $title }“ zu tun ist, nur in Worten, ohne Brille zu lesen.
page-words-at = So geht es:
page-picture-at = Bild:

# The footer.

footer-set = { $title } { $version } · Ausgabe { $edition } · { $date }
footer-set-reader = { $title } { $version } · Ausgabe { $edition } · für { $reader } · { $date }
footer-facts = { $depth } · { $distance }, Augenabstand { $ipd } · { $glasses } · { $ground }
footer-true-size = Größe 100 %
footer-seed = Startzahl { $n }

# Where the reader writes on an exercise page.

log-date = Datum
log-minutes = Minuten
log-single = Einfach
log-marks = Beide Zeichen
log-comfort = Befinden 0–10
log-line = Tagebuch: Datum, Minuten, einfach, beide Zeichen, Befinden 0–10.
log-line-answers = { $n ->
    [one] Tagebuch: Datum, Befinden 0–10, Ihre Antwort.
   *[other] Tagebuch: Datum, Befinden 0–10, Ihre Antworten { $first } bis { $last }.
    }
log-write = { $n ->
    [one] Notieren Sie Ihre Antwort im Tagebuch.
   *[other] Notieren Sie Ihre Antworten { $first } bis { $last } im Tagebuch.
    }

# Cover and contents.

cover-facts = { $n ->
    [one] Übungsseiten für das Sehen mit beiden Augen. Brille: { $first } und { $second }. Eine Seite mit einer Übung, gemacht für { $distance } von Ihren Augen.
   *[other] Übungsseiten für das Sehen mit beiden Augen. Brille: { $first } und { $second }. { $n } Seiten mit Übungen, gemacht für { $distance } von Ihren Augen.
    }
cover-description = Umschlag von { $title }.
cover-edition = Ausgabe { $edition }: { $page }, { $ground }
cover-edition-reader = Ausgabe { $edition }: { $page }, { $ground } · gemacht für { $reader }
cover-glasses = Brille: { $glasses }
cover-version = Version { $version } · { $date }
cover-author = { $author } · Version { $version } · { $date }
cover-practice = Übungsseiten. Kein Test und keine Behandlung: Lesen Sie zuerst die Hinweise zur Vorsicht.
contents-title = Inhalt
contents-description = Jede Seite des Buches mit ihrer Nummer.
contents-link = Zu { $title }
