# Palabras que comparten varias clases de ejercicios.

# Lo que dicen las señales de control: la barra del ojo izquierdo y la cuña del derecho. Una página puede no tenerlas.
kinds-check-both = { $marks ->
    [yes] Compruebe que ve a la vez la barra y la cuña.
   *[no] Compruebe que ve todas las partes.
    }
kinds-check-there = { $marks ->
    [yes] Compruebe que ve la barra y la cuña.
   *[no] Compruebe que ve todas las partes.
    }
kinds-see-marks = { $see } La barra y la cuña se ven a la vez.

# Tiempos y repeticiones.
kinds-seconds = { $count ->
    [one] { $n } segundo
   *[other] { $n } segundos
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
kinds-only-doubled = doble
kinds-right-out-try = Su ojo derecho no participa. Parpadee, mire a lo lejos y repita.
kinds-left-out-try = Su ojo izquierdo no participa. Parpadee, mire a lo lejos y repita.
kinds-right-out-look = Su ojo derecho no participa. Parpadee, mire a lo lejos y repita.
kinds-left-out-look = Su ojo izquierdo no participa. Parpadee, mire a lo lejos y repita.
kinds-one-out = Un ojo no participa. Tápese un ojo, luego el otro, y repita.
kinds-easier = Descanse y use una página más fácil.
