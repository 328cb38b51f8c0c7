# Las páginas de comprobación: gafas, imagen fantasma y tamaño.

# What every check ends in

check-go = Adelante
check-fix = Arreglar
check-ask = Preguntar

# Glasses

glasses-title = Compruebe sus gafas
glasses-lead = Póngase las gafas: { $glasses }. Mire las tres figuras.
glasses-picture = Ojo izquierdo: una barra plana y un anillo. Ojo derecho: un anillo y una cuña. Los dos ojos juntos: barra, anillo y cuña.
glasses-bar = barra: ojo izquierdo
glasses-ring = anillo: los dos ojos
glasses-wedge = cuña: ojo derecho
glasses-should = Qué debería ver
glasses-close = Cierre un ojo cada vez; no lo apriete.
glasses-with = Mire con
glasses-see = Debería ver
glasses-left-alone = Solo el ojo izquierdo
glasses-left-alone-see = barra y anillo, sin cuña
glasses-right-alone = Solo el ojo derecho
glasses-right-alone-see = anillo y cuña, sin barra
glasses-both = Los dos ojos
glasses-both-see = barra, anillo y cuña
glasses-go = ¿Todo está como en la tabla y los colores son cómodos durante medio minuto? Pase a la página siguiente.
glasses-fix-swapped = ¿Barra y cuña cambiadas? Las gafas están al revés: { $left } va delante del ojo izquierdo, { $right } delante del derecho.
glasses-fix-missing = ¿A un ojo le falta su propia figura? Limpie las gafas, use más luz y mire otra vez.
glasses-fix-comes = ¿Con los dos ojos abiertos, una figura va y viene? Parpadee, espere un poco, mire el anillo.
glasses-fix-ghost = ¿Un rastro pálido de la figura del otro ojo? Es una imagen fantasma: la mide otra página.
glasses-ask = ¿Aún falta una figura, o le molestan los colores? Quítese las gafas y no siga. Pregunte a su profesional de la vista. Es frecuente y no es culpa suya.

# Ghost

ghost-title = Compruebe si hay imagen fantasma
ghost-lead = Una imagen fantasma es un rastro de la señal del otro ojo. Muestra dónde el filtro, los colores y la luz no encajan.
ghost-lead-off-base = Una imagen fantasma es un rastro de la señal del otro ojo. Muestra dónde el filtro, los colores y la luz no encajan. Esta página no lleva el desplazamiento base: mira un ojo cada vez.
ghost-description = Casillas numeradas para cada ojo, para saber cuánto se ve de las señales del otro.
ghost-left-open = Ojo izquierdo abierto, derecho cerrado
ghost-right-open = Ojo derecho abierto, izquierdo cerrado
ghost-left-picture = Casillas numeradas. En cada una hay una cuña para el ojo derecho. Para el ojo izquierdo se desvanece en una de ellas.
ghost-right-picture = Casillas numeradas. En cada una hay una barra para el ojo izquierdo. Para el ojo derecho se desvanece en una de ellas.
ghost-number = Número
ghost-left-percent = Ojo izq., %
ghost-right-percent = Ojo der., %
ghost-look = Cómo mirar
ghost-look-on = Gafas puestas: { $glasses }. Use la luz con la que practica.
ghost-look-left = Cierre el ojo derecho. ¿En qué casilla de la fila del ojo izquierdo se desvanece más la cuña? Anote el número.
ghost-look-right = Cierre el ojo izquierdo. Busque el número de las barras en la otra fila. Entre dos números, tome el más alto.
ghost-hint-white = Con su filtro, el ojo abierto ve cada casilla como un fondo algo más oscuro que el anterior. En los números bajos la señal es más oscura que su casilla, en los altos más clara. Entre ellos se pierde en la casilla.
ghost-hint-black = Con su filtro, el ojo abierto ve cada casilla como un fondo algo más claro que el anterior. En los números bajos la señal es más clara que su casilla, en los altos más oscura. Entre ellos se pierde en la casilla.
ghost-range = { $first } a { $last }
ghost-go-little = ¿Su número es { $left } para el ojo izquierdo y { $right } para el derecho? Estas páginas le muestran poca o ninguna imagen fantasma. Pase a la página siguiente.
ghost-go-weak = ¿Su número es { $left } para el ojo izquierdo y { $right } para el derecho? Estas páginas le muestran como mucho una imagen fantasma débil. Pase a la página siguiente.
ghost-go-none = En estas páginas la imagen fantasma no es débil con ningún número: quien las hizo aceptó una fuerte. Vea más abajo.
ghost-fix = ¿Otro número? Puede verse una imagen fantasma.
ghost-fix-print = Imprima otra vez en color y con la mejor calidad, en papel mate.
ghost-fix-lamp = Pruebe otra lámpara.
ghost-fix-colours = Desactive los colores nocturnos, baje el brillo.
ghost-fix-wipe = Limpie la pantalla y los filtros.
ghost-fix-straight = Mire la pantalla de frente.
ghost-fix-again = Luego mire otra vez.
ghost-ask = ¿Sigue saliendo otro número, o la señal no se desvanece en ninguno? No practique con estas páginas. Pida a quien las hizo páginas con tintas para sus números.
ghost-maker = Para quien hace las páginas
ghost-holds-print = Las casillas son tonos impresos: los números valen para este papel, esta impresora y esta lámpara. Anote los tres.
ghost-holds-screen = Los números valen para esta pantalla con este brillo.
ghost-write = Escriba los porcentajes bajo [glasses] en set.toml y genere el libro de nuevo. Para izquierda 3, derecha 6:

