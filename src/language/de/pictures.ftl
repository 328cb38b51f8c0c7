# Was Bildunterschriften, Fußzeilen und Bildbeschreibungen vom Bild sagen: Anforderungen, Orte und was jedes Auge bekommt.

list-apart = { $before }; { $after }

demand-toward = { $pd } nach vorn
demand-away = { $pd } nach hinten
demand-page = auf der Seite
demand-on-page = auf der Seite
demand-range = { $from } bis { $to }
demand-range-to-page = { $from } bis zur Seite
demand-range-from-page = von der Seite bis { $to }

place-between = { $near } bis { $far } cm
place-very-far = sehr weit weg

# Bildunterschriften.

caption-flat = Alles auf der Seite, in { $distance }.
caption-flat-base = Alles auf der Seite, gezählt von der Grundverschiebung, in { $distance }.
caption-deep = Tiefen: { $depths }; Seite in { $distance }.
caption-deep-base = Tiefen, gezählt von der Grundverschiebung: { $depths }; Seite in { $distance }.
caption-range = Tiefen: { $depths }. Von Ihren Augen aus: Seite { $distance }.
caption-range-base = Tiefen, gezählt von der Grundverschiebung: { $depths }. Von Ihren Augen aus: Seite { $distance }.
caption-depth = { $name } { $demand }
caption-depth-all = alle { $demand }
caption-place = { $name } { $place } ({ $demand })
caption-place-all = alle { $place } ({ $demand })
caption-places = Von Ihren Augen aus: { $places }; Seite { $distance }.

# Was jedes Auge bekommt.

eye-left-alone = Linkes Auge: { $things }.
eye-right-alone = Rechtes Auge: { $things }.
eye-both-alone = Beide: { $things }.
thing-count = { $count } { $thing-many }
thing-numbered = { $thing } { $number }

picture-eyes = Linkes Auge: { $left }. Rechtes Auge: { $right }. Beide Augen zusammen: { $together }.
picture-same = dieselben Formen
picture-same-moved = dieselben, aber um ihre Tiefe seitlich verschobenen Formen
picture-line = eine Linie in der Tiefe { $depths }
picture-line-flat = eine Linie auf der Seite
picture-stand = { $name }: { $demand }, { $place } von den Augen
picture-stand-base = { $name }: { $demand }
picture-lines = Linien, die in die Tiefe laufen
picture-trail = eine Spur
picture-trail-beads = { $count ->
        [one] eine Spur mit { $count } Perle
       *[other] eine Spur mit { $count } Perlen
    }
picture-dots = Linkes Auge: Zufallspunkte in einem Rahmen, davon jeder zweite Strich. Rechtes Auge: dieselben Punkte, um ihre Tiefe zur Seite verschoben, und die anderen Striche. Beide Augen zusammen: Punkte in der Tiefe { $depths }, in einem ganzen Rahmen.
picture-dots-flat = Linkes Auge: Zufallspunkte in einem Rahmen, davon jeder zweite Strich. Rechtes Auge: dieselben Punkte und die anderen Striche. Beide Augen zusammen: Punkte, die auf der Seite stehen, in einem ganzen Rahmen.
picture-dots-lines = Gezeichnete Linien zeigen, wo sich die Tiefe ändert.
picture-dots-drawn = Darunter: { $things }.

# Eine Seite, die etwas fragt.

asked-picture = { $count ->
        [one] Ein Bild für beide Augen zusammen, mit { $count } Frage. { $goal }
       *[other] Ein Bild für beide Augen zusammen, mit { $count } Fragen. { $goal }
    }
asked-choices = Zur Auswahl stehen: { $choices }.
asked-key-turned = Die Antworten stehen auf den Lösungsseiten am Ende des Buchs.
asked-key-file = Die Antworten stehen in einer eigenen Datei.

# Eine Grundverschiebung bei schielendem Auge, eine Balance zwischen den Augen und wer sie festgelegt hat.

base-words = Grundverschiebung { $amounts }
base-right-higher = rechtes Bild { $pd } höher
base-left-higher = linkes Bild { $pd } höher
base-sentence = Alles hat eine Grundverschiebung: { $amounts }.
balance-left = { $share } % linkes Auge
balance-right = { $share } % rechtes Auge
balance-words = Balance { $share }
set-by = eingestellt von { $name }

# Zahlen einer Seite.

readings-distance = Augen bis Seite
readings-demand = Anforderung
readings-place = Augen bis Form
readings-ruler-range = { $near } bis { $far }
readings-ruler = Lineal: Der Bleistift gehört { $range } cm von der Seite weg (dicker Balken)
readings-ruler-picture = Ein Lineal in wahrer Größe, { $length } cm lang, mit einem dicken Balken ab { $range } cm.

# Was ein Dokument über sich sagt.

document-answers = { $title }: Lösungen
document-answers-subject = Lösungen zu den Übungsseiten von { $title }.
document-subject = Übungsseiten für zwei Augen und eine Brille mit zwei Filtern ({ $first }/{ $second }).
document-practice = Übungsseiten
document-anaglyph = Anaglyphe
document-glasses = Brille { $first }/{ $second }
