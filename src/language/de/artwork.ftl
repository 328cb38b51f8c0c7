# Seiten mit eigenen Bildern. Wie die Teile heißen, weiß nur, wer sie gezeichnet hat: Hier werden sie gezählt.

layers-goal = Sehen Sie jeden Teil des Bildes in seiner eigenen Tiefe.
layers-look = Schauen Sie auf das Bild, als ob Sie aus einem Fenster schauen.
layers-nearest = Gehen Sie mit den Augen zu dem Teil, der am nächsten scheint. Warten Sie, bis er einfach ist.
layers-back = Gehen Sie weiter zum Teil dahinter, und so bis ganz nach hinten. Kommen Sie dann wieder nach vorn.
layers-repeat = Machen Sie das fünfmal. Schauen Sie dann in die Ferne.
layers-front = { $n ->
        [one] Ein Teil vor der Seite.
       *[other] { $n } Teile vor der Seite.
    }
layers-page = { $n ->
        [one] Ein Teil auf der Seite.
       *[other] { $n } Teile auf der Seite.
    }
layers-behind = { $n ->
        [one] Ein Teil hinter der Seite.
       *[other] { $n } Teile hinter der Seite.
    }