# Size

scale-title = Compruebe el tamaño
scale-description = Una barra de 100 mm, un cuadrado de 50 mm y el contorno de una tarjeta bancaria, para medir.
scale-lead-paper = Mida la barra con una regla y ponga una tarjeta bancaria sobre su contorno. Las profundidades solo son exactas a tamaño real.
scale-lead-screen = Acerque una regla a la barra o una tarjeta bancaria a su contorno. Cambie el zoom hasta que coincidan, a pantalla completa.
scale-lead-paper-off-base = Mida la barra con una regla y ponga una tarjeta bancaria sobre su contorno. Las profundidades solo son exactas a tamaño real. Esta página no lleva el desplazamiento base: se mide, no se mira con las gafas.
scale-lead-screen-off-base = Acerque una regla a la barra o una tarjeta bancaria a su contorno. Cambie el zoom hasta que coincidan, a pantalla completa. Esta página no lleva el desplazamiento base: se mide, no se mira con las gafas.
scale-bar = Barra: 100 mm de extremo a extremo
scale-bar-picture = Una barra de 100 mm.
scale-square = Cuadrado: 50 mm por lado
scale-square-picture = Un cuadrado de 50 mm.
scale-card = Tarjeta bancaria: 85,6 × 54 mm
scale-card-picture = El contorno de una tarjeta bancaria, 85,60 por 53,98 mm.
scale-go = ¿La barra mide 100 mm, o la tarjeta encaja en su contorno? Pase a la página siguiente.
scale-off = Si el tamaño no es exacto
scale-measures = La barra mide
scale-from = Mire desde
scale-fix-print = Imprima otra vez al 100 %, «tamaño real», sin «ajustar a la página».
scale-fix-keep = Si no puede, conserve la página y cambie la distancia según la tabla.
scale-fix-zoom = Ajuste el zoom para que la barra mida 100 mm.
scale-fix-distance = Si no puede, cambie la distancia según la tabla.
scale-ask-paper = ¿Más de 6 mm de diferencia? No use la copia. Pida ayuda con la impresora.
scale-ask-screen = ¿Más de 6 mm de diferencia? Use una pantalla mayor o la edición en papel. Pídala a quien hizo las páginas.
