# Die Diagramme von `plot`, für Autoren: die Leiter eines Satzes und Seiten von oben gesehen.

chart-facts = { $title } { $version } · { $date } · für { $distance } und einen Augenabstand von { $ipd } ({ $low } bis { $high })
chart-facts-base = { $facts } · { $base }; alles zählt ab ihr
chart-numbers = Das sind Zahlen über Seiten, nicht über eine Person: kein Test, keine Wertung, keine Behandlung.

# Die Leiter.

chart-ladder = Die Leiter von { $title }
chart-ladder-sheet = Die Leiter von { $title }, Blatt { $number } von { $count }
chart-ladder-lead = Was die Übungen verlangen, in der Reihenfolge des Buchs: { $span }.
chart-ladder-picture = Zwei Diagramme ({ $span }): Schwierigkeit von 0 bis 100 und Anforderung in Prismendioptrien; { $range }.
chart-span-none = keine Seiten
chart-span-one = Seite { $number }
chart-span-many = Seiten { $first } bis { $last }
chart-difficulty = Schwierigkeit, 0 bis 100
chart-demand = Anforderung, Prismendioptrien

chart-strand-check = Prüfungen
chart-strand-toward = halten nach vorn
chart-strand-away = halten nach hinten
chart-strand-jump = Sprung
chart-strand-smooth = fließender Wechsel
chart-strand-depth = feine Tiefe
chart-no-marker = ohne Zeichen: Die Schwierigkeit ist nicht bekannt

chart-bar = von der kleinsten zur größten Anforderung einer Seite; 0 ist die Seite selbst
chart-toward = nach vorn
chart-away = nach hinten
chart-blur = Nebelpunkt
chart-break = Abreißpunkt
chart-parallel = parallel
chart-range = Bereich der Person: { $away } ({ $first }) bis { $toward } ({ $second })
chart-no-range = kein Bereich der Person ist bekannt: Der Satz nennt weder Fusionsbreiten noch Normen
chart-comfort = bequem: höchstens 1 Grad Disparität
chart-parallel-eyes = parallele Augen bei einem Augenabstand von { $ipd }
chart-reserves = { $source }: { $ends }
chart-reserve-ends = { $name } bei { $ends }
chart-source-norm = Fusionsbreiten der Norm { $norm }
chart-source-one-side = Fusionsbreiten, eine Seite aus der Norm { $norm }
chart-source-found = Fusionsbreiten, wie eine Fachperson sie fand
chart-bound-percival = Percival, mittleres Drittel
chart-bound-sheard = Sheard, das Doppelte der Phorie
chart-bound-reserve = die ganze Fusionsbreite

# Von oben gesehen.

chart-plan-lead = { $id } · { $kind } · von oben gesehen, Maßstab 1 : { $scale }
chart-plan-picture = Die beiden Augen, die Seite in { $distance } und wo ihre Ziele stehen. { $labels }.
chart-label = { $names }: { $depth }
chart-label-names = { $names }:
chart-names-more = { $names } und { $count } weitere
chart-names-left = { $names } (linkes Auge)
chart-names-right = { $names } (rechtes Auge)
chart-labels-left-out = { $count } von { $all } Beschriftungen; die übrigen stehen im Bericht
chart-depth-toward = { $cm } nach vorn ({ $pd })
chart-depth-away = { $cm } nach hinten ({ $pd })
chart-depths = { $near } bis { $far }
chart-left-eye = linkes Auge
chart-right-eye = rechtes Auge
chart-ruler = cm von den Augen; die Seite bei { $distance }
chart-art-field = Lange Linie: das Bildfeld der Seite, { $width } breit
chart-ipds = Balken mit Enden: Augenabstände von { $low } bis { $high }
chart-lines = dünne Linien: beide Augen schauen auf { $name }
chart-dotted = gepunktet: ein Auge allein
chart-arrowhead = Pfeilspitze: weiter weg als das Blatt
chart-shade = schattiert: der Bereich der Person, { $near } bis { $far }
chart-shade-parallel = schattiert: der Bereich der Person, { $near } bis zu parallelen Augen
