# Las partes de un libro además de precauciones, comprobaciones y ejercicios.

# Who the book is for

audience-title = Para quién es este libro
audience-lead = Practicar con los dos ojos conviene a unas personas y a otras no. Lea por favor toda esta página.
audience-description = Para quién es el libro, quién debe preguntar antes y para quién no es.
audience-one-heading = Para una sola persona
audience-one = { $by } ajustó este libro para una sola persona. ¿No es usted? No lo use.
audience-for = Puede convenirle si
audience-for-1 = es una persona adulta, o hay una a su lado;
audience-for-2 = quiere practicar con los dos ojos a la vez;
audience-for-3 = un profesional de la vista le ha revisado los ojos en el último año;
audience-for-4 = ese profesional le dijo que para usted es seguro practicar.
audience-ask = Pregunte antes si
audience-ask-1 = un ojo se desvía, o ve mucho menos que el otro;
audience-ask-2 = a veces ve doble, o lleva un prisma nuevo;
audience-ask-3 = algo de la página de precauciones es su caso.
audience-not = No es para usted si
audience-not-1 = la visión doble es nueva o repentina: busque ayuda médica ahora;
audience-not-2 = un profesional le dijo que no practique con los dos ojos a la vez;
audience-not-3 = ve con un solo ojo;
audience-not-4 = quiere saber qué les pasa a sus ojos: estas páginas no pueden decirlo;
audience-not-5 = lo quiere en lugar de gafas, parche, medicinas o cirugía;
audience-not-6 = tiene menos de 18 años y no le acompaña un adulto.
audience-expect = Qué esperar
audience-expect-1 = Nadie puede prometer qué hará la práctica por usted. Algunas personas ven pronto la profundidad, otras tarde, otras nunca.
audience-expect-2 = Vaya a su ritmo. Puede parar en cualquier momento, y está bien así.

# What the reader needs

needs-title = Qué necesita
needs-lead = Prepárelo todo antes de empezar. Así nada le distraerá.
needs-description = Gafas, papel o pantalla, luz, mesa y tiempo.
needs-eyes = Para los ojos
needs-glasses = Gafas con dos filtros: { $glasses }.
needs-own-glasses = Sus propias gafas debajo, si lee con gafas. Si lleva un prisma, no se lo quite.
needs-clean = Un paño suave. Los filtros limpios dejan pasar la luz correcta.
needs-paper = Para las páginas
needs-paper-1 = Una impresora en color. Imprima al 100 %, con la mejor calidad, sin ahorrar tinta.
needs-paper-2 = Papel blanco mate, de 100 a 120 g. El papel brillante da reflejos.
needs-paper-3 = Deje secar la tinta. Guarde las páginas planas y lejos del sol.
needs-paper-4 = Sin fotocopias: cambian las tintas y a menudo el tamaño.
needs-screen = Para las páginas
needs-screen-1 = Una pantalla de 32 cm de ancho o más. Un teléfono es demasiado pequeño.
needs-screen-2 = Muestre las páginas al 100 %, a pantalla completa. La comprobación del tamaño le dice cómo.
needs-screen-3 = Desactive los colores nocturnos y el brillo automático. Limpie la pantalla.
needs-light = Luz
needs-light-1 = Luz uniforme sobre la página, sin reflejos ni sombras.
needs-light-2 = La misma lámpara cada vez: otra puede traer una imagen fantasma.
needs-desk = En la mesa
needs-ruler = Una regla y un cordel de { $distance } para mantener la distancia.
needs-pencil = Un lápiz para el diario y las casillas.
needs-flat = La página plana y recta frente a su cara.
needs-upright = Una silla para sentarse con la espalda recta. Con la cabeza inclinada las dos imágenes se separan.
needs-time = Tiempo
needs-minutes = { $minutes ->
    [one] Como mucho un minuto tranquilo al día.
   *[other] Como mucho { $minutes } minutos tranquilos al día.
    }
needs-time-usual = Como mucho de 10 a 15 minutos tranquilos al día.
needs-distance-rest = Una ventana o una habitación larga, para descansar la vista a lo lejos.
needs-aloud = Si lo desea, alguien que le lea las palabras.

# The level map

map-title = Su mapa
map-lead = Cada círculo es una página. Coloréelo cuando la página le resulte fácil. No hay prisa, y ningún círculo es obligatorio.
map-description = Cada página de ejercicio como un círculo para colorear, por series.
map-grade = grado { $n }
map-go = Ir a la página { $n }
map-check = Para empezar
map-check-about = ¿Participan los dos ojos?
map-toward = Hacia delante
map-toward-about = Las figuras están delante de la página. Sus ojos giran hacia dentro.
map-away = Hacia atrás
map-away-about = Las figuras están detrás de la página. Sus ojos giran hacia fuera.
map-jump = Saltos
map-jump-about = Mira de una profundidad a otra.
map-smooth = Por un sendero
map-smooth-about = Sigue una línea por la profundidad.
map-depth = Ver la profundidad
map-depth-about = Descubre qué está más cerca.

# Glossary: each word, and what it means

glossary-title = Palabras de este libro
glossary-lead = Significados sencillos, tal como este libro usa las palabras.
glossary-description = Qué significan los términos, en frases sencillas.
glossary-word = { $word }:
glossary-anaglyph = anaglifo
    .means = Una imagen en dos colores, uno para cada ojo. Unas gafas con dos filtros la separan.
