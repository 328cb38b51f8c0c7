# Las hojas de las tintas: muestras con lo que cada ojo ve de ellas, y los espectros que hay detrás.

medium-unsaid = una pantalla ideal, pues no se dice nada
medium-screen = pantalla { $name }
medium-print = impresión { $solids } bajo la lámpara { $lamp }
inks-percent = { $n } %
inks-lead-white = { $left } a la izquierda, { $right } a la derecha; fondo blanco; { $medium }
inks-lead-black = { $left } a la izquierda, { $right } a la derecha; fondo negro; { $medium }

inks-title = Tintas de la edición { $id }
inks-description = Las tintas como muestras, lo claras que las ve cada ojo, y el contraste y la imagen fantasma que cabe esperar.
inks-marks-picture = Una barra plana para el ojo izquierdo, dos anillos que se cruzan, uno para cada ojo, y una cuña para el ojo derecho.
inks-ground = Fondo
inks-left-mark = Marca izquierda
inks-right-mark = Marca derecha
inks-overlap = Solape
inks-words = Texto
inks-on-page = En la página
inks-to-left = Para el ojo izquierdo
inks-to-right = Para el ojo derecho
inks-swatches-note = Grises y porcentajes: lo claro que cada ojo ve un color, contado desde el blanco detrás de su propio filtro.
inks-swatches-picture = Muestras de las tintas: { $codes }.

inks-expect = Qué cabe esperar
inks-eye = Ojo
inks-contrast = Contraste
inks-ghost = Imagen fantasma
inks-crossing = Solape
inks-brightness = Claridad
inks-eye-left = Izquierdo
inks-eye-right = Derecho
inks-expect-note = Contraste: cuánto se separa la marca propia del fondo. Imagen fantasma: cuánto lo hace la marca del otro ojo, como parte de la propia. Solape: cuánto se separa un cruce de la marca propia. Claridad: lo más claro que ve este ojo, respecto al blanco de la página sin filtro.

inks-go = Adelante
inks-fix = Arreglar
inks-ghost-fine = La imagen fantasma no pasa del 2 %.
inks-ghost-faint = La imagen fantasma pasa del 2 % pero no del 5 %: puede notarse.
inks-ghost-strong = La imagen fantasma pasa del 5 %. Tiña el fondo, o pruebe otras gafas, otro papel u otra luz; mire después la página de la imagen fantasma.
inks-ghost-refused = La imagen fantasma pasa del 15 %. Estas gafas no separan las dos marcas en este medio.
inks-imbalance = La claridad difiere entre los dos ojos: { $n } a 1.
inks-imbalance-more = La claridad difiere entre los dos ojos: { $n } a 1, más que el 2 a 1 que se busca.
inks-text-contrast = El texto se separa del fondo { $n } a 1.

inks-traded = A qué se renunció
inks-traded-nothing = A nada: estas son las tintas plenas de las gafas.
inks-role-left = la tinta izquierda
inks-role-right = la tinta derecha
inks-role-overlap = la tinta del solape
inks-role-ground = la tinta del fondo
inks-traded-tint = el fondo está teñido a { $ground }: tiene { $left } del blanco para el ojo izquierdo y { $right } para el derecho; la imagen fantasma pasa de { $before } a { $after }
inks-traded-ink = { $ink } no es la plena { $full }: su señal es { $signal } en lugar de { $whole }
inks-traded-pinned = { $ink } es la del autor; calculada sería { $solved }, con una imagen fantasma de { $ghost } en lugar de { $pinned }
inks-traded-ghost = la imagen fantasma es { $left } para el ojo izquierdo y { $right } para el derecho, límite { $limit }
inks-traded-ghost-tinted = la imagen fantasma es { $left } para el ojo izquierdo y { $right } para el derecho, límite { $limit }; un fondo teñido la llevaría a { $tinted }

# Espectros.

spectra-title = Luz, filtros y lo que pasa
spectra-description = Cuatro gráficas según la longitud de onda: la luz, los filtros y lo que pasa a cada ojo.
spectra-red = rojo
spectra-green = verde
spectra-blue = azul
spectra-ground = fondo
spectra-left-mark = marca izquierda
spectra-right-mark = marca derecha
spectra-page-sends = Lo que envía la página
spectra-screen-sends = Lo que envía la pantalla
spectra-peak = luz, parte de su pico
spectra-filters = Lo que dejan pasar los filtros
spectra-share = parte que pasa
spectra-left-filter = izquierdo: { $filter }
spectra-right-filter = derecho: { $filter }
spectra-passes-left = Lo que pasa al ojo izquierdo
spectra-passes-right = Lo que pasa al ojo derecho
spectra-scale = luz, misma escala
spectra-light = { $light } { $share } %
spectra-note = Porcentajes: lo brillante que es esa luz para el ojo, respecto al blanco de la página sin filtro.
spectra-note-leak = Porcentajes: lo brillante que es esa luz para el ojo, respecto al blanco de la página sin filtro. Un ojo del que solo se conoce la fuga tiene la curva de un filtro ideal; sus porcentajes cuentan la fuga.
spectra-wavelength = longitud de onda, nm
spectra-picture = { $title }, según la longitud de onda, de 380 a 780 nm. Curvas: { $curves }.
