# Comprobaciones breves: lo que ve cada ojo y si se une.

# Las dos mitades de una línea junto a una escala. Es vertical u horizontal.
nonius-goal = { $form ->
    [upright] Vea si se encuentran las dos mitades de una línea vertical.
   *[level] Vea si se encuentran las dos mitades de una línea horizontal.
    }
nonius-zero = Mire el cero de la escala. Los dos ojos ven la escala.
nonius-ticks = { $form ->
    [upright] Sin mover los ojos, vea adónde apuntan la mitad superior y la inferior.
   *[level] Sin mover los ojos, vea adónde apuntan la mitad izquierda y la derecha.
    }
nonius-note = Anote las dos marcas en su diario. Mire a lo lejos y luego mire otra vez. Con un minuto basta.
nonius-tell = Si las mitades siguen separadas, dígaselo a su profesional. No cambie nada por su cuenta.
nonius-see = { $form ->
    [upright] La mitad superior y la inferior están quietas, encima y debajo de la misma marca.
   *[level] La mitad izquierda y la derecha están quietas, a ambos lados de la misma marca.
    }
nonius-only-first = { $form ->
    [upright] la mitad superior
   *[level] la mitad izquierda
    }
nonius-only-second = { $form ->
    [upright] la mitad inferior
   *[level] la mitad derecha
    }
nonius-only-apart = mitades separadas
nonius-apart = No fuerce nada. Diga a su profesional qué marcas anotó.

# Un punto para un ojo en un marco para el otro.
inset-goal = Vea dos imágenes distintas, una con cada ojo, como una sola.
inset-corners = Mire los cuatro trazos de las esquinas. Los dos ojos los ven.
inset-middle = Ahora mire al centro. Deje que el punto y el marco se junten.
inset-see = Un punto que se queda dentro del marco cuadrado, con un trazo en cada esquina.
inset-only-frame = el marco
inset-only-dot = el punto
inset-only-drift = un punto que se sale
inset-drift = Descanse y repita. Si siempre pasa, dígaselo a su profesional.

# Marcas para cada ojo, en grupos de tres tamaños.
who-goal = Descubra qué ojo ve cada marca y vea que participan los dos.
who-largest = Mire el cuadrado más grande. Vea qué marcas tiene encima.
who-cover = Tápese el ojo derecho: quedan anillos y cuadrados. Tápese el izquierdo: quedan cruces y cuadrados.
who-note = Con los dos ojos abiertos, mire cada cuadrado. Anote el más pequeño que tiene su anillo y su cruz. Con un minuto basta.
who-see = Tres cuadrados, cada uno con un anillo y una cruz encima, todos a la vez.
who-only-rings = anillos y cuadrados
who-only-crosses = cruces y cuadrados
who-only-turns = marcas que van y vienen
who-turns = Los ojos se turnan. Descanse y siga con las más grandes.

# Un contorno en partes, unas para cada ojo: mitades, o por turnos.
halves-goal = Junte las partes de dos imágenes para formar { $shape-gender ->
    [f] una sola
   *[m] un solo
    } { $shape }.
halves-dot = Mire el punto del centro. Los dos ojos lo ven.
halves-cover = Tápese el ojo derecho y luego el izquierdo: cada ojo tiene sus propias partes.
halves-close = Con los dos ojos abiertos, mire el punto y deje que { $shape-the } se cierre a su alrededor.
halves-see = { $shape-gender ->
    [f] Una { $shape } entera
   *[m] Un { $shape } entero
    } alrededor de un punto, con pequeños huecos entre sus partes.
halves-only-left = { $deal ->
    [sides] la mitad izquierda
   *[turns] las partes del ojo izquierdo
    }
halves-only-right = { $deal ->
    [sides] la mitad derecha
   *[turns] las partes del ojo derecho
    }
halves-only-apart = partes que no se juntan
halves-apart = Descanse y repita. Si nunca se juntan, dígaselo a su profesional.
