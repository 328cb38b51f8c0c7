# Precauciones, y cómo usar el libro.

# Cautions

cautions-title = Lea esto primero, por favor
cautions-description = Precauciones: a quién preguntar, cuándo buscar ayuda, cuándo parar.
cautions-ask = Pregunte antes de empezar
cautions-ask-1 = Hágase revisar la vista si no lo hizo en el último año. Pregunte: «¿Es seguro para mí practicar con los dos ojos a la vez?».
cautions-ask-2 = Pregunte antes si un ojo se desvía o ve mucho menos, si ve doble o le tiemblan los ojos. También con un prisma nuevo, tras una operación de ojos o una lesión en la cabeza.
cautions-ask-3 = Pregunte antes con enfermedad de tiroides, nervios o músculos, con convulsiones o con mareos. También con migraña causada por dibujos repetidos o con náuseas del embarazo.
cautions-ask-4 = Los grandes estudios dejaron fuera a muchas personas con un ojo desviado u operado. Nadie puede decir qué hará la práctica por usted.
cautions-ask-5 = Menores de 18: solo con una persona adulta al lado y cinco minutos como mucho. El nivel lo fija un profesional.
cautions-stop = Regla de parada
cautions-help = Busque ayuda médica ahora
cautions-help-words = Visión doble nueva o repentina, aunque desaparezca. Un párpado caído, pupilas desiguales, pérdida de visión. Un dolor de cabeza nuevo o muy fuerte. Debilidad en cara o brazo, dificultad para hablar, dolor de mandíbula o cuero cabelludo. Cualquiera de estas cosas tras un golpe en la cabeza. Llame al número de emergencias; esto nunca es parte de la práctica.
cautions-safe = Por su seguridad
cautions-safe-1 = No practique antes ni durante estas cosas: conducir, ir en bicicleta, subir a sitios altos, nadar, cocinar, usar máquinas. Espere al menos 30 minutos, hasta ver nítido y sin imagen doble.
cautions-safe-2 = Nunca después de tomar alcohol o tranquilizantes, ni con fiebre, ni con mucho cansancio.
cautions-safe-3 = Como mucho de 10 a 15 minutos al día. Mire a lo lejos medio minuto después de cada página.
cautions-safe-4 = Si los colores o los dibujos le molestan, quítese las gafas y pare. Está bien así.
cautions-about = Sobre este libro
cautions-about-words = Este libro es solo informativo y no ofrece ninguna garantía. Es un conjunto de páginas de práctica, no una prueba ni un tratamiento. Siempre va primero lo que digan su profesional de la vista titulado y las normas de donde vive.
cautions-base = Todas las imágenes llevan un desplazamiento base ({ $base }), fijado por { $by } para una sola persona. No use, preste ni copie este libro para nadie más. Vale solo a { $distance }. No cambie nada por su cuenta.

# How to use the book

how-title = Cómo usar estas páginas
how-description = Qué hace falta, cómo funciona una página, cuándo avanzar y cuándo retroceder.
how-needs = Qué necesita
how-needs-glasses = Gafas: { $glasses }. Lleve sus propias gafas debajo.
how-needs-paper = Una página impresa al 100 %, plana y recta.
how-needs-screen = Una pantalla que muestre la página al 100 %, plana y recta.
how-needs-ruler = Una regla o un cordel de { $distance }.
how-needs-light = Luz uniforme sin reflejos, y un lápiz para el diario.
how-each-day = Cada día
how-day-check = Compruebe gafas, imagen fantasma y tamaño (tres páginas).
how-day-start = Empiece con el primer ejercicio. Mantenga { $distance } de los ojos a la página.
how-day-practise = Practique dos o tres minutos, mire a lo lejos y siga.
how-day-end = Termine cada vez mirando a lo lejos.
how-works = Cómo funciona una página
how-works-pictures = Cada ojo recibe su propia imagen. Su cerebro une las dos. Las figuras separadas parecen venir hacia delante o irse hacia atrás. Un marco va con una figura y ayuda a sus ojos a quedarse en ella.
how-picture = Ojo izquierdo: un anillo con una barra plana dentro. Ojo derecho: el mismo anillo con una cuña dentro. Los dos ojos juntos: un anillo con barra y cuña.
how-works-marks = La barra plana es solo para el ojo izquierdo, la cuña solo para el derecho. Si ve las dos, participan los dos ojos.
how-works-grade = El grado arriba en la página, de 1 a 10, dice cuánto pide la página. No es una nota para usted.
how-move-on = Avance cuando
how-move-on-1 = Fue fácil en tres días distintos y estaban las dos señales.
how-move-on-2 = El bienestar siguió bueno: de 0 a 2 sobre 10, donde 10 es malo.
how-step-back = Retroceda cuando
how-step-back-1 = Falta una señal, o todo se ve doble.
how-step-back-2 = El bienestar llega a 4 sobre 10. Descanse y tome una página más fácil.
