# Palabras que comparten varias clases de ejercicios.

# Lo que dicen las señales de control: la barra del ojo izquierdo y la cuña del derecho. Una página puede no tenerlas.
kinds-check-both = { $marks ->
    [yes] Compruebe que se ven tanto la barra como la cuña.
   *[no] Compruebe que se ven todas las partes.
    }
kinds-check-there = { $marks ->
    [yes] Compruebe que se ven la barra y la cuña.
   *[no] Compruebe que se ven todas las partes.
    }
kinds-see-marks = { $see } Se ven tanto la barra como la cuña.

# Tiempos y repeticiones.
kinds-seconds = { $count ->
    [one] { $n } segundo
   *[other] { $n } segundos
    }
kinds-times = { $n ->
    [1] una vez
    [2] dos veces
   *[other] { $n } veces
    }
kinds-watch-ten = Mire la imagen diez segundos y luego a lo lejos. Hágalo tres veces. Con un minuto basta.

# Lo primero que dice una página que indica un profesional.
kinds-as-told = Haga esto solo como le indicó su profesional.

# «Si solo ve…»: lo que se ve y lo que hay que hacer.
kinds-only-bar = la barra
kinds-only-wedge = la cuña
kinds-only-flat = una imagen plana
kinds-only-doubled = todo doble
kinds-right-out-try = Su ojo derecho ya no participa. Parpadee, mire a lo lejos, pruebe otra vez.
kinds-left-out-try = Su ojo izquierdo ya no participa. Parpadee, mire a lo lejos, pruebe otra vez.
kinds-right-out-look = Su ojo derecho ya no participa. Parpadee, mire a lo lejos, mire otra vez.
kinds-left-out-look = Su ojo izquierdo ya no participa. Parpadee, mire a lo lejos, mire otra vez.
kinds-one-out = Un ojo ha dejado de participar. Tápese un ojo y luego el otro, e inténtelo otra vez.
kinds-easier = Descanse y pase a una página más fácil.
