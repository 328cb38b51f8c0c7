# Clases en las que algo se mantiene único.

hold-goal = Mantenga { $shape-a } { $shape-gender ->
    [f] única y nítida
   *[m] único y nítido
    } mientras sus ojos están quietos.
hold-look = Mire con suavidad { $shape-the } hasta ver { $shape-gender ->
    [f] solo una
   *[m] solo uno
    }.
hold-hold = Mantenga la imagen única y nítida { $time }.
hold-rest = Mire a lo lejos cinco segundos. Hágalo { $times }.
hold-see = { $shape-gender ->
    [f] Una sola
   *[m] Un solo
    } { $shape } que { $side ->
    [toward] parece flotar delante de la página.
    [away] parece estar detrás de la página, como al otro lado de una ventana.
   *[page] está justo en la página.
    }

columns-goal = Lea hacia abajo mientras cada línea pide a sus ojos un poco más que la anterior.
columns-start = Empiece por la primera línea. Espere a verla única y nítida.
columns-check = { $marks ->
    [yes] Compruebe que ve la barra y la cuña, arriba y abajo.
   *[no] Compruebe que ve todas las partes, arriba y abajo.
    }
columns-aloud = Lea en voz alta, línea por línea. Espere en cada una hasta verla nítida.
columns-rest = Al final, mire a lo lejos cinco segundos. Hágalo tres veces.
columns-see = Líneas únicas y nítidas que avanzan o retroceden al leer hacia abajo.

# Una línea tiene palabras; varias son líneas.
words-goal = { $lines ->
    [one] Lea palabras con los dos ojos mientras siguen únicas y nítidas.
   *[other] Lea líneas con los dos ojos mientras siguen únicas y nítidas.
    }
words-middle = Mire con suavidad el centro de la página hasta que no vea letras dobles.
words-aloud = Lea en voz alta, despacio, letra por letra si hace falta.
words-rest = Mire a lo lejos cinco segundos. Hágalo cinco veces.
words-see-toward = { $lines ->
    [one] Palabras únicas y nítidas que parecen flotar delante de la página.
   *[other] Líneas únicas y nítidas que parecen flotar delante de la página.
    }
words-see-away = { $lines ->
    [one] Palabras únicas y nítidas que parecen estar detrás de la página.
   *[other] Líneas únicas y nítidas que parecen estar detrás de la página.
    }
words-see-page = { $lines ->
    [one] Palabras únicas y nítidas, justo en la página.
   *[other] Líneas únicas y nítidas, justo en la página.
    }

dealt-goal = Lea palabras cuyas letras están repartidas entre sus dos ojos.
dealt-first = Mire la primera letra de una fila hasta verla nítida.
dealt-aloud = Lea la fila en voz alta, letra por letra, o escríbala.
dealt-last = Siga hasta la última fila y luego mire a lo lejos. Con un minuto basta.
dealt-note = Anote las filas en las que faltaban letras: cada ojo tenía algunas propias.
dealt-see = Filas de palabras enteras, letra junto a letra, sin que falte ninguna.
dealt-only-some = algunas letras
dealt-some = A un ojo le faltaron las suyas. Parpadee, mire a lo lejos y vuelva a leer.
dealt-only-turns = letras que van y vienen
dealt-turns = Los ojos se turnan. Descanse y pase a una página más fácil.
# Lo que dice una fila y lo que cada ojo tenía por sí solo.
dealt-answer = { $word }: izquierdo { $left }, derecho { $right }

patch-goal = Vea un disco único y nítido mientras su borde mantiene unidos los dos ojos.
patch-border = Mire primero el borde áspero. Deje que se vuelva uno solo.
patch-middle = Mire ahora el centro abierto del disco. Compruebe que ve a la vez la barra y la cuña.
patch-hold = Manténgalo diez segundos y luego mire a lo lejos. Hágalo tres veces. Con un minuto basta.
patch-see = { $side ->
    [toward] Un solo disco nítido, delante de la página, con un borde áspero. En su centro, una barra y una cuña, a la vez.
    [away] Un solo disco nítido, detrás de la página, con un borde áspero. En su centro, una barra y una cuña, a la vez.
   *[page] Un solo disco nítido, justo en la página, con un borde áspero. En su centro, una barra y una cuña, a la vez.
    }
