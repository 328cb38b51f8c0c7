# What the parts at the end of a book share.

part-sheet = { $title }, Blatt { $n }
time-minutes = { $n ->
    [one] { $n } Minute
   *[other] { $n } Minuten
    }
time-seconds = { $n ->
    [one] { $n } Sekunde
   *[other] { $n } Sekunden
    }
time-days = { $n ->
    [one] { $n } Tag
   *[other] { $n } Tage
    }
time-weeks = { $n ->
    [one] { $n } Woche
   *[other] { $n } Wochen
    }

# The plan.

plan-title = Ihr Plan
plan-description = Welche Seiten an welchem Tag welcher Woche kommen. Wann Sie weitergehen, eine leichtere Seite nehmen, aufhören und fragen.
plan-lead = { $weeks }, { $days } je Woche, höchstens { $minutes } am Tag. Es ist ein Angebot: Gehen Sie in Ihrem Tempo.
plan-when = Wann
plan-pages = Seiten, neue fett
plan-minutes = Minuten
plan-done = Fertig
plan-day = Woche { $week }, Tag { $day }
plan-each-day = Jeden Tag
plan-easy-to-hard = Die Seiten eines Tages gehen von leicht zu schwer. Die fetten sind neu.
plan-rest = Nach höchstens { $block }: { $rest } Pause. Schauen Sie in die Ferne. Die Minuten zählen diese Pausen mit.
plan-again = Eine Seite ist noch nicht leicht? Nehmen Sie sie wieder. Die neuen können warten.
plan-end = Schauen Sie jeden Tag zum Schluss in die Ferne.
plan-come-again = Es gibt mehr Tage als Seiten: Bekannte Seiten kommen wieder.
plan-framed = Eine Seite in einem Rahmen: nur so, wie Ihre Fachperson für Augen es gesagt hat.
plan-go-on = Gehen Sie weiter, wenn an { $days } verschiedenen Tagen
plan-good-answers = Sie auf einer Seite mit Fragen so viele richtige Antworten hatten, dass es mehr als Glück ist,
plan-good-marks = Balken und Keil beide da waren und
plan-good-comfort = das Befinden bei 0 bis { $most } von 10 blieb; 10 ist schlecht.
plan-step-back = Nehmen Sie die leichtere Seite, wenn
plan-bad-marks = Balken oder Keil fehlt, oder alles doppelt bleibt, oder
plan-bad-comfort = das Befinden { $least } von 10 erreicht. Machen Sie zuerst Pause, mit Blick in die Ferne.
plan-bad-easier = Jede Seite nennt ihre leichtere.
plan-stop = Stoppregel
plan-ask = Fragen Sie
plan-ask-words = Zeigen Sie Ihr Übungstagebuch nach vier Wochen Ihrer Fachperson für Augen; früher, wenn Sie etwas beunruhigt. Was sie sagt, zählt mehr als dieser Plan.

# The log.

log-title = Ihr Übungstagebuch
log-description = Eine Zeile für jeden von { $n } Tagen, zum Ausfüllen.
log-lead = Eine Zeile am Tag. Diese Seiten: Ausgabe { $edition }, { $distance } von Ihren Augen, { $glasses }. Befinden: 0 ist gut, 10 ist schlecht. Kreisen Sie ein, was Sie gesehen haben.
log-head-day = Tag
log-head-date = Datum
log-head-page = Seite
log-head-glasses = Brille richtig
log-head-minutes = Min.
log-head-single = Einfach, doppelt
log-head-marks = Balken, Keil
log-head-answers = Richtige Antw.
log-head-before = Befinden vorher
log-head-after = Befinden danach
log-head-stayed = Blieb doppelt
log-head-note = Notiz
log-circle-single = e   d
log-circle-marks = B   K
log-circle-stayed = j   n
log-stays-double = Befinden 4 oder mehr: Machen Sie Pause, dann eine leichtere Seite. Blieb es nach einer Pause doppelt: Hören Sie auf, schreiben Sie es auf und fragen Sie Ihre Fachperson für Augen. Zeigen Sie ihr dieses Tagebuch.
log-screen-lead = Führen Sie ein Tagebuch auf Papier, eine Zeile am Tag. Notieren Sie:
log-screen-date = das Datum, die Seite und diese Ausgabe; und dass die Brille richtig herum war;
log-screen-seen = die Minuten; ob alles einfach oder doppelt war; ob Balken und Keil beide da waren;
log-screen-answers = wie viele Antworten richtig waren, wenn die Seite fragt;
log-screen-comfort = das Befinden vorher und danach, von 0 (gut) bis 10 (schlecht);
log-screen-other = ob etwas nach einer Pause doppelt blieb, und was Ihnen sonst auffiel.

# The answer key.

answers-title = Lösungen
answers-turn = Lösungen: Seite auf den Kopf drehen.
answers-description = Die Lösungen zu den Fragen der Übungsseiten.
answers-pass = { $right } von { $of } oder mehr: mehr als Glück

# The words of all exercises once more.

words-title = Jede Übung in Worten
words-lead = Die Worte aller Übungsseiten noch einmal, nur in Schwarz: zum Lesen ohne Brille oder zum Vorlesen.
words-lead-dark = Die Worte aller Übungsseiten noch einmal, ohne Farbe: zum Lesen ohne Brille oder zum Vorlesen.
words-description = Was auf jeder Übungsseite zu tun ist, nur in Worten, ohne Brille zu lesen.
words-page = { $title }, Seite { $page }
words-pages = { $title }, Seiten { $page } bis { $last_page }
words-level = { $title }, Stufe { $level }, Seite { $page }
words-level-pages = { $title }, Stufe { $level }, Seiten { $page } bis { $last_page }
words-levels = { $title }, Stufen { $level } bis { $last_level }, Seiten { $page } bis { $last_page }
