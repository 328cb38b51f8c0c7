# Páginas que indica un profesional.

contrast-goal = Vea las dos marcas de una fila mientras una se hace más fina de fila en fila.
contrast-begin-ring-thins = Empiece por la fila 1. Mire la cruz y vea que el anillo también está.
contrast-begin-cross-thins = Empiece por la fila 1. Mire el anillo y vea que la cruz también está.
contrast-down = Baje fila por fila, cinco segundos en cada una.
contrast-note = Anote la última fila en la que están las dos marcas. Pare ahí.
contrast-rest = Mire a lo lejos diez segundos. Dos vueltas bastan.
contrast-see-ring-thins = Un anillo y una cruz en cada fila, a la vez. El anillo se hace más fino, pero no se va.
contrast-see-cross-thins = Un anillo y una cruz en cada fila, a la vez. La cruz se hace más fina, pero no se va.
contrast-rings = los anillos
contrast-rings-then = Su ojo derecho no participa. Suba una fila y mire otra vez.
contrast-crosses = las cruces
contrast-crosses-then = Su ojo izquierdo no participa. Suba una fila y mire otra vez.

gated-double-then = Pare por hoy. Dígaselo a su profesional.

shared-goal = Busque un camino del que cada ojo solo conoce una parte.
shared-pencil = Tome un lápiz.
shared-look = Vea que están las paredes, el anillo y la estrella.
shared-draw = { $hazards ->
        [0] Dibuje despacio del anillo a la estrella. No cruce paredes.
       *[other] Dibuje despacio del anillo a la estrella. No cruce paredes ni toque cruces.
    }
shared-fade = Si una parte se borra, pare. Parpadee, mire a lo lejos y siga.
shared-rest = A los dos minutos mire a lo lejos. Con una vez basta.
shared-see = { $hazards ->
        [0] Un laberinto pequeño, un anillo de salida y una estrella de llegada.
       *[other] Un laberinto pequeño, un anillo de salida, una estrella de llegada y cruces.
    }
shared-walls = paredes sin marcas
shared-marks = marcas sin paredes
shared-left-out = Su ojo izquierdo no participa. Descanse primero.
shared-right-out = Su ojo derecho no participa. Descanse primero.