glossary-arc-second = segundo de arco (segarc)
    .means = Un ángulo muy pequeño: un grado tiene 3600. Con él se miden las profundidades pequeñas.
glossary-away = atrás, hacia atrás
    .means = Algo parece estar detrás de la página. Sus ojos giran un poco hacia fuera.
glossary-base = desplazamiento base
    .means = Toda la imagen está desplazada. Solo un profesional lo ajusta, para una persona.
glossary-base-in-out = base externa, base interna
    .means = Nombres de los prismas. La base externa gira los ojos hacia dentro, como las imágenes hacia delante. La base interna, hacia fuera.
glossary-comfort = bienestar
    .means = Cómo se siente, de 0 a 10: 0 es bueno, 10 es malo.
glossary-convergence = convergencia
    .means = Los dos ojos giran hacia dentro, a algo cercano.
glossary-demand = demanda
    .means = Cuánto pide una página que giren sus ojos, contado desde la propia página.
glossary-divergence = divergencia
    .means = Los dos ojos giran hacia fuera, a algo más lejano.
glossary-double = doble
    .means = Ve una cosa dos veces.
glossary-eye-turn = desviación de un ojo
    .means = Un ojo no mira lo que mira el otro.
glossary-fusion = fusión, fusionar
    .means = Su cerebro une las imágenes de los dos ojos en una.
glossary-ghost = imagen fantasma
    .means = Un rastro de la imagen de un ojo que el otro también ve.
glossary-grade = grado
    .means = Cuánto pide una página, de 1 a 10. No es una nota para usted.
glossary-jump = salto
    .means = Mira de golpe de una profundidad a otra.
glossary-level = nivel
    .means = Un paso de un ejercicio. Los niveles altos piden más.
glossary-lock-frame = marco de apoyo
    .means = Un marco que va con una figura. Ayuda a sus ojos a quedarse en ella.
glossary-parallax = paralaje
    .means = Cuánto se separan en la página las dos imágenes de una figura.
glossary-prism-dioptre = dioptría prismática (dp)
    .means = Una medida del giro de los ojos. 1 dp es 1 cm a 1 m de distancia.
glossary-random-dots = puntos al azar
    .means = Puntos puestos al azar. Solo los dos ojos juntos encuentran en ellos la figura.
glossary-reserve = reserva
    .means = Cuánto pueden girar sus ojos antes de ver borroso o doble. La mide un profesional.
glossary-single = único (una sola)
    .means = Ve una cosa una sola vez, con los dos ojos abiertos.
glossary-stereopsis = estereopsis
    .means = Ver la profundidad porque sus dos ojos miran desde dos lugares.
glossary-stop-rule = regla de parada
    .means = Cuándo parar enseguida. Está en cada página de ejercicio.
glossary-strand = serie
    .means = Páginas de un mismo tipo, que van de fácil a difícil.
glossary-suppression = supresión
    .means = Su cerebro deja fuera la imagen de un ojo, a menudo para no ver doble.
glossary-toward = delante, hacia delante
    .means = Algo parece estar delante de la página. Sus ojos giran un poco hacia dentro.
glossary-vergence = vergencia
    .means = Los dos ojos giran en sentidos opuestos: hacia dentro o hacia fuera.
glossary-watch-marks = señales de control
    .means = La barra plana es para el ojo izquierdo, la cuña para el derecho. Si ve las dos, participan los dos ojos.

# Sources

sources-title = Fuentes
sources-lead = Los números y las reglas de este libro se apoyan en estos trabajos. Algunos se leyeron solo en resumen. Apoyan los números; ninguno examinó este libro.
sources-description = Los trabajos publicados en que se apoyan los números y las reglas del libro.
sources-depth = Profundidad y distancia
sources-limits = Cuánto pueden girar y fusionar los ojos
sources-grades = Qué hace más difícil una página
sources-dots = Puntos al azar
sources-ghost = Colores e imágenes fantasma
sources-safety = Rayas y dibujos repetidos
sources-page = Tamaño e impresión
sources-none = Sin fuente
sources-none-words = Los minutos al día, los descansos, los pasos entre niveles y cuándo seguir son costumbre. Ningún trabajo publicado los fija.

# Licence and credits

licence-title = Licencia y créditos
licence-description = Qué puede hacer con el libro y de quién es el trabajo que contiene.
licence-book = Este libro
licence-author = { $title } es de { $author }.
licence-credits = Créditos
licence-typeface = Tipografía
licence-typeface-words = Las palabras están compuestas en Atkinson Hyperlegible Next, con la SIL Open Font License 1.1.
licence-contact = Errores y preguntas
licence-contact-words = Escriba por favor a { $contact }.

# Versions and errors

versions-title = Versiones y errores
versions-lead = Tiene la versión { $version } del { $date }. Debajo está lo que cambió, primero lo más nuevo.
versions-description = Las versiones del libro con lo que cambió en cada una.
versions-release = Versión { $version } · { $date }
versions-error = ¿Encontró un error?
versions-error-words = Anote la versión y el número de la página. ¿Una página le parece incorrecta? Déjela de lado.
versions-contact = Escriba por favor a { $contact }.
