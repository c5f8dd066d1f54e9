<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AheadView</name>
    <message numerus="yes">
        <source>%n month(s)</source>
        <translation>
            <numerusform>%n mes</numerusform>
            <numerusform>%n meses</numerusform>
        </translation>
    </message>
    <message>
        <source>Bands leave one future in ten below and one in ten above; the line within is the middle, the dashed one is the room there is.</source>
        <translation>Las bandas dejan un futuro de cada diez por debajo y uno de cada diez por encima; la línea de dentro es el centro, la discontinua es el espacio que hay.</translation>
    </message>
    <message>
        <source>Copy as a table</source>
        <translation>Copiar como tabla</translation>
    </message>
    <message>
        <source>Stopped: draw again</source>
        <translation>Detenido: simular de nuevo</translation>
    </message>
    <message>
        <source>To know of this plan</source>
        <translation>Para tener en cuenta de este plan</translation>
    </message>
    <message>
        <source>What the months ahead may bring</source>
        <translation>Lo que pueden traer los próximos meses</translation>
    </message>
    <message>
        <source>count in what will be sown</source>
        <translation>contar lo que se va a sembrar</translation>
    </message>
    <message>
        <source>drawing 4000 futures</source>
        <translation>simulando 4000 futuros</translation>
    </message>
    <message>
        <source>months ahead</source>
        <translation>meses por delante</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>parar</translation>
    </message>
</context>
<context>
    <name>BarEnd</name>
    <message>
        <source>Book</source>
        <translation>Libro</translation>
    </message>
    <message>
        <source>Help, F1</source>
        <translation>Ayuda, F1</translation>
    </message>
    <message>
        <source>The book and its file</source>
        <translation>El libro y su archivo</translation>
    </message>
</context>
<context>
    <name>BenchView</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1 is to stay in %2</source>
        <translation>%1 debe quedar en %2</translation>
    </message>
    <message>
        <source>%1 may be moved again</source>
        <translation>%1 puede volver a moverse</translation>
    </message>
    <message>
        <source>Benches</source>
        <translation>Mesas</translation>
    </message>
    <message>
        <source>Copy as a table</source>
        <translation>Copiar como tabla</translation>
    </message>
    <message>
        <source>How full each place runs</source>
        <translation>Cuánto se llena cada lugar</translation>
    </message>
    <message>
        <source>Looking for the fewest moves …</source>
        <translation>Buscando los menos traslados …</translation>
    </message>
    <message>
        <source>Nothing has to be moved or put anywhere.</source>
        <translation>No hay nada que mover ni colocar.</translation>
    </message>
    <message>
        <source>Pin it</source>
        <translation>Fijarlo</translation>
    </message>
    <message>
        <source>Pinned</source>
        <translation>Fijados</translation>
    </message>
    <message>
        <source>Stopped: look again</source>
        <translation>Detenido: buscar de nuevo</translation>
    </message>
    <message>
        <source>To do</source>
        <translation>Por hacer</translation>
    </message>
    <message>
        <source>a lot's code</source>
        <translation>código de un lote</translation>
    </message>
    <message>
        <source>is to stand in</source>
        <translation>debe estar en</translation>
    </message>
    <message>
        <source>let go</source>
        <translation>soltar</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>quedar</translation>
    </message>
    <message>
        <source>take what is found by now</source>
        <translation>tomar lo hallado hasta ahora</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>watered pots are heavy: lift 25 kg at most, close to the body; a bench bears what its maker says.</source>
        <translation>las macetas regadas pesan: levante a lo sumo 25 kg, pegado al cuerpo; una mesa soporta lo que dice su fabricante.</translation>
    </message>
</context>
<context>
    <name>BookPage</name>
    <message>
        <source>A whole copy, best on another disk. This book stays open.</source>
        <translation>Una copia completa, mejor en otro disco. Este libro sigue abierto.</translation>
    </message>
    <message>
        <source>Bring in an old spreadsheet</source>
        <translation>Incorporar una hoja de cálculo antigua</translation>
    </message>
    <message>
        <source>Copy it</source>
        <translation>Copiarlo</translation>
    </message>
    <message>
        <source>Copy the book</source>
        <translation>Copiar el libro</translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>Its file gets another name or folder; the copy is checked before the old file goes.</source>
        <translation>Su archivo recibe otro nombre u otra carpeta; la copia se comprueba antes de quitar el archivo anterior.</translation>
    </message>
    <message>
        <source>Lots or parent plants from a list kept elsewhere, its columns matched by hand.</source>
        <translation>Lotes o plantas progenitoras de una lista llevada en otra parte, con sus columnas asignadas a mano.</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Moverlo</translation>
    </message>
    <message>
        <source>Name the nursery</source>
        <translation>Poner nombre al vivero</translation>
    </message>
    <message>
        <source>Open another book</source>
        <translation>Abrir otro libro</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>Put the book elsewhere</source>
        <translation>Poner el libro en otro lugar</translation>
    </message>
    <message>
        <source>The file it becomes</source>
        <translation>El archivo que pasa a ser</translation>
    </message>
    <message>
        <source>The file of the book, typed or dropped here</source>
        <translation>El archivo del libro, escrito o soltado aquí</translation>
    </message>
    <message>
        <source>The file of the copy</source>
        <translation>El archivo de la copia</translation>
    </message>
    <message>
        <source>This one is kept as it is. The book opened last opens by itself the next time.</source>
        <translation>Este se guarda tal como está. El último libro abierto se abre solo la próxima vez.</translation>
    </message>
    <message>
        <source>What stands on the cover, on papers and on labels.</source>
        <translation>Lo que figura en la portada, en los documentos y en las etiquetas.</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Caution: %1</source>
        <translation>Precaución: %1</translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>none in the book yet</source>
        <translation>todavía ninguno en el libro</translation>
    </message>
    <message>
        <source>not chosen yet</source>
        <translation>sin elegir todavía</translation>
    </message>
</context>
<context>
    <name>CopiesPart</name>
    <message>
        <source>Go back</source>
        <translation>Volver atrás</translation>
    </message>
    <message>
        <source>Go back to the copy of %1, %2</source>
        <translation>Volver a la copia de %1, %2</translation>
    </message>
    <message>
        <source>Looking into the copies …</source>
        <translation>Revisando las copias…</translation>
    </message>
    <message>
        <source>No copy stands beside this book.</source>
        <translation>No hay ninguna copia junto a este libro.</translation>
    </message>
    <message>
        <source>The book copies itself whenever it is opened after a change. Going back keeps what stands there now.</source>
        <translation>El libro se copia solo cada vez que se abre tras un cambio. Al volver atrás se conserva lo que hay ahora.</translation>
    </message>
    <message>
        <source>Undo the going back</source>
        <translation>Deshacer la vuelta atrás</translation>
    </message>
</context>
<context>
    <name>CountField</name>
    <message>
        <source>%1, one less</source>
        <translation>%1, uno menos</translation>
    </message>
    <message>
        <source>%1, one more</source>
        <translation>%1, uno más</translation>
    </message>
</context>
<context>
    <name>Counter</name>
    <message>
        <source>%1, one less</source>
        <translation>%1, uno menos</translation>
    </message>
    <message>
        <source>%1, one more</source>
        <translation>%1, uno más</translation>
    </message>
</context>
<context>
    <name>CrossPage</name>
    <message>
        <source>% of the seed sown</source>
        <translation>% de la semilla sembrada</translation>
    </message>
    <message>
        <source>%1 °C·days</source>
        <translation>%1 °C·días</translation>
    </message>
    <message>
        <source>Its trays</source>
        <translation>Sus bandejas</translation>
    </message>
    <message>
        <source>The shade around the curve is its range, day by day.</source>
        <translation>La sombra en torno a la curva es su intervalo, día a día.</translation>
    </message>
    <message>
        <source>sown</source>
        <translation>sembrada</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semana %1</translation>
    </message>
    <message>
        <source>where it may end</source>
        <translation>donde puede acabar</translation>
    </message>
</context>
<context>
    <name>CrossesPage</name>
    <message>
        <source>Crosses to make</source>
        <translation>Cruces por hacer</translation>
    </message>
    <message>
        <source>Reckoning …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>To know of this</source>
        <translation>Para tener en cuenta</translation>
    </message>
    <message>
        <source>as if every female cones</source>
        <translation>como si toda hembra diera cono</translation>
    </message>
    <message>
        <source>hybrids too</source>
        <translation>también híbridos</translation>
    </message>
    <message>
        <source>take back what is fixed</source>
        <translation>quitar lo fijado</translation>
    </message>
    <message>
        <source>what matters most</source>
        <translation>lo que más importa</translation>
    </message>
    <message>
        <source>whatever the room</source>
        <translation>sea cual sea el espacio</translation>
    </message>
</context>
<context>
    <name>CrossesView</name>
    <message>
        <source>By %1: the share of seed sown in which the truth lies 95 times in 100; the mark is what is likely. The highest come first.</source>
        <translation>A %1: la proporción de semilla sembrada en la que la verdad está 95 veces de 100; la marca es lo probable. Las más altas van primero.</translation>
    </message>
    <message>
        <source>Save this report beside the book</source>
        <translation>Guardar este informe junto al libro</translation>
    </message>
    <message>
        <source>What came up of each cross belongs here, as soon as trays are sown and looked at.</source>
        <translation>Aquí va lo que nació de cada cruce, en cuanto se siembran y revisan bandejas.</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>cruce</translation>
    </message>
    <message>
        <source>cross and season</source>
        <translation>cruce y temporada</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>degree-days</source>
        <translation>grados-día</translation>
    </message>
    <message>
        <source>save as %1</source>
        <translation>guardar como %1</translation>
    </message>
    <message>
        <source>season</source>
        <translation>temporada</translation>
    </message>
    <message>
        <source>taken together by</source>
        <translation>agrupado por</translation>
    </message>
    <message>
        <source>times in</source>
        <translation>tiempos en</translation>
    </message>
    <message>
        <source>working it out …</source>
        <translation>calculando…</translation>
    </message>
</context>
<context>
    <name>DayField</name>
    <message>
        <source>a day earlier</source>
        <translation>un día antes</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>un día después</translation>
    </message>
</context>
<context>
    <name>DeedPage</name>
    <message>
        <source>Enter it</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
</context>
<context>
    <name>Deeds</name>
    <message>
        <source>Add paper</source>
        <translation>Añadir documento</translation>
    </message>
    <message>
        <source>Amend place</source>
        <translation>Corregir lugar</translation>
    </message>
    <message>
        <source>Check scales</source>
        <translation>Mirar escamas</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>Limpiar</translation>
    </message>
    <message>
        <source>Collect pollen</source>
        <translation>Recoger polen</translation>
    </message>
    <message>
        <source>Correct plant</source>
        <translation>Corregir planta</translation>
    </message>
    <message>
        <source>Cut some open</source>
        <translation>Abrir algunas</translation>
    </message>
    <message>
        <source>Died</source>
        <translation>Murió</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Desechar</translation>
    </message>
    <message>
        <source>Discard pollen</source>
        <translation>Desechar polen</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Cosechar</translation>
    </message>
    <message>
        <source>Inspect</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Label wanted</source>
        <translation>Pedir etiqueta</translation>
    </message>
    <message>
        <source>Looked at again</source>
        <translation>Vistas de nuevo</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>New cone</source>
        <translation>Cono nuevo</translation>
    </message>
    <message>
        <source>On the table</source>
        <translation>En la mesa</translation>
    </message>
    <message>
        <source>Plan move</source>
        <translation>Planear traslado</translation>
    </message>
    <message>
        <source>Plant out</source>
        <translation>Plantar fuera</translation>
    </message>
    <message>
        <source>Pollen collected</source>
        <translation>Polen recogido</translation>
    </message>
    <message>
        <source>Pollinate</source>
        <translation>Polinizar</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Maceta</translation>
    </message>
    <message>
        <source>Pot on</source>
        <translation>Trasplantar</translation>
    </message>
    <message>
        <source>Put off or strike</source>
        <translation>Aplazar o tachar</translation>
    </message>
    <message>
        <source>Recount</source>
        <translation>Recontar</translation>
    </message>
    <message>
        <source>Sell</source>
        <translation>Vender</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Clasificar</translation>
    </message>
    <message>
        <source>Sow</source>
        <translation>Sembrar</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Strike paper</source>
        <translation>Tachar documento</translation>
    </message>
    <message>
        <source>Test pollen</source>
        <translation>Probar polen</translation>
    </message>
    <message>
        <source>Watch male cone</source>
        <translation>Mirar cono masculino</translation>
    </message>
    <message>
        <source>Water changed</source>
        <translation>Agua cambiada</translation>
    </message>
</context>
<context>
    <name>DiaryFacts</name>
    <message>
        <source>What is known</source>
        <translation>Lo que se sabe</translation>
    </message>
</context>
<context>
    <name>DueRow</name>
    <message>
        <source>later</source>
        <translation>luego</translation>
    </message>
    <message>
        <source>put off or strike: %1</source>
        <translation>aplazar o tachar: %1</translation>
    </message>
</context>
<context>
    <name>EmptyView</name>
    <message>
        <source>Trays to empty, as of %1</source>
        <translation>Bandejas por vaciar, a %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abrir</translation>
    </message>
    <message>
        <source>open %1</source>
        <translation>abrir %1</translation>
    </message>
    <message>
        <source>working it out …</source>
        <translation>calculando…</translation>
    </message>
</context>
<context>
    <name>FirstCone</name>
    <message>
        <source>Begin the book with this cone</source>
        <translation>Empezar el libro con este cono</translation>
    </message>
    <message>
        <source>Enter the first cone</source>
        <translation>Anotar el primer cono</translation>
    </message>
    <message>
        <source>Is it so?</source>
        <translation>¿Es así?</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Polen</translation>
    </message>
    <message>
        <source>Step %1 of %2: %3</source>
        <translation>Paso %1 de %2: %3</translation>
    </message>
    <message>
        <source>The cone</source>
        <translation>El cono</translation>
    </message>
    <message>
        <source>The file of the book</source>
        <translation>El archivo del libro</translation>
    </message>
    <message>
        <source>The nursery has no name yet. Write one; it can be changed later.</source>
        <translation>El vivero aún no tiene nombre. Escriba uno; se puede cambiar después.</translation>
    </message>
    <message>
        <source>The nursery's name</source>
        <translation>El nombre del vivero</translation>
    </message>
    <message>
        <source>The plant that bears the cone</source>
        <translation>La planta que lleva el cono</translation>
    </message>
    <message>
        <source>Where the pollen came from, and when</source>
        <translation>De dónde vino el polen, y cuándo</translation>
    </message>
    <message>
        <source>Your nursery</source>
        <translation>Su vivero</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>its cone, first seen on %1; the scales are %2</source>
        <translation>su cono, visto por primera vez el %1; las escamas están %2</translation>
    </message>
    <message>
        <source>pollen of %1 on %2, put in %3</source>
        <translation>polen de %1 el %2, método: %3</translation>
    </message>
    <message>
        <source>pollen of a father nobody knows on %1, put in %2</source>
        <translation>polen de un padre desconocido el %1, método: %2</translation>
    </message>
</context>
<context>
    <name>FormField</name>
    <message>
        <source>Enter a kind of tray or pot now</source>
        <translation>Anotar ahora un tipo de bandeja o maceta</translation>
    </message>
    <message>
        <source>Enter a mix now</source>
        <translation>Anotar ahora una mezcla</translation>
    </message>
    <message>
        <source>Enter a place now</source>
        <translation>Anotar ahora un lugar</translation>
    </message>
</context>
<context>
    <name>FoundList</name>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
</context>
<context>
    <name>GoodRow</name>
    <message>
        <source>, counted %1</source>
        <translation>, contado el %1</translation>
    </message>
    <message>
        <source>keeps months</source>
        <translation>meses que se conserva</translation>
    </message>
    <message>
        <source>room for, %1</source>
        <translation>espacio para, %1</translation>
    </message>
    <message>
        <source>there, %1</source>
        <translation>hay, %1</translation>
    </message>
</context>
<context>
    <name>HelpPane</name>
    <message>
        <source>All of the help</source>
        <translation>Toda la ayuda</translation>
    </message>
    <message>
        <source>Close the help</source>
        <translation>Cerrar la ayuda</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Nothing has all of these words. Try one alone.</source>
        <translation>Nada contiene todas estas palabras. Pruebe con una sola.</translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation>Buscar en la ayuda</translation>
    </message>
    <message>
        <source>close</source>
        <translation>cerrar</translation>
    </message>
    <message>
        <source>search the help</source>
        <translation>buscar en la ayuda</translation>
    </message>
</context>
<context>
    <name>HelpTexts</name>
    <message>
        <source>A book is one file with all of a nursery. Begin with the first cone, or bring in an old spreadsheet, or look at the demo first. The book opened last opens by itself the next time.</source>
        <translation>Un libro es un solo archivo con todo un vivero. Empiece con el primer cono, incorpore una hoja de cálculo antigua o vea antes el ejemplo. El último libro abierto se abre solo la próxima vez.</translation>
    </message>
    <message>
        <source>A house holds benches, a bench bays. With length and width the plan knows how much fits.</source>
        <translation>Un invernadero contiene mesas, y una mesa, tramos. Con el largo y el ancho, el plan sabe cuánto cabe.</translation>
    </message>
    <message>
        <source>A kind of tray or pot</source>
        <translation>Una clase de bandeja o maceta</translation>
    </message>
    <message>
        <source>A look at the scales</source>
        <translation>Una revisión de las escamas</translation>
    </message>
    <message>
        <source>A parent plant</source>
        <translation>Una planta progenitora</translation>
    </message>
    <message>
        <source>A place</source>
        <translation>Un lugar</translation>
    </message>
    <message>
        <source>A potting mix</source>
        <translation>Una mezcla de sustrato</translation>
    </message>
    <message>
        <source>A round</source>
        <translation>Una ronda</translation>
    </message>
    <message>
        <source>A sharp blade and a slippery seed: hold it in a clamp and cut away from the hand. </source>
        <translation>Una hoja afilada y una semilla resbaladiza: sujétela en una mordaza y corte alejando la hoja de la mano. </translation>
    </message>
    <message>
        <source>A tray in the hand</source>
        <translation>Una bandeja en la mano</translation>
    </message>
    <message>
        <source>All parts of cycads are poisonous, seed most of all: wear gloves, keep pets, livestock and children away. If any was eaten, see a vet or doctor at once.</source>
        <translation>Todas las partes de las cícadas son venenosas, la semilla sobre todo: use guantes, aleje mascotas, ganado y niños. Si alguien comió algo, acuda enseguida al veterinario o al médico.</translation>
    </message>
    <message>
        <source>Amending a pot, mix, place or kind of plant</source>
        <translation>Corregir una maceta, un sustrato, un lugar o una clase de planta</translation>
    </message>
    <message>
        <source>Batches that are not sown yet. Each goes the same way: clean, sort, cut a few open, store or sow. The harvest table shows a batch as one bar that splits as you work.</source>
        <translation>Partidas que aún no se han sembrado. Todas siguen el mismo camino: limpiar, clasificar, abrir algunas, guardar o sembrar. La mesa de cosecha muestra la partida como una barra que se divide a medida que usted trabaja.</translation>
    </message>
    <message>
        <source>Beginning a book</source>
        <translation>Empezar un libro</translation>
    </message>
    <message>
        <source>Bottom heat: a protected circuit, and the thermostat's probe in the medium.</source>
        <translation>Calor de fondo: circuito protegido, y la sonda del termostato dentro del sustrato.</translation>
    </message>
    <message>
        <source>Bringing in an old spreadsheet</source>
        <translation>Incorporar una hoja de cálculo antigua</translation>
    </message>
    <message>
        <source>Buy in</source>
        <translation>Comprar</translation>
    </message>
    <message>
        <source>Choose the batch's filled seed, the kind of tray and how many; the seeds are shared out evenly. Each tray gets a code for its label.</source>
        <translation>Elija la semilla llena de la partida, la clase de bandeja y cuántas; las semillas se reparten por igual. Cada bandeja recibe un código para su etiqueta.</translation>
    </message>
    <message>
        <source>Choose what to print, the stock and the layout. Print the test page once and tell what its rulers measure, so that labels sit where they should. The code is always there, as symbol and in letters.</source>
        <translation>Elija qué imprimir, el papel y la disposición. Imprima una vez la página de prueba y diga qué miden sus reglas, para que las etiquetas queden en su sitio. El código está siempre, como símbolo y en letras.</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>Limpiar</translation>
    </message>
    <message>
        <source>Closed, loose or tight again: the days between loose and tight are those in which pollen can be taken.</source>
        <translation>Cerradas, sueltas o apretadas de nuevo: los días entre sueltas y apretadas son aquellos en que el cono puede recibir polen.</translation>
    </message>
    <message>
        <source>Cones</source>
        <translation>Conos</translation>
    </message>
    <message>
        <source>Count again</source>
        <translation>Contar de nuevo</translation>
    </message>
    <message>
        <source>Cut some open</source>
        <translation>Abrir algunas</translation>
    </message>
    <message>
        <source>Died</source>
        <translation>Murió</translation>
    </message>
    <message>
        <source>Each female cone with its scales, its passes and when it may be ripe, as a range learned from the plant and its taxon.</source>
        <translation>Cada cono femenino con sus escamas, sus pasadas y cuándo puede estar maduro, como un intervalo aprendido de la planta y de su taxón.</translation>
    </message>
    <message>
        <source>Every cross that the cones and the pollen on hand allow, with kinship and the plants to expect, and the best choice within pollen and bench. Pin one that must be made, forbid one that must not; what cannot be is said in words.</source>
        <translation>Cada cruce que permiten los conos y el polen existente, con el parentesco y las plantas que cabe esperar, y la mejor elección dentro del polen y de la mesa. Fije uno que deba hacerse, prohíba uno que no; lo que no puede ser se dice con palabras.</translation>
    </message>
    <message>
        <source>Finding your way</source>
        <translation>Cómo orientarse</translation>
    </message>
    <message>
        <source>For good, into the ground. It leaves the pots but not the book.</source>
        <translation>Para siempre, en el suelo. Sale de las macetas pero no del libro.</translation>
    </message>
    <message>
        <source>From the tray into a first pot, leaves first. They become a pot group of their own, or join one of the same cone and judgement.</source>
        <translation>De la bandeja a una primera maceta, las que tienen hojas primero. Forman un grupo de macetas propio o se unen a uno del mismo cono y juicio.</translation>
    </message>
    <message>
        <source>Germination of each cross as a range, what is still to come, what may explain the differences, and what loggers measured. Crosses that share a letter cannot be told apart by the counts there are.</source>
        <translation>Germinación de cada cruce como intervalo, lo que falta por venir, lo que puede explicar las diferencias y lo que midieron los registradores. Los cruces que comparten una letra no pueden distinguirse con los recuentos que hay.</translation>
    </message>
    <message>
        <source>Give it another place. A bench's label scanned on a round does the same for many.</source>
        <translation>Dele otro lugar. La etiqueta de una mesa leída en una ronda hace lo mismo para muchos.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Cosechar</translation>
    </message>
    <message>
        <source>Here the book is named, copied, put elsewhere, and another one opened. A copy is whole and can be made while the book is open. Keep one on another disk. An old spreadsheet can be brought in here at any time.</source>
        <translation>Aquí se pone nombre al libro, se copia, se pone en otro lugar y se abre otro. Una copia es completa y puede hacerse con el libro abierto. Guarde una en otro disco. Una hoja de cálculo antigua puede incorporarse aquí en cualquier momento.</translation>
    </message>
    <message>
        <source>Into the next size of pot. Take as many as are ready; the rest stay where they are.</source>
        <translation>A la medida siguiente de maceta. Tome tantas como estén listas; las demás se quedan donde están.</translation>
    </message>
    <message>
        <source>Its parts by volume, and how much volume is lost when they are mixed. Measure it once with a bucket.</source>
        <translation>Sus componentes por volumen, y cuánto volumen se pierde al mezclarlos. Mídalo una vez con un cubo.</translation>
    </message>
    <message>
        <source>Its real litres and size, measured: a class name of the trade is no volume.</source>
        <translation>Sus litros y medidas reales, medidos: un nombre de clase del comercio no es un volumen.</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>Leaves and cones carry spines: long sleeves, gloves and something over the eyes.</source>
        <translation>Las hojas y los conos tienen espinas: manga larga, guantes y algo que proteja los ojos.</translation>
    </message>
    <message>
        <source>Many cycads are protected: check whether this needs a permit. The program keeps papers, the authority decides.</source>
        <translation>Muchas cícadas están protegidas: mire si esto necesita permiso. El programa guarda los documentos, decide la autoridad.</translation>
    </message>
    <message>
        <source>Mind your back: lift close to the body, and not above about 25 kg alone.</source>
        <translation>Cuide su espalda: levante pegado al cuerpo, y no más de unos 25 kg a solas.</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Name, taxon, sex once a cone showed it, origin and papers. What is set right later leaves what stood before in the book.</source>
        <translation>Nombre, taxón, sexo una vez que lo mostró un cono, origen y documentos. Lo que se corrige después deja en el libro lo que constaba antes.</translation>
    </message>
    <message>
        <source>Nothing is rubbed out. Undo, or the entry's own button in a lot's history, enters its mirror; both stay to be seen. Then enter it anew.</source>
        <translation>No se borra nada. Deshacer, o el botón de la propia anotación en el historial de un lote, anota su reflejo; ambos siguen a la vista. Después anótelo de nuevo.</translation>
    </message>
    <message>
        <source>One lot</source>
        <translation>Un lote</translation>
    </message>
    <message>
        <source>One pass over a cone whose scales are loose. Repeat it every second or third day until the cone tightens (common practice). Enter each pass with its own pollen and, where you know it, the amount.</source>
        <translation>Una pasada por un cono con las escamas sueltas. Repítala cada dos o tres días hasta que el cono se apriete (práctica común). Anote cada pasada con su propio polen y, si la sabe, la cantidad.</translation>
    </message>
    <message>
        <source>One question after the other: the plant that bears the cone, what is seen of the cone, the pollen it had and when. Nothing is written before the last step; back changes an answer. The page of the cone then says what comes next, and when.</source>
        <translation>Una pregunta tras otra: la planta que lleva el cono, lo que se ve del cono, el polen que tuvo y cuándo. No se escribe nada antes del último paso; con «atrás» se cambia una respuesta. La página del cono dice después qué sigue, y cuándo.</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Plant out</source>
        <translation>Plantar fuera</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Polen</translation>
    </message>
    <message>
        <source>Pollen collected</source>
        <translation>Polen recogido</translation>
    </message>
    <message>
        <source>Pollen of one male shed over a few days and kept together is one lot. Say how it is kept: that decides how long it lasts.</source>
        <translation>El polen de un macho, soltado en unos pocos días y guardado junto, es un lote. Diga cómo se guarda: eso decide cuánto dura.</translation>
    </message>
    <message>
        <source>Pollen on hand, what should go first standing first, and the male plants. Dry pollen kept cold lasts longest; a germination test on a slide tells what is left in it. A pass without an amount makes what is left an upper bound.</source>
        <translation>El polen existente, con lo que debería gastarse antes en primer lugar, y las plantas macho. El polen seco guardado en frío es el que más dura; una prueba de germinación en un portaobjetos dice lo que queda en él. Una pasada sin cantidad hace de lo que queda un límite superior.</translation>
    </message>
    <message>
        <source>Pollinate</source>
        <translation>Polinizar</translation>
    </message>
    <message>
        <source>Pot groups: plants of one cone in one size of pot that are moved together. What is due for a larger pot says so.</source>
        <translation>Grupos de macetas: plantas de un cono en una medida de maceta que se mueven juntas. Lo que ya necesita una maceta mayor lo dice.</translation>
    </message>
    <message>
        <source>Pot on</source>
        <translation>Trasplantar</translation>
    </message>
    <message>
        <source>Pot seedlings</source>
        <translation>Pasar plántulas a maceta</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Macetas</translation>
    </message>
    <message>
        <source>Pots, litres of mix and bench space of the coming months: the line is the likeliest, the band holds it eight times in ten. The first month that does not fit is named.</source>
        <translation>Macetas, litros de sustrato y espacio de mesa de los próximos meses: la línea es lo más probable, la banda lo contiene ocho de cada diez veces. Se nombra el primer mes que no cabe.</translation>
    </message>
    <message>
        <source>Potting mix can carry Legionella: wet it, wear mask and gloves, open bags away from the face, wash hands.</source>
        <translation>La mezcla de sustrato puede llevar Legionella: humedézcala, use mascarilla y guantes, abra los sacos lejos de la cara, lávese las manos.</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Save the sheet as CSV. Say for each column what it holds; what no column holds can be said for all rows. Try it out as often as you like: each row says what it would become, each fault stands with its line and column. Nothing is written until no fault is left and you take it in. Rows of one cross with the same days count as one cone. Pots keep their parents in words, since nobody knows any more how many seeds were sown for them.</source>
        <translation>Guarde la hoja como CSV. Diga de cada columna qué contiene; lo que no contiene ninguna columna puede decirse para todas las filas. Pruébelo cuantas veces quiera: cada fila dice en qué se convertiría, cada error figura con su línea y su columna. No se escribe nada hasta que no quede ningún error y usted la incorpore. Las filas de un cruce con los mismos días cuentan como un cono. Las macetas conservan sus padres en palabras, porque ya nadie sabe cuántas semillas se sembraron para ellas.</translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation>Plan de temporada</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Semilla</translation>
    </message>
    <message>
        <source>Seed of many cycads must ripen on for months before it can sprout. Say where it lies and until when; it comes up again when it is time to look.</source>
        <translation>La semilla de muchas cícadas debe seguir madurando durante meses antes de poder brotar. Diga dónde está y hasta cuándo; vuelve a aparecer cuando toca mirarla.</translation>
    </message>
    <message>
        <source>Seed or plants from elsewhere. Write what the supplier says of parents and papers into the note.</source>
        <translation>Semilla o plantas de otra parte. Escriba en la nota lo que dice el proveedor de los padres y los documentos.</translation>
    </message>
    <message>
        <source>Seed that was sown. Look at each tray from time to time and enter the look even when nothing is new: that is knowledge too. Beside the counts stands what is still to come, as a range.</source>
        <translation>Semilla ya sembrada. Revise cada bandeja de vez en cuando y anote la revisión aunque no haya nada nuevo: también eso es saber. Junto a los recuentos está lo que falta por venir, como intervalo.</translation>
    </message>
    <message>
        <source>Seed, seedlings or plants that died. Enter what is seen, on the day it is seen.</source>
        <translation>Semillas, plántulas o plantas que murieron. Anote lo que se ve, el día en que se ve.</translation>
    </message>
    <message>
        <source>Sell</source>
        <translation>Vender</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Clasificar</translation>
    </message>
    <message>
        <source>Sow</source>
        <translation>Sembrar</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Take the flesh off, soak and change the water. Enter what was lost, also when it is none.</source>
        <translation>Quite la sarcotesta, ponga en remojo y cambie el agua. Anote lo que se perdió, también cuando no fue nada.</translation>
    </message>
    <message>
        <source>Taking back a mistake</source>
        <translation>Anular un error</translation>
    </message>
    <message>
        <source>Tap plus for each new root, each first leaf, each seed taken out dead. Count only what is new since the last look. Nothing new is one tap. Scan the next tray to enter this one and go on.</source>
        <translation>Toque el más por cada raíz nueva, cada primera hoja, cada semilla muerta retirada. Cuente solo lo nuevo desde la última revisión. Nada nuevo es un solo toque. Lea la bandeja siguiente para anotar esta y continuar.</translation>
    </message>
    <message>
        <source>Tell filled seed from empty by a test that leaves it whole: floating, shaking, by eye, by X-ray. What judged a seed stays with it through tray and pot, so the test can be judged later.</source>
        <translation>Distinga la semilla llena de la vacía con una prueba que la deje entera: por flotación, agitándola, a simple vista, por rayos X. Lo que juzgó una semilla la acompaña por la bandeja y la maceta, de modo que después pueda juzgarse la prueba.</translation>
    </message>
    <message>
        <source>The bar is the batch, its pieces what was lost, sank, floated and opened. The range on it is how many are filled. Floaters are not thrown away unopened unless the float test is known to hold for the taxon: a year would be lost.</source>
        <translation>La barra es la partida, sus trozos lo que se perdió, se hundió, flotó y se abrió. El intervalo sobre ella es cuántas están llenas. Las que flotan no se tiran sin abrir, salvo que se sepa que la prueba de flotación vale para el taxón: se perdería un año.</translation>
    </message>
    <message>
        <source>The book and its file</source>
        <translation>El libro y su archivo</translation>
    </message>
    <message>
        <source>The cone falls apart; count the seeds, or weigh hundreds of them and then all. From here every seed is accounted for.</source>
        <translation>El cono se deshace; cuente las semillas, o pese unos centenares y después todas. Desde aquí se da cuenta de cada semilla.</translation>
    </message>
    <message>
        <source>The first cone</source>
        <translation>El primer cono</translation>
    </message>
    <message>
        <source>The harvest table</source>
        <translation>La mesa de cosecha</translation>
    </message>
    <message>
        <source>The line at the top, or down the left edge, goes from pollen to out: tap a station to see what is there. The field at the bottom takes a scan, a code or a name from any page. Escape goes back one step, Tab and the arrows walk through everything, F6 goes to the next part of the window, End goes past a list, Ctrl+Z takes back the last entry, F1 opens this help.</source>
        <translation>La línea de arriba, o la del borde izquierdo, va del polen a la salida: toque una estación para ver qué hay allí. El campo de abajo admite una lectura, un código o un nombre desde cualquier página. Escape vuelve un paso atrás, Tab y las flechas lo recorren todo, F6 pasa a la parte siguiente de la ventana, Fin deja atrás una lista, Ctrl+Z anula la última anotación, F1 abre esta ayuda.</translation>
    </message>
    <message>
        <source>The only sure answer, at the price of the seed. A few of each part narrow the range much; the harvest table says how much a tenth more would show.</source>
        <translation>La única respuesta segura, al precio de la semilla. Unas pocas de cada parte estrechan mucho el intervalo; la mesa de cosecha dice cuánto mostraría abrir una décima parte más.</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Tirar</translation>
    </message>
    <message>
        <source>To whom and for how much. The papers of a sale lead each plant back to its parents.</source>
        <translation>A quién y por cuánto. Los documentos de una venta llevan cada planta hasta sus padres.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Bandejas</translation>
    </message>
    <message>
        <source>Walk past the trays: scan one, tap what is new, scan the next. A bench's label moves what is scanned after it. A round stands in the book with each tap, so it can be left and gone on with later.</source>
        <translation>Recorra las bandejas: lea una, toque lo nuevo, lea la siguiente. La etiqueta de una mesa mueve allí lo que se lea después. La ronda consta en el libro con cada toque, así que puede dejarse y seguirse más tarde.</translation>
    </message>
    <message>
        <source>Watch a male cone</source>
        <translation>Observar un cono masculino</translation>
    </message>
    <message>
        <source>What is due, in walking order, with the reason and the days it has. A tap on the thing opens it; done, later and strike answer the line. The list can be written for a calendar program.</source>
        <translation>Lo que está pendiente, en orden de paso, con el motivo y los días que tiene. Un toque en la cosa la abre; hecho, más tarde y tachar responden a la línea. La lista puede escribirse para un programa de calendario.</translation>
    </message>
    <message>
        <source>What is thrown away on purpose. Floaters that nobody cut open are asked about first.</source>
        <translation>Lo que se tira a propósito. Antes se pregunta por las semillas que flotan y que nadie abrió.</translation>
    </message>
    <message>
        <source>What it is, how many, where; its line back to the cone with what was lost at each step; what can be done now, likeliest first; its history, each entry to be taken back by one that names it.</source>
        <translation>Qué es, cuántas son, dónde están; su línea hasta el cono con lo perdido en cada paso; lo que puede hacerse ahora, primero lo más probable; su historial, donde cada anotación puede anularse con otra que la nombra.</translation>
    </message>
    <message>
        <source>What was entered wrong is put right in its row, and all that is reckoned goes by it from then on. What stood before is kept in the book, so it is not undone but amended again.</source>
        <translation>Lo que se anotó mal se corrige en su registro, y desde entonces todo se calcula con ello. Lo que decía antes queda en el libro; por eso no se deshace, sino que se corrige otra vez.</translation>
    </message>
    <message>
        <source>What was sold, planted out, given up or died. Everything here still leads back to its cone.</source>
        <translation>Lo que se vendió, se plantó fuera, se abandonó o murió. Todo lo de aquí sigue llevando hasta su cono.</translation>
    </message>
    <message>
        <source>When it comes loose, is taken off, is spent. A cone that sheds is due for collecting.</source>
        <translation>Cuándo se suelta, se quita, se agota. De un cono que suelta polen toca recogerlo.</translation>
    </message>
    <message>
        <source>When there are more or fewer than the book says. The difference is noted as unexplained and reported, not hidden.</source>
        <translation>Cuando hay más o menos de lo que dice el libro. La diferencia se anota como inexplicada y se informa de ella, no se oculta.</translation>
    </message>
    <message>
        <source>Which crosses to make</source>
        <translation>Qué cruces hacer</translation>
    </message>
</context>
<context>
    <name>History</name>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Anular: %1</translation>
    </message>
    <message>
        <source>keep it</source>
        <translation>conservarla</translation>
    </message>
    <message>
        <source>take back</source>
        <translation>anular</translation>
    </message>
    <message>
        <source>take it back now</source>
        <translation>anular ahora</translation>
    </message>
</context>
<context>
    <name>InspectPage</name>
    <message>
        <source>Enter it</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>Line and history</source>
        <translation>Línea e historial</translation>
    </message>
    <message>
        <source>Nothing new</source>
        <translation>Nada nuevo</translation>
    </message>
    <message>
        <source>new leaves</source>
        <translation>hojas nuevas</translation>
    </message>
    <message>
        <source>new roots</source>
        <translation>raíces nuevas</translation>
    </message>
    <message>
        <source>taken out dead</source>
        <translation>muertas retiradas</translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>Print on %1</source>
        <translation>Imprimir en %1</translation>
    </message>
    <message numerus="yes">
        <source>Save %n as PDF</source>
        <translation>
            <numerusform>Guardar %n en PDF</numerusform>
            <numerusform>Guardar %n en PDF</numerusform>
        </translation>
    </message>
    <message>
        <source>The first page as it will be printed</source>
        <translation>La primera página tal como se imprimirá</translation>
    </message>
    <message>
        <source>all of them</source>
        <translation>todas</translation>
    </message>
    <message>
        <source>another stock</source>
        <translation>otro papel</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegida</translation>
    </message>
    <message>
        <source>file for the labels</source>
        <translation>archivo para las etiquetas</translation>
    </message>
    <message>
        <source>first free label</source>
        <translation>primera etiqueta libre</translation>
    </message>
    <message>
        <source>labels</source>
        <translation>etiquetas</translation>
    </message>
    <message>
        <source>no printer here</source>
        <translation>aquí no hay impresora</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>places</source>
        <translation>lugares</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>things</source>
        <translation>cosas</translation>
    </message>
    <message>
        <source>what the labels say</source>
        <translation>qué dicen las etiquetas</translation>
    </message>
</context>
<context>
    <name>LineBack</name>
    <message>
        <source>The line back to the cone</source>
        <translation>La línea hasta el cono</translation>
    </message>
</context>
<context>
    <name>LineStep</name>
    <message>
        <source>%1 on hand</source>
        <translation>%1 existentes</translation>
    </message>
    <message>
        <source>%1 still in %2</source>
        <translation>%1 todavía en %2</translation>
    </message>
    <message>
        <source>%1 went into other lots</source>
        <translation>%1 pasaron a otros lotes</translation>
    </message>
</context>
<context>
    <name>ListRow</name>
    <message>
        <source>due: %1</source>
        <translation>pendiente: %1</translation>
    </message>
</context>
<context>
    <name>LookPage</name>
    <message>
        <source>Days and numbers are written as the system has them: today is %1. The command line and files stay English, with days like 2026-03-09.</source>
        <translation>Los días y los números se escriben como en el sistema: hoy es %1. La línea de órdenes y los archivos siguen en inglés, con días como 2026-03-09.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Look and language</source>
        <translation>Aspecto e idioma</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>The book keeps litres and metres whatever is chosen here, so nothing in it changes. 1 US gal is 3.785411784 L.</source>
        <translation>El libro guarda litros y metros sea lo que sea lo elegido aquí, así que nada cambia en él. 1 US gal son 3,785411784 L.</translation>
    </message>
    <message>
        <source>US gallons, ft², inches, °F</source>
        <translation>galones de EE. UU. (US gal), ft², pulgadas (in), °F</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>litres, m², mm, °C</source>
        <translation>litros, m², mm, °C</translation>
    </message>
    <message>
        <source>night</source>
        <translation>noche</translation>
    </message>
    <message>
        <source>strong sun</source>
        <translation>sol fuerte</translation>
    </message>
    <message>
        <source>the system's</source>
        <translation>el del sistema</translation>
    </message>
</context>
<context>
    <name>LotPage</name>
    <message>
        <source>Standing here</source>
        <translation>Está aquí</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>%1 was scanned twice within a moment; once counts</source>
        <translation>%1 se leyó dos veces en un instante; cuenta una</translation>
    </message>
</context>
<context>
    <name>MonthTable</name>
    <message>
        <source>close</source>
        <translation>cerrar</translation>
    </message>
</context>
<context>
    <name>NextOfCone</name>
    <message>
        <source>What comes next</source>
        <translation>Qué sigue</translation>
    </message>
</context>
<context>
    <name>NothingChosen</name>
    <message>
        <source>A new cone, or pollen collected, is begun on the page of its plant.</source>
        <translation>Un cono nuevo, o polen recogido, se anota en la página de su planta.</translation>
    </message>
    <message>
        <source>Amend a kind of plant</source>
        <translation>Corregir una clase de planta</translation>
    </message>
    <message>
        <source>Amend a kind of pot</source>
        <translation>Corregir una clase de maceta</translation>
    </message>
    <message>
        <source>Amend a kind of tray</source>
        <translation>Corregir una clase de bandeja</translation>
    </message>
    <message>
        <source>Amend a mix</source>
        <translation>Corregir un sustrato</translation>
    </message>
    <message>
        <source>Amend a place</source>
        <translation>Corregir un lugar</translation>
    </message>
    <message>
        <source>Buy in</source>
        <translation>Comprar</translation>
    </message>
    <message>
        <source>Choose something from the list, or scan its label.</source>
        <translation>Elija algo de la lista o lea su etiqueta.</translation>
    </message>
    <message>
        <source>How pollen keeps</source>
        <translation>Cómo se conserva el polen</translation>
    </message>
    <message>
        <source>New kind of pot</source>
        <translation>Nueva clase de maceta</translation>
    </message>
    <message>
        <source>New kind of tray</source>
        <translation>Nueva clase de bandeja</translation>
    </message>
    <message>
        <source>New mix</source>
        <translation>Sustrato nuevo</translation>
    </message>
    <message>
        <source>New place</source>
        <translation>Lugar nuevo</translation>
    </message>
    <message>
        <source>New plant</source>
        <translation>Planta nueva</translation>
    </message>
    <message>
        <source>The nursery</source>
        <translation>El vivero</translation>
    </message>
    <message>
        <source>What you reckon with</source>
        <translation>Con qué calcula</translation>
    </message>
</context>
<context>
    <name>OfferForm</name>
    <message>
        <source>A further offer</source>
        <translation>Otra oferta</translation>
    </message>
    <message>
        <source>Enter the offer</source>
        <translation>Anotar la oferta</translation>
    </message>
    <message>
        <source>at least so many</source>
        <translation>al menos cuántos</translation>
    </message>
    <message>
        <source>by the bag</source>
        <translation>por saco</translation>
    </message>
    <message>
        <source>by the load</source>
        <translation>por carga</translation>
    </message>
    <message>
        <source>days to wait</source>
        <translation>días de espera</translation>
    </message>
    <message>
        <source>delivery, an order</source>
        <translation>envío, por pedido</translation>
    </message>
    <message>
        <source>how it comes</source>
        <translation>cómo viene</translation>
    </message>
    <message>
        <source>pressed bale</source>
        <translation>bala prensada</translation>
    </message>
    <message>
        <source>price of one</source>
        <translation>precio de uno</translation>
    </message>
    <message>
        <source>size of one, %1</source>
        <translation>tamaño de uno, %1</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>times as much loose</source>
        <translation>veces su volumen una vez suelto</translation>
    </message>
    <message>
        <source>weight of one</source>
        <translation>peso de uno</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>qué es</translation>
    </message>
</context>
<context>
    <name>OfferRow</name>
    <message>
        <source>strike</source>
        <translation>tachar</translation>
    </message>
    <message>
        <source>strike the offer: %1, %2</source>
        <translation>tachar la oferta: %1, %2</translation>
    </message>
</context>
<context>
    <name>OldTablePart</name>
    <message>
        <source>%1 holds</source>
        <translation>%1 contiene</translation>
    </message>
    <message>
        <source>Begin the book</source>
        <translation>Empezar el libro</translation>
    </message>
    <message>
        <source>For every row, where no column says it</source>
        <translation>Para todas las filas, donde ninguna columna lo dice</translation>
    </message>
    <message>
        <source>How its dates are written</source>
        <translation>Cómo están escritas sus fechas</translation>
    </message>
    <message>
        <source>Read it</source>
        <translation>Leerla</translation>
    </message>
    <message>
        <source>Reading the sheet …</source>
        <translation>Leyendo la hoja …</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Stop, %1 % done</source>
        <translation>Parar, %1 % hecho</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Incorporarla</translation>
    </message>
    <message>
        <source>The new book's file</source>
        <translation>El archivo del libro nuevo</translation>
    </message>
    <message>
        <source>The nursery's name</source>
        <translation>El nombre del vivero</translation>
    </message>
    <message>
        <source>The sheet comes into a new book.</source>
        <translation>La hoja pasa a un libro nuevo.</translation>
    </message>
    <message>
        <source>The sheet, saved as CSV: its file, typed or dropped here</source>
        <translation>La hoja, guardada como CSV: su archivo, escrito o soltado aquí</translation>
    </message>
    <message>
        <source>Try it out</source>
        <translation>Probarla</translation>
    </message>
    <message>
        <source>What each column holds</source>
        <translation>Qué contiene cada columna</translation>
    </message>
    <message>
        <source>What the rows are</source>
        <translation>Qué son las filas</translation>
    </message>
    <message>
        <source>how its dates are written</source>
        <translation>cómo están escritas sus fechas</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>parent</source>
        <translation>progenitor</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>semilla</translation>
    </message>
    <message>
        <source>such as %1</source>
        <translation>como %1</translation>
    </message>
    <message>
        <source>the nursery's name</source>
        <translation>el nombre del vivero</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>what the rows are</source>
        <translation>qué son las filas</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>mal</translation>
    </message>
</context>
<context>
    <name>OrderLine</name>
    <message>
        <source>order by %1: %2 of %3, %4</source>
        <translation>pedir hasta el %1: %2 de %3, %4</translation>
    </message>
</context>
<context>
    <name>OrderView</name>
    <message>
        <source>%1 for %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>Copy as a table</source>
        <translation>Copiar como tabla</translation>
    </message>
    <message>
        <source>How sure that nothing runs short?</source>
        <translation>¿Con qué seguridad no debe faltar nada?</translation>
    </message>
    <message>
        <source>In the shed</source>
        <translation>En el cobertizo</translation>
    </message>
    <message>
        <source>No mix is needed in the next twelve months.</source>
        <translation>No hace falta sustrato en los próximos doce meses.</translation>
    </message>
    <message>
        <source>Reckoning what to order …</source>
        <translation>Calculando qué pedir …</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>What suppliers offer</source>
        <translation>Lo que ofrecen los proveedores</translation>
    </message>
    <message>
        <source>lift 25 kg at most, close to the body; dry mix dusts and can carry Legionella: wet it, wear mask and gloves.</source>
        <translation>levante a lo sumo 25 kg, pegado al cuerpo; la mezcla seca suelta polvo y puede llevar Legionella: humedézcala, use mascarilla y guantes.</translation>
    </message>
</context>
<context>
    <name>OtherwiseView</name>
    <message>
        <source>By the year, 10 – 50 – 90 %</source>
        <translation>Por año, 10 – 50 – 90 %</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Stopped: draw again</source>
        <translation>Detenido: simular de nuevo</translation>
    </message>
    <message>
        <source>Suppose a change below. Seed at hand and the cones that ripen are counted in. Nothing is written until you take it into the book.</source>
        <translation>Suponga abajo un cambio. La semilla disponible y los conos que maduran están incluidos. No se escribe nada hasta que usted lo pase al libro.</translation>
    </message>
    <message>
        <source>Take it into the book</source>
        <translation>Pasarlo al libro</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Qué pasaría si</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>según el plan</translation>
    </message>
    <message>
        <source>drawing both plans, %1 %</source>
        <translation>simulando ambos planes, %1 %</translation>
    </message>
    <message>
        <source>forget</source>
        <translation>olvidar</translation>
    </message>
    <message>
        <source>forget: %1</source>
        <translation>olvidar: %1</translation>
    </message>
    <message>
        <source>light</source>
        <translation>luz</translation>
    </message>
    <message>
        <source>mean change</source>
        <translation>cambio medio</translation>
    </message>
    <message>
        <source>months</source>
        <translation>meses</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>parar</translation>
    </message>
    <message>
        <source>supposed</source>
        <translation>supuesto</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
</context>
<context>
    <name>PapersPart</name>
    <message>
        <source>Papers</source>
        <translation>Documentos</translation>
    </message>
    <message>
        <source>Save papers as PDF</source>
        <translation>Guardar documentos en PDF</translation>
    </message>
    <message>
        <source>The line back to the parents with their papers, pollinations, harvest and every disposal. No legal advice; the authority decides.</source>
        <translation>La línea hasta los padres con sus documentos, polinizaciones, cosecha y cada salida. No es asesoría legal; decide la autoridad.</translation>
    </message>
    <message>
        <source>file for the papers</source>
        <translation>archivo para los documentos</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>falta: %1</translation>
    </message>
    <message>
        <source>papers of</source>
        <translation>documentos de</translation>
    </message>
</context>
<context>
    <name>PicturesOfRound</name>
    <message>
        <source>%1: enter the move</source>
        <translation>%1: anotar el traslado</translation>
    </message>
    <message>
        <source>A round from pictures</source>
        <translation>Una ronda con fotos</translation>
    </message>
    <message>
        <source>Drop the folder here, or write where it is. Each tray found is marked as seen on the picture's day; moves are entered only when you say so.</source>
        <translation>Suelte aquí la carpeta o escriba dónde está. Cada bandeja hallada se marca como vista el día de la foto; los traslados solo se anotan cuando usted lo diga.</translation>
    </message>
    <message numerus="yes">
        <source>Enter %n move(s)</source>
        <translation>
            <numerusform>Anotar %n traslado</numerusform>
            <numerusform>Anotar %n traslados</numerusform>
        </translation>
    </message>
    <message>
        <source>Moves to look at</source>
        <translation>Traslados por ver</translation>
    </message>
    <message>
        <source>Read them</source>
        <translation>Leerlas</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>day of pictures that do not say theirs</source>
        <translation>día de las fotos que no dicen el suyo</translation>
    </message>
    <message>
        <source>day of pictures that do not say theirs; may stay empty</source>
        <translation>día de las fotos que no dicen el suyo; puede quedar vacío</translation>
    </message>
    <message>
        <source>enter</source>
        <translation>anotar</translation>
    </message>
    <message>
        <source>folder of the pictures</source>
        <translation>carpeta de las fotos</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>dejar</translation>
    </message>
    <message>
        <source>place that was pictured</source>
        <translation>lugar fotografiado</translation>
    </message>
</context>
<context>
    <name>PollenView</name>
    <message>
        <source>Pollen by store and age, as of %1</source>
        <translation>Polen por conservación y edad, a %1</translation>
    </message>
    <message>
        <source>Seed set is of two seeds a fertile scale, where scales were counted. Ranges are for these seeds (95 in 100); cones differ more than that. A cone that took pollen of several ages is not told here.</source>
        <translation>El cuajado se refiere a dos semillas por escama fértil, donde se contaron escamas. Los intervalos son de estas semillas (95 de 100); los conos difieren más. Aquí no se cuenta un cono que recibió polen de varias edades.</translation>
    </message>
    <message>
        <source>What came of pollen stands here once cones were harvested whose pollen is in the book.</source>
        <translation>Aquí consta lo que dio el polen, una vez cosechados conos cuyo polen está en el libro.</translation>
    </message>
    <message>
        <source>germination: %1</source>
        <translation>germinación: %1</translation>
    </message>
    <message>
        <source>seed set: %1</source>
        <translation>cuajado: %1</translation>
    </message>
</context>
<context>
    <name>PossibleCross</name>
    <message>
        <source>do not make %1</source>
        <translation>no hacer %1</translation>
    </message>
    <message>
        <source>forbidden</source>
        <translation>prohibido</translation>
    </message>
    <message>
        <source>make %1</source>
        <translation>hacer %1</translation>
    </message>
    <message>
        <source>make it</source>
        <translation>hacerlo</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>falta: %1</translation>
    </message>
    <message>
        <source>not this</source>
        <translation>este no</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>fijado</translation>
    </message>
    <message>
        <source>plants: %1</source>
        <translation>plantas: %1</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation>propuesto</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source> to %1</source>
        <translation> a %1</translation>
    </message>
    <message>
        <source>sale of %1: %2%3, entry %4</source>
        <translation>venta de %1: %2%3, anotación %4</translation>
    </message>
</context>
<context>
    <name>ReadyBar</name>
    <message>
        <source>Open %1</source>
        <translation>Abrir %1</translation>
    </message>
    <message>
        <source>Scan, type a code or a name</source>
        <translation>Lea, escriba un código o un nombre</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Stop, %1 % done</source>
        <translation>Parar, %1 % hecho</translation>
    </message>
    <message>
        <source>Stop: %1</source>
        <translation>Parar: %1</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>last: %1</source>
        <translation>último: %1</translation>
    </message>
    <message>
        <source>scan, type a code or a name</source>
        <translation>lea, escriba un código o un nombre</translation>
    </message>
    <message>
        <source>‹ undo</source>
        <translation>‹ deshacer</translation>
    </message>
</context>
<context>
    <name>ResultsPage</name>
    <message>
        <source>Germination</source>
        <translation>Germinación</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Polen</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Trays to empty</source>
        <translation>Bandejas por vaciar</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
</context>
<context>
    <name>RoundEnd</name>
    <message>
        <source>Back to today</source>
        <translation>Volver a hoy</translation>
    </message>
    <message>
        <source>The round has ended: %1 seen</source>
        <translation>La ronda terminó: %1 vistas</translation>
    </message>
</context>
<context>
    <name>RoundGoing</name>
    <message>
        <source>%1 seen · all were found</source>
        <translation>%1 vistas · se encontraron todas</translation>
    </message>
    <message>
        <source>%1 seen · next: %2</source>
        <translation>%1 vistas · siguiente: %2</translation>
    </message>
    <message>
        <source>Camera</source>
        <translation>Cámara</translation>
    </message>
    <message>
        <source>End the round</source>
        <translation>Terminar la ronda</translation>
    </message>
    <message>
        <source>Enter it (F5), or scan the next</source>
        <translation>Anotarlo (F5) o leer la siguiente</translation>
    </message>
    <message>
        <source>Nothing new (F5)</source>
        <translation>Nada nuevo (F5)</translation>
    </message>
    <message>
        <source>Scan a tray</source>
        <translation>Lea una bandeja</translation>
    </message>
    <message>
        <source>Still to come, in walking order</source>
        <translation>Por recorrer, en orden de paso</translation>
    </message>
    <message>
        <source>Stop moving</source>
        <translation>Dejar de mover</translation>
    </message>
    <message>
        <source>What is scanned now moves to %1</source>
        <translation>Lo que se lea ahora pasa a %1</translation>
    </message>
    <message>
        <source>new leaves</source>
        <translation>hojas nuevas</translation>
    </message>
    <message>
        <source>new roots</source>
        <translation>raíces nuevas</translation>
    </message>
    <message>
        <source>taken out dead</source>
        <translation>muertas retiradas</translation>
    </message>
    <message>
        <source>‹ undo</source>
        <translation>‹ deshacer</translation>
    </message>
</context>
<context>
    <name>RoundStart</name>
    <message numerus="yes">
        <source>%1: %n tray(s)</source>
        <translation>
            <numerusform>%1: %n bandeja</numerusform>
            <numerusform>%1: %n bandejas</numerusform>
        </translation>
    </message>
    <message>
        <source>All trays due for a look: %1</source>
        <translation>Todas las bandejas que toca revisar: %1</translation>
    </message>
    <message>
        <source>From pictures</source>
        <translation>Con fotos</translation>
    </message>
    <message>
        <source>No tray is due for a look</source>
        <translation>No toca revisar ninguna bandeja</translation>
    </message>
    <message>
        <source>Or one place, with every tray in it</source>
        <translation>O un lugar, con todas sus bandejas</translation>
    </message>
    <message>
        <source>Trays come in walking order. Scan one, tap what is new, scan the next. A bench's label moves what is scanned after it.</source>
        <translation>Las bandejas vienen en orden de paso. Lea una, toque lo nuevo, lea la siguiente. La etiqueta de una mesa mueve allí lo que se lea después.</translation>
    </message>
    <message>
        <source>Walk a round</source>
        <translation>Hacer una ronda</translation>
    </message>
</context>
<context>
    <name>SaveBar</name>
    <message>
        <source>CSV</source>
        <translation>CSV</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Save it</source>
        <translation>Guardarlo</translation>
    </message>
    <message>
        <source>on paper (PDF)</source>
        <translation>en papel (PDF)</translation>
    </message>
    <message>
        <source>spreadsheet</source>
        <translation>hoja de cálculo</translation>
    </message>
    <message>
        <source>the file to save in</source>
        <translation>el archivo en que guardar</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Benches</source>
        <translation>Mesas</translation>
    </message>
    <message>
        <source>Months ahead</source>
        <translation>Próximos meses</translation>
    </message>
    <message>
        <source>Sow for</source>
        <translation>Sembrar para</translation>
    </message>
    <message>
        <source>To order</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Qué pasaría si</translation>
    </message>
</context>
<context>
    <name>SplitBar</name>
    <message>
        <source>%1 too many</source>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>together %1</source>
        <translation>en total %1</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>A book keeps everything of one nursery in one file. Begin in one of these ways; a book you have is opened below, or brought back from its copies.</source>
        <translation>Un libro guarda todo lo de un vivero en un archivo. Empiece de una de estas maneras; un libro que ya tenga se abre abajo, o se recupera de sus copias.</translation>
    </message>
    <message>
        <source>A book that is damaged, lost or spoilt by a mistake, as it was before.</source>
        <translation>Un libro dañado, perdido o estropeado por un error, tal como estaba antes.</translation>
    </message>
    <message>
        <source>A folder of CSV files, as this program exports them, becomes a new book.</source>
        <translation>Una carpeta de archivos CSV, como los exporta este programa, se convierte en un libro nuevo.</translation>
    </message>
    <message>
        <source>A new book, its first plant and the cone on it.</source>
        <translation>Un libro nuevo, su primera planta y el cono que lleva.</translation>
    </message>
    <message>
        <source>An invented nursery with some seasons behind it, to try everything on.</source>
        <translation>Un vivero inventado con algunas temporadas a la espalda, para probarlo todo.</translation>
    </message>
    <message>
        <source>Begin with the first cone</source>
        <translation>Empezar con el primer cono</translation>
    </message>
    <message>
        <source>Bring in an old spreadsheet</source>
        <translation>Incorporar una hoja de cálculo antigua</translation>
    </message>
    <message>
        <source>From a pollinated cone to a plant in its pot</source>
        <translation>De un cono polinizado a una planta en su maceta</translation>
    </message>
    <message>
        <source>Go back to a copy</source>
        <translation>Volver a una copia</translation>
    </message>
    <message>
        <source>Import a season folder</source>
        <translation>Importar una carpeta de temporada</translation>
    </message>
    <message>
        <source>Import it</source>
        <translation>Importarla</translation>
    </message>
    <message>
        <source>Its file, typed or dropped on this window.</source>
        <translation>Su archivo, escrito o soltado en esta ventana.</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Ver el ejemplo</translation>
    </message>
    <message>
        <source>Lots or parent plants from a list kept elsewhere, its columns matched by hand.</source>
        <translation>Lotes o plantas madre y padre de una lista llevada en otra parte, con sus columnas asignadas a mano.</translation>
    </message>
    <message>
        <source>Open a book you have</source>
        <translation>Abrir un libro que ya tiene</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Abrirlo</translation>
    </message>
    <message>
        <source>The file of the book</source>
        <translation>El archivo del libro</translation>
    </message>
    <message>
        <source>The new book's file</source>
        <translation>El archivo del libro nuevo</translation>
    </message>
    <message>
        <source>The season folder</source>
        <translation>La carpeta de temporada</translation>
    </message>
    <message>
        <source>This book is still empty. It begins with a cone.</source>
        <translation>Este libro está vacío todavía. Empieza con un cono.</translation>
    </message>
</context>
<context>
    <name>StationPage</name>
    <message>
        <source>Batches of seed belong here: one for each cone harvested.</source>
        <translation>Aquí van las partidas de semilla: una por cada cono cosechado.</translation>
    </message>
    <message>
        <source>Cones</source>
        <translation>Conos</translation>
    </message>
    <message>
        <source>Cones belong here from the day they are seen. Begin with a plant, then give it its cone.</source>
        <translation>Aquí van los conos desde el día en que se ven. Empiece con una planta y dele luego su cono.</translation>
    </message>
    <message>
        <source>New plant</source>
        <translation>Planta nueva</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Parent plants and their pollen belong here. Begin with a plant.</source>
        <translation>Aquí van las plantas progenitoras y su polen. Empiece con una planta.</translation>
    </message>
    <message>
        <source>Plants in pots belong here. Open a tray with seedlings and pot them.</source>
        <translation>Aquí van las plantas en maceta. Abra una bandeja con plántulas y trasplántelas.</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Polen</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Macetas</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Semilla</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Bandejas</translation>
    </message>
    <message>
        <source>Trays belong here as soon as seed is sown. Open a batch and sow it.</source>
        <translation>Aquí van las bandejas en cuanto se siembra. Abra una partida y siémbrela.</translation>
    </message>
    <message>
        <source>What was sold or planted out is told here.</source>
        <translation>Aquí consta lo que se vendió o se plantó fuera.</translation>
    </message>
    <message>
        <source>by cross</source>
        <translation>por cruce</translation>
    </message>
    <message>
        <source>by place</source>
        <translation>por lugar</translation>
    </message>
    <message>
        <source>choose crosses</source>
        <translation>elegir cruces</translation>
    </message>
    <message>
        <source>labels</source>
        <translation>etiquetas</translation>
    </message>
</context>
<context>
    <name>StillToCome</name>
    <message>
        <source>Still to come</source>
        <translation>Por nacer</translation>
    </message>
    <message>
        <source>working it out …</source>
        <translation>calculando…</translation>
    </message>
</context>
<context>
    <name>StockForm</name>
    <message>
        <source>Correct the printer</source>
        <translation>Corregir la impresora</translation>
    </message>
    <message>
        <source>Keep this stock</source>
        <translation>Guardar este papel</translation>
    </message>
    <message>
        <source>Test page with rulers</source>
        <translation>Página de prueba con reglas</translation>
    </message>
    <message>
        <source>What the test page's rulers measure on paper corrects the printer for this stock.</source>
        <translation>Lo que miden en el papel las reglas de la página de prueba corrige la impresora para este papel.</translation>
    </message>
    <message>
        <source>column pitch, %1</source>
        <translation>paso entre columnas, %1</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>columnas</translation>
    </message>
    <message>
        <source>into the soil, %1</source>
        <translation>dentro del suelo, %1</translation>
    </message>
    <message>
        <source>its name</source>
        <translation>su nombre</translation>
    </message>
    <message>
        <source>label height, %1</source>
        <translation>alto de etiqueta, %1</translation>
    </message>
    <message>
        <source>label width, %1</source>
        <translation>ancho de etiqueta, %1</translation>
    </message>
    <message>
        <source>left margin, %1</source>
        <translation>margen izquierdo, %1</translation>
    </message>
    <message>
        <source>mm across</source>
        <translation>mm de ancho</translation>
    </message>
    <message>
        <source>mm down</source>
        <translation>mm de alto</translation>
    </message>
    <message>
        <source>page height, %1</source>
        <translation>alto de página, %1</translation>
    </message>
    <message>
        <source>page width, %1</source>
        <translation>ancho de página, %1</translation>
    </message>
    <message>
        <source>printer</source>
        <translation>impresora</translation>
    </message>
    <message>
        <source>row pitch, %1</source>
        <translation>paso entre filas, %1</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>filas</translation>
    </message>
    <message>
        <source>top margin, %1</source>
        <translation>margen superior, %1</translation>
    </message>
</context>
<context>
    <name>Strip</name>
    <message numerus="yes">
        <source>%n due</source>
        <translation>
            <numerusform>%n pendiente</numerusform>
            <numerusform>%n pendientes</numerusform>
        </translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aspecto</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Resultados</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Ronda</translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation>Plan de temporada</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>night</source>
        <translation>noche</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>nada pendiente</translation>
    </message>
    <message>
        <source>strong sun</source>
        <translation>sol fuerte</translation>
    </message>
</context>
<context>
    <name>StripStation</name>
    <message>
        <source>%1: %2 on hand</source>
        <translation>%1: %2 existentes</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 on hand, %n due</source>
        <translation>
            <numerusform>%1: %2 existentes, %n pendiente</numerusform>
            <numerusform>%1: %2 existentes, %n pendientes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n due</source>
        <translation>
            <numerusform>%n pendiente</numerusform>
            <numerusform>%n pendientes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SupposeForm</name>
    <message>
        <source>Suppose</source>
        <translation>Suponer</translation>
    </message>
    <message>
        <source>Suppose it</source>
        <translation>Suponerlo</translation>
    </message>
    <message>
        <source>a hot bench</source>
        <translation>una mesa caliente</translation>
    </message>
    <message>
        <source>a place less</source>
        <translation>un lugar menos</translation>
    </message>
    <message>
        <source>a place more</source>
        <translation>un lugar más</translation>
    </message>
    <message>
        <source>another mix</source>
        <translation>otro sustrato</translation>
    </message>
    <message>
        <source>another survival</source>
        <translation>otra supervivencia</translation>
    </message>
    <message>
        <source>as 2027-05</source>
        <translation>como 2027-05</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>cruce</translation>
    </message>
    <message>
        <source>from month</source>
        <translation>desde el mes</translation>
    </message>
    <message>
        <source>heat mats near water: a residual-current device, a thermostat in the medium, and the maker's label.</source>
        <translation>mantas térmicas cerca del agua: un interruptor diferencial, un termostato dentro del sustrato y la etiqueta del fabricante.</translation>
    </message>
    <message>
        <source>in the month</source>
        <translation>en el mes</translation>
    </message>
    <message>
        <source>length, %1</source>
        <translation>largo, %1</translation>
    </message>
    <message>
        <source>light</source>
        <translation>luz</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>sustrato</translation>
    </message>
    <message>
        <source>months after it is ready</source>
        <translation>meses después de estar lista</translation>
    </message>
    <message>
        <source>more seed</source>
        <translation>más semilla</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>no cones this year</source>
        <translation>sin conos este año</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de</translation>
    </message>
    <message>
        <source>other months of potting</source>
        <translation>otros meses de trasplante</translation>
    </message>
    <message>
        <source>part shade</source>
        <translation>media sombra</translation>
    </message>
    <message>
        <source>per cent that live</source>
        <translation>por ciento que sobrevive</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation>semillas</translation>
    </message>
    <message>
        <source>shade</source>
        <translation>sombra</translation>
    </message>
    <message>
        <source>sold sooner or later</source>
        <translation>vendidas antes o después</translation>
    </message>
    <message>
        <source>step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>sun</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>times the days until it comes up</source>
        <translation>veces los días hasta que nace</translation>
    </message>
    <message>
        <source>to month</source>
        <translation>hasta el mes</translation>
    </message>
    <message>
        <source>which</source>
        <translation>cuál</translation>
    </message>
    <message>
        <source>width, %1</source>
        <translation>ancho, %1</translation>
    </message>
</context>
<context>
    <name>TablePage</name>
    <message>
        <source>Cleaning</source>
        <translation>Limpieza</translation>
    </message>
    <message>
        <source>Cut floaters</source>
        <translation>Abrir flotantes</translation>
    </message>
    <message>
        <source>Cut sinkers</source>
        <translation>Abrir hundidas</translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation>Anotarlo</translation>
    </message>
    <message>
        <source>Float</source>
        <translation>Flotar</translation>
    </message>
    <message>
        <source>Float again</source>
        <translation>Flotar otra vez</translation>
    </message>
    <message>
        <source>How many are filled</source>
        <translation>Cuántas están llenas</translation>
    </message>
    <message>
        <source>Line and history</source>
        <translation>Línea e historial</translation>
    </message>
    <message>
        <source>The floaters</source>
        <translation>Las que flotan</translation>
    </message>
    <message>
        <source>seed is poisonous, cut seed most of all. Gloves; keep children and animals away; if any was eaten, see a vet or doctor at once.</source>
        <translation>la semilla es venenosa, abierta más que nada. Guantes; aleje a niños y animales; si alguien comió algo, acuda enseguida al veterinario o al médico.</translation>
    </message>
</context>
<context>
    <name>TargetView</name>
    <message>
        <source>A further target</source>
        <translation>Otra meta</translation>
    </message>
    <message>
        <source>Keep the target</source>
        <translation>Guardar la meta</translation>
    </message>
    <message>
        <source>Reckoning …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Sowing for what is wanted</source>
        <translation>Sembrar para lo que se quiere</translation>
    </message>
    <message>
        <source>as 2029-10</source>
        <translation>como 2029-10</translation>
    </message>
    <message>
        <source>by the end of</source>
        <translation>hasta el final de</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>cruce</translation>
    </message>
    <message>
        <source>how sure, per cent</source>
        <translation>con qué seguridad, por ciento</translation>
    </message>
    <message>
        <source>plants</source>
        <translation>plantas</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>seed is poisonous: gloves; keep pets, livestock and children away.</source>
        <translation>la semilla es venenosa: guantes; aleje mascotas, ganado y niños.</translation>
    </message>
    <message>
        <source>strike</source>
        <translation>tachar</translation>
    </message>
    <message>
        <source>strike the target: %1</source>
        <translation>tachar la meta: %1</translation>
    </message>
</context>
<context>
    <name>TemperatureView</name>
    <message>
        <source>%1, by day; days without temperature are left out</source>
        <translation>%1, por día; se omiten los días sin temperatura</translation>
    </message>
    <message>
        <source>CSV file, typed or dropped here</source>
        <translation>Archivo CSV, escrito o soltado aquí</translation>
    </message>
    <message>
        <source>Lowest, mean and highest temperature of each day.</source>
        <translation>Temperatura mínima, media y máxima de cada día.</translation>
    </message>
    <message>
        <source>Places with a logger</source>
        <translation>Lugares con registrador</translation>
    </message>
    <message>
        <source>Summing up the readings …</source>
        <translation>Sumando las lecturas …</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>Take in a logger's file</source>
        <translation>Incorporar el archivo de un registrador</translation>
    </message>
    <message>
        <source>Temperature of the places</source>
        <translation>Temperatura de los lugares</translation>
    </message>
    <message>
        <source>What a logger measured here belongs here: take in its CSV file below. Days can then be counted as degree-days, and germination held against temperature.</source>
        <translation>Aquí va lo que midió un registrador: incorpore abajo su archivo CSV. Los días pueden contarse entonces como grados-día, y la germinación compararse con la temperatura.</translation>
    </message>
    <message>
        <source>as the file says</source>
        <translation>como dice el archivo</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
</context>
<context>
    <name>TodayList</name>
    <message>
        <source>%1: everything in this book is invented.</source>
        <translation>%1: todo en este libro es inventado.</translation>
    </message>
    <message>
        <source>Nothing is due today. What comes due tomorrow will stand here.</source>
        <translation>Hoy no hay nada pendiente. Lo que toque mañana estará aquí.</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Incorporarlo</translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation>Hoy, %1</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Escribirlo</translation>
    </message>
    <message>
        <source>as I walk</source>
        <translation>en mi recorrido</translation>
    </message>
    <message>
        <source>by day</source>
        <translation>por día</translation>
    </message>
    <message>
        <source>calendar</source>
        <translation>calendario</translation>
    </message>
    <message>
        <source>calendar file</source>
        <translation>archivo de calendario</translation>
    </message>
    <message>
        <source>copies</source>
        <translation>copias</translation>
    </message>
</context>
<context>
    <name>WhyRow</name>
    <message>
        <source>%1 points in a hundred</source>
        <translation>%1 puntos de cien</translation>
    </message>
    <message>
        <source>%1, the other conditions held as they were</source>
        <translation>%1, manteniendo iguales las demás condiciones</translation>
    </message>
    <message>
        <source>no difference can be given</source>
        <translation>no puede darse diferencia</translation>
    </message>
    <message>
        <source>the others are compared with it</source>
        <translation>los demás se comparan con él</translation>
    </message>
</context>
<context>
    <name>WhyView</name>
    <message>
        <source>% of the seed sown</source>
        <translation>% de la semilla sembrada</translation>
    </message>
    <message>
        <source>Compare what was up by day</source>
        <translation>Comparar lo nacido hasta el día</translation>
    </message>
    <message>
        <source>Germination by %1, as of %2</source>
        <translation>Germinación según %1, a %2</translation>
    </message>
    <message>
        <source>How the groups came up; their ranges stand above.</source>
        <translation>Cómo nacieron los grupos; sus intervalos están arriba.</translation>
    </message>
    <message>
        <source>days after sowing; empty for all that came up so far</source>
        <translation>días tras la siembra; vacío para todo lo nacido hasta ahora</translation>
    </message>
    <message>
        <source>held against</source>
        <translation>comparar con</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de</translation>
    </message>
    <message>
        <source>so far</source>
        <translation>hasta ahora</translation>
    </message>
    <message>
        <source>sown</source>
        <translation>sembrada</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>semana %1</translation>
    </message>
</context>
<context>
    <name>coneline::window::AtTable</name>
    <message>
        <source> of %1</source>
        <translation> de %1</translation>
    </message>
    <message>
        <source> plants</source>
        <translation> plantas</translation>
    </message>
    <message>
        <source>%1 of %2 cut open were filled</source>
        <translation>%1 de %2 abiertas estaban llenas</translation>
    </message>
    <message>
        <source>; %1 more would show a tenth filled</source>
        <translation>; %1 más mostrarían una décima parte llena</translation>
    </message>
    <message>
        <source>; 10 more cost about %1 good</source>
        <translation>; 10 más cuestan unas %1 buenas</translation>
    </message>
    <message>
        <source>Float test: %1. </source>
        <translation>Prueba de flotación: %1. </translation>
    </message>
    <message>
        <source>Set it to: %1</source>
        <translation>Ponerla en: %1</translation>
    </message>
    <message>
        <source>costs %1</source>
        <translation>cuesta %1</translation>
    </message>
    <message>
        <source>cut, empty</source>
        <translation>abiertas, vacías</translation>
    </message>
    <message>
        <source>cut, filled</source>
        <translation>abiertas, llenas</translation>
    </message>
    <message>
        <source>dead, sold or missing</source>
        <translation>muertas, vendidas o faltantes</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>desechar</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>desechada</translation>
    </message>
    <message>
        <source>filled and whole, both parts</source>
        <translation>llenas y enteras, ambas partes</translation>
    </message>
    <message>
        <source>filled of what floated</source>
        <translation>llenas de las que flotaron</translation>
    </message>
    <message>
        <source>filled of what sank</source>
        <translation>llenas de las que se hundieron</translation>
    </message>
    <message>
        <source>floated</source>
        <translation>flotaron</translation>
    </message>
    <message>
        <source>gains %1 to %2</source>
        <translation>gana de %1 a %2</translation>
    </message>
    <message>
        <source>judged empty</source>
        <translation>juzgadas vacías</translation>
    </message>
    <message>
        <source>judged filled</source>
        <translation>juzgadas llenas</translation>
    </message>
    <message>
        <source>keep</source>
        <translation>guardar</translation>
    </message>
    <message>
        <source>likely %1</source>
        <translation>probable %1</translation>
    </message>
    <message>
        <source>lost in cleaning</source>
        <translation>perdidas al limpiar</translation>
    </message>
    <message>
        <source>none cut open</source>
        <translation>ninguna abierta</translation>
    </message>
    <message>
        <source>opened</source>
        <translation>abiertas</translation>
    </message>
    <message>
        <source>sank</source>
        <translation>se hundieron</translation>
    </message>
    <message>
        <source>sink now</source>
        <translation>se hunden ahora</translation>
    </message>
    <message>
        <source>sow</source>
        <translation>sembrar</translation>
    </message>
    <message>
        <source>sown</source>
        <translation>sembrada</translation>
    </message>
    <message>
        <source>unsorted</source>
        <translation>sin clasificar</translation>
    </message>
</context>
<context>
    <name>coneline::window::Beginning</name>
    <message>
        <source>The season comes into a new book …</source>
        <translation>La temporada está entrando en un libro nuevo …</translation>
    </message>
</context>
<context>
    <name>coneline::window::BookCopies</name>
    <message>
        <source>%1, before a newer program</source>
        <translation>%1, antes de un programa más nuevo</translation>
    </message>
    <message>
        <source>The book is being put back …</source>
        <translation>El libro se está reponiendo …</translation>
    </message>
    <message>
        <source>The book was put back. What stood there is kept.</source>
        <translation>El libro se repuso. Lo que había allí se conserva.</translation>
    </message>
    <message>
        <source>not good: %1</source>
        <translation>no sirve: %1</translation>
    </message>
</context>
<context>
    <name>coneline::window::BookFile</name>
    <message>
        <source>A whole copy stands at %1.</source>
        <translation>Hay una copia completa en %1.</translation>
    </message>
    <message>
        <source>The book is being copied …</source>
        <translation>El libro se está copiando …</translation>
    </message>
    <message>
        <source>The book is being moved …</source>
        <translation>El libro se está moviendo …</translation>
    </message>
    <message>
        <source>The book now stands at %1.</source>
        <translation>El libro está ahora en %1.</translation>
    </message>
</context>
<context>
    <name>coneline::window::CameraScan</name>
    <message>
        <source>%1 labels are in view. Show one alone.</source>
        <translation>Se ven %1 etiquetas. Muestre una sola.</translation>
    </message>
    <message>
        <source>Hold the label before the camera.</source>
        <translation>Ponga la etiqueta ante la cámara.</translation>
    </message>
    <message>
        <source>The camera stopped: %1. Scan with a hand scanner, or type the code.</source>
        <translation>La cámara se detuvo: %1. Lea con un lector de mano o escriba el código.</translation>
    </message>
    <message>
        <source>The camera's pictures cannot be read: their form is %1.</source>
        <translation>Las imágenes de la cámara no pueden leerse: su forma es %1.</translation>
    </message>
    <message>
        <source>There is no camera here, or it may not be used. Scan with a hand scanner, or type the code.</source>
        <translation>Aquí no hay cámara o no puede usarse. Lea con un lector de mano o escriba el código.</translation>
    </message>
</context>
<context>
    <name>coneline::window::CrossingChoice</name>
    <message>
        <source>%1 crosses, about %2 plants, %3 founders</source>
        <translation>%1 cruces, unas %2 plantas, %3 fundadores</translation>
    </message>
    <message>
        <source>%1 ml left</source>
        <translation>quedan %1 ml</translation>
    </message>
    <message>
        <source>%1: %2 of %3 free</source>
        <translation>%1: %2 de %3 libres</translation>
    </message>
    <message>
        <source>%1; %2, %3; kinship %4; %5 founders</source>
        <translation>%1; %2, %3; parentesco %4; %5 fundadores</translation>
    </message>
    <message>
        <source>half of each</source>
        <translation>mitad y mitad</translation>
    </message>
    <message>
        <source>least kinship</source>
        <translation>menor parentesco</translation>
    </message>
    <message>
        <source>most plants</source>
        <translation>más plantas</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>sin medir</translation>
    </message>
</context>
<context>
    <name>coneline::window::DueList</name>
    <message>
        <source>%1 due in the coming %2 weeks, and %3 settled lately, in %4</source>
        <translation>%1 pendientes en las próximas %2 semanas y %3 resueltas hace poco, en %4</translation>
    </message>
</context>
<context>
    <name>coneline::window::LabelPrint</name>
    <message>
        <source>%1 is corrected for this stock from now on</source>
        <translation>%1 queda corregida para este papel desde ahora</translation>
    </message>
    <message>
        <source>%1 is in the book</source>
        <translation>%1 está en el libro</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) in %1</source>
        <translation>
            <numerusform>%n etiqueta en %1</numerusform>
            <numerusform>%n etiquetas en %1</numerusform>
        </translation>
    </message>
    <message>
        <source>a test page in %1: print it at 100 %, then say what its rulers measure: %2 mm across, %3 mm down when true</source>
        <translation>una página de prueba en %1: imprímala al 100 % y diga qué miden sus reglas: %2 mm de ancho, %3 mm de alto si es exacta</translation>
    </message>
</context>
<context>
    <name>coneline::window::OldTable</name>
    <message>
        <source>%1 comes into the book …</source>
        <translation>%1 está entrando en el libro …</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) of %1 came in</source>
        <translation>
            <numerusform>%n fila de %1 incorporada</numerusform>
            <numerusform>%n filas de %1 incorporadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) or cell(s) at fault; nothing can come in yet.</source>
        <translation>
            <numerusform>%n fila o celda con fallo; todavía no puede incorporarse nada.</numerusform>
            <numerusform>%n filas o celdas con fallo; todavía no puede incorporarse nada.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) would come in.</source>
        <translation>
            <numerusform>Se incorporaría %n fila.</numerusform>
            <numerusform>Se incorporarían %n filas.</numerusform>
        </translation>
    </message>
    <message>
        <source>New places: %1</source>
        <translation>Lugares nuevos: %1</translation>
    </message>
    <message>
        <source>New plants: %1</source>
        <translation>Plantas nuevas: %1</translation>
    </message>
    <message>
        <source>New taxa: %1</source>
        <translation>Taxones nuevos: %1</translation>
    </message>
    <message>
        <source>New trays and pots: %1</source>
        <translation>Bandejas y macetas nuevas: %1</translation>
    </message>
    <message>
        <source>The first %1 are shown.</source>
        <translation>Se muestran las primeras %1.</translation>
    </message>
    <message>
        <source>as the file tells</source>
        <translation>como indique el archivo</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>primero el día</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>no se toma</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>primero el mes</translation>
    </message>
</context>
<context>
    <name>coneline::window::PapersPrint</name>
    <message numerus="yes">
        <source>%n page(s) in %1, which only you can read</source>
        <translation>
            <numerusform>%n página en %1, que solo usted puede leer</numerusform>
            <numerusform>%n páginas en %1, que solo usted puede leer</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>coneline::window::PlanAhead</name>
    <message>
        <source>%1 in %2: %3 %4 expected, from</source>
        <translation>%1 en %2: se esperan %3 %4, de</translation>
    </message>
    <message>
        <source>A load by light class is a quotient of all lots; open the load of a place.</source>
        <translation>La carga por clase de luz es un cociente de todos los lotes; abra la carga de un lugar.</translation>
    </message>
    <message>
        <source>Bench by light</source>
        <translation>Mesa por luz</translation>
    </message>
    <message>
        <source>Bench by place</source>
        <translation>Mesa por lugar</translation>
    </message>
    <message>
        <source>Finished mix</source>
        <translation>Sustrato mezclado</translation>
    </message>
    <message>
        <source>Load by light</source>
        <translation>Carga por luz</translation>
    </message>
    <message>
        <source>Load by place</source>
        <translation>Carga por lugar</translation>
    </message>
    <message>
        <source>Parts of the mixes</source>
        <translation>Componentes de los sustratos</translation>
    </message>
    <message>
        <source>Plants into pots</source>
        <translation>Plantas a maceta</translation>
    </message>
    <message>
        <source>Plants standing</source>
        <translation>Plantas existentes</translation>
    </message>
    <message>
        <source>Ready, by cross</source>
        <translation>Listas, por cruce</translation>
    </message>
    <message>
        <source>Without a place yet</source>
        <translation>Todavía sin lugar</translation>
    </message>
    <message>
        <source>most in %1: %2 %3</source>
        <translation>lo máximo en %1: %2 %3</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>over full with %1 %</source>
        <translation>rebasado con %1 %</translation>
    </message>
</context>
<context>
    <name>coneline::window::PlanBenches</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>most in %1: %2 % of its room</source>
        <translation>lo máximo en %1: %2 % de su espacio</translation>
    </message>
    <message>
        <source>stands empty</source>
        <translation>está vacío</translation>
    </message>
</context>
<context>
    <name>coneline::window::PlanOrders</name>
    <message numerus="yes">
        <source> · %n day(s)</source>
        <translation>
            <numerusform> · %n día</numerusform>
            <numerusform> · %n días</numerusform>
        </translation>
    </message>
    <message>
        <source> · at least %1</source>
        <translation> · al menos %1</translation>
    </message>
    <message>
        <source> · delivery %1</source>
        <translation> · envío %1</translation>
    </message>
    <message>
        <source>%1 in 12 months</source>
        <translation>%1 en 12 meses</translation>
    </message>
    <message>
        <source>%1 in all, for the next twelve months</source>
        <translation>%1 en total, para los próximos doce meses</translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s)</source>
        <translation>
            <numerusform>%n saco</numerusform>
            <numerusform>%n sacos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bale(s)</source>
        <translation>
            <numerusform>%n bala</numerusform>
            <numerusform>%n balas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n load(s)</source>
        <translation>
            <numerusform>%n carga</numerusform>
            <numerusform>%n cargas</numerusform>
        </translation>
    </message>
    <message>
        <source>, %1 loose</source>
        <translation>, %1 sueltos</translation>
    </message>
    <message>
        <source>Nothing has to be ordered for the next twelve months.</source>
        <translation>No hay que pedir nada para los próximos doce meses.</translation>
    </message>
    <message>
        <source>Nothing runs short in %1 of 100 futures. No list costs less than %2 (gap %3 %).</source>
        <translation>No falta nada en %1 de 100 futuros. Ninguna lista cuesta menos de %2 (diferencia %3 %).</translation>
    </message>
    <message>
        <source>bag of %1</source>
        <translation>saco de %1</translation>
    </message>
    <message>
        <source>bale of %1</source>
        <translation>bala de %1</translation>
    </message>
    <message>
        <source>load of %1</source>
        <translation>carga de %1</translation>
    </message>
</context>
<context>
    <name>coneline::window::PlanOtherwise</name>
    <message>
        <source>%1 %2, now %3 %</source>
        <translation>%1 %2, ahora %3 %</translation>
    </message>
    <message>
        <source>Taken into the book: %1</source>
        <translation>Pasado al libro: %1</translation>
    </message>
    <message>
        <source>change %1</source>
        <translation>cambio %1</translation>
    </message>
    <message>
        <source>everything fits</source>
        <translation>todo cabe</translation>
    </message>
    <message>
        <source>over full with %1 % in %2</source>
        <translation>rebasado con %1 % en %2</translation>
    </message>
</context>
<context>
    <name>coneline::window::PlanPart</name>
    <message>
        <source>Copied; paste it into a spreadsheet.</source>
        <translation>Copiado; péguelo en una hoja de cálculo.</translation>
    </message>
    <message>
        <source>Saved in %1</source>
        <translation>Guardado en %1</translation>
    </message>
</context>
<context>
    <name>coneline::window::PlanTargets</name>
    <message>
        <source> (that day is over)</source>
        <translation> (ese día ya pasó)</translation>
    </message>
    <message>
        <source> That takes cones: pollinate %1, %2 applications in all.</source>
        <translation> Para eso hacen falta conos: polinice %1, %2 aplicaciones en total.</translation>
    </message>
    <message>
        <source>%1 plants of %2 in %3 by %4, %5 % sure</source>
        <translation>%1 plantas de %2 en %3 hasta %4, con %5 % de seguridad</translation>
    </message>
    <message>
        <source>%1 – %2 – %3 of what is in the line will be there; alone it is enough in %4 of 100 futures.</source>
        <translation>De lo que está en camino habrá %1 – %2 – %3; eso solo basta en %4 de 100 futuros.</translation>
    </message>
    <message>
        <source>, or %1 this month</source>
        <translation>, o %1 este mes</translation>
    </message>
    <message>
        <source>; %1 are at hand, %2 are lacking.</source>
        <translation>; hay disponibles %1, faltan %2.</translation>
    </message>
    <message>
        <source>; they are at hand.</source>
        <translation>; están disponibles.</translation>
    </message>
    <message>
        <source>By which month? Write it such as 2029-10.</source>
        <translation>¿Hasta qué mes? Escríbalo como 2029-10.</translation>
    </message>
    <message>
        <source>Choose a cross.</source>
        <translation>Elija un cruce.</translation>
    </message>
    <message>
        <source>Choose a pot.</source>
        <translation>Elija una maceta.</translation>
    </message>
    <message>
        <source>Harvest by %1.</source>
        <translation>Coseche hasta el %1.</translation>
    </message>
    <message>
        <source>How many plants? '%1' is no number of them.</source>
        <translation>¿Cuántas plantas? «%1» no es un número de ellas.</translation>
    </message>
    <message>
        <source>How sure? Write per cent above 0 and below 100, such as 90.</source>
        <translation>¿Con qué seguridad? Escriba un por ciento mayor que 0 y menor que 100, como 90.</translation>
    </message>
    <message>
        <source>No sowing from today on reaches it: choose a later month, a smaller pot, fewer plants or less assurance.</source>
        <translation>Ninguna siembra desde hoy lo alcanza: elija un mes posterior, una maceta menor, menos plantas o menos seguridad.</translation>
    </message>
    <message>
        <source>Pollinate by %1.</source>
        <translation>Polinice hasta el %1.</translation>
    </message>
    <message>
        <source>Sow %1 seeds by %2</source>
        <translation>Siembre %1 semillas hasta %2</translation>
    </message>
    <message>
        <source>What is in the line is enough: nothing has to be sown.</source>
        <translation>Lo que hay en la línea basta: no hace falta sembrar nada.</translation>
    </message>
</context>
<context>
    <name>coneline::window::RoundPictures</name>
    <message>
        <source>%1 could not be started</source>
        <translation>%1 no pudo iniciarse</translation>
    </message>
    <message>
        <source>%1 pictures: %2 seen, %3 of them noted now; %4 not seen; %5 moves proposed</source>
        <translation>%1 fotos: %2 vistas, %3 de ellas anotadas ahora; %4 no vistas; %5 traslados propuestos</translation>
    </message>
    <message>
        <source>, last seen on %1</source>
        <translation>, vista por última vez el %1</translation>
    </message>
    <message>
        <source>0 pictures read</source>
        <translation>0 fotos leídas</translation>
    </message>
    <message>
        <source>Choose the place that was pictured.</source>
        <translation>Elija el lugar fotografiado.</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>No vistas</translation>
    </message>
    <message>
        <source>Read, but of nothing here</source>
        <translation>Leído, pero de nada de aquí</translation>
    </message>
    <message>
        <source>Reading was stopped; nothing of it is noted.</source>
        <translation>La lectura se detuvo; nada de ella queda anotado.</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vistas</translation>
    </message>
    <message>
        <source>The pictures could not be read.</source>
        <translation>Las fotos no pudieron leerse.</translation>
    </message>
    <message>
        <source>from %1 to %2, seen on %3 in %4</source>
        <translation>de %1 a %2, vista el %3 en %4</translation>
    </message>
</context>
<context>
    <name>coneline::window::RoundWalk</name>
    <message>
        <source>%1 counted: %2 · %3 moved · %4 not found</source>
        <translation>%1 contadas: %2 · %3 movidas · %4 no encontradas</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerta</translation>
    </message>
    <message>
        <source>ended since</source>
        <translation>terminó entretanto</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>hoja</translation>
    </message>
    <message>
        <source>leaves</source>
        <translation>hojas</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>movida</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>no encontrada</translation>
    </message>
    <message>
        <source>nothing new</source>
        <translation>nada nuevo</translation>
    </message>
    <message>
        <source>root</source>
        <translation>raíz</translation>
    </message>
    <message>
        <source>roots</source>
        <translation>raíces</translation>
    </message>
    <message>
        <source>seen, not counted</source>
        <translation>vista, no contada</translation>
    </message>
</context>
<context>
    <name>coneline::window::TemperatureLog</name>
    <message>
        <source>%1 comes into the book …</source>
        <translation>%1 está entrando en el libro …</translation>
    </message>
</context>
<context>
    <name>coneline::window::TraysToEmpty</name>
    <message>
        <source> Say what 1 %1 of bench costs a month (Seed, What you reckon with), and the price of waiting is told too.</source>
        <translation> Indique cuánto cuesta al mes 1 %1 de mesa (Semilla, Con qué calcula) y se dirá también el precio de esperar.</translation>
    </message>
    <message>
        <source>%1 of %2 trays with waiting seed can be emptied: the chance of even one more is below %3 in 100.</source>
        <translation>%1 de %2 bandejas con semilla en espera pueden vaciarse: la probabilidad de siquiera una más es menor de %3 en 100.</translation>
    </message>
    <message>
        <source>In no tray does seed wait.</source>
        <translation>En ninguna bandeja queda semilla por nacer.</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source> (and {} more, the next on line {})</source>
        <translation> (y {} más, el siguiente en la línea {})</translation>
    </message>
    <message>
        <source> (taken back)</source>
        <translation> (anulado)</translation>
    </message>
    <message>
        <source> As of {}.</source>
        <translation> Al {}.</translation>
    </message>
    <message>
        <source> It leans on {}.</source>
        <translation> Se apoya en {}.</translation>
    </message>
    <message>
        <source> Looks stay due until it is emptied.</source>
        <translation> Las revisiones siguen pendientes hasta que se vacíe.</translation>
    </message>
    <message>
        <source> Most in {}: {}.</source>
        <translation> Lo máximo en {}: {}.</translation>
    </message>
    <message>
        <source> Still to come leans on {}.</source>
        <translation> Lo que falta por venir se apoya en {}.</translation>
    </message>
    <message>
        <source> The book's own history weighs in: the plan reckons with {:.3g} % instead of {:.3g} %.</source>
        <translation> El historial propio del libro también pesa: el plan calcula con {:.3g} % en lugar de {:.3g} %.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source> and costs {:.2f} of bench</source>
        <translation> y cuesta {:.2f} de mesa</translation>
    </message>
    <message>
        <source> and {} more</source>
        <translation> y {} más</translation>
    </message>
    <message>
        <source> at {} °C</source>
        <translation> a {} °C</translation>
    </message>
    <message>
        <source> for {}</source>
        <translation> por {}</translation>
    </message>
    <message>
        <source> for {}.{:02}</source>
        <translation> por {}.{:02}</translation>
    </message>
    <message>
        <source> of {}</source>
        <translation> de {}</translation>
    </message>
    <message>
        <source> of {} ({})</source>
        <translation> de {} ({})</translation>
    </message>
    <message>
        <source> to {}</source>
        <translation> a {}</translation>
    </message>
    <message>
        <source> {} days of {} trays have no temperature and count like the mean of the tray's other days.</source>
        <translation> {} días de {} bandejas no tienen temperatura y cuentan como la media de los demás días de la bandeja.</translation>
    </message>
    <message numerus="yes">
        <source> {} seedlings still stand in it: pot them first.</source>
        <translation>
            <numerusform> Aún hay {} plántula en ella: trasplántela primero.</numerusform>
            <numerusform> Aún hay {} plántulas en ella: trasplántelas primero.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> {} trays are left out, see below.</source>
        <translation>
            <numerusform> {} bandeja queda fuera, vea abajo.</numerusform>
            <numerusform> {} bandejas quedan fuera, vea abajo.</numerusform>
        </translation>
    </message>
    <message>
        <source>'coneline copies' lists them. Nothing was changed.</source>
        <translation>'coneline copies' las enumera. No se cambió nada.</translation>
    </message>
    <message numerus="yes">
        <source>'{1}' is a {2} with {0} places within it</source>
        <translation>
            <numerusform>«{1}» es {2} con {0} lugar dentro</numerusform>
            <numerusform>«{1}» es {2} con {0} lugares dentro</numerusform>
        </translation>
    </message>
    <message>
        <source>'{}' ({:g} × {:g} mm) is larger than every measured place. Check the pot's measures or measure a larger place.</source>
        <translation>«{}» ({:g} × {:g} mm) es mayor que todos los lugares medidos. Compruebe las medidas de la maceta o mida un lugar mayor.</translation>
    </message>
    <message>
        <source>'{}' can be read in two ways</source>
        <translation>«{}» puede leerse de dos maneras</translation>
    </message>
    <message>
        <source>'{}' can be two days</source>
        <translation>«{}» puede ser dos días</translation>
    </message>
    <message>
        <source>'{}' cannot be had in time: {} are missing</source>
        <translation>«{}» no puede conseguirse a tiempo: faltan {}</translation>
    </message>
    <message>
        <source>'{}' cannot be made: {}</source>
        <translation>«{}» no se puede crear: {}</translation>
    </message>
    <message>
        <source>'{}' cannot be opened</source>
        <translation>«{}» no puede abrirse</translation>
    </message>
    <message>
        <source>'{}' cannot be opened: {}</source>
        <translation>«{}» no se puede abrir: {}</translation>
    </message>
    <message>
        <source>'{}' cannot be put in place: {}</source>
        <translation>«{}» no puede ponerse en su lugar: {}</translation>
    </message>
    <message>
        <source>'{}' cannot be read</source>
        <translation>«{}» no puede leerse</translation>
    </message>
    <message>
        <source>'{}' cannot be read: {}</source>
        <translation>«{}» no puede leerse: {}</translation>
    </message>
    <message>
        <source>'{}' cannot be taken away: {}</source>
        <translation>«{}» no puede quitarse: {}</translation>
    </message>
    <message>
        <source>'{}' cannot be written: {}</source>
        <translation>«{}» no puede escribirse: {}</translation>
    </message>
    <message>
        <source>'{}' cannot be {}: {}</source>
        <translation>con «{}» no se puede hacer esto ({}): {}</translation>
    </message>
    <message>
        <source>'{}' cannot even be lacking</source>
        <translation>«{}» ni siquiera puede faltar</translation>
    </message>
    <message>
        <source>'{}' cannot stand on a label: character {} is none of 0-9 A-Z</source>
        <translation>«{}» no puede estar en una etiqueta: el carácter {} no es ninguno de 0-9 A-Z</translation>
    </message>
    <message>
        <source>'{}' could not be written: {}</source>
        <translation>«{}» no pudo escribirse: {}</translation>
    </message>
    <message>
        <source>'{}' has a wrong character: its check character does not fit</source>
        <translation>«{}» tiene un carácter equivocado: su carácter de control no concuerda</translation>
    </message>
    <message>
        <source>'{}' has a year of fewer than four digits</source>
        <translation>«{}» tiene un año de menos de cuatro cifras</translation>
    </message>
    <message>
        <source>'{}' has copies of another book beside it</source>
        <translation>«{}» tiene al lado copias de otro libro</translation>
    </message>
    <message>
        <source>'{}' has no good copy</source>
        <translation>«{}» no tiene ninguna copia buena</translation>
    </message>
    <message>
        <source>'{}' has no label {}: it has 1 to {}</source>
        <translation>«{}» no tiene la etiqueta {}: tiene de 1 a {}</translation>
    </message>
    <message>
        <source>'{}' has no route</source>
        <translation>«{}» no tiene ruta</translation>
    </message>
    <message>
        <source>'{}' has no route yet</source>
        <translation>«{}» no tiene ruta todavía</translation>
    </message>
    <message>
        <source>'{}' has no route: its seed to be sown is not in the plan.</source>
        <translation>«{}» no tiene ruta: su semilla por sembrar no está en el plan.</translation>
    </message>
    <message>
        <source>'{}' has no size of its own</source>
        <translation>«{}» no tiene medidas propias</translation>
    </message>
    <message>
        <source>'{}' has no size, so that nothing can be told to stand there</source>
        <translation>«{}» no tiene medidas, así que no puede decirse que algo esté allí</translation>
    </message>
    <message>
        <source>'{}' has no size, though lots stand there. Measure its length and width, or say which bench of it they stand on.</source>
        <translation>«{}» no tiene medidas, aunque hay lotes allí. Mida su largo y ancho, o diga en qué mesa suya están.</translation>
    </message>
    <message>
        <source>'{}' has no size, though lots stand there: they are put down anew. Measure it, or say on which bench of it they stand.</source>
        <translation>«{}» no tiene medidas, aunque hay lotes allí: se colocan de nuevo. Mídalo, o diga en qué mesa suya están.</translation>
    </message>
    <message>
        <source>'{}' has version {}, and this program reads {}</source>
        <translation>«{}» tiene la versión {}, y este programa lee la {}</translation>
    </message>
    <message>
        <source>'{}' has {}</source>
        <translation>«{}» tiene {}</translation>
    </message>
    <message>
        <source>'{}' has {} MB, more than 512 MB</source>
        <translation>«{}» ocupa {} MB, más de 512 MB</translation>
    </message>
    <message>
        <source>'{}' has {} MB, more than {} MB</source>
        <translation>«{}» ocupa {} MB, más de {} MB</translation>
    </message>
    <message>
        <source>'{}' has {} characters, {} too many for a label</source>
        <translation>«{}» tiene {} caracteres, {} más de los que caben en una etiqueta</translation>
    </message>
    <message>
        <source>'{}' has {}. Over full with {:.0f} % in {}{}.</source>
        <translation>«{}» tiene {}. Rebasado con {:.0f} % en {}{}.</translation>
    </message>
    <message>
        <source>'{}' holds '{}', which is no part of an earlier export</source>
        <translation>«{}» contiene «{}», que no es parte de una exportación anterior</translation>
    </message>
    <message>
        <source>'{}' holds an earlier export</source>
        <translation>«{}» contiene una exportación anterior</translation>
    </message>
    <message>
        <source>'{}' holds no code</source>
        <translation>«{}» no contiene ningún código</translation>
    </message>
    <message>
        <source>'{}' holds no more than the root ball out of '{}': no mix is counted for that move. Check the route.</source>
        <translation>«{}» no contiene más que el cepellón de «{}»: no se cuenta sustrato para ese paso. Revise la ruta.</translation>
    </message>
    <message>
        <source>'{}' holds something it should not: {}</source>
        <translation>«{}» contiene algo que no debería: {}</translation>
    </message>
    <message>
        <source>'{}' is cut short: {} bytes</source>
        <translation>«{}» está truncado: {} bytes</translation>
    </message>
    <message>
        <source>'{}' is cut short: {} of {} bytes</source>
        <translation>«{}» está truncado: {} de {} bytes</translation>
    </message>
    <message>
        <source>'{}' is damaged: {}</source>
        <translation>«{}» está dañado: {}</translation>
    </message>
    <message>
        <source>'{}' is empty or cannot be read</source>
        <translation>«{}» está vacío o no puede leerse</translation>
    </message>
    <message>
        <source>'{}' is filled with '{}' instead of {}, in {} steps of routes.</source>
        <translation>«{}» se llena con «{}» en lugar de {}, en {} pasos de rutas.</translation>
    </message>
    <message>
        <source>'{}' is in use: another program has been writing to it for five seconds</source>
        <translation>«{}» está en uso: otro programa lleva cinco segundos escribiendo en él</translation>
    </message>
    <message>
        <source>'{}' is larger than '{}'</source>
        <translation>«{}» es mayor que «{}»</translation>
    </message>
    <message>
        <source>'{}' is larger than every place of {} that is warm enough. Check the pot's measures, or measure another place.</source>
        <translation>«{}» es mayor que cualquier lugar de {} con calor suficiente. Compruebe las medidas de la maceta, o mida otro lugar.</translation>
    </message>
    <message>
        <source>'{}' is larger than every pot of its route</source>
        <translation>«{}» es mayor que todas las macetas de su ruta</translation>
    </message>
    <message>
        <source>'{}' is made of {} instead of {}.</source>
        <translation>«{}» se hace de {} en lugar de {}.</translation>
    </message>
    <message>
        <source>'{}' is named as both parents</source>
        <translation>«{}» figura como ambos padres</translation>
    </message>
    <message>
        <source>'{}' is neither yes nor no</source>
        <translation>«{}» no es ni sí ni no</translation>
    </message>
    <message>
        <source>'{}' is no book of Coneline</source>
        <translation>«{}» no es un libro de Coneline</translation>
    </message>
    <message>
        <source>'{}' is no code</source>
        <translation>«{}» no es un código</translation>
    </message>
    <message>
        <source>'{}' is no code: it has {} characters, a code at most {}</source>
        <translation>«{}» no es un código: tiene {} caracteres, un código a lo sumo {}</translation>
    </message>
    <message>
        <source>'{}' is no count</source>
        <translation>«{}» no es una cantidad</translation>
    </message>
    <message>
        <source>'{}' is no day</source>
        <translation>«{}» no es un día</translation>
    </message>
    <message>
        <source>'{}' is no file</source>
        <translation>«{}» no es un archivo</translation>
    </message>
    <message>
        <source>'{}' is no file of a season folder</source>
        <translation>«{}» no es un archivo de una carpeta de temporada</translation>
    </message>
    <message>
        <source>'{}' is no folder</source>
        <translation>«{}» no es una carpeta</translation>
    </message>
    <message>
        <source>'{}' is no kind of lot</source>
        <translation>«{}» no es ninguna clase de lote</translation>
    </message>
    <message>
        <source>'{}' is no kind of rule</source>
        <translation>«{}» no es ninguna clase de regla</translation>
    </message>
    <message>
        <source>'{}' is no kind of thing</source>
        <translation>«{}» no es ninguna clase de cosa</translation>
    </message>
    <message>
        <source>'{}' is no line of a calendar</source>
        <translation>«{}» no es una línea de calendario</translation>
    </message>
    <message>
        <source>'{}' is no moment</source>
        <translation>«{}» no es un momento</translation>
    </message>
    <message>
        <source>'{}' is no number above 0</source>
        <translation>«{}» no es un número mayor que 0</translation>
    </message>
    <message>
        <source>'{}' is no part with its share</source>
        <translation>«{}» no es un componente con su parte</translation>
    </message>
    <message>
        <source>'{}' is no time</source>
        <translation>«{}» no es una hora</translation>
    </message>
    <message>
        <source>'{}' is no {}</source>
        <translation>«{}» no es: {}</translation>
    </message>
    <message>
        <source>'{}' is not due</source>
        <translation>«{}» no está pendiente</translation>
    </message>
    <message>
        <source>'{}' is open in another program</source>
        <translation>«{}» está abierto en otro programa</translation>
    </message>
    <message>
        <source>'{}' is out of range</source>
        <translation>«{}» está fuera de rango</translation>
    </message>
    <message>
        <source>'{}' is over full with {:.0f} % at worst ({}) instead of {:.0f} % ({}).</source>
        <translation>«{}» está rebasado con {:.0f} % en el peor caso ({}) en lugar de {:.0f} % ({}).</translation>
    </message>
    <message>
        <source>'{}' is the book itself</source>
        <translation>«{}» es el propio libro</translation>
    </message>
    <message>
        <source>'{}' is the folder you stand in</source>
        <translation>«{}» es la carpeta en que usted está</translation>
    </message>
    <message>
        <source>'{}' is there already</source>
        <translation>«{}» ya existe</translation>
    </message>
    <message>
        <source>'{}' is {}, it needs {}</source>
        <translation>«{}» tiene {}, y necesita {}</translation>
    </message>
    <message>
        <source>'{}' leads nowhere</source>
        <translation>«{}» no lleva a ninguna parte</translation>
    </message>
    <message>
        <source>'{}' may not be read</source>
        <translation>«{}» no se permite leer</translation>
    </message>
    <message>
        <source>'{}' may only be read</source>
        <translation>«{}» solo puede leerse</translation>
    </message>
    <message>
        <source>'{}' names no two parents</source>
        <translation>«{}» no nombra a dos padres</translation>
    </message>
    <message>
        <source>'{}' needs more than a tick</source>
        <translation>«{}» necesita más que una marca</translation>
    </message>
    <message>
        <source>'{}' of {} has {:g} litres, expanding {:g} times</source>
        <translation>«{}» de {} tiene {:g} litros y se expande {:g} veces</translation>
    </message>
    <message>
        <source>'{}' stands in the book as '{}'</source>
        <translation>«{}» consta en el libro como «{}»</translation>
    </message>
    <message>
        <source>'{}' was written by a newer program: its version is {}, this program knows {}</source>
        <translation>«{}» fue escrito por un programa más nuevo: su versión es {}, este programa conoce la {}</translation>
    </message>
    <message>
        <source>'{}' was written to while it was moved</source>
        <translation>se escribió en «{}» mientras se trasladaba</translation>
    </message>
    <message>
        <source>'{}' with a side of {} mm</source>
        <translation>«{}» con un lado de {} mm</translation>
    </message>
    <message>
        <source>'{}' with {} of '{}'</source>
        <translation>«{}» con {} de «{}»</translation>
    </message>
    <message>
        <source>'{}': a {} of {} mm</source>
        <translation>«{}»: {} de {} mm</translation>
    </message>
    <message>
        <source>'{}': no room for the code in letters beside the symbol</source>
        <translation>«{}»: no hay sitio para el código en letras junto al símbolo</translation>
    </message>
    <message>
        <source>'{}': the code needs {:.1f} mm at {} dots an inch, {:.1f} mm more than there is</source>
        <translation>«{}»: el código necesita {:.1f} mm a {} puntos por pulgada, {:.1f} mm más de lo que hay</translation>
    </message>
    <message>
        <source>'{}': the labels are {:.2f} mm {} than the page: {:.2f} of {:.2f} mm</source>
        <translation>«{}»: las etiquetas son {:.2f} mm {} que la página: {:.2f} de {:.2f} mm</translation>
    </message>
    <message>
        <source>'{}': {:.1f} × {:.1f} mm to print on is {:.1f} mm too small for a code, which needs {:.1f} mm</source>
        <translation>«{}»: {:.1f} × {:.1f} mm imprimibles son {:.1f} mm menos de lo que pide un código, que necesita {:.1f} mm</translation>
    </message>
    <message>
        <source>'{}': {} columns and {} rows</source>
        <translation>«{}»: {} columnas y {} filas</translation>
    </message>
    <message>
        <source>'{}': {} overlap by {:.2f} mm: one every {:.2f} mm, each {:.2f} mm</source>
        <translation>«{}»: {} se solapan {:.2f} mm: una cada {:.2f} mm, cada una de {:.2f} mm</translation>
    </message>
    <message>
        <source>, amount not known</source>
        <translation>, cantidad desconocida</translation>
    </message>
    <message numerus="yes">
        <source>, and {} places within it</source>
        <translation>
            <numerusform>, y {} lugar dentro de él</numerusform>
            <numerusform>, y {} lugares dentro de él</numerusform>
        </translation>
    </message>
    <message>
        <source>, at most {} ml left</source>
        <translation>, quedan a lo sumo {} ml</translation>
    </message>
    <message>
        <source>, closed</source>
        <translation>, cerrado</translation>
    </message>
    <message>
        <source>, counted by weight ({} to {}; weighings differ by {:.1f} %)</source>
        <translation>, contadas por peso ({} a {}; las pesadas difieren un {:.1f} %)</translation>
    </message>
    <message>
        <source>, from {}</source>
        <translation>, de {}</translation>
    </message>
    <message>
        <source>, gone</source>
        <translation>, agotado</translation>
    </message>
    <message>
        <source>, may be ready from {}</source>
        <translation>, puede estar lista desde el {}</translation>
    </message>
    <message>
        <source>, of which {:.0f} % were sown</source>
        <translation>, de las que se sembró el {:.0f} %</translation>
    </message>
    <message>
        <source>, of {}</source>
        <translation>, del {}</translation>
    </message>
    <message numerus="yes">
        <source>, of {} floaters sown {}</source>
        <translation>
            <numerusform>, de {} flotante sembrada {}</numerusform>
            <numerusform>, de {} flotantes sembradas {}</numerusform>
        </translation>
    </message>
    <message>
        <source>, on the day it was sown: so the germination report leaves this tray out. Reverse this look and enter it from {} on</source>
        <translation>, el día en que se sembró: por eso el informe de germinación deja fuera esta bandeja. Anule esta revisión y anótela desde el {}</translation>
    </message>
    <message>
        <source>, to look at from {}</source>
        <translation>, revisar desde el {}</translation>
    </message>
    <message>
        <source>, until {}</source>
        <translation>, hasta el {}</translation>
    </message>
    <message>
        <source>, {} fertile scales</source>
        <translation>, {} escamas fértiles</translation>
    </message>
    <message>
        <source>, {} ml in all</source>
        <translation>, {} ml en total</translation>
    </message>
    <message>
        <source>, {} ml left</source>
        <translation>, quedan {} ml</translation>
    </message>
    <message>
        <source>. Take or copy the picture again</source>
        <translation>. Tome o copie la foto de nuevo</translation>
    </message>
    <message>
        <source>0 to 100 %</source>
        <translation>0 a 100 %</translation>
    </message>
    <message>
        <source>1 for a pot, more for a tray</source>
        <translation>1 para una maceta, más para una bandeja</translation>
    </message>
    <message>
        <source>1 other cross of the taxon</source>
        <translation>otro cruce del taxón</translation>
    </message>
    <message>
        <source>10 to 99</source>
        <translation>de 10 a 99</translation>
    </message>
    <message>
        <source>100 seeds of {} g, all of it {} g</source>
        <translation>100 semillas de {} g, todas juntas {} g</translation>
    </message>
    <message>
        <source>5 where nothing is said</source>
        <translation>5 si no se dice nada</translation>
    </message>
    <message>
        <source>: from the ground, after winter and before new leaves</source>
        <translation>: desde el suelo, después del invierno y antes de las hojas nuevas</translation>
    </message>
    <message>
        <source>: from the ground; the book does not know its hemisphere, so when winter is over is yours to say</source>
        <translation>: desde el suelo; el libro no conoce su hemisferio, así que usted dirá cuándo acaba el invierno</translation>
    </message>
    <message>
        <source>; half of the roots had it {:.0f} days or less after they were seen, the earliest root taken to be the first to leaf</source>
        <translation>; la mitad de las raíces la tuvo a los {:.0f} días o menos de verse, suponiendo que la primera raíz es la primera en dar hoja</translation>
    </message>
    <message>
        <source>; more likely than not from {}</source>
        <translation>; más probable que no desde {}</translation>
    </message>
    <message>
        <source>; none was judged filled, so unsorted seed was taken</source>
        <translation>; ninguna estaba juzgada llena, así que se tomó semilla sin clasificar</translation>
    </message>
    <message>
        <source>; now {} '{}' of [{}] to '{}' of [{}]</source>
        <translation>; ahora {} «{}» de [{}] a «{}» de [{}]</translation>
    </message>
    <message>
        <source>; still to be entered:{}</source>
        <translation>; por anotar todavía:{}</translation>
    </message>
    <message>
        <source>; the others held as they were {}</source>
        <translation>; manteniendo lo demás igual {}</translation>
    </message>
    <message>
        <source>; this placing costs {:.2f}, none costs less than {:.2f} (a move costs 1, a lot without a place 5 a month and more).</source>
        <translation>; esta colocación cuesta {:.2f}, ninguna cuesta menos de {:.2f} (un traslado cuesta 1, un lote sin lugar 5 al mes y más).</translation>
    </message>
    <message>
        <source>; too few roots have theirs to say after how many days</source>
        <translation>; muy pocas raíces la tienen para decir a los cuántos días</translation>
    </message>
    <message>
        <source>; {} weighings left out</source>
        <translation>; {} pesadas descartadas</translation>
    </message>
    <message>
        <source>A bay is within a bench, a bench within a house.</source>
        <translation>Un tramo está en una mesa, una mesa en un invernadero.</translation>
    </message>
    <message>
        <source>A bench bears what its maker says; walk-ways stay free.</source>
        <translation>Una mesa soporta lo que dice su fabricante; los pasillos quedan libres.</translation>
    </message>
    <message>
        <source>A code has at most 10 characters.</source>
        <translation>Un código tiene a lo sumo 10 caracteres.</translation>
    </message>
    <message>
        <source>A code is a letter, digits and a check character, such as T1742Q.</source>
        <translation>Un código es una letra, cifras y un carácter de control, como T1742Q.</translation>
    </message>
    <message>
        <source>A count of 1 or more is expected.</source>
        <translation>Se espera un número de 1 o más.</translation>
    </message>
    <message>
        <source>A difference that goes with a condition need not come from it. Each range stands for itself: of many, some miss 0 by chance.</source>
        <translation>Una diferencia que acompaña a una condición no viene necesariamente de ella. Cada intervalo vale por sí solo: de muchos, alguno excluye el 0 por azar.</translation>
    </message>
    <message>
        <source>A line is one scan.</source>
        <translation>Una línea es una lectura.</translation>
    </message>
    <message>
        <source>A litre of watered pot weighs {:g} kg (common practice, no source: weigh one of yours).</source>
        <translation>Un litro de maceta regada pesa {:g} kg (práctica común, sin fuente: pese una de las suyas).</translation>
    </message>
    <message>
        <source>A mix more: '{}' is made of {}.</source>
        <translation>Un sustrato más: «{}» se hace de {}.</translation>
    </message>
    <message>
        <source>A name is expected.</source>
        <translation>Se espera un nombre.</translation>
    </message>
    <message>
        <source>A number with a decimal '{}' is expected; --decimal says which.</source>
        <translation>Se espera un número con «{}» decimal; --decimal lo indica.</translation>
    </message>
    <message>
        <source>A place has one reading a moment.</source>
        <translation>Un lugar tiene una lectura por momento.</translation>
    </message>
    <message>
        <source>A place more: '{}', {}, {:g} × {:g} mm, {:.2f} m².</source>
        <translation>Un lugar más: «{}», {}, {:g} × {:g} mm, {:.2f} m².</translation>
    </message>
    <message>
        <source>A plant is worth</source>
        <translation>Una planta vale</translation>
    </message>
    <message>
        <source>A pollen parent is male: name another, or correct the sex.</source>
        <translation>Una planta padre es macho: nombre otra o corrija el sexo.</translation>
    </message>
    <message>
        <source>A proposal gives a cone one father; pin one of them.</source>
        <translation>Una propuesta da a cada cono un solo padre; fije uno de ellos.</translation>
    </message>
    <message numerus="yes">
        <source>A ready plant is sold or planted out after {} months.</source>
        <translation>
            <numerusform>Una planta lista se vende o se planta fuera al cabo de {} mes.</numerusform>
            <numerusform>Una planta lista se vende o se planta fuera al cabo de {} meses.</numerusform>
        </translation>
    </message>
    <message>
        <source>A reversal has the day of the first entry and its movements the other way round.</source>
        <translation>Una anulación lleva el día de la primera anotación y sus movimientos al revés.</translation>
    </message>
    <message>
        <source>A round takes the labels of trays, of other lots and of places.</source>
        <translation>Una ronda toma etiquetas de bandejas, de otros lotes y de lugares.</translation>
    </message>
    <message>
        <source>A rule has a name, what it says, and its source.</source>
        <translation>Una regla tiene nombre, lo que dice y su fuente.</translation>
    </message>
    <message>
        <source>A season folder is imported into a new book; name one that does not exist.</source>
        <translation>Una carpeta de temporada se importa a un libro nuevo; nombre uno que no exista.</translation>
    </message>
    <message>
        <source>A seed parent is female: name another, or correct the sex.</source>
        <translation>Una planta madre es hembra: nombre otra o corrija el sexo.</translation>
    </message>
    <message>
        <source>A series is 10 to 99, a number 1 to 999999.</source>
        <translation>Una serie va de 10 a 99, un número de 1 a 999999.</translation>
    </message>
    <message>
        <source>A shrink is from 0 to below 1, a loss 0 or more.</source>
        <translation>Una merma va de 0 a menos de 1, una pérdida es 0 o más.</translation>
    </message>
    <message>
        <source>A sown seed costs</source>
        <translation>Una semilla sembrada cuesta</translation>
    </message>
    <message>
        <source>A step lasts the middle of its range of months; what is overdue is due this month.</source>
        <translation>Un paso dura la mitad de su intervalo de meses; lo atrasado toca este mes.</translation>
    </message>
    <message>
        <source>A tray is done when one more comes in fewer of 100</source>
        <translation>Una bandeja se da por terminada cuando sale una más en menos de</translation>
    </message>
    <message>
        <source>A tray is given up, and its room freed, once it is potted and one more seedling is unlikely.</source>
        <translation>Una bandeja se da por terminada, y su espacio queda libre, una vez trasplantada y cuando una plántula más es improbable.</translation>
    </message>
    <message>
        <source>A weight is a number of plants above 0.</source>
        <translation>Un peso es un número de plantas mayor que 0.</translation>
    </message>
    <message>
        <source>A4, 2 × 7 of 99.1 × 38.1 mm</source>
        <translation>A4, 2 × 7 de 99,1 × 38,1 mm</translation>
    </message>
    <message>
        <source>A4, 3 × 7 of 63.5 × 38.1 mm</source>
        <translation>A4, 3 × 7 de 63,5 × 38,1 mm</translation>
    </message>
    <message>
        <source>A4, 3 × 8 of 70 × 37 mm</source>
        <translation>A4, 3 × 8 de 70 × 37 mm</translation>
    </message>
    <message>
        <source>A4, 5 × 13 of 38.1 × 21.2 mm</source>
        <translation>A4, 5 × 13 de 38,1 × 21,2 mm</translation>
    </message>
    <message>
        <source>Add a paper</source>
        <translation>Añadir un documento</translation>
    </message>
    <message>
        <source>Add a row for every offer.</source>
        <translation>Añada una fila por cada oferta.</translation>
    </message>
    <message>
        <source>Add it to the header.</source>
        <translation>Añádala al encabezado.</translation>
    </message>
    <message>
        <source>Add the taxon to routes.csv.</source>
        <translation>Añada el taxón a routes.csv.</translation>
    </message>
    <message>
        <source>Add them up.</source>
        <translation>Súmelos.</translation>
    </message>
    <message>
        <source>All parts of cycads are poisonous, seed most of all: wear gloves, keep pets, livestock and children away; if any was eaten, see a vet or doctor at once.</source>
        <translation>Todas las partes de las cícadas son venenosas, la semilla sobre todo: use guantes, aleje mascotas, ganado y niños; si alguien comió algo, acuda enseguida al veterinario o al médico.</translation>
    </message>
    <message>
        <source>Amend a kind of plant</source>
        <translation>Corregir una clase de planta</translation>
    </message>
    <message>
        <source>Amend a mix</source>
        <translation>Corregir un sustrato</translation>
    </message>
    <message>
        <source>Amend a place</source>
        <translation>Corregir un lugar</translation>
    </message>
    <message>
        <source>Amend a tray or pot</source>
        <translation>Corregir una bandeja o maceta</translation>
    </message>
    <message>
        <source>An entry is made on one round.</source>
        <translation>Una anotación se hace en una sola ronda.</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>Ask again to have it whole.</source>
        <translation>Pídalo de nuevo para tenerlo entero.</translation>
    </message>
    <message>
        <source>Ask for 1 to 1 000 000.</source>
        <translation>Pida de 1 a 1 000 000.</translation>
    </message>
    <message>
        <source>Ask for 1 to 120 months.</source>
        <translation>Pida de 1 a 120 meses.</translation>
    </message>
    <message>
        <source>Ask for 1 to 600 months.</source>
        <translation>Pida de 1 a 600 meses.</translation>
    </message>
    <message>
        <source>Ask for at least 1.</source>
        <translation>Pida al menos 1.</translation>
    </message>
    <message>
        <source>Ask for fewer, collect more pollen, take less for each cone, or say how much room there will be.</source>
        <translation>Pida menos, recoja más polen, use menos por cono o diga cuánto espacio habrá.</translation>
    </message>
    <message>
        <source>Ask for more.</source>
        <translation>Pida más.</translation>
    </message>
    <message>
        <source>Ask for the right to write to it.</source>
        <translation>Pida permiso para escribir en él.</translation>
    </message>
    <message>
        <source>Ask for the right to write to it. Nothing was written.</source>
        <translation>Pida permiso para escribir en él. No se escribió nada.</translation>
    </message>
    <message>
        <source>Ask its owner for the right to read it.</source>
        <translation>Pida a su dueño permiso para leerlo.</translation>
    </message>
    <message>
        <source>At most {} can be taken on that day; or reverse the later entries first.</source>
        <translation>Ese día pueden tomarse a lo sumo {}; o anule antes las anotaciones posteriores.</translation>
    </message>
    <message>
        <source>At most {} is expected.</source>
        <translation>Se espera a lo sumo {}.</translation>
    </message>
    <message>
        <source>At {:g} %.</source>
        <translation>Al {:g} %.</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>BEGIN:{} without its END</source>
        <translation>BEGIN:{} sin su END</translation>
    </message>
    <message>
        <source>Begin again when there is time.</source>
        <translation>Empiece de nuevo cuando haya tiempo.</translation>
    </message>
    <message>
        <source>Begin another one.</source>
        <translation>Empiece otra.</translation>
    </message>
    <message>
        <source>Begin one.</source>
        <translation>Empiece una.</translation>
    </message>
    <message>
        <source>Bench list</source>
        <translation>Lista de mesas</translation>
    </message>
    <message>
        <source>Bench room by light class, {}</source>
        <translation>Espacio de mesa por clase de luz, {}</translation>
    </message>
    <message>
        <source>Beside the needed ones there may be expansion, delivery_cents, lead_days, least and kilograms.</source>
        <translation>Además de las necesarias puede haber expansion, delivery_cents, lead_days, least y kilograms.</translation>
    </message>
    <message>
        <source>Botanical name</source>
        <translation>Nombre botánico</translation>
    </message>
    <message>
        <source>Both ends are numbers of 0 or more.</source>
        <translation>Ambos extremos son números de 0 o más.</translation>
    </message>
    <message>
        <source>Bottom heat: a protected circuit, wired as the local code asks by who is licensed to, and the thermostat's probe in the medium.</source>
        <translation>Calor de fondo: un circuito protegido, conectado según la norma local por quien tenga licencia, y la sonda del termostato en el sustrato.</translation>
    </message>
    <message>
        <source>Bought</source>
        <translation>Comprado</translation>
    </message>
    <message>
        <source>Bought in: {}</source>
        <translation>Comprado: {}</translation>
    </message>
    <message>
        <source>Buy in</source>
        <translation>Comprar</translation>
    </message>
    <message>
        <source>By tray</source>
        <translation>Por bandeja</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>Por quién</translation>
    </message>
    <message>
        <source>CITES Resolution Conf. 11.11 (as summed up for growers)</source>
        <translation>Resolución CITES Conf. 11.11 (resumida para viveristas)</translation>
    </message>
    <message>
        <source>Can be emptied</source>
        <translation>Pueden vaciarse</translation>
    </message>
    <message>
        <source>Chance of even one more: {}. Another month brings {}</source>
        <translation>Probabilidad de siquiera una más: {}. Otro mes trae {}</translation>
    </message>
    <message>
        <source>Change that one.</source>
        <translation>Cambie ese.</translation>
    </message>
    <message>
        <source>Check both days.</source>
        <translation>Revise los dos días.</translation>
    </message>
    <message>
        <source>Check both parents.</source>
        <translation>Compruebe ambos padres.</translation>
    </message>
    <message>
        <source>Check code and day.</source>
        <translation>Compruebe código y día.</translation>
    </message>
    <message>
        <source>Check folder and disk.</source>
        <translation>Compruebe carpeta y disco.</translation>
    </message>
    <message>
        <source>Check its name.</source>
        <translation>Compruebe su nombre.</translation>
    </message>
    <message>
        <source>Check month and day.</source>
        <translation>Compruebe mes y día.</translation>
    </message>
    <message>
        <source>Check scales</source>
        <translation>Mirar escamas</translation>
    </message>
    <message>
        <source>Check separators and quotes in this row, or say which line is the header.</source>
        <translation>Compruebe los separadores y las comillas de esta fila, o diga qué línea es el encabezado.</translation>
    </message>
    <message>
        <source>Check that file and folder may be read and written.</source>
        <translation>Compruebe que archivo y carpeta se puedan leer y escribir.</translation>
    </message>
    <message>
        <source>Check that it may be read.</source>
        <translation>Compruebe que se pueda leer.</translation>
    </message>
    <message>
        <source>Check that there is room and that you may write there.</source>
        <translation>Compruebe que haya sitio y que pueda escribir ahí.</translation>
    </message>
    <message>
        <source>Check the code and the day.</source>
        <translation>Compruebe el código y el día.</translation>
    </message>
    <message>
        <source>Check the code, or correct the sex.</source>
        <translation>Compruebe el código o corrija el sexo.</translation>
    </message>
    <message>
        <source>Check the code, or the book.</source>
        <translation>Compruebe el código o el libro.</translation>
    </message>
    <message>
        <source>Check the code.</source>
        <translation>Compruebe el código.</translation>
    </message>
    <message>
        <source>Check the code; take the label away.</source>
        <translation>Revise el código; retire la etiqueta.</translation>
    </message>
    <message>
        <source>Check the cone and the day.</source>
        <translation>Compruebe el cono y el día.</translation>
    </message>
    <message>
        <source>Check the dates.</source>
        <translation>Compruebe las fechas.</translation>
    </message>
    <message>
        <source>Check the day or the pollen lot.</source>
        <translation>Compruebe el día o el lote de polen.</translation>
    </message>
    <message>
        <source>Check the day, or collect into a lot of its own.</source>
        <translation>Compruebe el día o recójalo en un lote propio.</translation>
    </message>
    <message>
        <source>Check the day, or reverse the look that found it closed.</source>
        <translation>Compruebe el día o anule la observación que lo encontró cerrado.</translation>
    </message>
    <message>
        <source>Check the day.</source>
        <translation>Compruebe el día.</translation>
    </message>
    <message>
        <source>Check the days.</source>
        <translation>Revise los días.</translation>
    </message>
    <message>
        <source>Check the digits.</source>
        <translation>Compruebe las cifras.</translation>
    </message>
    <message>
        <source>Check the disk, then do it again. Nothing was written.</source>
        <translation>Compruebe el disco y repítalo. No se escribió nada.</translation>
    </message>
    <message>
        <source>Check the file.</source>
        <translation>Compruebe el archivo.</translation>
    </message>
    <message>
        <source>Check the folder, its rights and the room left on the disk.</source>
        <translation>Compruebe la carpeta, sus permisos y el espacio libre del disco.</translation>
    </message>
    <message>
        <source>Check the name.</source>
        <translation>Compruebe el nombre.</translation>
    </message>
    <message>
        <source>Check the number and the day, or recount the lot first.</source>
        <translation>Compruebe el número y el día, o recuente antes el lote.</translation>
    </message>
    <message>
        <source>Check the page, the margins and the pitch.</source>
        <translation>Compruebe la página, los márgenes y el paso.</translation>
    </message>
    <message>
        <source>Check the plant's code.</source>
        <translation>Compruebe el código de la planta.</translation>
    </message>
    <message>
        <source>Check the plants and the shares.</source>
        <translation>Compruebe las plantas y las proporciones.</translation>
    </message>
    <message>
        <source>Check the printer and the space on the disk.</source>
        <translation>Compruebe la impresora y el espacio del disco.</translation>
    </message>
    <message>
        <source>Check the room left on the disk and the folder for temporary files.</source>
        <translation>Compruebe el espacio del disco y la carpeta de archivos temporales.</translation>
    </message>
    <message>
        <source>Check the unit: lengths are in millimetres.</source>
        <translation>Compruebe la unidad: las longitudes van en milímetros.</translation>
    </message>
    <message>
        <source>Check the year.</source>
        <translation>Compruebe el año.</translation>
    </message>
    <message>
        <source>Choose a place.</source>
        <translation>Elija un lugar.</translation>
    </message>
    <message>
        <source>Choose again.</source>
        <translation>Elija de nuevo.</translation>
    </message>
    <message>
        <source>Choose another name, or change that one.</source>
        <translation>Elija otro nombre o cambie ese.</translation>
    </message>
    <message>
        <source>Choose another name, or open it.</source>
        <translation>Elija otro nombre o ábralo.</translation>
    </message>
    <message>
        <source>Choose another name.</source>
        <translation>Elija otro nombre.</translation>
    </message>
    <message>
        <source>Choose another place, or free some space.</source>
        <translation>Elija otro lugar o libere espacio.</translation>
    </message>
    <message>
        <source>Choose another place.</source>
        <translation>Elija otro lugar.</translation>
    </message>
    <message>
        <source>Choose another {}.</source>
        <translation>Elija otro: {}.</translation>
    </message>
    <message>
        <source>Choose at least one lot.</source>
        <translation>Elija al menos un lote.</translation>
    </message>
    <message>
        <source>Choose csv, counts, json, html or xlsx.</source>
        <translation>Elija csv, counts, json, html o xlsx.</translation>
    </message>
    <message>
        <source>Choose one.</source>
        <translation>Elija uno.</translation>
    </message>
    <message>
        <source>Choose where it goes.</source>
        <translation>Elija adónde va.</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>Limpiar</translation>
    </message>
    <message>
        <source>Close it, or double a quote that belongs to the text.</source>
        <translation>Ciérrelas, o duplique las comillas que sean parte del texto.</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrado</translation>
    </message>
    <message>
        <source>Codes begin with the series that book.csv names.</source>
        <translation>Los códigos empiezan con la serie que dice book.csv.</translation>
    </message>
    <message>
        <source>Collect pollen</source>
        <translation>Recoger polen</translation>
    </message>
    <message>
        <source>Collected</source>
        <translation>Recogido</translation>
    </message>
    <message>
        <source>Colour of the leaf</source>
        <translation>Color de la hoja</translation>
    </message>
    <message>
        <source>Columns seem to be separated by {}. Save the file with commas between columns and decimals with a point, such as 7.5.</source>
        <translation>Las columnas parecen separadas por {}. Guarde el archivo con comas entre columnas y decimales con punto, como 7.5.</translation>
    </message>
    <message>
        <source>Complete the row, or take it out.</source>
        <translation>Complete la fila o quítela.</translation>
    </message>
    <message>
        <source>Cone first seen</source>
        <translation>Cono visto por primera vez</translation>
    </message>
    <message>
        <source>Coned</source>
        <translation>Dio cono</translation>
    </message>
    <message>
        <source>Cones</source>
        <translation>Conos</translation>
    </message>
    <message>
        <source>Copy the pictures into it.</source>
        <translation>Copie las fotos en ella.</translation>
    </message>
    <message>
        <source>Correct it again; what stood before is kept in its history.</source>
        <translation>Corríjalo otra vez; lo que había antes queda en su historial.</translation>
    </message>
    <message>
        <source>Correct it, or add that row.</source>
        <translation>Corríjalo o añada esa fila.</translation>
    </message>
    <message>
        <source>Correct it.</source>
        <translation>Corríjalo.</translation>
    </message>
    <message>
        <source>Correct its name, or take it out.</source>
        <translation>Corrija su nombre o quítelo.</translation>
    </message>
    <message>
        <source>Correct the count, or name another tray.</source>
        <translation>Corrija la cantidad o indique otra bandeja.</translation>
    </message>
    <message>
        <source>Correct the number, or count the group again (recount).</source>
        <translation>Corrija el número o vuelva a contar el grupo (recuento).</translation>
    </message>
    <message>
        <source>Correct the parents of one of them.</source>
        <translation>Corrija los padres de uno de ellos.</translation>
    </message>
    <message>
        <source>Correct the plant's sex.</source>
        <translation>Corrija el sexo de la planta.</translation>
    </message>
    <message>
        <source>Correct the seedlings or the seeds sown.</source>
        <translation>Corrija las plántulas o las semillas sembradas.</translation>
    </message>
    <message>
        <source>Correct the text in the book, then export again.</source>
        <translation>Corrija el texto en el libro y exporte de nuevo.</translation>
    </message>
    <message>
        <source>Correct the time.</source>
        <translation>Corrija la hora.</translation>
    </message>
    <message>
        <source>Count again, or recount the batch first.</source>
        <translation>Cuente de nuevo o recuente antes la partida.</translation>
    </message>
    <message>
        <source>Count again.</source>
        <translation>Cuente de nuevo.</translation>
    </message>
    <message>
        <source>Count along the rows from the top left.</source>
        <translation>Cuente por filas desde arriba a la izquierda.</translation>
    </message>
    <message>
        <source>Count at least one grain, and no more germinated than counted.</source>
        <translation>Cuente al menos un grano, y no más germinados que contados.</translation>
    </message>
    <message>
        <source>Count the opened ones among the seeds.</source>
        <translation>Cuente las abiertas entre las semillas.</translation>
    </message>
    <message>
        <source>Count the seed of ripening cones in, then suppose there are none.</source>
        <translation>Incluya la semilla de los conos que maduran, luego suponga que no hay ninguno.</translation>
    </message>
    <message>
        <source>Count the seeds; of a cone that gave none, say in the note why: aborted, rotten, empty.</source>
        <translation>Cuente las semillas; de un cono que no dio ninguna, diga en la nota por qué: abortado, podrido, vacío.</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contadas</translation>
    </message>
    <message>
        <source>Counted in: the seed of ripening cones, about {:.0f}; how much and when is drawn.</source>
        <translation>Se cuenta con la semilla de conos que maduran, unas {:.0f}; cuánta y cuándo se saca al azar.</translation>
    </message>
    <message>
        <source>Counted in: {:.0f} seeds at hand that are judged filled, sown in the next month in which you pot once they have ripened.</source>
        <translation>Se cuenta con {:.0f} semillas disponibles que se juzgan llenas, sembradas en el próximo mes en que se trasplanta, una vez maduras.</translation>
    </message>
    <message>
        <source>Counted in: {:.0f} seeds that you say you will sow.</source>
        <translation>Se cuenta con {:.0f} semillas que dice que sembrará.</translation>
    </message>
    <message>
        <source>Counted those that are</source>
        <translation>Se contaron las que son</translation>
    </message>
    <message>
        <source>Counts are 0 or more.</source>
        <translation>Los recuentos son 0 o más.</translation>
    </message>
    <message>
        <source>Crosses that share a letter cannot be told apart: the difference between their shares may be chance. Every pair is compared, with the spread between trays counted in and Holm's adjustment over all pairs. Cannot be told apart does not mean equal.</source>
        <translation>Los cruces que comparten letra no pueden distinguirse: la diferencia entre sus proporciones puede ser azar. Se compara cada par, contando la dispersión entre bandejas y el ajuste de Holm sobre todos los pares. Que no se distingan no significa que sean iguales.</translation>
    </message>
    <message>
        <source>Curve: {}, {}.</source>
        <translation>Curva: {}, {}.</translation>
    </message>
    <message>
        <source>Cut a few of those judged filled open too, so that the batch can be reckoned.</source>
        <translation>Abra también algunas de las juzgadas llenas, para poder calcular la partida.</translation>
    </message>
    <message>
        <source>Cut floaters open, or sow some, and ask again.</source>
        <translation>Abra semillas que flotan, o siembre algunas, y pregunte de nuevo.</translation>
    </message>
    <message>
        <source>Cut open</source>
        <translation>Abiertas</translation>
    </message>
    <message>
        <source>Cut seeds open instead, or check whether the two are exchanged.</source>
        <translation>Abra semillas en su lugar, o mire si los dos valores están cambiados.</translation>
    </message>
    <message>
        <source>Cut some floaters open: {} show a tenth filled {:.0f} times in 100.</source>
        <translation>Abra algunas que flotan: {} muestran una décima parte llena {:.0f} veces de 100.</translation>
    </message>
    <message>
        <source>Cut some of both groups: without it the test cannot be corrected.</source>
        <translation>Abra algunas de ambos grupos: sin eso la prueba no puede corregirse.</translation>
    </message>
    <message>
        <source>Cut {} open first (a tenth filled would show 95 times in 100), or say that you are sure (--sure).</source>
        <translation>Abra {} primero (una décima parte llena se vería 95 veces de 100) o diga que está seguro (--sure).</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Days soaked</source>
        <translation>Días en remojo</translation>
    </message>
    <message>
        <source>Dead, taken out</source>
        <translation>Muertas, retiradas</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>Degree-days above {:g} °C by the {} method.</source>
        <translation>Grados-día por encima de {:g} °C con el método {}.</translation>
    </message>
    <message>
        <source>Died</source>
        <translation>Murió</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Desechar</translation>
    </message>
    <message>
        <source>Done. Chance of even one more: {}. Another month brings {}</source>
        <translation>Terminada. Probabilidad de siquiera una más: {}. Otro mes trae {}</translation>
    </message>
    <message>
        <source>Drawn {:.2f} % across, {:.2f} % down.</source>
        <translation>Dibujado a {:.2f} % de ancho, {:.2f} % de alto.</translation>
    </message>
    <message>
        <source>Dry seed floats falsely: soak the floaters for a day or more and float them again.</source>
        <translation>La semilla seca flota sin estar vacía: remoje las que flotan un día o más y hágalas flotar otra vez.</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>END:{} without its BEGIN</source>
        <translation>END:{} sin su BEGIN</translation>
    </message>
    <message>
        <source>Each differs from every other beyond chance.</source>
        <translation>Cada uno difiere de todos los demás más de lo que explica el azar.</translation>
    </message>
    <message>
        <source>Each is written once.</source>
        <translation>Cada uno se escribe una vez.</translation>
    </message>
    <message>
        <source>Each tray is a stop once.</source>
        <translation>Cada bandeja es parada una sola vez.</translation>
    </message>
    <message>
        <source>Empty (floated)</source>
        <translation>Vacías (flotaron)</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Terminado</translation>
    </message>
    <message>
        <source>Enter an offer for it.</source>
        <translation>Anote una oferta de él.</translation>
    </message>
    <message>
        <source>Enter at least the tray; after the last step a plant is ready.</source>
        <translation>Anote al menos la bandeja; tras el último paso una planta está lista.</translation>
    </message>
    <message>
        <source>Enter it anew.</source>
        <translation>Anótela de nuevo.</translation>
    </message>
    <message>
        <source>Enter it first, or give its litres and its width in mm.</source>
        <translation>Anótela primero, o dé sus litros y su ancho en mm.</translation>
    </message>
    <message>
        <source>Enter it first, or say the parent in words.</source>
        <translation>Anótela primero o diga el padre con palabras.</translation>
    </message>
    <message>
        <source>Enter it first.</source>
        <translation>Anótelo primero.</translation>
    </message>
    <message>
        <source>Enter it with all its steps.</source>
        <translation>Anótela con todos sus pasos.</translation>
    </message>
    <message>
        <source>Enter its route first.</source>
        <translation>Anote primero su ruta.</translation>
    </message>
    <message>
        <source>Enter its route.</source>
        <translation>Anote su ruta.</translation>
    </message>
    <message>
        <source>Enter the cone when it is seen, or name a female that is expected to cone.</source>
        <translation>Anote el cono cuando se vea, o nombre una hembra que se espera que dé cono.</translation>
    </message>
    <message>
        <source>Enter the house or bench first.</source>
        <translation>Anote primero el invernadero o la mesa.</translation>
    </message>
    <message>
        <source>Enter the look at it, or put it down.</source>
        <translation>Anote la revisión o déjela.</translation>
    </message>
    <message>
        <source>Enter the new roots and leaves first, or correct the number.</source>
        <translation>Anote primero las raíces y hojas nuevas, o corrija el número.</translation>
    </message>
    <message>
        <source>Enter the new roots and leaves first.</source>
        <translation>Anote primero las raíces y hojas nuevas.</translation>
    </message>
    <message>
        <source>Enter the pollen lot first.</source>
        <translation>Anote primero el lote de polen.</translation>
    </message>
    <message>
        <source>Enter the pollen that was collected, or correct its amount.</source>
        <translation>Anote el polen recogido o corrija su cantidad.</translation>
    </message>
    <message>
        <source>Enter what was done: '{} {}'.</source>
        <translation>Anote lo que se hizo: «{} {}».</translation>
    </message>
    <message>
        <source>Enter what was done; the tick does not say it.</source>
        <translation>Anote lo que se hizo; la marca no lo dice.</translation>
    </message>
    <message>
        <source>Entry {} is reversed as a whole. What took of it goes first, as far as it is in the way, the latest first: {}.</source>
        <translation>La anotación {} se anula entera. Antes va lo que tomó de ella, en cuanto estorbe, lo último primero: {}.</translation>
    </message>
    <message>
        <source>Entry {} of the same day says the same. If it was entered twice, reverse entry {}.</source>
        <translation>La anotación {} del mismo día dice lo mismo. Si se anotó dos veces, anule la anotación {}.</translation>
    </message>
    <message>
        <source>Every disposal of the same origin</source>
        <translation>Cada salida del mismo origen</translation>
    </message>
    <message>
        <source>Everything finds room in every future drawn.</source>
        <translation>Todo halla sitio en cada futuro simulado.</translation>
    </message>
    <message>
        <source>Everything finds room.</source>
        <translation>Todo halla sitio.</translation>
    </message>
    <message>
        <source>Everything finds room; lots that are left out are counted as they stand today.</source>
        <translation>Todo halla sitio; los lotes excluidos se cuentan tal como están hoy.</translation>
    </message>
    <message>
        <source>Expected values of what stands in the book today; what is not sown yet is not in it.</source>
        <translation>Valores esperados de lo que hay hoy en el libro; lo que aún no se sembró no está incluido.</translation>
    </message>
    <message>
        <source>Eye guard with a brush on a drill; change the soaking water daily.</source>
        <translation>Protección para los ojos con cepillo en taladro; cambie el agua de remojo a diario.</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>Fertile scales counted</source>
        <translation>Escamas fértiles contadas</translation>
    </message>
    <message>
        <source>Fetch it from the scanner again.</source>
        <translation>Tráigalo otra vez del lector.</translation>
    </message>
    <message>
        <source>Fill it in.</source>
        <translation>Complételo.</translation>
    </message>
    <message>
        <source>Filled (sank)</source>
        <translation>Llenas (se hundieron)</translation>
    </message>
    <message>
        <source>Find an offer with a shorter lead time or more room to store it, say what is on hand, or pot later.</source>
        <translation>Busque una oferta con menos espera o más sitio para almacenarlo, diga qué hay, o trasplante más tarde.</translation>
    </message>
    <message>
        <source>Finished mix, {}</source>
        <translation>Sustrato mezclado, {}</translation>
    </message>
    <message>
        <source>First cone</source>
        <translation>Primer cono</translation>
    </message>
    <message>
        <source>First leaf: {} seeds, {} of those sown{}.</source>
        <translation>Primera hoja: {} semillas, {} de las sembradas{}.</translation>
    </message>
    <message>
        <source>First seen</source>
        <translation>Visto por primera vez</translation>
    </message>
    <message>
        <source>Float the {} unsorted seeds: count what sinks and what floats.</source>
        <translation>Haga flotar las {} semillas sin clasificar: cuente las que se hunden y las que flotan.</translation>
    </message>
    <message>
        <source>Floaters of which none was cut open</source>
        <translation>Flotantes de las que no se abrió ninguna</translation>
    </message>
    <message>
        <source>For the floaters' worth the taxon needs a route.</source>
        <translation>Para el valor de las que flotan, el taxón necesita una ruta.</translation>
    </message>
    <message>
        <source>For, all together</source>
        <translation>Por, todo junto</translation>
    </message>
    <message>
        <source>From whom</source>
        <translation>De quién</translation>
    </message>
    <message>
        <source>Frost that it stands</source>
        <translation>Helada que aguanta</translation>
    </message>
    <message>
        <source>Germinated, of the seed sown, by {} since sowing</source>
        <translation>Germinada, de la semilla sembrada, por {} desde la siembra</translation>
    </message>
    <message>
        <source>Germinates</source>
        <translation>Germina</translation>
    </message>
    <message>
        <source>Germination per cross</source>
        <translation>Germinación por cruce</translation>
    </message>
    <message>
        <source>Germination per cross and season</source>
        <translation>Germinación por cruce y temporada</translation>
    </message>
    <message>
        <source>Germination per season</source>
        <translation>Germinación por temporada</translation>
    </message>
    <message>
        <source>Germination, {}, {}</source>
        <translation>Germinación, {}, {}</translation>
    </message>
    <message>
        <source>Give 0 for pots that touch.</source>
        <translation>Dé 0 para macetas que se tocan.</translation>
    </message>
    <message>
        <source>Give 0 or more, such as 18.50; at most a thousand million.</source>
        <translation>Indique 0 o más, como 18.50; a lo sumo mil millones.</translation>
    </message>
    <message>
        <source>Give 0 or more.</source>
        <translation>Dé 0 o más.</translation>
    </message>
    <message>
        <source>Give 0 to 1 000 000 seeds.</source>
        <translation>Dé de 0 a 1 000 000 de semillas.</translation>
    </message>
    <message>
        <source>Give 0 to 1200 months, or leave it out.</source>
        <translation>Dé de 0 a 1200 meses, o déjelo vacío.</translation>
    </message>
    <message>
        <source>Give 0 to 1200 months.</source>
        <translation>Dé de 0 a 1200 meses.</translation>
    </message>
    <message>
        <source>Give 0 to {}.</source>
        <translation>Dé de 0 a {}.</translation>
    </message>
    <message>
        <source>Give 1 or more.</source>
        <translation>Dé 1 o más.</translation>
    </message>
    <message>
        <source>Give 1 to 1 000 000 seeds.</source>
        <translation>Dé de 1 a 1 000 000 de semillas.</translation>
    </message>
    <message>
        <source>Give 1 to 10000.</source>
        <translation>Dé de 1 a 10000.</translation>
    </message>
    <message>
        <source>Give 1 to 1000000.</source>
        <translation>Dé de 1 a 1000000.</translation>
    </message>
    <message>
        <source>Give 1 to 200 of each.</source>
        <translation>Dé de 1 a 200 de cada.</translation>
    </message>
    <message>
        <source>Give 1 to 60.</source>
        <translation>Dé de 1 a 60.</translation>
    </message>
    <message>
        <source>Give 150 to 2400.</source>
        <translation>Dé de 150 a 2400.</translation>
    </message>
    <message>
        <source>Give a code, or a key from the list of what is due.</source>
        <translation>Dé un código o una clave de la lista de pendientes.</translation>
    </message>
    <message>
        <source>Give a cone, or the female plant of a new one.</source>
        <translation>Dé un cono, o la planta hembra de uno nuevo.</translation>
    </message>
    <message>
        <source>Give a count above 0, or none.</source>
        <translation>Dé un número mayor que 0, o ninguno.</translation>
    </message>
    <message>
        <source>Give a factor above 0, at most 100.</source>
        <translation>Dé un factor mayor que 0 y de a lo sumo 100.</translation>
    </message>
    <message>
        <source>Give a factor above 0, at most 10: 0.7 on a hot bench that saves three tenths of the time.</source>
        <translation>Dé un factor mayor que 0 y de a lo sumo 10: 0.7 en una mesa caliente que ahorra tres décimas del tiempo.</translation>
    </message>
    <message>
        <source>Give a later day.</source>
        <translation>Dé un día posterior.</translation>
    </message>
    <message>
        <source>Give a length above 0 and at most 2000 mm.</source>
        <translation>Dé una longitud mayor que 0 y de a lo sumo 2000 mm.</translation>
    </message>
    <message>
        <source>Give a length from 0 to 2000 mm.</source>
        <translation>Dé una longitud de 0 a 2000 mm.</translation>
    </message>
    <message>
        <source>Give a name and a number.</source>
        <translation>Dé un nombre y un número.</translation>
    </message>
    <message>
        <source>Give a number from 1 to {}.</source>
        <translation>Dé un número de 1 a {}.</translation>
    </message>
    <message>
        <source>Give a number not below zero.</source>
        <translation>Dé un número no menor que cero.</translation>
    </message>
    <message>
        <source>Give a number, or none.</source>
        <translation>Dé un número, o ninguno.</translation>
    </message>
    <message>
        <source>Give a number.</source>
        <translation>Dé un número.</translation>
    </message>
    <message>
        <source>Give a plant, cone, purchase, batch, tray or pot group, or a sale.</source>
        <translation>Dé una planta, cono, compra, partida, bandeja o grupo de macetas, o una venta.</translation>
    </message>
    <message>
        <source>Give a sale that stands.</source>
        <translation>Dé una venta que siga en pie.</translation>
    </message>
    <message>
        <source>Give a share above 0 and below 1, such as 0.9.</source>
        <translation>Dé una proporción mayor que 0 y menor que 1, como 0.9.</translation>
    </message>
    <message>
        <source>Give a share above 0, at most 1.</source>
        <translation>Dé una proporción mayor que 0 y de a lo sumo 1.</translation>
    </message>
    <message>
        <source>Give a share from 0 to below 1.</source>
        <translation>Dé una proporción de 0 a menos de 1.</translation>
    </message>
    <message>
        <source>Give a weight above 0, in the unit of the weighings.</source>
        <translation>Dé un peso mayor que 0, en la unidad de las pesadas.</translation>
    </message>
    <message>
        <source>Give an amount above 0, or none.</source>
        <translation>Dé una cantidad mayor que 0, o ninguna.</translation>
    </message>
    <message>
        <source>Give another name, or another folder.</source>
        <translation>Dé otro nombre u otra carpeta.</translation>
    </message>
    <message>
        <source>Give another name.</source>
        <translation>Dé otro nombre.</translation>
    </message>
    <message>
        <source>Give at least one part a share above 0.</source>
        <translation>Dé al menos a un componente una parte mayor que 0.</translation>
    </message>
    <message>
        <source>Give at least one part above zero.</source>
        <translation>Dé al menos una parte mayor que cero.</translation>
    </message>
    <message>
        <source>Give at least one that was tried.</source>
        <translation>Dé al menos una que se haya probado.</translation>
    </message>
    <message>
        <source>Give at least one.</source>
        <translation>Dé al menos uno.</translation>
    </message>
    <message>
        <source>Give at least the tray.</source>
        <translation>Dé al menos la bandeja.</translation>
    </message>
    <message>
        <source>Give both counts.</source>
        <translation>Dé ambos recuentos.</translation>
    </message>
    <message>
        <source>Give both ends, or none.</source>
        <translation>Dé ambos extremos, o ninguno.</translation>
    </message>
    <message>
        <source>Give degrees Celsius, {} to {}: {} °F are {} °C.</source>
        <translation>Dé grados Celsius, de {} a {}: {} °F son {} °C.</translation>
    </message>
    <message>
        <source>Give each label the code of its lot.</source>
        <translation>Dé a cada etiqueta el código de su lote.</translation>
    </message>
    <message>
        <source>Give each part once.</source>
        <translation>Dé cada componente una sola vez.</translation>
    </message>
    <message>
        <source>Give each replicate as a number from 0 to 100.</source>
        <translation>Dé cada repetición como un número de 0 a 100.</translation>
    </message>
    <message>
        <source>Give how many are judged filled and how many empty.</source>
        <translation>Diga cuántas se juzgan llenas y cuántas vacías.</translation>
    </message>
    <message>
        <source>Give how many are sown in each cell.</source>
        <translation>Diga cuántas se siembran en cada alvéolo.</translation>
    </message>
    <message>
        <source>Give how many of those tested were called filled.</source>
        <translation>Diga cuántas de las probadas se dieron por llenas.</translation>
    </message>
    <message>
        <source>Give how many were cut open and how many of them were filled.</source>
        <translation>Diga cuántas se abrieron y cuántas de ellas estaban llenas.</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>Dele un nombre.</translation>
    </message>
    <message>
        <source>Give its diameter twice.</source>
        <translation>Dé su diámetro dos veces.</translation>
    </message>
    <message>
        <source>Give its inside measures in millimetres.</source>
        <translation>Dé sus medidas interiores en milímetros.</translation>
    </message>
    <message>
        <source>Give its largest outside diameter in millimetres.</source>
        <translation>Dé su mayor diámetro exterior en milímetros.</translation>
    </message>
    <message>
        <source>Give its litres, 0 for none.</source>
        <translation>Dé sus litros, 0 si no hay.</translation>
    </message>
    <message>
        <source>Give length and width in millimetres, as 6000x1500.</source>
        <translation>Dé largo y ancho en milímetros, como 6000x1500.</translation>
    </message>
    <message>
        <source>Give length and width in millimetres.</source>
        <translation>Dé largo y ancho en milímetros.</translation>
    </message>
    <message>
        <source>Give months from low to high, at most 1200.</source>
        <translation>Dé los meses de menos a más, a lo sumo 1200.</translation>
    </message>
    <message>
        <source>Give more than 0.</source>
        <translation>Dé más de 0.</translation>
    </message>
    <message>
        <source>Give numbers above 0.</source>
        <translation>Dé números mayores que 0.</translation>
    </message>
    <message>
        <source>Give one of the two.</source>
        <translation>Dé uno de los dos.</translation>
    </message>
    <message>
        <source>Give shares from 0 to 1.</source>
        <translation>Dé proporciones de 0 a 1.</translation>
    </message>
    <message>
        <source>Give the book's file.</source>
        <translation>Indique el archivo del libro.</translation>
    </message>
    <message>
        <source>Give the code of a house, bench or bay (H…).</source>
        <translation>Dé el código de un invernadero, mesa o tramo (H…).</translation>
    </message>
    <message>
        <source>Give the code of a {}.</source>
        <translation>Dé el código de: {}.</translation>
    </message>
    <message>
        <source>Give the codes of what is moved.</source>
        <translation>Dé los códigos de lo que se mueve.</translation>
    </message>
    <message>
        <source>Give the count, or the weights, not both.</source>
        <translation>Dé el recuento o los pesos, no ambos.</translation>
    </message>
    <message>
        <source>Give the day, or take it out.</source>
        <translation>Dé el día o quítelo.</translation>
    </message>
    <message>
        <source>Give the female plant, or correct the sex.</source>
        <translation>Dé la planta hembra o corrija el sexo.</translation>
    </message>
    <message>
        <source>Give the file to write.</source>
        <translation>Dé el archivo que escribir.</translation>
    </message>
    <message>
        <source>Give the litres of a pack, above 0, and an expansion of 1 or more.</source>
        <translation>Dé los litros de un envase, mayores que 0, y una expansión de 1 o más.</translation>
    </message>
    <message>
        <source>Give the millilitres.</source>
        <translation>Dé los mililitros.</translation>
    </message>
    <message>
        <source>Give the number of filled seeds worth finding, 1 or more.</source>
        <translation>Dé el número de semillas llenas que vale la pena hallar, 1 o más.</translation>
    </message>
    <message>
        <source>Give the place that is to be built another name.</source>
        <translation>Dé otro nombre al lugar que se va a construir.</translation>
    </message>
    <message>
        <source>Give the real litres of one pot.</source>
        <translation>Dé los litros reales de una maceta.</translation>
    </message>
    <message>
        <source>Give the row a taxon, or enter the plant first.</source>
        <translation>Dé un taxón a la fila, o anote primero la planta.</translation>
    </message>
    <message>
        <source>Give the seeds that a good cone has, above 0.</source>
        <translation>Dé las semillas que tiene un buen cono, más de 0.</translation>
    </message>
    <message>
        <source>Give the share that survives each, as 0.75,0.8.</source>
        <translation>Dé la proporción que sobrevive a cada uno, como 0.75,0.8.</translation>
    </message>
    <message>
        <source>Give the share that survives: above 0 and at most 1, so 80 % is 0.8.</source>
        <translation>Dé la proporción que sobrevive: mayor que 0 y a lo sumo 1; 80 % es 0.8.</translation>
    </message>
    <message>
        <source>Give the weight of kinship as 0 to 1.</source>
        <translation>Dé el peso del parentesco de 0 a 1.</translation>
    </message>
    <message>
        <source>Give their day with --on.</source>
        <translation>Dé su día con --on.</translation>
    </message>
    <message>
        <source>Give weights above 0.</source>
        <translation>Dé pesos mayores que 0.</translation>
    </message>
    <message>
        <source>Give what is to stand there.</source>
        <translation>Dé lo que debe constar ahí.</translation>
    </message>
    <message>
        <source>Give what its maker says, above 0, or leave it out.</source>
        <translation>Dé lo que dice su fabricante, mayor que 0, o déjelo vacío.</translation>
    </message>
    <message>
        <source>Give years from low to high, at most 100.</source>
        <translation>Dé los años de menos a más, a lo sumo 100.</translation>
    </message>
    <message>
        <source>Go on with it, or end it.</source>
        <translation>Siga con ella o termínela.</translation>
    </message>
    <message>
        <source>Good seed of {} floats too: cut some floaters open before any are thrown away.</source>
        <translation>La semilla buena de {} también flota: abra algunas que flotan antes de tirar ninguna.</translation>
    </message>
    <message>
        <source>Grains counted</source>
        <translation>Granos contados</translation>
    </message>
    <message>
        <source>Grown under controlled conditions from cultivated parental stock of legal origin. A nursery shows parents with origin and papers, pollinations, harvest, every disposal and an unbroken line from parent to plant.</source>
        <translation>Cultivada en condiciones controladas a partir de un plantel parental cultivado de origen legal. Un vivero muestra padres con origen y documentos, polinizaciones, cosecha, cada salida y una línea sin interrupción de los padres a la planta.</translation>
    </message>
    <message>
        <source>Half of them between {} and {}.</source>
        <translation>La mitad entre el {} y el {}.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Cosechar</translation>
    </message>
    <message>
        <source>Harvest and counts</source>
        <translation>Cosecha y recuentos</translation>
    </message>
    <message>
        <source>Has it had pollen?</source>
        <translation>¿Ya recibió polen?</translation>
    </message>
    <message>
        <source>Here the code of a batch, tray or pot group is expected.</source>
        <translation>Aquí se espera el código de una partida, bandeja o grupo de macetas.</translation>
    </message>
    <message>
        <source>Here the code of a {} is expected.</source>
        <translation>Aquí se espera el código de: {}.</translation>
    </message>
    <message>
        <source>How it came up</source>
        <translation>Cómo nació</translation>
    </message>
    <message>
        <source>How long it lasts</source>
        <translation>Cuánto dura</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>How much seed {} of {} ripening cones bring rests on common practice alone, no source: the book has no sorted cone of their taxon.</source>
        <translation>Cuánta semilla traen {} de {} conos que maduran descansa solo en la práctica común, sin fuente: el libro no tiene ningún cono clasificado de su taxón.</translation>
    </message>
    <message>
        <source>How pollen keeps</source>
        <translation>Cómo se conserva el polen</translation>
    </message>
    <message>
        <source>Hybrids are named by their parents joined by ×, the seed parent first (ICN Art. H.2); both parents are kept as plants, never read from a name.</source>
        <translation>Los híbridos se nombran con sus padres unidos por ×, la madre primero (ICN Art. H.2); ambos padres se guardan como plantas, nunca se leen de un nombre.</translation>
    </message>
    <message>
        <source>In {} of {} trays seed still waits, and young trays are held against old ones; compare them at one day after sowing. </source>
        <translation>En {} de {} bandejas aún espera semilla, y se comparan bandejas jóvenes con viejas; compárelas a un mismo día después de la siembra. </translation>
    </message>
    <message>
        <source>Inspect</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Invented data: this nursery and its counts are made up.</source>
        <translation>Datos inventados: este vivero y sus recuentos no son reales.</translation>
    </message>
    <message>
        <source>Is it a scanner's log?</source>
        <translation>¿Es un registro de un lector?</translation>
    </message>
    <message>
        <source>Is the {} '{}' the same as '{}'? Both would stand in the book.</source>
        <translation>¿Es {} «{}» lo mismo que «{}»? Ambos quedarían en el libro.</translation>
    </message>
    <message>
        <source>Is this the right file?</source>
        <translation>¿Es este el archivo correcto?</translation>
    </message>
    <message>
        <source>Is {} meant?</source>
        <translation>¿Se quiso decir {}?</translation>
    </message>
    <message>
        <source>Issued on</source>
        <translation>Expedido el</translation>
    </message>
    <message>
        <source>It has {}.</source>
        <translation>Tiene {}.</translation>
    </message>
    <message>
        <source>It is 1 for staggered, 0 for in a square.</source>
        <translation>Es 1 si van al tresbolillo, 0 si van en cuadro.</translation>
    </message>
    <message>
        <source>It is a</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>It is a chance above 0 and below 1, such as 0.05.</source>
        <translation>Es una probabilidad mayor que 0 y menor que 1, como 0.05.</translation>
    </message>
    <message>
        <source>It is a share above 0 and below 1, such as 0.9.</source>
        <translation>Es una proporción mayor que 0 y menor que 1, como 0.9.</translation>
    </message>
    <message>
        <source>It is a share from 0 to below 1, such as 0.15.</source>
        <translation>Es una proporción desde 0 y menor que 1, como 0.15.</translation>
    </message>
    <message>
        <source>It is in your own money, from 0 to 1000000000.</source>
        <translation>Va en su propia moneda, de 0 a 1000000000.</translation>
    </message>
    <message>
        <source>It is kg, above 0 and below 10.</source>
        <translation>Son kg, más de 0 y menos de 10.</translation>
    </message>
    <message>
        <source>It is mm, from 0 to 10000.</source>
        <translation>Son mm, de 0 a 10000.</translation>
    </message>
    <message>
        <source>It is the book's series (10 to 99) followed by 1 to 999999.</source>
        <translation>Es la serie del libro (10 a 99) seguida de 1 a 999999.</translation>
    </message>
    <message>
        <source>It is whole months, from 0 to 1200.</source>
        <translation>Son meses enteros, de 0 a 1200.</translation>
    </message>
    <message>
        <source>It is {}.</source>
        <translation>Es {}.</translation>
    </message>
    <message>
        <source>It lies in the hemisphere</source>
        <translation>Está en el hemisferio</translation>
    </message>
    <message>
        <source>It may be done, dismissed or another one by now: look at the list.</source>
        <translation>Puede estar hecho, tachado o ser otro ahora: mire la lista.</translation>
    </message>
    <message>
        <source>It needs a header with the names of the columns.</source>
        <translation>Necesita un encabezado con los nombres de las columnas.</translation>
    </message>
    <message>
        <source>It needs at least its header: {}.</source>
        <translation>Necesita al menos su encabezado: {}.</translation>
    </message>
    <message>
        <source>It needs good, supplier, form, litres and cents.</source>
        <translation>Necesita good, supplier, form, litres y cents.</translation>
    </message>
    <message>
        <source>It really holds, {}</source>
        <translation>Contiene de verdad, {}</translation>
    </message>
    <message>
        <source>It runs from {} to {}.</source>
        <translation>Va de {} a {}.</translation>
    </message>
    <message>
        <source>It stays. Close it there, take '{}' away, then move it again.</source>
        <translation>Se queda. Ciérrelo allí, quite «{}» y muévalo de nuevo.</translation>
    </message>
    <message>
        <source>It stays. What stands at '{}' lacks its last entries: take that away, then move it again.</source>
        <translation>Se queda. A lo que está en «{}» le faltan las últimas anotaciones: quítelo y muévalo de nuevo.</translation>
    </message>
    <message>
        <source>Its counts cannot be worked with, or no seed waits in it.</source>
        <translation>No se puede trabajar con sus recuentos, o no espera semilla en ella.</translation>
    </message>
    <message>
        <source>Its number</source>
        <translation>Su número</translation>
    </message>
    <message>
        <source>Its pollen parent</source>
        <translation>Su planta padre</translation>
    </message>
    <message>
        <source>Its seed parent</source>
        <translation>Su planta madre</translation>
    </message>
    <message>
        <source>Its steps are 1 (the tray) to {}.</source>
        <translation>Sus pasos son del 1 (la bandeja) al {}.</translation>
    </message>
    <message>
        <source>Its turn when walking through</source>
        <translation>Su turno en el recorrido</translation>
    </message>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>Keep one of them.</source>
        <translation>Conserve uno de ellos.</translation>
    </message>
    <message>
        <source>Keep one.</source>
        <translation>Conserve uno.</translation>
    </message>
    <message>
        <source>Keeping a seed costs</source>
        <translation>Guardar una semilla cuesta</translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation>Guardado en</translation>
    </message>
    <message>
        <source>Kind of paper</source>
        <translation>Clase de documento</translation>
    </message>
    <message>
        <source>Kind of plant</source>
        <translation>Clase de planta</translation>
    </message>
    <message>
        <source>Kind of plant (botanical name)</source>
        <translation>Clase de planta (nombre botánico)</translation>
    </message>
    <message>
        <source>Kind of tray</source>
        <translation>Clase de bandeja</translation>
    </message>
    <message>
        <source>Kinship is 0 to 1; half sibs have 0.125, full sibs 0.25.</source>
        <translation>El parentesco va de 0 a 1; los medios hermanos tienen 0,125, los hermanos completos 0,25.</translation>
    </message>
    <message>
        <source>Kinship of the parents is the inbreeding of their offspring; a parent that is not known is taken as related to nobody, so kinship may be higher than said.</source>
        <translation>El parentesco de los padres es la consanguinidad de su descendencia; un padre desconocido se toma por no emparentado con nadie, así que el parentesco puede ser mayor de lo dicho.</translation>
    </message>
    <message>
        <source>Label seen</source>
        <translation>Etiqueta vista</translation>
    </message>
    <message>
        <source>Label wanted</source>
        <translation>Pedir etiqueta</translation>
    </message>
    <message>
        <source>Lasts years, at least</source>
        <translation>Dura años, al menos</translation>
    </message>
    <message>
        <source>Leave the mix out, or make a new group.</source>
        <translation>Omita el sustrato o haga un grupo nuevo.</translation>
    </message>
    <message>
        <source>Leave the row out, or give another name.</source>
        <translation>Deje fuera la fila o dé otro nombre.</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Queda</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Excluidas</translation>
    </message>
    <message>
        <source>Left out: {} ({}): {}</source>
        <translation>Excluido: {} ({}): {}</translation>
    </message>
    <message>
        <source>Length to stand on, {}</source>
        <translation>Largo útil, {}</translation>
    </message>
    <message>
        <source>Letter, 3 × 10 of 66.7 × 25.4 mm</source>
        <translation>Carta, 3 × 10 de 66,7 × 25,4 mm</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Listings and rules</source>
        <translation>Listados y normas</translation>
    </message>
    <message>
        <source>Load by light class, {}</source>
        <translation>Carga por clase de luz, {}</translation>
    </message>
    <message>
        <source>Load in each place, {}</source>
        <translation>Carga en cada lugar, {}</translation>
    </message>
    <message>
        <source>Look again on</source>
        <translation>Mirar otra vez el</translation>
    </message>
    <message>
        <source>Look at the label and type it again.</source>
        <translation>Mire la etiqueta y escríbalo de nuevo.</translation>
    </message>
    <message>
        <source>Look whether it is on and has paper.</source>
        <translation>Mire si está encendida y tiene papel.</translation>
    </message>
    <message>
        <source>Looked at again</source>
        <translation>Vistas de nuevo</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdidas</translation>
    </message>
    <message>
        <source>Make a group of its own, so that the test can be judged later; both may share a place.</source>
        <translation>Haga un grupo propio, para poder juzgar la prueba más tarde; ambos pueden compartir lugar.</translation>
    </message>
    <message>
        <source>Make a lot of its own for each cone; two lots may share a place.</source>
        <translation>Haga un lote propio para cada cono; dos lotes pueden compartir lugar.</translation>
    </message>
    <message>
        <source>Make it first, or choose another.</source>
        <translation>Créela antes, o elija otra.</translation>
    </message>
    <message>
        <source>Make it first, or name another one.</source>
        <translation>Créelo primero o nombre otro.</translation>
    </message>
    <message>
        <source>Make room or ask for the right to write there. The book itself is as it was.</source>
        <translation>Haga sitio o pida permiso para escribir allí. El propio libro sigue como estaba.</translation>
    </message>
    <message>
        <source>Make room, then do it again. Nothing was written.</source>
        <translation>Haga sitio y repítalo. No se escribió nada.</translation>
    </message>
    <message>
        <source>Make the entry again instead of reversing its reversal.</source>
        <translation>Haga la anotación de nuevo en vez de anular su anulación.</translation>
    </message>
    <message>
        <source>Male cone</source>
        <translation>Cono masculino</translation>
    </message>
    <message>
        <source>Many cycads are protected: check whether this needs a permit; the authority decides.</source>
        <translation>Muchas cícadas están protegidas: mire si esto necesita permiso; decide la autoridad.</translation>
    </message>
    <message>
        <source>Many cycads are protected: what is said of papers is no legal advice; the authority decides.</source>
        <translation>Muchas cícadas están protegidas: lo dicho sobre documentos no es asesoría legal; decide la autoridad.</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>Match a column to 'kind', or say seed, tray, pot or parent for all rows.</source>
        <translation>Asigne una columna a «kind» (clase), o diga para todas las filas seed (semilla), tray (bandeja), pot (maceta) o parent (planta madre o padre).</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>May be ready from</source>
        <translation>Puede estar lista desde</translation>
    </message>
    <message>
        <source>May be ripe</source>
        <translation>Puede estar maduro</translation>
    </message>
    <message>
        <source>Measure both rulers: {} mm across, {} mm down.</source>
        <translation>Mida ambas reglas: {} mm de ancho, {} mm de alto.</translation>
    </message>
    <message>
        <source>Measure from one label's edge to the same edge of the next.</source>
        <translation>Mida del borde de una etiqueta al mismo borde de la siguiente.</translation>
    </message>
    <message>
        <source>Measure it once.</source>
        <translation>Mídalo una vez.</translation>
    </message>
    <message>
        <source>Measure its length and width, or pin to a bench of it.</source>
        <translation>Mida su largo y ancho, o fije a una mesa suya.</translation>
    </message>
    <message>
        <source>Measure the ruler of the test page; more than 10 mm off is a setting of the printer: print at 100 %, without fitting to the page.</source>
        <translation>Mida la regla de la página de prueba; más de 10 mm de error es un ajuste de la impresora: imprima al 100 %, sin ajustar a la página.</translation>
    </message>
    <message>
        <source>Medium, hours, temperature</source>
        <translation>Medio, horas, temperatura</translation>
    </message>
    <message>
        <source>Millilitres</source>
        <translation>Mililitros</translation>
    </message>
    <message>
        <source>Millilitres of it</source>
        <translation>Mililitros de él</translation>
    </message>
    <message>
        <source>Millilitres thrown away</source>
        <translation>Mililitros tirados</translation>
    </message>
    <message>
        <source>Mind that {}: {} to {} of the {} floaters may be filled.</source>
        <translation>Tenga en cuenta que {}: de {} a {} de las {} que flotan pueden estar llenas.</translation>
    </message>
    <message>
        <source>Mind the spines: eye guard, gloves and long sleeves at the crown.</source>
        <translation>Cuidado con las espinas: protección para los ojos, guantes y mangas largas junto a la corona.</translation>
    </message>
    <message>
        <source>Mind your back: lift close to the body, and not above about 25 kg alone.</source>
        <translation>Cuide su espalda: levante pegado al cuerpo, y no más de unos 25 kg a solas.</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Sustrato</translation>
    </message>
    <message>
        <source>Mix '{}', {}</source>
        <translation>Mezcla «{}», {}</translation>
    </message>
    <message>
        <source>Months from pollination to the ripe cone, at least</source>
        <translation>Meses desde la polinización hasta el cono maduro, al menos</translation>
    </message>
    <message>
        <source>Months in a step are drawn evenly over the route's range; what is overdue is due this month.</source>
        <translation>Los meses en un paso se simulan por igual dentro del intervalo de la ruta; lo atrasado toca este mes.</translation>
    </message>
    <message>
        <source>Months the seed ripens on after harvest, at least</source>
        <translation>Meses que la semilla sigue madurando tras la cosecha, al menos</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Move it by hand to where the book stands.</source>
        <translation>Llévela a mano a donde está el libro.</translation>
    </message>
    <message>
        <source>Move it to</source>
        <translation>Moverla a</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name a copy from elsewhere. Nothing was changed.</source>
        <translation>Nombre una copia de otra parte. No se cambió nada.</translation>
    </message>
    <message>
        <source>Name a copy.</source>
        <translation>Nombre una copia.</translation>
    </message>
    <message>
        <source>Name a female plant of the register.</source>
        <translation>Nombre una planta hembra del registro.</translation>
    </message>
    <message>
        <source>Name a female plant, or correct the sex.</source>
        <translation>Nombre una planta hembra o corrija el sexo.</translation>
    </message>
    <message>
        <source>Name a file.</source>
        <translation>Nombre un archivo.</translation>
    </message>
    <message>
        <source>Name a month to come.</source>
        <translation>Nombre un mes por venir.</translation>
    </message>
    <message>
        <source>Name a new folder in it.</source>
        <translation>Nombre una carpeta nueva en ella.</translation>
    </message>
    <message>
        <source>Name a new or an empty folder.</source>
        <translation>Nombre una carpeta nueva o vacía.</translation>
    </message>
    <message>
        <source>Name a pot of a route.</source>
        <translation>Nombre una maceta de una ruta.</translation>
    </message>
    <message>
        <source>Name a pot of its route, or add the step.</source>
        <translation>Nombre una maceta de su ruta o añada el paso.</translation>
    </message>
    <message>
        <source>Name another file, or make a new book.</source>
        <translation>Nombre otro archivo o cree un libro nuevo.</translation>
    </message>
    <message>
        <source>Name another folder, or ask for it to be replaced (--replace).</source>
        <translation>Nombre otra carpeta o pida que se reemplace (--replace).</translation>
    </message>
    <message>
        <source>Name another folder, or mend the link.</source>
        <translation>Nombre otra carpeta o arregle el enlace.</translation>
    </message>
    <message>
        <source>Name another one.</source>
        <translation>Nombre otro.</translation>
    </message>
    <message>
        <source>Name another plant, or correct the sex.</source>
        <translation>Nombre otra planta o corrija el sexo.</translation>
    </message>
    <message>
        <source>Name another pollen lot, or enter the collection that is missing.</source>
        <translation>Nombre otro lote de polen o anote la recogida que falta.</translation>
    </message>
    <message>
        <source>Name another pollen lot, or reverse that entry.</source>
        <translation>Nombre otro lote de polen o anule esa anotación.</translation>
    </message>
    <message>
        <source>Name another pollen lot.</source>
        <translation>Nombre otro lote de polen.</translation>
    </message>
    <message>
        <source>Name at least one month in which you pot.</source>
        <translation>Nombre al menos un mes en que trasplanta.</translation>
    </message>
    <message>
        <source>Name at least one month, such as 3-10 or 2,3,9. A lone number has a bit a month, January the lowest: 1 to 4095.</source>
        <translation>Nombre al menos un mes, como 3-10 o 2,3,9. Un número solo tiene un bit por mes, enero el más bajo: de 1 a 4095.</translation>
    </message>
    <message>
        <source>Name at least one part.</source>
        <translation>Nombre al menos un componente.</translation>
    </message>
    <message>
        <source>Name each part once, with a share above 0.</source>
        <translation>Nombre cada componente una sola vez, con una parte mayor que 0.</translation>
    </message>
    <message>
        <source>Name every column.</source>
        <translation>Nombre todas las columnas.</translation>
    </message>
    <message>
        <source>Name it.</source>
        <translation>Póngale nombre.</translation>
    </message>
    <message>
        <source>Name one of its pollen lots, or another father's.</source>
        <translation>Nombre uno de sus lotes de polen, o el de otro padre.</translation>
    </message>
    <message>
        <source>Name one with {}.</source>
        <translation>Nombre una con {}.</translation>
    </message>
    <message>
        <source>Name that pot, or make a new group.</source>
        <translation>Nombre esa maceta o haga un grupo nuevo.</translation>
    </message>
    <message>
        <source>Name the book's file.</source>
        <translation>Nombre el archivo del libro.</translation>
    </message>
    <message>
        <source>Name the folder that holds book.csv and the other files.</source>
        <translation>Nombre la carpeta que contiene book.csv y los demás archivos.</translation>
    </message>
    <message>
        <source>Name the folder that holds the pictures.</source>
        <translation>Nombre la carpeta que contiene las fotos.</translation>
    </message>
    <message>
        <source>Name the male plant, or say that nobody knows the father.</source>
        <translation>Nombre la planta masculina o diga que nadie conoce al padre.</translation>
    </message>
    <message>
        <source>Name the place where they stand, or a taxon.</source>
        <translation>Nombre el lugar donde están, o un taxón.</translation>
    </message>
    <message>
        <source>Name the pollen lot, or say that the father is not known.</source>
        <translation>Nombre el lote de polen o diga que el padre no se conoce.</translation>
    </message>
    <message>
        <source>Name the printer.</source>
        <translation>Nombre la impresora.</translation>
    </message>
    <message>
        <source>Name them with --time-column and --temperature-column; --delimiter says what stands between columns.</source>
        <translation>Nómbrelas con --time-column y --temperature-column; --delimiter dice qué separa las columnas.</translation>
    </message>
    <message>
        <source>Name what was due.</source>
        <translation>Nombre lo que estaba pendiente.</translation>
    </message>
    <message>
        <source>New cone</source>
        <translation>Cono nuevo</translation>
    </message>
    <message>
        <source>New leaves</source>
        <translation>Hojas nuevas</translation>
    </message>
    <message>
        <source>New mix</source>
        <translation>Sustrato nuevo</translation>
    </message>
    <message>
        <source>New place</source>
        <translation>Lugar nuevo</translation>
    </message>
    <message>
        <source>New places have no measures yet: enter their length and width, so that room can be reckoned.</source>
        <translation>Los lugares nuevos aún no tienen medidas: anote su largo y su ancho para poder calcular el espacio.</translation>
    </message>
    <message>
        <source>New plant</source>
        <translation>Planta nueva</translation>
    </message>
    <message>
        <source>New pollen lot</source>
        <translation>Lote de polen nuevo</translation>
    </message>
    <message>
        <source>New roots</source>
        <translation>Raíces nuevas</translation>
    </message>
    <message>
        <source>New tray or pot</source>
        <translation>Bandeja o maceta nueva</translation>
    </message>
    <message>
        <source>Nine tenths between {} and {}.</source>
        <translation>Nueve décimas entre el {} y el {}.</translation>
    </message>
    <message>
        <source>No book is open yet.</source>
        <translation>Todavía no hay ningún libro abierto.</translation>
    </message>
    <message numerus="yes">
        <source>No cones: about {1:.0f} seeds of {0} cones are not sown.</source>
        <translation>
            <numerusform>Sin conos: no se siembran unas {1:.0f} semillas de {0} cono.</numerusform>
            <numerusform>Sin conos: no se siembran unas {1:.0f} semillas de {0} conos.</numerusform>
        </translation>
    </message>
    <message>
        <source>No curve: all that came up was seen at one look.</source>
        <translation>Sin curva: todo lo nacido se vio en una sola revisión.</translation>
    </message>
    <message>
        <source>No curve: nothing came up.</source>
        <translation>Sin curva: no nació nada.</translation>
    </message>
    <message>
        <source>No day lacks a temperature.</source>
        <translation>A ningún día le falta temperatura.</translation>
    </message>
    <message>
        <source>No first leaf seen yet.</source>
        <translation>Aún no se ha visto ninguna primera hoja.</translation>
    </message>
    <message>
        <source>No floater was cut open or sown to its end</source>
        <translation>Ninguna que flota se abrió ni se sembró hasta el final</translation>
    </message>
    <message>
        <source>No floaters on the table.</source>
        <translation>No hay flotantes en la mesa.</translation>
    </message>
    <message>
        <source>No good copy stands beside it; take one from elsewhere, and keep this file.</source>
        <translation>No hay ninguna copia buena al lado; tome una de otro sitio y conserve este archivo.</translation>
    </message>
    <message>
        <source>No list costs less than {} (gap {:.2f} %). Nothing runs short in {:.1f} of 100 futures; {:g} were asked for.</source>
        <translation>Ninguna lista cuesta menos de {} (diferencia {:.2f} %). No falta nada en {:.1f} de 100 futuros; se pidieron {:g}.</translation>
    </message>
    <message>
        <source>No more expected.</source>
        <translation>No se espera más.</translation>
    </message>
    <message>
        <source>No place of the book is measured, so room is not asked about.</source>
        <translation>Ningún lugar del libro está medido, así que no se pregunta por el espacio.</translation>
    </message>
    <message>
        <source>No place of {} has a size. Measure one.</source>
        <translation>Ningún lugar de {} tiene medidas. Mida uno.</translation>
    </message>
    <message>
        <source>No seed is left in the trays.</source>
        <translation>No queda semilla en las bandejas.</translation>
    </message>
    <message>
        <source>No tray had been sown by then.</source>
        <translation>Hasta entonces no se había sembrado ninguna bandeja.</translation>
    </message>
    <message>
        <source>No tray has been looked at yet.</source>
        <translation>Aún no se ha revisado ninguna bandeja.</translation>
    </message>
    <message>
        <source>No tray to compare: none was looked at by then.</source>
        <translation>Ninguna bandeja que comparar: no se había revisado ninguna.</translation>
    </message>
    <message>
        <source>Not looked at yet.</source>
        <translation>Todavía no revisado.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Nothing came up. </source>
        <translation>No nació nada. </translation>
    </message>
    <message>
        <source>Nothing has to be ordered for the lots that can be planned.</source>
        <translation>No hay que pedir nada para los lotes que se pueden planear.</translation>
    </message>
    <message>
        <source>Nothing has to be ordered.</source>
        <translation>No hay que pedir nada.</translation>
    </message>
    <message>
        <source>Nothing here is called “{}”. Try part of the name, or a code.</source>
        <translation>Aquí nada se llama «{}». Pruebe con parte del nombre o un código.</translation>
    </message>
    <message>
        <source>Nothing left</source>
        <translation>No queda nada</translation>
    </message>
    <message>
        <source>Nothing of it is left on the table.</source>
        <translation>No queda nada de ella en la mesa.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>No se escribió nada.</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>Of the {1} seeds that wait, {0} still come up (8 times in 10).</source>
        <translation>De las {1} semillas en espera, aún nacen {0} (8 veces de 10).</translation>
    </message>
    <message>
        <source>Of those that are</source>
        <translation>De las que son</translation>
    </message>
    <message numerus="yes">
        <source>Of {} floaters cut open {}</source>
        <translation>
            <numerusform>De {} flotante abierta {}</numerusform>
            <numerusform>De {} flotantes abiertas {}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of {} floaters sown {}</source>
        <translation>
            <numerusform>De {} flotante sembrada {}</numerusform>
            <numerusform>De {} flotantes sembradas {}</numerusform>
        </translation>
    </message>
    <message>
        <source>Of {} in '{}' (step {}) {:.3g} % live instead of {:.3g} %.</source>
        <translation>De {} en «{}» (paso {}) sobrevive el {:.3g} % en lugar del {:.3g} %.</translation>
    </message>
    <message>
        <source>Old from</source>
        <translation>Viejo desde</translation>
    </message>
    <message>
        <source>One harvest has one weight.</source>
        <translation>Una cosecha tiene un solo peso.</translation>
    </message>
    <message>
        <source>One of: {}.</source>
        <translation>Uno de: {}.</translation>
    </message>
    <message>
        <source>One pass has one method.</source>
        <translation>Una pasada tiene un solo método.</translation>
    </message>
    <message>
        <source>Open a book first.</source>
        <translation>Abra primero un libro.</translation>
    </message>
    <message>
        <source>Open it there and save the sheet as CSV (UTF-8), then take in that file.</source>
        <translation>Ábralo allí, guarde la hoja como CSV (UTF-8) e incorpore luego ese archivo.</translation>
    </message>
    <message>
        <source>Open some</source>
        <translation>Abrir algunas</translation>
    </message>
    <message>
        <source>Open some that are</source>
        <translation>Abrir algunas de las que son</translation>
    </message>
    <message>
        <source>Open the book it belongs to.</source>
        <translation>Abra el libro al que pertenece.</translation>
    </message>
    <message>
        <source>Order list</source>
        <translation>Lista de pedidos</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Outside length or diameter, {}</source>
        <translation>Largo exterior o diámetro, {}</translation>
    </message>
    <message>
        <source>Outside width, {}</source>
        <translation>Ancho exterior, {}</translation>
    </message>
    <message>
        <source>Paper to strike</source>
        <translation>Documento que se tacha</translation>
    </message>
    <message>
        <source>Papers: {}</source>
        <translation>Documentos: {}</translation>
    </message>
    <message>
        <source>Parent plants</source>
        <translation>Plantas progenitoras</translation>
    </message>
    <message>
        <source>Parents</source>
        <translation>Padres</translation>
    </message>
    <message>
        <source>Parts by volume</source>
        <translation>Partes en volumen</translation>
    </message>
    <message>
        <source>Parts of the mixes, {}</source>
        <translation>Componentes de los sustratos, {}</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Pin one, allow hybrids, or allow closer parents.</source>
        <translation>Fije uno, permita híbridos o permita padres más emparentados.</translation>
    </message>
    <message>
        <source>Pin or forbid some crosses, so that fewer are left to choose from.</source>
        <translation>Fije o prohíba algunos cruces, para que queden menos entre los que elegir.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Plan a move</source>
        <translation>Planear un traslado</translation>
    </message>
    <message>
        <source>Plan fewer months or lots at a time, or allow more time.</source>
        <translation>Planee menos meses o menos lotes a la vez, o conceda más tiempo.</translation>
    </message>
    <message>
        <source>Plant out</source>
        <translation>Plantar fuera</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Plantas</translation>
    </message>
    <message>
        <source>Plants = seeds sown × viable share of the pollen × germination × survival along the route; ranges are 10 to 90 % and leave survival at one value.</source>
        <translation>Plantas = semillas sembradas × parte viable del polen × germinación × supervivencia por la ruta; los intervalos son del 10 al 90 % y dejan la supervivencia en un solo valor.</translation>
    </message>
    <message>
        <source>Plants becoming ready, by cross</source>
        <translation>Plantas que quedan listas, por cruce</translation>
    </message>
    <message>
        <source>Plants in pots; none for seed</source>
        <translation>Plantas en maceta; ninguna si es semilla</translation>
    </message>
    <message>
        <source>Plants into '{}'</source>
        <translation>Plantas a «{}»</translation>
    </message>
    <message>
        <source>Plants into each pot</source>
        <translation>Plantas a cada maceta</translation>
    </message>
    <message>
        <source>Plants of {} ready</source>
        <translation>Plantas de {} listas</translation>
    </message>
    <message>
        <source>Plants standing at the month's end</source>
        <translation>Plantas existentes a fin de mes</translation>
    </message>
    <message>
        <source>Pollen</source>
        <translation>Polen</translation>
    </message>
    <message>
        <source>Pollen collected on</source>
        <translation>Polen recogido el</translation>
    </message>
    <message>
        <source>Pollen of {}</source>
        <translation>Polen de {}</translation>
    </message>
    <message>
        <source>Pollen parent</source>
        <translation>Planta padre</translation>
    </message>
    <message>
        <source>Pollen put in on</source>
        <translation>Polen puesto el</translation>
    </message>
    <message>
        <source>Pollinate</source>
        <translation>Polinizar</translation>
    </message>
    <message>
        <source>Pollinations</source>
        <translation>Polinizaciones</translation>
    </message>
    <message>
        <source>Pot</source>
        <translation>Maceta</translation>
    </message>
    <message>
        <source>Pot on</source>
        <translation>Trasplantar</translation>
    </message>
    <message>
        <source>Pots</source>
        <translation>Macetas</translation>
    </message>
    <message>
        <source>Potting in {} instead of {}.</source>
        <translation>Trasplante en {} en lugar de {}.</translation>
    </message>
    <message>
        <source>Potting mix can carry Legionella: wet it, wear mask and gloves, open bags away from the face, wash hands.</source>
        <translation>La mezcla de sustrato puede llevar Legionella: humedézcala, use mascarilla y guantes, abra los sacos lejos de la cara, lávese las manos.</translation>
    </message>
    <message>
        <source>Prices are 0 or more, a least order is 1 or more, a lead time 0 to 3650 days.</source>
        <translation>Los precios son 0 o más, un pedido mínimo 1 o más, una espera de 0 a 3650 días.</translation>
    </message>
    <message>
        <source>Print at 100 %, without fitting to the page.</source>
        <translation>Imprima al 100 %, sin ajustar a la página.</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Aplicado</translation>
    </message>
    <message>
        <source>Put off or strike</source>
        <translation>Aplazar o tachar</translation>
    </message>
    <message>
        <source>Put off until</source>
        <translation>Aplazar hasta</translation>
    </message>
    <message>
        <source>Put the earlier date first.</source>
        <translation>Ponga primero la fecha anterior.</translation>
    </message>
    <message>
        <source>Put the file into the folder.</source>
        <translation>Ponga el archivo en la carpeta.</translation>
    </message>
    <message>
        <source>Put the file itself into the folder.</source>
        <translation>Ponga el archivo mismo en la carpeta.</translation>
    </message>
    <message>
        <source>Put the smaller number first.</source>
        <translation>Ponga primero el número menor.</translation>
    </message>
    <message>
        <source>Put these within another place first.</source>
        <translation>Ponga estos primero dentro de otro lugar.</translation>
    </message>
    <message>
        <source>Ranges at {:g} %: {}. Mean and T50 are times to the look at which seed was seen, of the seed that came up.</source>
        <translation>Intervalos al {:g} %: {}. La media y T50 son tiempos hasta la revisión en que se vio, de la semilla que nació.</translation>
    </message>
    <message>
        <source>Ranges leave one future in ten below and one in ten above.</source>
        <translation>Los rangos dejan un futuro de cada diez por debajo y uno de cada diez por encima.</translation>
    </message>
    <message>
        <source>Ranking</source>
        <translation>Clasificación</translation>
    </message>
    <message>
        <source>Ready plants stay in their pots until they are sold, and no sale is foreseen: they keep taking room.</source>
        <translation>Las plantas listas siguen en sus macetas hasta que se venden, y no se prevé ninguna venta: siguen ocupando sitio.</translation>
    </message>
    <message>
        <source>Ready plants stay in their pots: no sale is foreseen.</source>
        <translation>Las plantas listas siguen en sus macetas: no se prevé ninguna venta.</translation>
    </message>
    <message>
        <source>Ready plants {} (in the present plan they {}).</source>
        <translation>Las plantas listas {} (en el plan actual {}).</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Recount</source>
        <translation>Recontar</translation>
    </message>
    <message>
        <source>Remark in the register</source>
        <translation>Observación en el registro</translation>
    </message>
    <message>
        <source>Reverse first what used it.</source>
        <translation>Anule primero lo que lo usó.</translation>
    </message>
    <message>
        <source>Reverse that entry first.</source>
        <translation>Anule primero esa anotación.</translation>
    </message>
    <message>
        <source>Reverse that entry if it was wrong; a ripe cone is coming apart.</source>
        <translation>Anule esa anotación si era errónea; un cono maduro se deshace.</translation>
    </message>
    <message>
        <source>Roll, 40 × 60 mm</source>
        <translation>Rollo, 40 × 60 mm</translation>
    </message>
    <message>
        <source>Roll, 50 × 25 mm</source>
        <translation>Rollo, 50 × 25 mm</translation>
    </message>
    <message>
        <source>Roll, 57 × 32 mm</source>
        <translation>Rollo, 57 × 32 mm</translation>
    </message>
    <message>
        <source>Room on the benches is not asked about.</source>
        <translation>No se pregunta por el espacio en las mesas.</translation>
    </message>
    <message>
        <source>Room taken in each place, {}</source>
        <translation>Espacio ocupado en cada lugar, {}</translation>
    </message>
    <message>
        <source>Room: what the measured places offer less what stands there on the day; what will be sold or planted out until the plants are there is not foreseen.</source>
        <translation>Espacio: lo que ofrecen los lugares medidos menos lo que hay en ellos ese día; no se prevé lo que se venda o se plante fuera hasta que lleguen las plantas.</translation>
    </message>
    <message>
        <source>Run 'coneline check' on the book, and see to the disk.</source>
        <translation>Ejecute 'coneline check' con el libro y revise el disco.</translation>
    </message>
    <message>
        <source>Rutherford et al., CITES and Cycads: a user's guide, Kew, slide 26</source>
        <translation>Rutherford et al., CITES and Cycads: a user's guide, Kew, diapositiva 26</translation>
    </message>
    <message>
        <source>Rutherford et al., CITES and Cycads: a user's guide, Kew, slide 26 (all other cycads)</source>
        <translation>Rutherford et al., CITES and Cycads: a user's guide, Kew, diapositiva 26 (todas las demás cícadas)</translation>
    </message>
    <message>
        <source>Save the file as UTF-8.</source>
        <translation>Guarde el archivo como UTF-8.</translation>
    </message>
    <message>
        <source>Save the labels as a file and print that.</source>
        <translation>Guarde las etiquetas como archivo e imprima ese.</translation>
    </message>
    <message>
        <source>Save the sheet as CSV (UTF-8).</source>
        <translation>Guarde la hoja como CSV (UTF-8).</translation>
    </message>
    <message>
        <source>Say first where it is kept: coneline store.</source>
        <translation>Diga primero dónde se guarda: coneline store.</translation>
    </message>
    <message>
        <source>Say how it is kept: 'refrigerator'.</source>
        <translation>Diga cómo se guarda: «refrigerador».</translation>
    </message>
    <message>
        <source>Say how many.</source>
        <translation>Diga cuántas.</translation>
    </message>
    <message>
        <source>Say how they are written: day first, or month first.</source>
        <translation>Diga cómo están escritas: primero el día o primero el mes.</translation>
    </message>
    <message>
        <source>Say what a plant is worth and what a sown seed costs (or a litre of mix and a square metre of bench a month), and the break-even is reckoned.</source>
        <translation>Diga cuánto vale una planta y cuánto cuesta una semilla sembrada (o un litro de sustrato y un metro cuadrado de mesa al mes) y se calcula el umbral.</translation>
    </message>
    <message>
        <source>Say which cross it is of.</source>
        <translation>Diga de qué cruce es.</translation>
    </message>
    <message>
        <source>Say which is meant (on the command line: --state or --from).</source>
        <translation>Diga cuál se entiende (en la línea de órdenes: --state o --from).</translation>
    </message>
    <message>
        <source>Say which: {}.</source>
        <translation>Diga cuál: {}.</translation>
    </message>
    <message>
        <source>Say why in the note.</source>
        <translation>Diga por qué en la nota.</translation>
    </message>
    <message>
        <source>Scales</source>
        <translation>Escamas</translation>
    </message>
    <message>
        <source>Scan it without counts.</source>
        <translation>Léala sin recuentos.</translation>
    </message>
    <message>
        <source>Scan one, or type its code.</source>
        <translation>Lea una o escriba su código.</translation>
    </message>
    <message>
        <source>Scan the label again, or type its code.</source>
        <translation>Lea la etiqueta de nuevo o escriba su código.</translation>
    </message>
    <message>
        <source>Scan the label or type its code, such as T1742Q.</source>
        <translation>Lea la etiqueta o escriba su código, como T1742Q.</translation>
    </message>
    <message>
        <source>Scan the tray first.</source>
        <translation>Lea primero la bandeja.</translation>
    </message>
    <message>
        <source>Season plan</source>
        <translation>Plan de temporada</translation>
    </message>
    <message>
        <source>See to the disk it is on. The book itself is as it was.</source>
        <translation>Revise el disco en que está. El propio libro sigue como estaba.</translation>
    </message>
    <message>
        <source>See whether the disk has room.</source>
        <translation>Mire si el disco tiene sitio.</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Semilla</translation>
    </message>
    <message>
        <source>Seed parent</source>
        <translation>Planta madre</translation>
    </message>
    <message>
        <source>Seed that is cut open is gone: use 'open' for it, and here eye, float, shake or x-ray.</source>
        <translation>La semilla abierta se pierde: use «open» para ella, y aquí vista, flotación, agitado o rayos X.</translation>
    </message>
    <message>
        <source>Seed {} takes {:g} times as long to come up from now on: {} trays and {} sowings to come.</source>
        <translation>La semilla {} tarda desde ahora {:g} veces lo mismo en nacer: {} bandejas y {} siembras por venir.</translation>
    </message>
    <message>
        <source>Seeds</source>
        <translation>Semillas</translation>
    </message>
    <message>
        <source>Seeds counted</source>
        <translation>Semillas contadas</translation>
    </message>
    <message>
        <source>Seeds expected</source>
        <translation>Semillas esperadas</translation>
    </message>
    <message>
        <source>Seeds or plants it takes</source>
        <translation>Semillas o plantas que admite</translation>
    </message>
    <message>
        <source>Sell</source>
        <translation>Vender</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>Set right</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Set the camera's clock; take these out, or give the right day.</source>
        <translation>Ponga en hora la cámara; quítelas o dé el día correcto.</translation>
    </message>
    <message>
        <source>Set the scanner to write 2026-11-20, or correct the line.</source>
        <translation>Configure el lector para que escriba 2026-11-20, o corrija la línea.</translation>
    </message>
    <message>
        <source>Set the scanner to write 2026-11-20.</source>
        <translation>Configure el lector para que escriba 2026-11-20.</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexo</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forma</translation>
    </message>
    <message>
        <source>Share of the seed sown that had germinated, by time since sowing</source>
        <translation>Proporción germinada de la semilla sembrada, según el tiempo desde la siembra</translation>
    </message>
    <message>
        <source>Share of the seed sown that had germinated, with fitted curve, its range, and where it may end</source>
        <translation>Proporción germinada de la semilla sembrada, con la curva ajustada, su intervalo y dónde puede acabar</translation>
    </message>
    <message>
        <source>Share of the seed sown. The trays of a cross are taken together, times counted from each one's sowing; trays sown later count with what has come up so far.</source>
        <translation>Proporción de la semilla sembrada. Las bandejas de un cruce se toman juntas, con los tiempos contados desde la siembra de cada una; las sembradas después cuentan con lo nacido hasta ahora.</translation>
    </message>
    <message>
        <source>Show it with fewer dots an inch.</source>
        <translation>Muéstrela con menos puntos por pulgada.</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Something was changed since the export. Put it back as it was, or take links.csv out: the chain is then begun anew, and papers printed before no longer match it.</source>
        <translation>Algo se cambió desde la exportación. Déjelo como estaba, o quite links.csv: la cadena empieza entonces de nuevo y los documentos impresos antes ya no concuerdan.</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Clasificar</translation>
    </message>
    <message>
        <source>Sort those that are</source>
        <translation>Clasificar las que son</translation>
    </message>
    <message>
        <source>Sow</source>
        <translation>Sembrar</translation>
    </message>
    <message>
        <source>Sow those that are</source>
        <translation>Sembrar las que son</translation>
    </message>
    <message>
        <source>Sow, or look at the stored seed again when it is due.</source>
        <translation>Siémbrela, o mire otra vez la semilla guardada cuando toque.</translation>
    </message>
    <message>
        <source>Spilt or left over, %</source>
        <translation>Derramado o sobrante, %</translation>
    </message>
    <message>
        <source>Split it.</source>
        <translation>Divídala.</translation>
    </message>
    <message>
        <source>Standing counts and room are those of the month's end, pots touching.</source>
        <translation>Las existencias y el espacio son los del fin de mes, con macetas que se tocan.</translation>
    </message>
    <message>
        <source>Standing here</source>
        <translation>Está aquí</translation>
    </message>
    <message>
        <source>Stands in</source>
        <translation>Está en</translation>
    </message>
    <message>
        <source>State it with --date-order dmy or mdy.</source>
        <translation>Indíquelo con --date-order dmy o mdy.</translation>
    </message>
    <message>
        <source>State it with --unit C or --unit F.</source>
        <translation>Indíquela con --unit C o --unit F.</translation>
    </message>
    <message>
        <source>Still expected: {}–{}, likely {}.</source>
        <translation>Aún se esperan: {}–{}, probable {}.</translation>
    </message>
    <message>
        <source>Store</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Store them to ripen on, or sow.</source>
        <translation>Guárdelas para que sigan madurando, o siémbrelas.</translation>
    </message>
    <message>
        <source>Strike a paper</source>
        <translation>Tachar un documento</translation>
    </message>
    <message>
        <source>Sulfur dust catches fire and irritates lungs and eyes: if you dust wounds with it or a fungicide, no sparks, mask and goggles; the label and local law decide, also who may.</source>
        <translation>El polvo de azufre se inflama e irrita pulmones y ojos: si espolvorea heridas con él o con un fungicida, sin chispas, con mascarilla y gafas; deciden la etiqueta y la ley local, también sobre quién puede hacerlo.</translation>
    </message>
    <message>
        <source>Suppose something first.</source>
        <translation>Suponga algo primero.</translation>
    </message>
    <message>
        <source>Survival is drawn once a taxon, step and season, germination once a cross and tray, from all curves that fit its counts and the book's other crosses.</source>
        <translation>La supervivencia se simula una vez por taxón, paso y temporada, la germinación una vez por cruce y bandeja, de todas las curvas que concuerdan con sus recuentos y con los demás cruces del libro.</translation>
    </message>
    <message>
        <source>Tag, 120 × 16 mm, 45 mm in the soil</source>
        <translation>Etiqueta de clavar, 120 × 16 mm, 45 mm en el sustrato</translation>
    </message>
    <message>
        <source>Tag, 150 × 25 mm, 60 mm in the soil</source>
        <translation>Etiqueta de clavar, 150 × 25 mm, 60 mm en el sustrato</translation>
    </message>
    <message>
        <source>Tag, 30 × 120 mm, 55 mm in the soil</source>
        <translation>Etiqueta de clavar, 30 × 120 mm, 55 mm en el sustrato</translation>
    </message>
    <message>
        <source>Take a larger label or a finer printer.</source>
        <translation>Use una etiqueta mayor o una impresora más fina.</translation>
    </message>
    <message>
        <source>Take a larger label.</source>
        <translation>Use una etiqueta mayor.</translation>
    </message>
    <message>
        <source>Take a larger pot or correct the root ball.</source>
        <translation>Use una maceta mayor o corrija el cepellón.</translation>
    </message>
    <message>
        <source>Take a pin out, or pin a lot to another place.</source>
        <translation>Quite algo fijado, o fije un lote a otro lugar.</translation>
    </message>
    <message>
        <source>Take another; 'coneline copies' tells which are good. Nothing was changed.</source>
        <translation>Tome otra; 'coneline copies' dice cuáles son buenas. No se cambió nada.</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Take fewer trays.</source>
        <translation>Use menos bandejas.</translation>
    </message>
    <message>
        <source>Take in the logger's file of the place where it stood.</source>
        <translation>Incorpore el archivo del registrador del lugar donde estuvo.</translation>
    </message>
    <message>
        <source>Take it out of its own parts, or rename the part.</source>
        <translation>Quítelo de sus propios componentes, o cambie el nombre del componente.</translation>
    </message>
    <message>
        <source>Take it out, or save the file as text.</source>
        <translation>Quítelo o guarde el archivo como texto.</translation>
    </message>
    <message>
        <source>Take it out; that file is for '{}'.</source>
        <translation>Quítela; ese archivo es para «{}».</translation>
    </message>
    <message>
        <source>Take it out; the columns are {}.</source>
        <translation>Quítela; las columnas son {}.</translation>
    </message>
    <message>
        <source>Take more trays.</source>
        <translation>Use más bandejas.</translation>
    </message>
    <message>
        <source>Take one of the two away.</source>
        <translation>Retire uno de los dos.</translation>
    </message>
    <message>
        <source>Take the fleshy coat off and soak the seed; put down what is lost.</source>
        <translation>Quite la sarcotesta y ponga la semilla en remojo; anote lo que se pierde.</translation>
    </message>
    <message>
        <source>Take the old label away; if something is in it, count it again (recount).</source>
        <translation>Retire la etiqueta vieja; si hay algo dentro, cuéntelo de nuevo (recontar).</translation>
    </message>
    <message>
        <source>Take the pin out, or pin it to another place.</source>
        <translation>Suéltelo, o fíjelo a otro lugar.</translation>
    </message>
    <message>
        <source>Take the pins out first.</source>
        <translation>Quite primero las fijaciones.</translation>
    </message>
    <message>
        <source>Take the whole stalk: turn it out in the direction of the scales' spiral (common practice, no source).</source>
        <translation>Tome el pedúnculo entero: gírelo en el sentido de la espiral de las escamas (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>Taken out dead</source>
        <translation>Muertas retiradas</translation>
    </message>
    <message>
        <source>Taxon</source>
        <translation>Taxón</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Test pollen</source>
        <translation>Probar polen</translation>
    </message>
    <message>
        <source>Test the printer with a larger stock.</source>
        <translation>Pruebe la impresora con un papel mayor.</translation>
    </message>
    <message>
        <source>That '{}' is gone is not written: move what stands there, then set its measures to 0.</source>
        <translation>Que «{}» ya no está no se escribe: mueva lo que hay allí y luego ponga sus medidas a 0.</translation>
    </message>
    <message>
        <source>That no cones come is not written: the book has the cones that were seen.</source>
        <translation>Que no vengan conos no se escribe: el libro tiene los conos que se vieron.</translation>
    </message>
    <message>
        <source>That ready plants stay is not written: it holds where the book says nothing.</source>
        <translation>Que las plantas listas se queden no se escribe: vale donde el libro no dice nada.</translation>
    </message>
    <message>
        <source>That seed of '{}' comes up sooner or later is not written: the book learns it from the counts.</source>
        <translation>Que la semilla de «{}» nazca antes o después no se escribe: el libro lo aprende de los recuentos.</translation>
    </message>
    <message>
        <source>The book did NOT prove when this was printed: see what is missing.</source>
        <translation>El libro NO pudo comprobarse al imprimir esto: vea qué falta.</translation>
    </message>
    <message>
        <source>The book has '{}': write that, or enter the new one first.</source>
        <translation>El libro tiene «{}»: escriba ese nombre, o anote primero el nuevo.</translation>
    </message>
    <message>
        <source>The book has no measured place of this light class.</source>
        <translation>El libro no tiene ningún lugar medido de esta clase de luz.</translation>
    </message>
    <message>
        <source>The book has: {}.</source>
        <translation>El libro tiene: {}.</translation>
    </message>
    <message>
        <source>The book was proven when this was printed: {} entries, each linked to the one before it by SHA-256.</source>
        <translation>El libro quedó probado al imprimir esto: {} anotaciones, cada una enlazada con la anterior por SHA-256.</translation>
    </message>
    <message>
        <source>The chart shows the {} with most seed.</source>
        <translation>El gráfico muestra los {} con más semilla.</translation>
    </message>
    <message>
        <source>The columns are kind, name, says, source, as_of.</source>
        <translation>Las columnas son kind, name, says, source, as_of.</translation>
    </message>
    <message>
        <source>The copy stands; take the old file away by hand.</source>
        <translation>La copia está hecha; quite a mano el archivo antiguo.</translation>
    </message>
    <message>
        <source>The cover of the book is one row.</source>
        <translation>La portada del libro es una sola fila.</translation>
    </message>
    <message>
        <source>The file has: {}.</source>
        <translation>El archivo tiene: {}.</translation>
    </message>
    <message>
        <source>The first number is from 0 to {}.</source>
        <translation>El primer número va de 0 a {}.</translation>
    </message>
    <message>
        <source>The float test is</source>
        <translation>La prueba de flotación es</translation>
    </message>
    <message>
        <source>The history of a lot lists its entries.</source>
        <translation>El historial de un lote lista sus anotaciones.</translation>
    </message>
    <message>
        <source>The kind is</source>
        <translation>La clase es</translation>
    </message>
    <message>
        <source>The line from parent to plant</source>
        <translation>La línea de los padres a la planta</translation>
    </message>
    <message>
        <source>The list of possible crosses shows those there are.</source>
        <translation>La lista de cruces posibles muestra los que hay.</translation>
    </message>
    <message>
        <source>The male cone is</source>
        <translation>El cono masculino está</translation>
    </message>
    <message>
        <source>The male plant, as you call it</source>
        <translation>La planta macho, como usted la llama</translation>
    </message>
    <message>
        <source>The names of the columns stand in one row; say its line.</source>
        <translation>Los nombres de las columnas están en una sola fila; diga su línea.</translation>
    </message>
    <message>
        <source>The newest good copy is '{}', of the book as it was on {} UTC. 'Go back to a copy' in the window, or 'coneline restore', puts it in place and keeps this file.</source>
        <translation>La copia buena más reciente es «{}», del libro como estaba el {} UTC. «Volver a una copia» en la ventana, o «coneline restore», la pone en su lugar y conserva este archivo.</translation>
    </message>
    <message>
        <source>The nursery</source>
        <translation>El vivero</translation>
    </message>
    <message>
        <source>The nursery's name</source>
        <translation>El nombre del vivero</translation>
    </message>
    <message>
        <source>The parents are</source>
        <translation>Los padres son</translation>
    </message>
    <message>
        <source>The range lies within the floaters.</source>
        <translation>El intervalo cabe entre las que flotan.</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>El registro</translation>
    </message>
    <message>
        <source>The route's survival weighs as {:g} plants against the book's own history, a season strays as {:g} plants would.</source>
        <translation>La supervivencia de la ruta pesa como {:g} plantas frente al historial propio del libro; una temporada se desvía como lo harían {:g} plantas.</translation>
    </message>
    <message>
        <source>The scales are</source>
        <translation>Las escamas están</translation>
    </message>
    <message>
        <source>The sowing of {} seeds of {} is not written before it is made.</source>
        <translation>La siembra de {} semillas de {} no se escribe antes de hacerla.</translation>
    </message>
    <message>
        <source>The steps are what was seen, each tray counting for as long as it was looked at (Turnbull's estimate). The band is, day by day, the range in which the share germinated by that day lies, from the covariance of the curve's three values (delta method on the logit), widened by the spread between trays. It is for each day alone and takes the family of the curve to be right.</source>
        <translation>Los escalones son lo observado; cada bandeja cuenta mientras se la revisó (estimador de Turnbull). La banda es, día a día, el intervalo en que está la proporción germinada hasta ese día, a partir de la covarianza de los tres valores de la curva (método delta en el logit), ensanchada por la dispersión entre bandejas. Vale para cada día por separado y supone correcta la familia de la curva.</translation>
    </message>
    <message>
        <source>The steps of a route stand in their order, from 1.</source>
        <translation>Los pasos de una ruta van en su orden, desde 1.</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Entonces</translation>
    </message>
    <message>
        <source>There are no floaters.</source>
        <translation>No hay semillas que floten.</translation>
    </message>
    <message>
        <source>There are:{}</source>
        <translation>Hay:{}</translation>
    </message>
    <message>
        <source>There is no {} in this book.</source>
        <translation>No hay {} en este libro.</translation>
    </message>
    <message>
        <source>They have soaked: take them out and float them.</source>
        <translation>Ya estuvieron en remojo: sáquelas y hágalas flotar.</translation>
    </message>
    <message>
        <source>They soak until {}: change the water daily, float them then.</source>
        <translation>Están en remojo hasta el {}: cambie el agua a diario y hágalas flotar entonces.</translation>
    </message>
    <message>
        <source>They were</source>
        <translation>Eran</translation>
    </message>
    <message>
        <source>This is no legal advice. Listings change; the data above have the day on which they were looked up. The authority decides.</source>
        <translation>Esto no es asesoría legal. Los listados cambian; los datos de arriba llevan el día en que se consultaron. Decide la autoridad.</translation>
    </message>
    <message>
        <source>Throw pollen away</source>
        <translation>Tirar polen</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Took pollen</source>
        <translation>Recibió polen</translation>
    </message>
    <message>
        <source>Tray or pot</source>
        <translation>Bandeja o maceta</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Bandejas</translation>
    </message>
    <message>
        <source>Two are the fewest.</source>
        <translation>Dos son lo mínimo.</translation>
    </message>
    <message>
        <source>Unpin a cross, collect more pollen, take less for each cone, or say how much room there will be.</source>
        <translation>Suelte un cruce, recoja más polen, use menos por cono o diga cuánto espacio habrá.</translation>
    </message>
    <message>
        <source>Unpin a cross, or say how much room there will be.</source>
        <translation>Suelte un cruce o diga cuánto espacio habrá.</translation>
    </message>
    <message>
        <source>Unpin a cross, take less for each cone, or use another lot.</source>
        <translation>Suelte un cruce, use menos por cono o use otro lote.</translation>
    </message>
    <message>
        <source>Unpin some, or ask for more crosses.</source>
        <translation>Suelte algunos o pida más cruces.</translation>
    </message>
    <message>
        <source>Use 'listing' or 'rule'.</source>
        <translation>Use «listing» o «rule».</translation>
    </message>
    <message>
        <source>Use one of: {}.</source>
        <translation>Use uno de: {}.</translation>
    </message>
    <message>
        <source>Use the next free code.</source>
        <translation>Use el siguiente código libre.</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Usado</translation>
    </message>
    <message>
        <source>Volume lost in mixing, %</source>
        <translation>Volumen perdido al mezclar, %</translation>
    </message>
    <message>
        <source>Wait or close the other program, then do it again. Nothing was written.</source>
        <translation>Espere o cierre el otro programa y repítalo. No se escribió nada.</translation>
    </message>
    <message>
        <source>Wait until this is done: {}</source>
        <translation>Espere a que termine esto: {}</translation>
    </message>
    <message>
        <source>Waits</source>
        <translation>Espera</translation>
    </message>
    <message>
        <source>Walk a house instead: a round takes any place.</source>
        <translation>Recorra en su lugar un invernadero: una ronda toma cualquier lugar.</translation>
    </message>
    <message>
        <source>Want 1 or more.</source>
        <translation>Quiera 1 o más.</translation>
    </message>
    <message>
        <source>Water changed</source>
        <translation>Agua cambiada</translation>
    </message>
    <message>
        <source>Watered pots are heavy: lift 25 kg at most, close to the body, two for more.</source>
        <translation>Las macetas regadas pesan: levante a lo sumo 25 kg, pegado al cuerpo, entre dos para más.</translation>
    </message>
    <message>
        <source>Watered pots are heavy: mind the load a bench bears, and your back.</source>
        <translation>Las macetas regadas pesan: tenga en cuenta la carga que soporta una mesa, y su espalda.</translation>
    </message>
    <message>
        <source>Way of keeping, as pollen lots name it</source>
        <translation>Modo de conservar, como lo nombran los lotes de polen</translation>
    </message>
    <message>
        <source>Weigh a watered pot and divide by its litres; it is above 0 and below 10.</source>
        <translation>Pese una maceta regada y divida por sus litros; es mayor que 0 y menor que 10.</translation>
    </message>
    <message>
        <source>Weigh all of it in the same unit as the hundreds.</source>
        <translation>Péselo todo en la misma unidad que las centenas.</translation>
    </message>
    <message>
        <source>Weigh at least two times 100 seeds, better eight.</source>
        <translation>Pese al menos dos veces 100 semillas, mejor ocho.</translation>
    </message>
    <message>
        <source>Weigh eight more times 100 seeds and give all {}, or count by hand.</source>
        <translation>Pese ocho veces más 100 semillas y dé las {}, o cuente a mano.</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Qué está pendiente</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Qué falta</translation>
    </message>
    <message>
        <source>What is not sown yet is not in them.</source>
        <translation>Lo que aún no está sembrado no está en ellos.</translation>
    </message>
    <message>
        <source>What it says of it</source>
        <translation>Lo que dice</translation>
    </message>
    <message>
        <source>What was being done was not finished; the book holds what was entered before. Try again, and where it comes back, close the program and open it anew.</source>
        <translation>Lo que se estaba haciendo no se terminó; el libro conserva lo registrado antes. Inténtelo de nuevo y, si se repite, cierre el programa y vuelva a abrirlo.</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Cómo la llama usted</translation>
    </message>
    <message>
        <source>What you reckon with</source>
        <translation>Con qué calcula</translation>
    </message>
    <message>
        <source>Where it came from</source>
        <translation>De dónde vino</translation>
    </message>
    <message>
        <source>Where that comes from</source>
        <translation>De dónde viene eso</translation>
    </message>
    <message>
        <source>Where the plant came from</source>
        <translation>De dónde vino la planta</translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation>De dónde viene esto</translation>
    </message>
    <message>
        <source>Where what you change comes from</source>
        <translation>De dónde viene lo que cambia</translation>
    </message>
    <message>
        <source>Whether a plant is a hybrid or a pure species has legal weight; each parent's listing is shown.</source>
        <translation>Que una planta sea híbrida o de especie pura tiene peso legal; se muestra el listado de cada padre.</translation>
    </message>
    <message>
        <source>Whether the float test holds for {} is not known: cut some floaters open first.</source>
        <translation>No se sabe si la prueba de flotación vale para {}: abra antes algunas que flotan.</translation>
    </message>
    <message>
        <source>Whoever holds this paper can have it shown later that the entries behind it were not changed: 'coneline check --link' with the link above.</source>
        <translation>Quien tenga este documento puede pedir después que se demuestre que las anotaciones que lo respaldan no se cambiaron: «coneline check --link» con el eslabón de arriba.</translation>
    </message>
    <message>
        <source>Why it is set right</source>
        <translation>Por qué se corrige</translation>
    </message>
    <message>
        <source>Width, {}</source>
        <translation>Ancho, {}</translation>
    </message>
    <message>
        <source>Wilson</source>
        <translation>Wilson</translation>
    </message>
    <message numerus="yes">
        <source>Without '{1}' ({2:.2f} m²{3}); {0} lots that stand there need another place.</source>
        <translation>
            <numerusform>Sin «{1}» ({2:.2f} m²{3}); {0} lote que está allí necesita otro lugar.</numerusform>
            <numerusform>Sin «{1}» ({2:.2f} m²{3}); {0} lotes que están allí necesitan otro lugar.</numerusform>
        </translation>
    </message>
    <message>
        <source>Without a place yet, {}</source>
        <translation>Todavía sin lugar, {}</translation>
    </message>
    <message>
        <source>Write 10 % as 0.1; it is at most 1.</source>
        <translation>Escriba 10 % como 0.1; es a lo sumo 1.</translation>
    </message>
    <message>
        <source>Write 15 % as 0.15; it is below 1.</source>
        <translation>Escriba 15 % como 0.15; es menor que 1.</translation>
    </message>
    <message>
        <source>Write 80 % as 0.8.</source>
        <translation>Escriba 80 % como 0.8.</translation>
    </message>
    <message>
        <source>Write 95 % as 0.95; neither 0 nor 1 can be had.</source>
        <translation>Escriba 95 % como 0.95; ni 0 ni 1 son posibles.</translation>
    </message>
    <message>
        <source>Write a chance between 0 and 1, such as 0.05.</source>
        <translation>Escriba una probabilidad entre 0 y 1, como 0.05.</translation>
    </message>
    <message>
        <source>Write a day after sowing, above 0.</source>
        <translation>Escriba un día después de la siembra, mayor que 0.</translation>
    </message>
    <message>
        <source>Write a month from 1 to 12.</source>
        <translation>Escriba un mes de 1 a 12.</translation>
    </message>
    <message>
        <source>Write a number above 0, or nothing.</source>
        <translation>Escriba un número mayor que 0, o nada.</translation>
    </message>
    <message>
        <source>Write a number above zero.</source>
        <translation>Escriba un número mayor que cero.</translation>
    </message>
    <message>
        <source>Write a number such as 22.5.</source>
        <translation>Escriba un número como 22.5.</translation>
    </message>
    <message>
        <source>Write a share between 0 and 1, such as 0.8.</source>
        <translation>Escriba una proporción entre 0 y 1, como 0.8.</translation>
    </message>
    <message>
        <source>Write a share between 0 and 1, such as 0.95.</source>
        <translation>Escriba una proporción entre 0 y 1, como 0.95.</translation>
    </message>
    <message>
        <source>Write a whole number, such as 40, and words in a note.</source>
        <translation>Escriba un número entero, como 40, y las palabras en una nota.</translation>
    </message>
    <message>
        <source>Write all dates one way.</source>
        <translation>Escriba todas las fechas de un mismo modo.</translation>
    </message>
    <message>
        <source>Write codes in capitals and digits only.</source>
        <translation>Escriba los códigos solo con mayúsculas y cifras.</translation>
    </message>
    <message>
        <source>Write days from now, above 0 and at most 3650.</source>
        <translation>Escriba días desde ahora, más de 0 y a lo sumo 3650.</translation>
    </message>
    <message>
        <source>Write decimals with a point, such as 22.5.</source>
        <translation>Escriba los decimales con punto, como 22.5.</translation>
    </message>
    <message>
        <source>Write digits alone, such as 42.</source>
        <translation>Escriba solo cifras, como 42.</translation>
    </message>
    <message>
        <source>Write each as name=amount, such as bark=4.</source>
        <translation>Escriba cada uno como nombre=cantidad, como corteza=4.</translation>
    </message>
    <message>
        <source>Write how many there are, or leave the row out.</source>
        <translation>Escriba cuántas hay o deje fuera la fila.</translation>
    </message>
    <message>
        <source>Write how many there are.</source>
        <translation>Escriba cuántas hay.</translation>
    </message>
    <message>
        <source>Write how many.</source>
        <translation>Escriba cuántas.</translation>
    </message>
    <message>
        <source>Write it again from the calendar program.</source>
        <translation>Escríbalo de nuevo desde el programa de calendario.</translation>
    </message>
    <message>
        <source>Write it anew in UTF-8. Nothing was written.</source>
        <translation>Escríbalo de nuevo en UTF-8. No se escribió nada.</translation>
    </message>
    <message>
        <source>Write it as 2026-03-09T14:05:00.</source>
        <translation>Escríbalo como 2026-03-09T14:05:00.</translation>
    </message>
    <message>
        <source>Write it as the book does, or choose another name.</source>
        <translation>Escríbalo como el libro, o elija otro nombre.</translation>
    </message>
    <message>
        <source>Write it down.</source>
        <translation>Anótelo.</translation>
    </message>
    <message>
        <source>Write it like 2026-03-09, or leave it empty.</source>
        <translation>Escríbalo como 2026-03-09, o déjelo vacío.</translation>
    </message>
    <message>
        <source>Write it like {} or 2026-03-09.</source>
        <translation>Escríbalo como {} o 2026-03-09.</translation>
    </message>
    <message>
        <source>Write it like: perlite 4, peat 3, sand 3.</source>
        <translation>Escríbalo así: perlita 4, turba 3, arena 3.</translation>
    </message>
    <message>
        <source>Write it such as 2027-05.</source>
        <translation>Escríbalo como 2027-05.</translation>
    </message>
    <message>
        <source>Write its name and its parts, as bark=4,sand=1.</source>
        <translation>Escriba su nombre y sus componentes, como corteza=4,arena=1.</translation>
    </message>
    <message>
        <source>Write its name as the book has it.</source>
        <translation>Escriba su nombre como lo tiene el libro.</translation>
    </message>
    <message>
        <source>Write opened:filled, such as 10:9.</source>
        <translation>Escriba abiertas:llenas, como 10:9.</translation>
    </message>
    <message>
        <source>Write seed, tray, pot or parent.</source>
        <translation>Escriba seed (semilla), tray (bandeja), pot (maceta) o parent (planta madre o padre).</translation>
    </message>
    <message>
        <source>Write since when it is there.</source>
        <translation>Escriba desde cuándo está.</translation>
    </message>
    <message>
        <source>Write that botanical name, or give a new plant another name.</source>
        <translation>Escriba ese nombre botánico o dé otro nombre a la planta nueva.</translation>
    </message>
    <message>
        <source>Write the botanical name.</source>
        <translation>Escriba el nombre botánico.</translation>
    </message>
    <message>
        <source>Write the code instead.</source>
        <translation>Escriba en su lugar el código.</translation>
    </message>
    <message>
        <source>Write the cross as the book names it, or a taxon for a cross that is not in the book yet.</source>
        <translation>Escriba el cruce como lo nombra el libro, o un taxón para un cruce que aún no está en el libro.</translation>
    </message>
    <message>
        <source>Write the day, as near as is known, or give one day for all rows.</source>
        <translation>Escriba el día, tan cerca como se sepa, o dé un día para todas las filas.</translation>
    </message>
    <message>
        <source>Write the number alone, without its unit.</source>
        <translation>Escriba solo el número, sin su unidad.</translation>
    </message>
    <message>
        <source>Write the number.</source>
        <translation>Escriba el número.</translation>
    </message>
    <message>
        <source>Write the seed parent, ×, and the pollen parent.</source>
        <translation>Escriba la planta madre, ×, y la planta padre.</translation>
    </message>
    <message>
        <source>Write what a pack costs.</source>
        <translation>Escriba cuánto cuesta un envase.</translation>
    </message>
    <message>
        <source>Write what a square metre costs a month.</source>
        <translation>Escriba lo que cuesta un metro cuadrado al mes.</translation>
    </message>
    <message>
        <source>Write what it is called.</source>
        <translation>Escriba cómo se llama.</translation>
    </message>
    <message>
        <source>Write when it was sown.</source>
        <translation>Escriba cuándo se sembró.</translation>
    </message>
    <message>
        <source>Write which one it is in, by its name.</source>
        <translation>Escriba en cuál está, por su nombre.</translation>
    </message>
    <message>
        <source>Write which plant bore the cone.</source>
        <translation>Escriba qué planta dio el cono.</translation>
    </message>
    <message>
        <source>Write year-month-day, such as 2026-03-09.</source>
        <translation>Escriba año-mes-día, como 2026-03-09.</translation>
    </message>
    <message>
        <source>Write yes or no.</source>
        <translation>Escriba sí (yes) o no.</translation>
    </message>
    <message>
        <source>Write {} or {}.</source>
        <translation>Escriba {} o {}.</translation>
    </message>
    <message>
        <source>a 100 mm ruler of {} mm</source>
        <translation>una regla de 100 mm de {} mm</translation>
    </message>
    <message>
        <source>a batch has not a pot or tray it stands in</source>
        <translation>una partida no tiene maceta ni bandeja en la que esté</translation>
    </message>
    <message>
        <source>a bench side of {} mm cannot be</source>
        <translation>un lado de mesa de {} mm no puede ser</translation>
    </message>
    <message>
        <source>a byte that is no UTF-8 text</source>
        <translation>un byte que no es texto UTF-8</translation>
    </message>
    <message>
        <source>a certain name</source>
        <translation>un nombre seguro</translation>
    </message>
    <message>
        <source>a code such as P1742, or words</source>
        <translation>un código como P1742, o palabras</translation>
    </message>
    <message>
        <source>a confidence of {}</source>
        <translation>una confianza de {}</translation>
    </message>
    <message>
        <source>a count below 0</source>
        <translation>un recuento menor que 0</translation>
    </message>
    <message>
        <source>a count cannot be below zero, and this is {}</source>
        <translation>un recuento no puede ser menor que cero, y este es {}</translation>
    </message>
    <message>
        <source>a count of 0 or none</source>
        <translation>una cantidad de 0 o ninguna</translation>
    </message>
    <message>
        <source>a day not yet in sight</source>
        <translation>un día todavía no a la vista</translation>
    </message>
    <message>
        <source>a draw of germination does not cover its trays</source>
        <translation>una simulación de la germinación no abarca sus bandejas</translation>
    </message>
    <message>
        <source>a draw of germination is no probability</source>
        <translation>una simulación de la germinación no es una probabilidad</translation>
    </message>
    <message>
        <source>a fault of the program: {}</source>
        <translation>un fallo del programa: {}</translation>
    </message>
    <message>
        <source>a filled seed becomes a plant {:g} to {:g} times</source>
        <translation>una semilla llena llega a planta de {:g} a {:g} veces</translation>
    </message>
    <message>
        <source>a forecast has no '{}'</source>
        <translation>un pronóstico no tiene «{}»</translation>
    </message>
    <message>
        <source>a forecast of {} months</source>
        <translation>un pronóstico de {} meses</translation>
    </message>
    <message>
        <source>a forecast of {} runs</source>
        <translation>un pronóstico de {} pasadas</translation>
    </message>
    <message>
        <source>a gap of {:g} mm between pots</source>
        <translation>una separación de {:g} mm entre macetas</translation>
    </message>
    <message>
        <source>a gap of {} mm cannot be</source>
        <translation>una separación de {} mm no puede ser</translation>
    </message>
    <message>
        <source>a germination</source>
        <translation>una germinación</translation>
    </message>
    <message>
        <source>a good without a name</source>
        <translation>un material sin nombre</translation>
    </message>
    <message>
        <source>a hybrid, and hybrids were not asked for</source>
        <translation>un híbrido, y no se pidieron híbridos</translation>
    </message>
    <message>
        <source>a kinship of {}</source>
        <translation>un parentesco de {}</translation>
    </message>
    <message>
        <source>a label without a code</source>
        <translation>una etiqueta sin código</translation>
    </message>
    <message>
        <source>a length in mm</source>
        <translation>un largo en mm</translation>
    </message>
    <message>
        <source>a loss</source>
        <translation>una pérdida</translation>
    </message>
    <message>
        <source>a loss of {} cannot be</source>
        <translation>una pérdida de {} no puede ser</translation>
    </message>
    <message>
        <source>a mix without a name</source>
        <translation>un sustrato sin nombre</translation>
    </message>
    <message>
        <source>a mix without a name or without parts</source>
        <translation>un sustrato sin nombre o sin componentes</translation>
    </message>
    <message>
        <source>a month of the year is from 1 to 12</source>
        <translation>un mes del año va de 1 a 12</translation>
    </message>
    <message>
        <source>a movement of 0</source>
        <translation>un movimiento de 0</translation>
    </message>
    <message>
        <source>a movement of nothing</source>
        <translation>un movimiento de nada</translation>
    </message>
    <message>
        <source>a new label for {} is on the list</source>
        <translation>una etiqueta nueva para {} está en la lista</translation>
    </message>
    <message>
        <source>a new label for {} on {}</source>
        <translation>una etiqueta nueva para {} en {}</translation>
    </message>
    <message>
        <source>a new label for {}, {}</source>
        <translation>una etiqueta nueva para {}, {}</translation>
    </message>
    <message>
        <source>a note of a plant says what its male cone is like, or where it shall go</source>
        <translation>una nota de una planta dice cómo está su cono masculino o adónde irá</translation>
    </message>
    <message>
        <source>a number above 0</source>
        <translation>un número mayor que 0</translation>
    </message>
    <message>
        <source>a number above 0 belongs here</source>
        <translation>aquí va un número mayor que 0</translation>
    </message>
    <message>
        <source>a pack of {:g} kg</source>
        <translation>un envase de {:g} kg</translation>
    </message>
    <message>
        <source>a page of {} × {} mm at {} dots an inch is too large to show</source>
        <translation>una página de {} × {} mm a {} puntos por pulgada es demasiado grande para mostrarla</translation>
    </message>
    <message>
        <source>a page of {} × {} mm is too small for a ruler of 20 mm</source>
        <translation>una página de {} × {} mm es demasiado pequeña para una regla de 20 mm</translation>
    </message>
    <message>
        <source>a parent plant without a name</source>
        <translation>una planta progenitora sin nombre</translation>
    </message>
    <message>
        <source>a part has no name</source>
        <translation>un componente no tiene nombre</translation>
    </message>
    <message>
        <source>a place of {} × {} mm</source>
        <translation>un lugar de {} × {} mm</translation>
    </message>
    <message>
        <source>a place that bears {:g} kg a square metre</source>
        <translation>un lugar que soporta {:g} kg por metro cuadrado</translation>
    </message>
    <message>
        <source>a place without a lot to stand there</source>
        <translation>un lugar sin lote que esté en él</translation>
    </message>
    <message>
        <source>a place without a name</source>
        <translation>un lugar sin nombre</translation>
    </message>
    <message>
        <source>a placing of {} months</source>
        <translation>una colocación de {} meses</translation>
    </message>
    <message>
        <source>a plant called '{}' is there already</source>
        <translation>ya hay una planta llamada «{}»</translation>
    </message>
    <message>
        <source>a plant is its own ancestor: {}</source>
        <translation>una planta es su propio antepasado: {}</translation>
    </message>
    <message>
        <source>a plant worth {:g}</source>
        <translation>una planta que vale {:g}</translation>
    </message>
    <message>
        <source>a pollen parent without a seed parent</source>
        <translation>un padre del polen sin madre de la semilla</translation>
    </message>
    <message>
        <source>a pollen parent without the day of pollination</source>
        <translation>un padre del polen sin el día de la polinización</translation>
    </message>
    <message>
        <source>a pollen store without a name</source>
        <translation>un modo de conservar polen sin nombre</translation>
    </message>
    <message>
        <source>a pollination without pollen</source>
        <translation>una polinización sin polen</translation>
    </message>
    <message>
        <source>a pot group needs a pot or tray it stands in</source>
        <translation>un grupo de macetas necesita un tipo de maceta o bandeja</translation>
    </message>
    <message>
        <source>a pot of {} litres cannot be</source>
        <translation>una maceta de {} litros no puede ser</translation>
    </message>
    <message>
        <source>a pot of {} mm is below 1 mm</source>
        <translation>una maceta de {} mm tiene menos de 1 mm</translation>
    </message>
    <message>
        <source>a pot that measures {} mm cannot be</source>
        <translation>una maceta que mide {} mm no puede ser</translation>
    </message>
    <message>
        <source>a pot without a name</source>
        <translation>una maceta o bandeja sin nombre</translation>
    </message>
    <message>
        <source>a pot without width or height holds nothing</source>
        <translation>una maceta sin ancho o alto no contiene nada</translation>
    </message>
    <message>
        <source>a price below 0</source>
        <translation>un precio menor que 0</translation>
    </message>
    <message>
        <source>a price of {:g}</source>
        <translation>un precio de {:g}</translation>
    </message>
    <message>
        <source>a price of {} cents</source>
        <translation>un precio de {} céntimos</translation>
    </message>
    <message>
        <source>a printer of {} dots an inch</source>
        <translation>una impresora de {} puntos por pulgada</translation>
    </message>
    <message>
        <source>a quote is opened and never closed</source>
        <translation>se abren comillas que nunca se cierran</translation>
    </message>
    <message>
        <source>a range from {} down to {}</source>
        <translation>un intervalo de {} hacia abajo hasta {}</translation>
    </message>
    <message>
        <source>a range from {} to {} is none</source>
        <translation>un intervalo de {} a {} no lo es</translation>
    </message>
    <message>
        <source>a reversal names the entry it reverses, and nothing else does</source>
        <translation>una anulación nombra la anotación que anula, y nada más lo hace</translation>
    </message>
    <message>
        <source>a ripening</source>
        <translation>una maduración</translation>
    </message>
    <message>
        <source>a root ball of {} litres cannot be</source>
        <translation>un cepellón de {} litros no puede ser</translation>
    </message>
    <message>
        <source>a root ball of {} litres does not fit a pot of {} litres: {} too much</source>
        <translation>un cepellón de {} litros no cabe en una maceta de {} litros: sobran {}</translation>
    </message>
    <message>
        <source>a round pot of {} × {} mm</source>
        <translation>una maceta redonda de {} × {} mm</translation>
    </message>
    <message>
        <source>a round that began on {} and ended on {}, {} days before</source>
        <translation>una ronda que empezó el {} y terminó el {}, {} días antes</translation>
    </message>
    <message>
        <source>a round that has ended with a tray still in the hand</source>
        <translation>una ronda terminada con una bandeja todavía en la mano</translation>
    </message>
    <message>
        <source>a route without steps</source>
        <translation>una ruta sin pasos</translation>
    </message>
    <message>
        <source>a season that begins in month {}</source>
        <translation>una temporada que empieza en el mes {}</translation>
    </message>
    <message>
        <source>a series</source>
        <translation>una serie</translation>
    </message>
    <message>
        <source>a settling of {}</source>
        <translation>un asentamiento de {}</translation>
    </message>
    <message>
        <source>a share above 0, at most 1</source>
        <translation>una proporción mayor que 0, de 1 a lo sumo</translation>
    </message>
    <message>
        <source>a share from 0 to below 1</source>
        <translation>una proporción de 0 a menos de 1</translation>
    </message>
    <message>
        <source>a share of '{}'</source>
        <translation>una parte de «{}»</translation>
    </message>
    <message>
        <source>a share of 0 or more</source>
        <translation>una proporción de 0 o más</translation>
    </message>
    <message>
        <source>a share of {} has no value</source>
        <translation>una proporción de {} no tiene valor</translation>
    </message>
    <message>
        <source>a shrink</source>
        <translation>una merma</translation>
    </message>
    <message>
        <source>a shrink of {}</source>
        <translation>una merma de {}</translation>
    </message>
    <message>
        <source>a shrink of {} cannot be</source>
        <translation>una merma de {} no puede ser</translation>
    </message>
    <message>
        <source>a sowing of {} seeds</source>
        <translation>una siembra de {} semillas</translation>
    </message>
    <message>
        <source>a sowing of {} seeds of {}</source>
        <translation>una siembra de {} semillas de {}</translation>
    </message>
    <message>
        <source>a sowing without a number of seeds</source>
        <translation>una siembra sin número de semillas</translation>
    </message>
    <message>
        <source>a sown seed at {:g}, a kept one at {:g}</source>
        <translation>una semilla sembrada a {:g}, una guardada a {:g}</translation>
    </message>
    <message>
        <source>a spreadsheet program's own file</source>
        <translation>el archivo propio de un programa de hojas de cálculo</translation>
    </message>
    <message>
        <source>a stage in which {} survive cannot be</source>
        <translation>una etapa a la que sobreviven {} no puede ser</translation>
    </message>
    <message>
        <source>a step of a taxon without a route</source>
        <translation>un paso de un taxón sin ruta</translation>
    </message>
    <message>
        <source>a store of {} °C</source>
        <translation>un almacén a {} °C</translation>
    </message>
    <message>
        <source>a survival</source>
        <translation>una supervivencia</translation>
    </message>
    <message>
        <source>a survival of {}</source>
        <translation>una supervivencia de {}</translation>
    </message>
    <message>
        <source>a target of {} plants</source>
        <translation>una meta de {} plantas</translation>
    </message>
    <message>
        <source>a target of {} plants of '{}'</source>
        <translation>una meta de {} plantas de «{}»</translation>
    </message>
    <message>
        <source>a target without a cross</source>
        <translation>una meta sin cruce</translation>
    </message>
    <message>
        <source>a taxon without a name</source>
        <translation>un taxón sin nombre</translation>
    </message>
    <message>
        <source>a temperature of {}</source>
        <translation>una temperatura de {}</translation>
    </message>
    <message>
        <source>a tray needs a pot or tray it stands in</source>
        <translation>una bandeja necesita un tipo de bandeja o maceta</translation>
    </message>
    <message>
        <source>a value of {}</source>
        <translation>un valor de {}</translation>
    </message>
    <message>
        <source>a viability test counts grains and those that germinated</source>
        <translation>una prueba de viabilidad cuenta granos y los que germinaron</translation>
    </message>
    <message>
        <source>a weight of {}</source>
        <translation>un peso de {}</translation>
    </message>
    <message>
        <source>a weight of {} cannot be</source>
        <translation>un peso de {} no puede ser</translation>
    </message>
    <message>
        <source>a whole number from {} to {}</source>
        <translation>un número entero de {} a {}</translation>
    </message>
    <message>
        <source>a width in mm</source>
        <translation>un ancho en mm</translation>
    </message>
    <message>
        <source>a {} has no papers of its own</source>
        <translation>no hay documentos propios para: {}</translation>
    </message>
    <message>
        <source>a {} holds nothing that is '{}'</source>
        <translation>{} no contiene nada que sea «{}»</translation>
    </message>
    <message>
        <source>a {} that is missing</source>
        <translation>{} que falta</translation>
    </message>
    <message>
        <source>a {} without a name</source>
        <translation>{} sin nombre</translation>
    </message>
    <message>
        <source>about twelve months (common practice, no source)</source>
        <translation>unos doce meses (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>above {:.1f}</source>
        <translation>más de {:.1f}</translation>
    </message>
    <message>
        <source>age of the pollen, days</source>
        <translation>edad del polen, días</translation>
    </message>
    <message>
        <source>alike: {}</source>
        <translation>semejantes: {}</translation>
    </message>
    <message>
        <source>all but certain</source>
        <translation>casi segura</translation>
    </message>
    <message>
        <source>all came up at once, {}: no curve can be told from it</source>
        <translation>todas nacieron a la vez, {}: de ahí no puede decirse ninguna curva</translation>
    </message>
    <message>
        <source>all cells together, measured</source>
        <translation>todos los alvéolos juntos, medido</translation>
    </message>
    <message>
        <source>all taxa</source>
        <translation>todos los taxones</translation>
    </message>
    <message>
        <source>all the seed weighs {}</source>
        <translation>toda la semilla pesa {}</translation>
    </message>
    <message>
        <source>all the seed weighs {} g here and {} g on line {}</source>
        <translation>toda la semilla pesa {} g aquí y {} g en la línea {}</translation>
    </message>
    <message>
        <source>an after-ripening</source>
        <translation>una maduración posterior</translation>
    </message>
    <message>
        <source>an answer to nothing that was due</source>
        <translation>una respuesta a nada que estuviera pendiente</translation>
    </message>
    <message>
        <source>an assurance of {:g}</source>
        <translation>una seguridad de {:g}</translation>
    </message>
    <message>
        <source>an empty cell</source>
        <translation>una celda vacía</translation>
    </message>
    <message>
        <source>an offer without a good</source>
        <translation>una oferta sin material</translation>
    </message>
    <message>
        <source>an offer without a price</source>
        <translation>una oferta sin precio</translation>
    </message>
    <message>
        <source>an offer without a supplier</source>
        <translation>una oferta sin proveedor</translation>
    </message>
    <message>
        <source>an unnamed supplier</source>
        <translation>un proveedor sin nombre</translation>
    </message>
    <message>
        <source>and also</source>
        <translation>y también</translation>
    </message>
    <message>
        <source>and at most</source>
        <translation>y como máximo</translation>
    </message>
    <message>
        <source>and {} more</source>
        <translation>y {} más</translation>
    </message>
    <message>
        <source>artificially propagated</source>
        <translation>propagada artificialmente</translation>
    </message>
    <message>
        <source>as a French keyboard (AZERTY) gives them</source>
        <translation>como los da un teclado francés (AZERTY)</translation>
    </message>
    <message>
        <source>as a German keyboard (QWERTZ) gives them</source>
        <translation>como los da un teclado alemán (QWERTZ)</translation>
    </message>
    <message>
        <source>as asked</source>
        <translation>como se pidió</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>a lo sumo</translation>
    </message>
    <message>
        <source>at most {} ml of {}</source>
        <translation>a lo sumo {} ml de {}</translation>
    </message>
    <message>
        <source>at {}</source>
        <translation>a {}</translation>
    </message>
    <message>
        <source>average</source>
        <translation>media</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>saco</translation>
    </message>
    <message>
        <source>bale</source>
        <translation>bala</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>partida</translation>
    </message>
    <message>
        <source>bay</source>
        <translation>tramo</translation>
    </message>
    <message>
        <source>beginnings and ends belong to the lot that gave or took</source>
        <translation>comienzos y finales pertenecen al lote que dio o recibió</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>bench without a place</source>
        <translation>mesa sin lugar</translation>
    </message>
    <message>
        <source>benches</source>
        <translation>mesas</translation>
    </message>
    <message>
        <source>beta-binomial, one tray: spread unknown</source>
        <translation>beta-binomial, una bandeja: dispersión desconocida</translation>
    </message>
    <message>
        <source>beta-binomial, spread averaged over</source>
        <translation>beta-binomial, promediada sobre la dispersión</translation>
    </message>
    <message>
        <source>between day {:g} and day {:g}</source>
        <translation>entre el día {:g} y el día {:g}</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>both parents in one cell: Old Gate × Tall Male</source>
        <translation>ambos padres en una celda: Old Gate × Tall Male</translation>
    </message>
    <message>
        <source>bought in</source>
        <translation>comprado</translation>
    </message>
    <message>
        <source>bought {}</source>
        <translation>comprada {}</translation>
    </message>
    <message>
        <source>bought {} from {}{}</source>
        <translation>comprado el {} a {}{}</translation>
    </message>
    <message>
        <source>box of dry perlite</source>
        <translation>caja de perlita seca</translation>
    </message>
    <message>
        <source>bulk</source>
        <translation>a granel</translation>
    </message>
    <message>
        <source>buy in</source>
        <translation>comprar</translation>
    </message>
    <message>
        <source>by day {:g}</source>
        <translation>hasta el día {:g}</translation>
    </message>
    <message>
        <source>by weight, {} g</source>
        <translation>por peso, {} g</translation>
    </message>
    <message>
        <source>by {}</source>
        <translation>por {}</translation>
    </message>
    <message>
        <source>came off {} and gave no seed</source>
        <translation>cayó el {} y no dio semilla</translation>
    </message>
    <message>
        <source>came off, no seed</source>
        <translation>cayó, sin semilla</translation>
    </message>
    <message>
        <source>cells</source>
        <translation>celdas</translation>
    </message>
    <message>
        <source>certain</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>certainty</source>
        <translation>certeza</translation>
    </message>
    <message>
        <source>check scales</source>
        <translation>mirar escamas</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>limpiar</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>limpiadas</translation>
    </message>
    <message>
        <source>clipped</source>
        <translation>recortada</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>code alone</source>
        <translation>solo el código</translation>
    </message>
    <message>
        <source>code of the cone or purchase; of trays only</source>
        <translation>código del cono o de la compra; solo de bandejas</translation>
    </message>
    <message>
        <source>code of the tray; of trays only</source>
        <translation>código de la bandeja; solo de bandejas</translation>
    </message>
    <message>
        <source>collect pollen</source>
        <translation>recoger polen</translation>
    </message>
    <message>
        <source>collected into {}</source>
        <translation>recogido en {}</translation>
    </message>
    <message>
        <source>collected {}</source>
        <translation>recogido el {}</translation>
    </message>
    <message>
        <source>column {}</source>
        <translation>columna {}</translation>
    </message>
    <message>
        <source>coming apart</source>
        <translation>deshaciéndose</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>common practice, no source: not frozen, better fresh</source>
        <translation>práctica común, sin fuente: sin congelar, mejor fresco</translation>
    </message>
    <message>
        <source>common practice, no source: sources disagree about freezing</source>
        <translation>práctica común, sin fuente: las fuentes no coinciden sobre la congelación</translation>
    </message>
    <message>
        <source>common practice, no source: the book has no cone of the taxon</source>
        <translation>práctica común, sin fuente: el libro no tiene ningún cono del taxón</translation>
    </message>
    <message>
        <source>cone</source>
        <translation>cono</translation>
    </message>
    <message>
        <source>cone {} is in the book</source>
        <translation>el cono {} está en el libro</translation>
    </message>
    <message>
        <source>cone · {} · {}</source>
        <translation>cono · {} · {}</translation>
    </message>
    <message>
        <source>container</source>
        <translation>recipiente</translation>
    </message>
    <message>
        <source>correct</source>
        <translation>corregir</translation>
    </message>
    <message>
        <source>count</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contadas</translation>
    </message>
    <message>
        <source>counts without a tray in the hand</source>
        <translation>recuentos sin bandeja en la mano</translation>
    </message>
    <message>
        <source>cross</source>
        <translation>cruce</translation>
    </message>
    <message>
        <source>cross and date</source>
        <translation>cruce y fecha</translation>
    </message>
    <message>
        <source>cross-season</source>
        <translation>cruce y temporada</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>day of sowing, year-month-day; of trays only</source>
        <translation>día de siembra, año-mes-día; solo de bandejas</translation>
    </message>
    <message>
        <source>day {}</source>
        <translation>día {}</translation>
    </message>
    <message>
        <source>day {} lies before the sowing</source>
        <translation>el día {} es anterior a la siembra</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>days to the last look without temperature, in a report by degree-days; of trays only</source>
        <translation>días sin temperatura hasta la última revisión, en un informe por grados-día; solo de bandejas</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerta</translation>
    </message>
    <message>
        <source>degree-days</source>
        <translation>grados-día</translation>
    </message>
    <message>
        <source>degree-days above {:g} °C</source>
        <translation>grados-día sobre {:g} °C</translation>
    </message>
    <message>
        <source>differ from the book, which stays</source>
        <translation>difieren del libro, que queda</translation>
    </message>
    <message>
        <source>discard</source>
        <translation>desechar</translation>
    </message>
    <message>
        <source>discard pollen</source>
        <translation>desechar polen</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>desechada</translation>
    </message>
    <message>
        <source>dismiss</source>
        <translation>tachar</translation>
    </message>
    <message>
        <source>dismissed without a reason</source>
        <translation>tachado sin motivo</translation>
    </message>
    <message>
        <source>dismissed: {}</source>
        <translation>tachado: {}</translation>
    </message>
    <message>
        <source>done</source>
        <translation>terminada</translation>
    </message>
    <message>
        <source>done below {}</source>
        <translation>terminada por debajo de {}</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>each % more</source>
        <translation>cada % más</translation>
    </message>
    <message>
        <source>each day older</source>
        <translation>cada día más</translation>
    </message>
    <message>
        <source>each month more</source>
        <translation>cada mes más</translation>
    </message>
    <message>
        <source>each °C more</source>
        <translation>cada °C más</translation>
    </message>
    <message>
        <source>eight weighings: 15.0 15.4 15.2 …</source>
        <translation>ocho pesadas: 15,0 15,4 15,2 …</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacías</translation>
    </message>
    <message>
        <source>empty for a round one</source>
        <translation>vacío si es redonda</translation>
    </message>
    <message>
        <source>empty for all</source>
        <translation>vacío para todo</translation>
    </message>
    <message>
        <source>empty if not counted</source>
        <translation>vacío si no se contaron</translation>
    </message>
    <message>
        <source>empty if not measured</source>
        <translation>vacío si no se midió</translation>
    </message>
    <message>
        <source>empty where nobody can say</source>
        <translation>vacío donde nadie lo sabe</translation>
    </message>
    <message>
        <source>empty: in a month</source>
        <translation>vacío: dentro de un mes</translation>
    </message>
    <message>
        <source>empty: on the same day</source>
        <translation>vacío: el mismo día</translation>
    </message>
    <message>
        <source>empty: what the book holds of the taxon</source>
        <translation>vacío: lo que el libro dice del taxón</translation>
    </message>
    <message>
        <source>entry {}</source>
        <translation>anotación {}</translation>
    </message>
    <message>
        <source>entry {} corrected the register</source>
        <translation>la anotación {} corrigió el registro</translation>
    </message>
    <message>
        <source>entry {} does not mirror entry {}, which it reverses</source>
        <translation>la anotación {} no refleja la anotación {}, que anula</translation>
    </message>
    <message>
        <source>entry {} is itself a reversal</source>
        <translation>la anotación {} es ella misma una anulación</translation>
    </message>
    <message>
        <source>entry {} is missing, and its link is still there</source>
        <translation>falta la anotación {}, y su enlace sigue ahí</translation>
    </message>
    <message>
        <source>entry {} is no sale: it is '{}'</source>
        <translation>la anotación {} no es una venta: es «{}»</translation>
    </message>
    <message>
        <source>entry {} of {} ({}</source>
        <translation>anotación {} de {} ({}</translation>
    </message>
    <message>
        <source>entry {} was reversed already, by entry {}</source>
        <translation>la anotación {} ya fue anulada por la anotación {}</translation>
    </message>
    <message>
        <source>entry {}: a movement of a lot that is missing</source>
        <translation>anotación {}: un movimiento de un lote que falta</translation>
    </message>
    <message>
        <source>entry {}: a movement of {}</source>
        <translation>anotación {}: un movimiento de {}</translation>
    </message>
    <message>
        <source>entry {}: {} and {} come from different cones</source>
        <translation>anotación {}: {} y {} vienen de conos distintos</translation>
    </message>
    <message>
        <source>entry {}: {} cannot hold what is '{}'</source>
        <translation>anotación {}: {} no puede contener lo que es «{}»</translation>
    </message>
    <message>
        <source>every month of the year</source>
        <translation>todos los meses del año</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>esperado</translation>
    </message>
    <message>
        <source>eye</source>
        <translation>vista</translation>
    </message>
    <message>
        <source>female</source>
        <translation>hembra</translation>
    </message>
    <message>
        <source>fewer than 1 nursery or 10 futures</source>
        <translation>menos de 1 vivero o de 10 futuros</translation>
    </message>
    <message>
        <source>field</source>
        <translation>campo</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>llenas</translation>
    </message>
    <message>
        <source>first pass {}</source>
        <translation>primera pasada el {}</translation>
    </message>
    <message>
        <source>first seen {}</source>
        <translation>visto por primera vez {}</translation>
    </message>
    <message>
        <source>fitted curve</source>
        <translation>curva ajustada</translation>
    </message>
    <message>
        <source>float</source>
        <translation>flotación</translation>
    </message>
    <message>
        <source>float or other seed test</source>
        <translation>flotación u otra prueba de semilla</translation>
    </message>
    <message>
        <source>float test</source>
        <translation>prueba de flotación</translation>
    </message>
    <message>
        <source>floaters are</source>
        <translation>que flotan hay</translation>
    </message>
    <message>
        <source>forbidden</source>
        <translation>prohibido</translation>
    </message>
    <message>
        <source>form of goods</source>
        <translation>forma del material</translation>
    </message>
    <message>
        <source>from root to first leaf {} days in the middle</source>
        <translation>de raíz a primera hoja {} días en el centro</translation>
    </message>
    <message>
        <source>from {}</source>
        <translation>de {}</translation>
    </message>
    <message>
        <source>frost class</source>
        <translation>clase de helada</translation>
    </message>
    <message>
        <source>germinated of sown</source>
        <translation>germinadas de las sembradas</translation>
    </message>
    <message>
        <source>germination</source>
        <translation>germinación</translation>
    </message>
    <message>
        <source>germination of '{}' lasts {} to {} months: it has no end</source>
        <translation>la germinación de «{}» dura de {} a {} meses: no tiene fin</translation>
    </message>
    <message>
        <source>goes hand in hand with {}</source>
        <translation>va de la mano con {}</translation>
    </message>
    <message>
        <source>going</source>
        <translation>de salida</translation>
    </message>
    <message>
        <source>good seed of this taxon floats too</source>
        <translation>la semilla buena de este taxón también flota</translation>
    </message>
    <message>
        <source>good seed of {} floats too</source>
        <translation>la semilla buena de {} también flota</translation>
    </message>
    <message>
        <source>grams of all the seed</source>
        <translation>gramos de toda la semilla</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>half of what came up was up after {} {}</source>
        <translation>la mitad de lo que nació había nacido tras {} {}</translation>
    </message>
    <message>
        <source>half of what came up was up by day {}</source>
        <translation>la mitad de lo que nació había nacido el día {}</translation>
    </message>
    <message>
        <source>hard frost</source>
        <translation>helada fuerte</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>cosechar</translation>
    </message>
    <message>
        <source>harvested</source>
        <translation>cosechadas</translation>
    </message>
    <message>
        <source>harvested {}</source>
        <translation>cosechada {}</translation>
    </message>
    <message>
        <source>harvested {}: {} seeds</source>
        <translation>cosechado el {}: {} semillas</translation>
    </message>
    <message numerus="yes">
        <source>harvested, {} seeds</source>
        <translation>
            <numerusform>cosechado, {} semilla</numerusform>
            <numerusform>cosechado, {} semillas</numerusform>
        </translation>
    </message>
    <message>
        <source>have mix ready</source>
        <translation>tener sustrato listo</translation>
    </message>
    <message>
        <source>heading: CITES appendix</source>
        <translation>apéndice CITES</translation>
    </message>
    <message>
        <source>heading: about</source>
        <translation>acerca de</translation>
    </message>
    <message>
        <source>heading: alike</source>
        <translation>iguales</translation>
    </message>
    <message>
        <source>heading: as</source>
        <translation>como</translation>
    </message>
    <message>
        <source>heading: as of</source>
        <translation>al día</translation>
    </message>
    <message>
        <source>heading: authority</source>
        <translation>autoridad</translation>
    </message>
    <message>
        <source>heading: book</source>
        <translation>libro</translation>
    </message>
    <message>
        <source>heading: bought</source>
        <translation>comprado</translation>
    </message>
    <message>
        <source>heading: buyer</source>
        <translation>comprador</translation>
    </message>
    <message>
        <source>heading: by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>heading: came</source>
        <translation>llegó</translation>
    </message>
    <message>
        <source>heading: came in</source>
        <translation>entraron</translation>
    </message>
    <message>
        <source>heading: cannot be told apart</source>
        <translation>no pueden distinguirse</translation>
    </message>
    <message>
        <source>heading: charts</source>
        <translation>gráficos</translation>
    </message>
    <message>
        <source>heading: column</source>
        <translation>columna</translation>
    </message>
    <message>
        <source>heading: columns</source>
        <translation>columnas</translation>
    </message>
    <message>
        <source>heading: cone</source>
        <translation>cono</translation>
    </message>
    <message>
        <source>heading: containers</source>
        <translation>recipientes</translation>
    </message>
    <message>
        <source>heading: count</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>heading: cross</source>
        <translation>cruce</translation>
    </message>
    <message>
        <source>heading: crosses</source>
        <translation>cruces</translation>
    </message>
    <message>
        <source>heading: crosses alike</source>
        <translation>cruces iguales</translation>
    </message>
    <message>
        <source>heading: curves</source>
        <translation>curvas</translation>
    </message>
    <message>
        <source>heading: date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>heading: day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>heading: days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>heading: empty</source>
        <translation>vacía</translation>
    </message>
    <message>
        <source>heading: ended here</source>
        <translation>acabaron aquí</translation>
    </message>
    <message>
        <source>heading: entry</source>
        <translation>anotación</translation>
    </message>
    <message>
        <source>heading: first day</source>
        <translation>primer día</translation>
    </message>
    <message>
        <source>heading: fitted</source>
        <translation>ajustada</translation>
    </message>
    <message>
        <source>heading: for month</source>
        <translation>para el mes</translation>
    </message>
    <message>
        <source>heading: form</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>heading: from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>heading: good</source>
        <translation>material</translation>
    </message>
    <message>
        <source>heading: is</source>
        <translation>es</translation>
    </message>
    <message>
        <source>heading: issued</source>
        <translation>expedido</translation>
    </message>
    <message>
        <source>heading: last link</source>
        <translation>último eslabón</translation>
    </message>
    <message>
        <source>heading: leaves</source>
        <translation>hojas</translation>
    </message>
    <message>
        <source>heading: left out</source>
        <translation>excluida</translation>
    </message>
    <message>
        <source>heading: looked up</source>
        <translation>consultado</translation>
    </message>
    <message>
        <source>heading: looks</source>
        <translation>revisiones</translation>
    </message>
    <message>
        <source>heading: lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>heading: may end</source>
        <translation>puede acabar</translation>
    </message>
    <message>
        <source>heading: mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>heading: meaning</source>
        <translation>significado</translation>
    </message>
    <message>
        <source>heading: method</source>
        <translation>método</translation>
    </message>
    <message>
        <source>heading: missing</source>
        <translation>si falta</translation>
    </message>
    <message>
        <source>heading: month</source>
        <translation>mes</translation>
    </message>
    <message>
        <source>heading: name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>heading: note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>heading: number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>heading: nursery</source>
        <translation>vivero</translation>
    </message>
    <message>
        <source>heading: on hand</source>
        <translation>existencias</translation>
    </message>
    <message>
        <source>heading: order by</source>
        <translation>pedir antes del</translation>
    </message>
    <message>
        <source>heading: origin</source>
        <translation>origen</translation>
    </message>
    <message>
        <source>heading: over</source>
        <translation>excede</translation>
    </message>
    <message>
        <source>heading: packs</source>
        <translation>envases</translation>
    </message>
    <message>
        <source>heading: paper</source>
        <translation>documento</translation>
    </message>
    <message>
        <source>heading: papers</source>
        <translation>documentos</translation>
    </message>
    <message>
        <source>heading: place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>heading: pollen</source>
        <translation>polen</translation>
    </message>
    <message>
        <source>heading: pot</source>
        <translation>maceta</translation>
    </message>
    <message>
        <source>heading: price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>heading: printed</source>
        <translation>impreso</translation>
    </message>
    <message>
        <source>heading: range</source>
        <translation>intervalo</translation>
    </message>
    <message>
        <source>heading: range of the curve</source>
        <translation>intervalo de la curva</translation>
    </message>
    <message>
        <source>heading: removed</source>
        <translation>retiradas</translation>
    </message>
    <message>
        <source>heading: said of parents and papers</source>
        <translation>dicho de padres y documentos</translation>
    </message>
    <message>
        <source>heading: season</source>
        <translation>temporada</translation>
    </message>
    <message>
        <source>heading: seeds</source>
        <translation>semillas</translation>
    </message>
    <message>
        <source>heading: seeds or plants</source>
        <translation>semillas o plantas</translation>
    </message>
    <message>
        <source>heading: seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>heading: sex</source>
        <translation>sexo</translation>
    </message>
    <message>
        <source>heading: share</source>
        <translation>proporción</translation>
    </message>
    <message>
        <source>heading: share of sown</source>
        <translation>proporción de la sembrada</translation>
    </message>
    <message>
        <source>heading: sold</source>
        <translation>vendidas</translation>
    </message>
    <message>
        <source>heading: source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>heading: sown</source>
        <translation>sembradas</translation>
    </message>
    <message>
        <source>heading: sown on</source>
        <translation>sembrada el</translation>
    </message>
    <message>
        <source>heading: state</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>heading: step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>heading: still to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>heading: supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>heading: taken together by</source>
        <translation>agrupado por</translation>
    </message>
    <message>
        <source>heading: taxon</source>
        <translation>taxón</translation>
    </message>
    <message>
        <source>heading: temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>heading: text</source>
        <translation>texto</translation>
    </message>
    <message>
        <source>heading: this line</source>
        <translation>esta línea</translation>
    </message>
    <message>
        <source>heading: time_unit</source>
        <translation>time_unit</translation>
    </message>
    <message>
        <source>heading: times in</source>
        <translation>tiempos en</translation>
    </message>
    <message>
        <source>heading: to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>heading: to know</source>
        <translation>conviene saber</translation>
    </message>
    <message>
        <source>heading: tray</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>heading: trays</source>
        <translation>bandejas</translation>
    </message>
    <message>
        <source>heading: type</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>heading: unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>heading: up</source>
        <translation>nacidas</translation>
    </message>
    <message>
        <source>heading: went on</source>
        <translation>siguieron</translation>
    </message>
    <message>
        <source>heading: what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>heading: whole</source>
        <translation>entero</translation>
    </message>
    <message>
        <source>heading: yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>heading: yes/no</source>
        <translation>sí/no</translation>
    </message>
    <message>
        <source>hemisphere</source>
        <translation>hemisferio</translation>
    </message>
    <message>
        <source>highest</source>
        <translation>máxima</translation>
    </message>
    <message>
        <source>house</source>
        <translation>invernadero</translation>
    </message>
    <message>
        <source>how many more will ever come up, lower end of its range; of crosses only</source>
        <translation>cuántas más nacerán, extremo bajo de su intervalo; solo de cruces</translation>
    </message>
    <message>
        <source>how many: seeds, seeds sown, or plants</source>
        <translation>cuántas: semillas, semillas sembradas o plantas</translation>
    </message>
    <message>
        <source>how the range was worked out</source>
        <translation>cómo se calculó el intervalo</translation>
    </message>
    <message>
        <source>hybrids</source>
        <translation>híbridos</translation>
    </message>
    <message>
        <source>in</source>
        <translation>en</translation>
    </message>
    <message>
        <source>in '{}'</source>
        <translation>en «{}»</translation>
    </message>
    <message>
        <source>in the book: {}</source>
        <translation>en el libro: {}</translation>
    </message>
    <message>
        <source>in trays</source>
        <translation>en bandejas</translation>
    </message>
    <message>
        <source>in your own money</source>
        <translation>en su propia moneda</translation>
    </message>
    <message>
        <source>in {}</source>
        <translation>en {}</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>revisar</translation>
    </message>
    <message>
        <source>it closed on {}</source>
        <translation>cerró el {}</translation>
    </message>
    <message>
        <source>it has run out: {:g} ml collected, {:g} ml used</source>
        <translation>se agotó: {:g} ml recogidos, {:g} ml usados</translation>
    </message>
    <message>
        <source>it holds other entries than the book</source>
        <translation>contiene otras anotaciones que el libro</translation>
    </message>
    <message>
        <source>it is collected on {}, later than the day asked about</source>
        <translation>se recoge el {}, después del día por el que se pregunta</translation>
    </message>
    <message>
        <source>it is gone since {}</source>
        <translation>no queda desde el {}</translation>
    </message>
    <message>
        <source>it is said to come from {}, a female plant: correct the sex or the plant</source>
        <translation>se dice que viene de {}, una planta hembra: corrija el sexo o la planta</translation>
    </message>
    <message>
        <source>it ran out</source>
        <translation>se acabó</translation>
    </message>
    <message>
        <source>its first pass was {} days ago</source>
        <translation>su primera pasada fue hace {} días</translation>
    </message>
    <message>
        <source>its new name is taken</source>
        <translation>su nuevo nombre ya está en uso</translation>
    </message>
    <message>
        <source>its standard error</source>
        <translation>su error estándar</translation>
    </message>
    <message>
        <source>its standard error; empty at its limit 1</source>
        <translation>su error estándar; vacío en su límite 1</translation>
    </message>
    <message>
        <source>its tables are not those of the book</source>
        <translation>sus tablas no son las del libro</translation>
    </message>
    <message>
        <source>its taxon has no route</source>
        <translation>su taxón no tiene ruta</translation>
    </message>
    <message>
        <source>judged empty</source>
        <translation>juzgadas vacías</translation>
    </message>
    <message>
        <source>judged filled</source>
        <translation>juzgadas llenas</translation>
    </message>
    <message>
        <source>judgement</source>
        <translation>juicio</translation>
    </message>
    <message>
        <source>keep them</source>
        <translation>conservarlas</translation>
    </message>
    <message>
        <source>keeps for {} months</source>
        <translation>conservación de {} meses</translation>
    </message>
    <message>
        <source>kept from {} until {}, {} days earlier</source>
        <translation>guardada del {} al {}, {} días antes</translation>
    </message>
    <message>
        <source>kg a square metre</source>
        <translation>kg por metro cuadrado</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>kind of lot</source>
        <translation>clase de lote</translation>
    </message>
    <message>
        <source>kind of place</source>
        <translation>clase de lugar</translation>
    </message>
    <message>
        <source>kind of work</source>
        <translation>clase de trabajo</translation>
    </message>
    <message>
        <source>known already</source>
        <translation>ya conocidas</translation>
    </message>
    <message>
        <source>label of {} printed</source>
        <translation>etiqueta de {} impresa</translation>
    </message>
    <message>
        <source>last look {}</source>
        <translation>última revisión {}</translation>
    </message>
    <message numerus="yes">
        <source>late: {} days</source>
        <translation>
            <numerusform>con retraso: {} día</numerusform>
            <numerusform>con retraso: {} días</numerusform>
        </translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>hoja</translation>
    </message>
    <message>
        <source>leaf colour</source>
        <translation>color de hoja</translation>
    </message>
    <message numerus="yes">
        <source>leave {} months after they are ready</source>
        <translation>
            <numerusform>salen {} mes después de estar listas</numerusform>
            <numerusform>salen {} meses después de estar listas</numerusform>
        </translation>
    </message>
    <message>
        <source>leaves of sown</source>
        <translation>hojas de las sembradas</translation>
    </message>
    <message>
        <source>left as they are</source>
        <translation>quedan como están</translation>
    </message>
    <message>
        <source>left in the batch</source>
        <translation>quedan en la partida</translation>
    </message>
    <message>
        <source>left whole</source>
        <translation>quedan enteras</translation>
    </message>
    <message>
        <source>less than 1 in 1000</source>
        <translation>menos de 1 en 1000</translation>
    </message>
    <message>
        <source>less than a year old</source>
        <translation>menos de un año</translation>
    </message>
    <message>
        <source>letters: crosses that share one cannot be told apart at the confidence, by Holm's adjustment over all pairs; of crosses only</source>
        <translation>letras: los cruces que comparten una no pueden distinguirse con esa confianza, con el ajuste de Holm sobre todos los pares; solo de cruces</translation>
    </message>
    <message>
        <source>light class</source>
        <translation>clase de luz</translation>
    </message>
    <message>
        <source>light frost</source>
        <translation>helada leve</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probable</translation>
    </message>
    <message>
        <source>likely {:.0f}</source>
        <translation>probable {:.0f}</translation>
    </message>
    <message>
        <source>line {}</source>
        <translation>línea {}</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>litros</translation>
    </message>
    <message>
        <source>litres of a tray or pot that the book lacks</source>
        <translation>litros de una bandeja o maceta que falta en el libro</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>log</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>log-logistic</source>
        <translation>log-logística</translation>
    </message>
    <message>
        <source>log-logistic, weibull or log-normal: F(t) = germinable · H(shape · ln(t / scale)); of crosses only</source>
        <translation>log-logística, weibull o log-normal: F(t) = germinable · H(shape · ln(t / scale)); solo de cruces</translation>
    </message>
    <message>
        <source>log-normal</source>
        <translation>log-normal</translation>
    </message>
    <message>
        <source>looked at, nothing new</source>
        <translation>revisada, nada nuevo</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>sueltas</translation>
    </message>
    <message>
        <source>lose</source>
        <translation>baja</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdidas</translation>
    </message>
    <message>
        <source>lost in cleaning</source>
        <translation>perdidas al limpiar</translation>
    </message>
    <message>
        <source>lot {}</source>
        <translation>lote {}</translation>
    </message>
    <message>
        <source>lot {} is not known to the ledger</source>
        <translation>el lote {} no consta en las cuentas</translation>
    </message>
    <message>
        <source>lower end of its range</source>
        <translation>extremo bajo de su intervalo</translation>
    </message>
    <message>
        <source>lower end of its range at the confidence</source>
        <translation>extremo bajo de su intervalo con esa confianza</translation>
    </message>
    <message>
        <source>lowest</source>
        <translation>mínima</translation>
    </message>
    <message>
        <source>male</source>
        <translation>macho</translation>
    </message>
    <message>
        <source>male cone of {}: {}</source>
        <translation>cono masculino de {}: {}</translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation>puede quedar vacío</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>mean days</source>
        <translation>media, días</translation>
    </message>
    <message>
        <source>mean kinship, summed over the crosses</source>
        <translation>parentesco medio, sumado sobre los cruces</translation>
    </message>
    <message>
        <source>mean temperature, °C</source>
        <translation>temperatura media, °C</translation>
    </message>
    <message>
        <source>mean time from sowing to the look at which seed was seen, of the seed that came up</source>
        <translation>tiempo medio de la siembra a la revisión en que se vio, de la semilla que nació</translation>
    </message>
    <message>
        <source>mean {}</source>
        <translation>media, {}</translation>
    </message>
    <message>
        <source>mean °C·d</source>
        <translation>media, °C·d</translation>
    </message>
    <message>
        <source>median; empty before half of the roots have their leaf</source>
        <translation>mediana; vacía antes de que la mitad de las raíces tenga su hoja</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>sustrato</translation>
    </message>
    <message>
        <source>method</source>
        <translation>método</translation>
    </message>
    <message>
        <source>missed: the time for it ended on {}</source>
        <translation>perdido: su tiempo acabó el {}</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>faltan</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>mezcla</translation>
    </message>
    <message>
        <source>mixture of plants and kinship</source>
        <translation>mezcla de plantas y parentesco</translation>
    </message>
    <message>
        <source>mm across a tray or pot that the book lacks</source>
        <translation>mm de ancho de una bandeja o maceta que falta en el libro</translation>
    </message>
    <message>
        <source>month of sowing</source>
        <translation>mes de siembra</translation>
    </message>
    <message>
        <source>months of after-ripening</source>
        <translation>meses de posmaduración</translation>
    </message>
    <message>
        <source>more than {:.0f} seeds by weight</source>
        <translation>más de {:.0f} semillas por peso</translation>
    </message>
    <message>
        <source>move</source>
        <translation>mover</translation>
    </message>
    <message>
        <source>move plant</source>
        <translation>mover planta</translation>
    </message>
    <message>
        <source>moved to {}</source>
        <translation>movida a {}</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>name or hybrid formula</source>
        <translation>nombre o fórmula del híbrido</translation>
    </message>
    <message>
        <source>needed, {}</source>
        <translation>necesario, {}</translation>
    </message>
    <message>
        <source>needs of {} months</source>
        <translation>necesidades de {} meses</translation>
    </message>
    <message>
        <source>neither germinated nor removed</source>
        <translation>ni germinadas ni retiradas</translation>
    </message>
    <message>
        <source>no amount collected into {}</source>
        <translation>no se recogió cantidad en {}</translation>
    </message>
    <message>
        <source>no book is open</source>
        <translation>no hay ningún libro abierto</translation>
    </message>
    <message>
        <source>no code was given</source>
        <translation>no se dio ningún código</translation>
    </message>
    <message>
        <source>no cross fits within the pollen and the room there are, with what is pinned{}</source>
        <translation>ningún cruce cabe en el polen y el espacio que hay, con lo fijado{}</translation>
    </message>
    <message>
        <source>no day</source>
        <translation>ningún día</translation>
    </message>
    <message>
        <source>no female has a cone that takes pollen now or will</source>
        <translation>ninguna hembra tiene ni tendrá un cono que reciba polen</translation>
    </message>
    <message>
        <source>no figure yet</source>
        <translation>todavía sin cifra</translation>
    </message>
    <message>
        <source>no file is named</source>
        <translation>no se indicó ningún archivo</translation>
    </message>
    <message>
        <source>no frost</source>
        <translation>sin heladas</translation>
    </message>
    <message>
        <source>no header with a column for date and time and one for temperature was found</source>
        <translation>no se encontró un encabezado con una columna de fecha y hora y otra de temperatura</translation>
    </message>
    <message>
        <source>no header: no row with two filled cells</source>
        <translation>sin encabezado: ninguna fila con dos celdas llenas</translation>
    </message>
    <message>
        <source>no labels to print</source>
        <translation>no hay etiquetas que imprimir</translation>
    </message>
    <message>
        <source>no month of the year is a potting month</source>
        <translation>ningún mes del año es mes de trasplante</translation>
    </message>
    <message>
        <source>no more expected</source>
        <translation>no se esperan más</translation>
    </message>
    <message>
        <source>no name for the copy</source>
        <translation>falta el nombre de la copia</translation>
    </message>
    <message>
        <source>no other cross of the taxon</source>
        <translation>ningún otro cruce del taxón</translation>
    </message>
    <message>
        <source>no papers are recorded</source>
        <translation>no constan documentos</translation>
    </message>
    <message>
        <source>no place</source>
        <translation>sin lugar</translation>
    </message>
    <message>
        <source>no place is chosen</source>
        <translation>no se eligió lugar</translation>
    </message>
    <message>
        <source>no place to move it to</source>
        <translation>ningún lugar adonde moverla</translation>
    </message>
    <message>
        <source>no plan was found within {:g} seconds</source>
        <translation>no se halló ningún plan en {:g} segundos</translation>
    </message>
    <message>
        <source>no plants can be reckoned for it</source>
        <translation>no pueden calcularse plantas para él</translation>
    </message>
    <message>
        <source>no pollen is left in any lot</source>
        <translation>no queda polen en ningún lote</translation>
    </message>
    <message>
        <source>no pollination of {} is recorded, so the father is not known</source>
        <translation>no consta ninguna polinización de {}, así que no se conoce el padre</translation>
    </message>
    <message>
        <source>no proposal was found within {:g} seconds; there may be one</source>
        <translation>no se encontró ninguna propuesta en {:g} segundos; puede haber una</translation>
    </message>
    <message>
        <source>no report is written as '{}'</source>
        <translation>ningún informe se escribe como «{}»</translation>
    </message>
    <message>
        <source>no restore of '{}' is to be undone</source>
        <translation>no hay ninguna restauración de «{}» que deshacer</translation>
    </message>
    <message>
        <source>no route comes to '{}'</source>
        <translation>ninguna ruta llega a «{}»</translation>
    </message>
    <message>
        <source>no row after the header</source>
        <translation>ninguna fila tras el encabezado</translation>
    </message>
    <message>
        <source>no row below the header</source>
        <translation>ninguna fila bajo el encabezado</translation>
    </message>
    <message>
        <source>no row with a temperature</source>
        <translation>ninguna fila con temperatura</translation>
    </message>
    <message>
        <source>no seed</source>
        <translation>sin semilla</translation>
    </message>
    <message>
        <source>no seed of a cone of its taxon was ever counted, so no plants are reckoned for {}: say how many seeds to expect</source>
        <translation>nunca se contó semilla de un cono de su taxón, así que no se calculan plantas para {}: diga cuántas semillas espera</translation>
    </message>
    <message>
        <source>no seed was counted</source>
        <translation>no se contó ninguna semilla</translation>
    </message>
    <message>
        <source>no seed was opened</source>
        <translation>no se abrió ninguna semilla</translation>
    </message>
    <message>
        <source>no stage was given</source>
        <translation>no se dio ninguna etapa</translation>
    </message>
    <message>
        <source>no taxon</source>
        <translation>falta el taxón</translation>
    </message>
    <message>
        <source>no temperature is known</source>
        <translation>no se conoce ninguna temperatura</translation>
    </message>
    <message>
        <source>no temporary file could be written: {}</source>
        <translation>no pudo escribirse ningún archivo temporal: {}</translation>
    </message>
    <message>
        <source>no tray is due for a look on {}</source>
        <translation>no toca revisar ninguna bandeja el {}</translation>
    </message>
    <message>
        <source>no tray is in the hand</source>
        <translation>no hay ninguna bandeja en la mano</translation>
    </message>
    <message>
        <source>no tray or pot</source>
        <translation>falta la bandeja o maceta</translation>
    </message>
    <message>
        <source>no tray stands in '{}'</source>
        <translation>no hay ninguna bandeja en «{}»</translation>
    </message>
    <message>
        <source>no tray stands on {}</source>
        <translation>no hay ninguna bandeja en {}</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>nadie nombrado</translation>
    </message>
    <message>
        <source>nobody offers '{}', of which {} are needed</source>
        <translation>nadie ofrece «{}», del que se necesitan {}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>none expected</source>
        <translation>no se espera ninguna</translation>
    </message>
    <message>
        <source>none of the {} floaters of {} was cut open, and {}</source>
        <translation>ninguna de las {} que flotan de {} se abrió, y {}</translation>
    </message>
    <message>
        <source>none of the {} possible crosses may be proposed ({})</source>
        <translation>ninguno de los {} cruces posibles puede proponerse ({})</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation>no consta ninguno</translation>
    </message>
    <message>
        <source>none was cut open of those called {}</source>
        <translation>no se abrió ninguna de las llamadas {}</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>todavía ninguno</translation>
    </message>
    <message>
        <source>northern</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>not harvested yet</source>
        <translation>sin cosechar todavía</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin juzgar</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not looked at together with the others: known of {} in {} trays</source>
        <translation>no se mira junto con las otras: se conoce en {} de {} bandejas</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>todavía no revisada</translation>
    </message>
    <message>
        <source>not pollinated yet</source>
        <translation>todavía no polinizado</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>no consta</translation>
    </message>
    <message>
        <source>not sown</source>
        <translation>sin sembrar</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>todavía no</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message numerus="yes">
        <source>nothing came up by day {1:g}; {0} seeds still wait</source>
        <translation>
            <numerusform>nada nació hasta el día {1:g}; aún espera {0} semilla</numerusform>
            <numerusform>nada nació hasta el día {1:g}; aún esperan {0} semillas</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing came up, and no seed is left</source>
        <translation>nada nació y no queda ninguna semilla</translation>
    </message>
    <message>
        <source>nothing came up; </source>
        <translation>no nació nada; </translation>
    </message>
    <message>
        <source>nothing came up; no seed left in it</source>
        <translation>no nació nada; no queda semilla en ella</translation>
    </message>
    <message>
        <source>nothing changes on {}</source>
        <translation>nada cambia en {}</translation>
    </message>
    <message>
        <source>nothing ever came into {}, or it was taken back</source>
        <translation>a {} nunca llegó nada, o se anuló lo que llegó</translation>
    </message>
    <message>
        <source>nothing is due for '{}'</source>
        <translation>nada está pendiente para «{}»</translation>
    </message>
    <message>
        <source>nothing is sown in it</source>
        <translation>no hay nada sembrado en ella</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>no queda nada</translation>
    </message>
    <message>
        <source>nothing moved</source>
        <translation>no se movió nada</translation>
    </message>
    <message>
        <source>nothing new</source>
        <translation>nada nuevo</translation>
    </message>
    <message>
        <source>nothing of this can be written</source>
        <translation>nada de esto puede escribirse</translation>
    </message>
    <message>
        <source>nothing of this round is left to take back</source>
        <translation>no queda nada de esta ronda que anular</translation>
    </message>
    <message>
        <source>nothing says what the rows are</source>
        <translation>nada dice qué son las filas</translation>
    </message>
    <message>
        <source>nothing since {}</source>
        <translation>nada desde el {}</translation>
    </message>
    <message>
        <source>nothing stands here</source>
        <translation>aquí no hay nada</translation>
    </message>
    <message>
        <source>nothing that the program asks for</source>
        <translation>nada de lo que pide el programa</translation>
    </message>
    <message>
        <source>nothing to accept for {}: {}</source>
        <translation>nada que aceptar para {}: {}</translation>
    </message>
    <message>
        <source>nothing to move</source>
        <translation>nada que mover</translation>
    </message>
    <message>
        <source>nothing to write yet</source>
        <translation>todavía nada que escribir</translation>
    </message>
    <message>
        <source>nothing was judged</source>
        <translation>no se juzgó nada</translation>
    </message>
    <message>
        <source>number, day or authority of the {} is not recorded</source>
        <translation>número, día o autoridad de {} no constan</translation>
    </message>
    <message>
        <source>of a father nobody knows</source>
        <translation>de un padre desconocido</translation>
    </message>
    <message>
        <source>of a male plant I know</source>
        <translation>de una planta macho que conozco</translation>
    </message>
    <message>
        <source>of a moment that had another</source>
        <translation>de un momento que ya tenía otra</translation>
    </message>
    <message>
        <source>of a parent plant: male or female</source>
        <translation>de una planta progenitora: macho o hembra</translation>
    </message>
    <message>
        <source>of a tray: how many are up</source>
        <translation>de una bandeja: cuántas han nacido</translation>
    </message>
    <message>
        <source>of every range</source>
        <translation>de cada intervalo</translation>
    </message>
    <message>
        <source>of the seed sown, sooner or later</source>
        <translation>de la semilla sembrada, tarde o temprano</translation>
    </message>
    <message>
        <source>of them filled</source>
        <translation>de ellas llenas</translation>
    </message>
    <message>
        <source>of them germinated</source>
        <translation>de ellos germinados</translation>
    </message>
    <message>
        <source>of those that {}: {}</source>
        <translation>de las que {}: {}</translation>
    </message>
    <message>
        <source>of {}</source>
        <translation>de {}</translation>
    </message>
    <message>
        <source>old since {}</source>
        <translation>viejo desde el {}</translation>
    </message>
    <message>
        <source>on the plant</source>
        <translation>en la planta</translation>
    </message>
    <message>
        <source>on the same day it was seen on {} too ({})</source>
        <translation>el mismo día se vio también en {} ({})</translation>
    </message>
    <message>
        <source>one cone only on a side: the difference may be the cone's</source>
        <translation>un solo cono de un lado: la diferencia puede ser del cono</translation>
    </message>
    <message>
        <source>one end of the range is empty</source>
        <translation>un extremo del intervalo está vacío</translation>
    </message>
    <message>
        <source>one lot</source>
        <translation>un lote</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abrir</translation>
    </message>
    <message>
        <source>opened and empty</source>
        <translation>abierta y vacía</translation>
    </message>
    <message>
        <source>opened and filled</source>
        <translation>abierta y llena</translation>
    </message>
    <message>
        <source>opened, empty</source>
        <translation>abiertas, vacías</translation>
    </message>
    <message>
        <source>opened, filled</source>
        <translation>abiertas, llenas</translation>
    </message>
    <message>
        <source>or as late as</source>
        <translation>o a más tardar</translation>
    </message>
    <message>
        <source>or by weight: grams of 100 seeds</source>
        <translation>o por peso: gramos de 100 semillas</translation>
    </message>
    <message>
        <source>orders</source>
        <translation>pedidos</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>origen</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>fuera de rango</translation>
    </message>
    <message>
        <source>own experience</source>
        <translation>experiencia propia</translation>
    </message>
    <message>
        <source>page {}</source>
        <translation>página {}</translation>
    </message>
    <message>
        <source>page {} could not be begun</source>
        <translation>la página {} no pudo empezarse</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>documento</translation>
    </message>
    <message>
        <source>papers</source>
        <translation>documentos</translation>
    </message>
    <message>
        <source>part</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>part shade</source>
        <translation>media sombra</translation>
    </message>
    <message>
        <source>pass {} on {}</source>
        <translation>pasada {} en {}</translation>
    </message>
    <message>
        <source>pass {} on {}, if the cone is still loose</source>
        <translation>pasada {} en {}, si el cono sigue suelto</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>place by share among all crosses, 1 the highest; of crosses only</source>
        <translation>puesto por proporción entre todos los cruces, 1 el más alto; solo de cruces</translation>
    </message>
    <message>
        <source>place load</source>
        <translation>carga por lugar</translation>
    </message>
    <message>
        <source>plan move</source>
        <translation>planear traslado</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>planta</translation>
    </message>
    <message>
        <source>plant out</source>
        <translation>plantar fuera</translation>
    </message>
    <message>
        <source>plant {}: {}, {}, {}</source>
        <translation>planta {}: {}, {}, {}</translation>
    </message>
    <message>
        <source>planted out</source>
        <translation>plantada fuera</translation>
    </message>
    <message>
        <source>plants</source>
        <translation>plantas</translation>
    </message>
    <message>
        <source>plants into</source>
        <translation>plantas a maceta</translation>
    </message>
    <message>
        <source>plants standing</source>
        <translation>plantas en pie</translation>
    </message>
    <message>
        <source>pollen lot</source>
        <translation>lote de polen</translation>
    </message>
    <message>
        <source>pollen of an unknown father</source>
        <translation>polen de padre desconocido</translation>
    </message>
    <message>
        <source>pollen of {} was used on {}</source>
        <translation>se usó polen de {} el {}</translation>
    </message>
    <message>
        <source>pollen of {}, collected {}</source>
        <translation>polen de {}, recogido el {}</translation>
    </message>
    <message>
        <source>pollen of {}, while its cone sheds</source>
        <translation>polen de {}, mientras su cono lo suelta</translation>
    </message>
    <message>
        <source>pollen parent</source>
        <translation>planta padre</translation>
    </message>
    <message>
        <source>pollen parent of {}</source>
        <translation>padre del polen de {}</translation>
    </message>
    <message>
        <source>pollen parents</source>
        <translation>padres del polen</translation>
    </message>
    <message>
        <source>pollen that germinated in its test, %</source>
        <translation>polen que germinó en su prueba, %</translation>
    </message>
    <message>
        <source>pollen that lasts {} to {} years</source>
        <translation>polen que dura de {} a {} años</translation>
    </message>
    <message>
        <source>pollen · {} · {}</source>
        <translation>polen · {} · {}</translation>
    </message>
    <message>
        <source>pollinate</source>
        <translation>polinizar</translation>
    </message>
    <message>
        <source>pollinated</source>
        <translation>polinizado</translation>
    </message>
    <message>
        <source>pot</source>
        <translation>trasplantar a maceta</translation>
    </message>
    <message>
        <source>pot group</source>
        <translation>grupo de macetas</translation>
    </message>
    <message>
        <source>pot on</source>
        <translation>trasplantar</translation>
    </message>
    <message>
        <source>potted</source>
        <translation>a maceta</translation>
    </message>
    <message>
        <source>potted on</source>
        <translation>trasplantadas</translation>
    </message>
    <message>
        <source>potted {}</source>
        <translation>en maceta {}</translation>
    </message>
    <message>
        <source>print label</source>
        <translation>imprimir etiqueta</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>impresa</translation>
    </message>
    <message>
        <source>purchase</source>
        <translation>compra</translation>
    </message>
    <message>
        <source>put off</source>
        <translation>aplazar</translation>
    </message>
    <message>
        <source>put off until the day</source>
        <translation>aplazar hasta el día</translation>
    </message>
    <message>
        <source>put off until {}, which is not after {}</source>
        <translation>aplazado hasta el {}, que no es posterior al {}</translation>
    </message>
    <message>
        <source>put off until {}: {}</source>
        <translation>aplazado hasta el {}: {}</translation>
    </message>
    <message>
        <source>range of the curve</source>
        <translation>intervalo de la curva</translation>
    </message>
    <message>
        <source>range of the curve, high</source>
        <translation>intervalo de la curva, alto</translation>
    </message>
    <message>
        <source>range of the curve, low</source>
        <translation>intervalo de la curva, bajo</translation>
    </message>
    <message>
        <source>reading took longer than {} s and was given up. Save the picture smaller</source>
        <translation>la lectura tardó más de {} s y se abandonó. Guarde la foto más pequeña</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lecturas</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>listas</translation>
    </message>
    <message>
        <source>recount</source>
        <translation>recontar</translation>
    </message>
    <message>
        <source>recounted: as it should be</source>
        <translation>recontado: como debe ser</translation>
    </message>
    <message numerus="yes">
        <source>recounted: {} missing, unexplained</source>
        <translation>
            <numerusform>recontado: falta {}, sin explicación</numerusform>
            <numerusform>recontado: faltan {}, sin explicación</numerusform>
        </translation>
    </message>
    <message>
        <source>recounted: {} more, unexplained</source>
        <translation>recontado: {} más, sin explicación</translation>
    </message>
    <message>
        <source>recounts found missing {} that nothing explains</source>
        <translation>los recuentos hallaron {} de menos que nada explica</translation>
    </message>
    <message>
        <source>recounts found more by {} that nothing explains</source>
        <translation>los recuentos hallaron {} de más que nada explica</translation>
    </message>
    <message>
        <source>rectangular</source>
        <translation>rectangular</translation>
    </message>
    <message>
        <source>refrigerator, dry</source>
        <translation>frigorífico, seco</translation>
    </message>
    <message>
        <source>reliable</source>
        <translation>fiable</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>retirado</translation>
    </message>
    <message>
        <source>reverse</source>
        <translation>anular</translation>
    </message>
    <message>
        <source>reversed: {}</source>
        <translation>anulado: {}</translation>
    </message>
    <message>
        <source>room for {:g} litres</source>
        <translation>sitio para {:g} litros</translation>
    </message>
    <message>
        <source>room taken, %</source>
        <translation>espacio ocupado, %</translation>
    </message>
    <message>
        <source>root</source>
        <translation>raíz</translation>
    </message>
    <message>
        <source>round</source>
        <translation>redonda</translation>
    </message>
    <message>
        <source>route</source>
        <translation>ruta</translation>
    </message>
    <message>
        <source>row {} of the book's {} has a text that is no UTF-8</source>
        <translation>la fila {} de {} del libro tiene un texto que no es UTF-8</translation>
    </message>
    <message>
        <source>rows without temperature</source>
        <translation>filas sin temperatura</translation>
    </message>
    <message>
        <source>sale of {} (entry {}) out of {}{}</source>
        <translation>venta del {} (anotación {}) de {}{}</translation>
    </message>
    <message>
        <source>scales and {}</source>
        <translation>escamas y {}</translation>
    </message>
    <message>
        <source>scales of {}: {}</source>
        <translation>escamas de {}: {}</translation>
    </message>
    <message>
        <source>scan</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>season of sowing; empty for a cross over all seasons</source>
        <translation>temporada de siembra; vacía para un cruce en todas las temporadas</translation>
    </message>
    <message>
        <source>seed kept at {} °C</source>
        <translation>semilla guardada a {} °C</translation>
    </message>
    <message>
        <source>seed of {}</source>
        <translation>semilla de {}</translation>
    </message>
    <message>
        <source>seed of {} that takes {} times as long to come up</source>
        <translation>semilla de {} que tarda {} veces lo mismo en nacer</translation>
    </message>
    <message>
        <source>seed parent</source>
        <translation>planta madre</translation>
    </message>
    <message>
        <source>seed parent of {}</source>
        <translation>madre de la semilla de {}</translation>
    </message>
    <message>
        <source>seed parent × pollen parents, or the season in a report by season</source>
        <translation>madre de la semilla × padres del polen, o la temporada en un informe por temporada</translation>
    </message>
    <message>
        <source>seed put by, and not said where</source>
        <translation>semilla guardada, sin decir dónde</translation>
    </message>
    <message>
        <source>seed sown</source>
        <translation>semilla sembrada</translation>
    </message>
    <message>
        <source>seed taken out that had not germinated</source>
        <translation>semilla retirada que no había germinado</translation>
    </message>
    <message>
        <source>seed test</source>
        <translation>prueba de semilla</translation>
    </message>
    <message>
        <source>seed that germinated by as_of: root, or leaf, seen</source>
        <translation>semilla germinada hasta as_of: raíz u hoja vistas</translation>
    </message>
    <message>
        <source>seed with its first leaf</source>
        <translation>semilla con su primera hoja</translation>
    </message>
    <message>
        <source>seed, tray, pot or parent</source>
        <translation>seed, tray, pot o parent</translation>
    </message>
    <message>
        <source>seedlings</source>
        <translation>plántulas</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation>semillas</translation>
    </message>
    <message>
        <source>seeds counted by hand and by weight</source>
        <translation>semillas contadas a mano y por peso</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>seen at each look</source>
        <translation>visto en cada revisión</translation>
    </message>
    <message>
        <source>seen at the looks</source>
        <translation>visto en las revisiones</translation>
    </message>
    <message>
        <source>sell</source>
        <translation>vender</translation>
    </message>
    <message>
        <source>sensitivity and specificity add up to {}, which is not above 1: such a test says nothing</source>
        <translation>sensibilidad y especificidad suman {}, que no es más de 1: tal prueba no dice nada</translation>
    </message>
    <message>
        <source>series {} and number {} make no code</source>
        <translation>la serie {} y el número {} no forman un código</translation>
    </message>
    <message>
        <source>several are called '{}'</source>
        <translation>varios se llaman «{}»</translation>
    </message>
    <message>
        <source>several columns could be meant: {}</source>
        <translation>pueden entenderse varias columnas: {}</translation>
    </message>
    <message>
        <source>several things are due for '{}'</source>
        <translation>hay varias cosas pendientes para «{}»</translation>
    </message>
    <message>
        <source>sex</source>
        <translation>sexo</translation>
    </message>
    <message>
        <source>sex not known</source>
        <translation>sexo desconocido</translation>
    </message>
    <message>
        <source>sex not known yet</source>
        <translation>sexo aún desconocido</translation>
    </message>
    <message>
        <source>shade</source>
        <translation>sombra</translation>
    </message>
    <message>
        <source>shake</source>
        <translation>agitado</translation>
    </message>
    <message>
        <source>shape</source>
        <translation>forma</translation>
    </message>
    <message>
        <source>share of sown, {:g} % range</source>
        <translation>proporción de la sembrada, intervalo del {:g} %</translation>
    </message>
    <message>
        <source>share of the seed sown</source>
        <translation>proporción de la semilla sembrada</translation>
    </message>
    <message>
        <source>shedding</source>
        <translation>soltando polen</translation>
    </message>
    <message>
        <source>since</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>since when it is there: sown, potted, bought</source>
        <translation>desde cuándo está: sembrada, en maceta, comprada</translation>
    </message>
    <message>
        <source>since {}</source>
        <translation>desde el {}</translation>
    </message>
    <message>
        <source>sinkers are</source>
        <translation>hundidas hay</translation>
    </message>
    <message>
        <source>soaked {} days</source>
        <translation>{} días en remojo</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendida</translation>
    </message>
    <message>
        <source>sold after {} months</source>
        <translation>vendidas a los {} meses</translation>
    </message>
    <message>
        <source>some of the pollen came from a father that is not known</source>
        <translation>parte del polen vino de un padre desconocido</translation>
    </message>
    <message>
        <source>some or all of it not known</source>
        <translation>desconocido en parte o del todo</translation>
    </message>
    <message>
        <source>sort</source>
        <translation>clasificar</translation>
    </message>
    <message>
        <source>sorted: {}</source>
        <translation>clasificadas: {}</translation>
    </message>
    <message>
        <source>sorting by '{}'</source>
        <translation>clasificar por «{}»</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>sanas</translation>
    </message>
    <message>
        <source>southern</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>sow</source>
        <translation>sembrar</translation>
    </message>
    <message>
        <source>sowing costs more than the plants would be worth</source>
        <translation>sembrar cuesta más de lo que valdrían las plantas</translation>
    </message>
    <message>
        <source>sowing pays above {}</source>
        <translation>sembrar compensa por encima de {}</translation>
    </message>
    <message>
        <source>sown</source>
        <translation>sembrada</translation>
    </message>
    <message>
        <source>sown {}</source>
        <translation>sembrada {}</translation>
    </message>
    <message>
        <source>sown {}, {} up</source>
        <translation>sembrada {}, {} nacidas</translation>
    </message>
    <message>
        <source>spent</source>
        <translation>agotado</translation>
    </message>
    <message>
        <source>spike</source>
        <translation>pico</translation>
    </message>
    <message>
        <source>split off</source>
        <translation>separadas</translation>
    </message>
    <message>
        <source>spread between trays: beta-binomial correlation; of crosses with two trays and more</source>
        <translation>dispersión entre bandejas: correlación beta-binomial; de cruces con dos bandejas o más</translation>
    </message>
    <message>
        <source>square metres</source>
        <translation>metros cuadrados</translation>
    </message>
    <message>
        <source>state</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>state of a male cone</source>
        <translation>estado de un cono masculino</translation>
    </message>
    <message>
        <source>state of the scales</source>
        <translation>estado de las escamas</translation>
    </message>
    <message>
        <source>stay in their pots</source>
        <translation>se quedan en sus macetas</translation>
    </message>
    <message>
        <source>staying</source>
        <translation>en su lugar</translation>
    </message>
    <message>
        <source>steepness</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>step {} of the route of '{}' is survived by {}</source>
        <translation>al paso {} de la ruta de «{}» sobrevive {}</translation>
    </message>
    <message>
        <source>step {} of the route of '{}' lasts {} to {} months: it has no end</source>
        <translation>el paso {} de la ruta de «{}» dura de {} a {} meses: no tiene fin</translation>
    </message>
    <message>
        <source>step {} where step {} is expected</source>
        <translation>paso {} donde se espera el paso {}</translation>
    </message>
    <message>
        <source>still sprouting: {} waiting, until {} by its route</source>
        <translation>aún naciendo: {} en espera, hasta el {} según su ruta</translation>
    </message>
    <message>
        <source>still to sort</source>
        <translation>por clasificar</translation>
    </message>
    <message>
        <source>stopped: nothing came into the book</source>
        <translation>detenido: nada entró en el libro</translation>
    </message>
    <message>
        <source>stopped: the book is as it was</source>
        <translation>detenido: el libro está como estaba</translation>
    </message>
    <message>
        <source>store</source>
        <translation>guardar</translation>
    </message>
    <message>
        <source>store not said</source>
        <translation>conservación no indicada</translation>
    </message>
    <message>
        <source>stored</source>
        <translation>guardadas</translation>
    </message>
    <message>
        <source>strike it, with a reason</source>
        <translation>tachar, con un motivo</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>atascado</translation>
    </message>
    <message>
        <source>such as Bench 3</source>
        <translation>como Mesa 3</translation>
    </message>
    <message>
        <source>such as Cycas revoluta</source>
        <translation>como Cycas revoluta</translation>
    </message>
    <message>
        <source>such as Old Sentinel</source>
        <translation>como Viejo Centinela</translation>
    </message>
    <message>
        <source>such as deep pot 2 L</source>
        <translation>como maceta honda 2 L</translation>
    </message>
    <message>
        <source>such as import permit, receipt</source>
        <translation>como permiso de importación, recibo</translation>
    </message>
    <message>
        <source>such as perlite 4, peat 3, sand 3</source>
        <translation>como perlita 4, turba 3, arena 3</translation>
    </message>
    <message>
        <source>such as refrigerator, dry</source>
        <translation>como frigorífico, seco</translation>
    </message>
    <message>
        <source>sun</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>proveedor</translation>
    </message>
    <message>
        <source>survival</source>
        <translation>supervivencia</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>anulado</translation>
    </message>
    <message>
        <source>takes back entry {}</source>
        <translation>anula la anotación {}</translation>
    </message>
    <message>
        <source>taking {} '{}' from {} on {} would leave {} below zero on {}, because of later entries</source>
        <translation>quitar {} «{}» de {} el {} dejaría {} por debajo de cero el {}, por anotaciones posteriores</translation>
    </message>
    <message>
        <source>taxon</source>
        <translation>taxón</translation>
    </message>
    <message>
        <source>test it, or throw it away</source>
        <translation>pruébelo o tírelo</translation>
    </message>
    <message>
        <source>test pollen</source>
        <translation>probar polen</translation>
    </message>
    <message>
        <source>that paper is not there any more</source>
        <translation>ese documento ya no está</translation>
    </message>
    <message>
        <source>that target is not there any more</source>
        <translation>esa meta ya no está</translation>
    </message>
    <message>
        <source>the PNG file ends {} bytes before the end of a part</source>
        <translation>el archivo PNG acaba {} bytes antes del final de una parte</translation>
    </message>
    <message>
        <source>the book '{}' holds something already</source>
        <translation>el libro «{}» ya contiene algo</translation>
    </message>
    <message>
        <source>the book does not know it</source>
        <translation>el libro no lo sabe</translation>
    </message>
    <message>
        <source>the book does not prove; its first fault: {}</source>
        <translation>el libro no puede comprobarse; su primera falta: {}</translation>
    </message>
    <message>
        <source>the book has it on {} since then</source>
        <translation>el libro la tiene en {} desde entonces</translation>
    </message>
    <message>
        <source>the book has neither a taxon nor a place '{}'</source>
        <translation>el libro no tiene ni un taxón ni un lugar «{}»</translation>
    </message>
    <message>
        <source>the book has no cross '{}'</source>
        <translation>el libro no tiene ningún cruce «{}»</translation>
    </message>
    <message>
        <source>the book has no taxon '{}'</source>
        <translation>el libro no tiene ningún taxón «{}»</translation>
    </message>
    <message>
        <source>the book has no {} '{}'</source>
        <translation>el libro no tiene: {} «{}»</translation>
    </message>
    <message>
        <source>the book is open, but the copy that was due could not be made: {}</source>
        <translation>el libro está abierto, pero no se pudo hacer la copia que tocaba: {}</translation>
    </message>
    <message>
        <source>the book refused it: {}</source>
        <translation>el libro lo rechazó: {}</translation>
    </message>
    <message>
        <source>the botanical name</source>
        <translation>el nombre botánico</translation>
    </message>
    <message>
        <source>the calendar cannot be read</source>
        <translation>el calendario no puede leerse</translation>
    </message>
    <message>
        <source>the chain breaks at entry {}: its link here is {}, and what the folder says of it gives {}</source>
        <translation>la cadena se rompe en la anotación {}: su enlace aquí es {}, y lo que la carpeta dice de ella da {}</translation>
    </message>
    <message>
        <source>the chain: {} further links do not hold either</source>
        <translation>la cadena: otros {} enlaces tampoco concuerdan</translation>
    </message>
    <message>
        <source>the code {} is of series {}, the book's is {}</source>
        <translation>el código {} es de la serie {}, la del libro es {}</translation>
    </message>
    <message>
        <source>the code {} stands on another {} already</source>
        <translation>el código {} ya consta en otro: {}</translation>
    </message>
    <message>
        <source>the collection of {} was taken back</source>
        <translation>se anuló la recogida de {}</translation>
    </message>
    <message>
        <source>the column '{}' is missing</source>
        <translation>falta la columna «{}»</translation>
    </message>
    <message>
        <source>the column '{}' is not known</source>
        <translation>la columna «{}» no se conoce</translation>
    </message>
    <message>
        <source>the column '{}' stands twice in the header</source>
        <translation>la columna «{}» está dos veces en el encabezado</translation>
    </message>
    <message>
        <source>the column {} holds no text</source>
        <translation>la columna {} no contiene texto</translation>
    </message>
    <message>
        <source>the column {} holds no whole number</source>
        <translation>la columna {} no contiene un número entero</translation>
    </message>
    <message>
        <source>the copy '{}' cannot be taken along: {}</source>
        <translation>la copia «{}» no se puede llevar: {}</translation>
    </message>
    <message>
        <source>the copy '{}' is not good: {}</source>
        <translation>la copia «{}» no sirve: {}</translation>
    </message>
    <message>
        <source>the counts do not yet tell of an end</source>
        <translation>los recuentos aún no indican un final</translation>
    </message>
    <message>
        <source>the counts tapped on {} are taken back</source>
        <translation>se retiran los recuentos hechos en {}</translation>
    </message>
    <message>
        <source>the dates do not tell whether the day or the month comes first</source>
        <translation>las fechas no dejan ver si va primero el día o el mes</translation>
    </message>
    <message>
        <source>the day it came is not recorded</source>
        <translation>no consta el día en que llegó</translation>
    </message>
    <message>
        <source>the day of pollination</source>
        <translation>el día de la polinización</translation>
    </message>
    <message>
        <source>the day stands first here and second on line {}</source>
        <translation>aquí va primero el día y en la línea {} en segundo lugar</translation>
    </message>
    <message>
        <source>the day the cone came off</source>
        <translation>el día en que se quitó el cono</translation>
    </message>
    <message>
        <source>the day the row stands for; later entries are left out</source>
        <translation>el día al que se refiere la fila; las anotaciones posteriores no cuentan</translation>
    </message>
    <message>
        <source>the day the seedlings were counted; today where it is left out</source>
        <translation>el día en que se contaron las plántulas; hoy si falta</translation>
    </message>
    <message>
        <source>the day; may stay empty</source>
        <translation>el día; puede quedar vacío</translation>
    </message>
    <message>
        <source>the demo cannot be unpacked</source>
        <translation>el ejemplo no puede desempaquetarse</translation>
    </message>
    <message>
        <source>the disk with '{}' failed: {}</source>
        <translation>el disco con «{}» falló: {}</translation>
    </message>
    <message>
        <source>the disk with '{}' is full</source>
        <translation>el disco con «{}» está lleno</translation>
    </message>
    <message>
        <source>the end of the curve is not yet in sight: by day {:g} it had come to {:.0f} % of its height, which is little known</source>
        <translation>el final de la curva no está aún a la vista: al día {:g} había llegado al {:.0f} % de su altura, que se conoce poco</translation>
    </message>
    <message>
        <source>the end runs from {} back to {}</source>
        <translation>el final va de {} hacia atrás a {}</translation>
    </message>
    <message>
        <source>the field is empty</source>
        <translation>el campo está vacío</translation>
    </message>
    <message>
        <source>the figure '{}' of {}</source>
        <translation>la cifra «{}» de {}</translation>
    </message>
    <message>
        <source>the file cannot be read: {}</source>
        <translation>el archivo no puede leerse: {}</translation>
    </message>
    <message>
        <source>the file does not tell whether the day or the month comes first</source>
        <translation>el archivo no dice si va primero el día o el mes</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>the file is missing</source>
        <translation>falta el archivo</translation>
    </message>
    <message>
        <source>the file is too large: {:.0f} MB, {:.0f} MB more than is read. Save the picture smaller</source>
        <translation>el archivo es demasiado grande: {:.0f} MB, {:.0f} MB más de lo que se lee. Guarde la foto más pequeña</translation>
    </message>
    <message>
        <source>the file's own guard or table '{}' is missing or was changed</source>
        <translation>la guarda o tabla «{}» del archivo falta o fue cambiada</translation>
    </message>
    <message>
        <source>the forecast was stopped</source>
        <translation>el pronóstico se detuvo</translation>
    </message>
    <message>
        <source>the header has a column without a name</source>
        <translation>el encabezado tiene una columna sin nombre</translation>
    </message>
    <message>
        <source>the header has no column '{}'</source>
        <translation>el encabezado no tiene la columna «{}»</translation>
    </message>
    <message>
        <source>the kind '{}' of a printed label</source>
        <translation>la clase «{}» de una etiqueta impresa</translation>
    </message>
    <message>
        <source>the label of a {}, which stands in no round</source>
        <translation>etiqueta de: {}, que no entra en ninguna ronda</translation>
    </message>
    <message>
        <source>the label of {} was last seen on {}: look whether it can be read, or print it again</source>
        <translation>la etiqueta de {} se vio por última vez el {}: mire si puede leerse o imprímala de nuevo</translation>
    </message>
    <message>
        <source>the ledger cannot be read to its end: {}</source>
        <translation>las cuentas no pueden leerse hasta el final: {}</translation>
    </message>
    <message>
        <source>the line is no UTF-8 text</source>
        <translation>la línea no es texto UTF-8</translation>
    </message>
    <message>
        <source>the link leads nowhere</source>
        <translation>el enlace no lleva a ninguna parte</translation>
    </message>
    <message>
        <source>the link leads out of the folder, to '{}'</source>
        <translation>el enlace sale de la carpeta, hacia «{}»</translation>
    </message>
    <message>
        <source>the link {} is not in this book's chain: entries before it were changed and the chain made anew, or it belongs to another book</source>
        <translation>el enlace {} no está en la cadena de este libro: se cambiaron anotaciones anteriores y se rehízo la cadena, o es de otro libro</translation>
    </message>
    <message>
        <source>the list's own word for cone or batch; rows that share it are of one</source>
        <translation>la palabra de la lista para cono o partida; las filas que la comparten son de uno</translation>
    </message>
    <message>
        <source>the log '{}' cannot be read: {}</source>
        <translation>el registro «{}» no puede leerse: {}</translation>
    </message>
    <message>
        <source>the log '{}' has {} bytes, more than {}</source>
        <translation>el registro «{}» tiene {} bytes, más de {}</translation>
    </message>
    <message>
        <source>the log '{}' is empty or cannot be read</source>
        <translation>el registro «{}» está vacío o no puede leerse</translation>
    </message>
    <message numerus="yes">
        <source>the mean of {} earlier cones of {}</source>
        <translation>
            <numerusform>la media de {} cono anterior de {}</numerusform>
            <numerusform>la media de {} conos anteriores de {}</numerusform>
        </translation>
    </message>
    <message>
        <source>the mix '{}' contains itself</source>
        <translation>el sustrato «{}» se contiene a sí mismo</translation>
    </message>
    <message>
        <source>the mix '{}' has no parts</source>
        <translation>el sustrato «{}» no tiene componentes</translation>
    </message>
    <message>
        <source>the mix '{}' shrinks by {} and loses {}</source>
        <translation>el sustrato «{}» merma {} y pierde {}</translation>
    </message>
    <message>
        <source>the mix '{}': {}</source>
        <translation>el sustrato «{}»: {}</translation>
    </message>
    <message>
        <source>the month is missing</source>
        <translation>falta el mes</translation>
    </message>
    <message>
        <source>the name {} is {}</source>
        <translation>el nombre {} es {}</translation>
    </message>
    <message>
        <source>the next look on {}, and this one is on {}</source>
        <translation>la próxima revisión el {}, y esta es el {}</translation>
    </message>
    <message>
        <source>the offer of '{}' by '{}' has {}</source>
        <translation>la oferta de «{}» de «{}» tiene {}</translation>
    </message>
    <message>
        <source>the offer of '{}' by {} has a price, least order or lead time that cannot be</source>
        <translation>la oferta de «{}» de {} tiene un precio, un pedido mínimo o una espera que no puede ser</translation>
    </message>
    <message>
        <source>the origin is not recorded</source>
        <translation>no consta el origen</translation>
    </message>
    <message>
        <source>the parents of one or both are not known, so their kinship is taken as 0</source>
        <translation>no se conocen los padres de uno o de ambos, así que su parentesco se toma como 0</translation>
    </message>
    <message>
        <source>the parents' kinship {:.4g} is above {:.4g}</source>
        <translation>el parentesco de los padres {:.4g} supera {:.4g}</translation>
    </message>
    <message>
        <source>the part '{}' stands twice in the mix '{}'</source>
        <translation>el componente «{}» está dos veces en el sustrato «{}»</translation>
    </message>
    <message>
        <source>the parts of the mix '{}' sum to nothing</source>
        <translation>los componentes del sustrato «{}» suman nada</translation>
    </message>
    <message>
        <source>the parts sum to nothing</source>
        <translation>los componentes suman nada</translation>
    </message>
    <message>
        <source>the pass is '{}' here and '{}' on line {}</source>
        <translation>la pasada es «{}» aquí y «{}» en la línea {}</translation>
    </message>
    <message>
        <source>the picture brought its reader down ({} {}). Take it again, or save it as PNG</source>
        <translation>la foto derribó a su lector ({} {}). Tómela de nuevo o guárdela como PNG</translation>
    </message>
    <message>
        <source>the picture could not be read: {}</source>
        <translation>la foto no pudo leerse: {}</translation>
    </message>
    <message>
        <source>the picture is damaged ({}). Take or copy it again</source>
        <translation>la foto está dañada ({}). Tómela o cópiela de nuevo</translation>
    </message>
    <message>
        <source>the picture is too large: {} × {} pixels are {:.0f} million, {:.0f} million more than are read. Save it smaller</source>
        <translation>la foto es demasiado grande: {} × {} píxeles son {:.0f} millones, {:.0f} millones más de lo que se lee. Guárdela más pequeña</translation>
    </message>
    <message>
        <source>the picture needs more than {} MB of memory to read. Save it smaller</source>
        <translation>la foto necesita más de {} MB de memoria para leerse. Guárdela más pequeña</translation>
    </message>
    <message>
        <source>the pinned crosses take {:g} ml of {}, and {:g} ml are left: {:g} too few</source>
        <translation>los cruces fijados toman {:g} ml de {}, y quedan {:g} ml: faltan {:g}</translation>
    </message>
    <message>
        <source>the pinned crosses take {} of {}, and {} are free</source>
        <translation>los cruces fijados toman {} de {}, y hay {} libres</translation>
    </message>
    <message>
        <source>the place has a reading of {} already</source>
        <translation>el lugar ya tiene una lectura de {}</translation>
    </message>
    <message>
        <source>the place {} would be within itself</source>
        <translation>el lugar {} estaría dentro de sí mismo</translation>
    </message>
    <message>
        <source>the plant '{}' is new, and its taxon is not said</source>
        <translation>la planta «{}» es nueva, y no se dice su taxón</translation>
    </message>
    <message>
        <source>the plant that bore the cone, by name or code</source>
        <translation>la planta que dio el cono, por nombre o código</translation>
    </message>
    <message>
        <source>the plant the pollen came from, by name or code</source>
        <translation>la planta de la que vino el polen, por nombre o código</translation>
    </message>
    <message numerus="yes">
        <source>the pollen {1}, {0} days old, was not tested, and is reckoned as all viable</source>
        <translation>
            <numerusform>el polen {1}, de {0} día, no se probó y se calcula como todo viable</numerusform>
            <numerusform>el polen {1}, de {0} días, no se probó y se calcula como todo viable</numerusform>
        </translation>
    </message>
    <message>
        <source>the present plan counts on no cones</source>
        <translation>el plan actual no cuenta con ningún cono</translation>
    </message>
    <message>
        <source>the printer took nothing</source>
        <translation>la impresora no recibió nada</translation>
    </message>
    <message>
        <source>the proof of the chain was stopped</source>
        <translation>la comprobación de la cadena se detuvo</translation>
    </message>
    <message>
        <source>the rest of {} thrown away</source>
        <translation>el resto de {} tirado</translation>
    </message>
    <message>
        <source>the round has begun</source>
        <translation>la ronda ha empezado</translation>
    </message>
    <message>
        <source>the round has ended</source>
        <translation>la ronda ha terminado</translation>
    </message>
    <message>
        <source>the round of {} has not ended</source>
        <translation>la ronda del {} no ha terminado</translation>
    </message>
    <message>
        <source>the route of '{}' does not come to '{}'</source>
        <translation>la ruta de «{}» no llega a «{}»</translation>
    </message>
    <message>
        <source>the route of '{}' has no step {}</source>
        <translation>la ruta de «{}» no tiene paso {}</translation>
    </message>
    <message>
        <source>the route of '{}' has no steps</source>
        <translation>la ruta de «{}» no tiene pasos</translation>
    </message>
    <message>
        <source>the row has {} cells, at least {} are needed</source>
        <translation>la fila tiene {} celdas, se necesitan al menos {}</translation>
    </message>
    <message>
        <source>the row has {} cells, the header {}</source>
        <translation>la fila tiene {} celdas, el encabezado {}</translation>
    </message>
    <message>
        <source>the row has {} fields, the header {}</source>
        <translation>la fila tiene {} campos, el encabezado {}</translation>
    </message>
    <message>
        <source>the sale of entry {} was reversed by entry {}</source>
        <translation>la venta de la anotación {} fue anulada por la anotación {}</translation>
    </message>
    <message>
        <source>the same in every tray</source>
        <translation>lo mismo en todas las bandejas</translation>
    </message>
    <message>
        <source>the same with what the book knows of the taxon, lower end; of a report by cross</source>
        <translation>lo mismo con lo que el libro sabe del taxón, extremo bajo; de un informe por cruce</translation>
    </message>
    <message>
        <source>the same, the middle</source>
        <translation>lo mismo, el centro</translation>
    </message>
    <message>
        <source>the same, upper end</source>
        <translation>lo mismo, extremo alto</translation>
    </message>
    <message>
        <source>the scale of a printer without a name</source>
        <translation>la escala de una impresora sin nombre</translation>
    </message>
    <message>
        <source>the scanner's letters come {}: set the scanner to this computer's keyboard</source>
        <translation>las letras del lector llegan {}: configure el lector con el teclado de este ordenador</translation>
    </message>
    <message>
        <source>the supplier is not recorded</source>
        <translation>no consta el proveedor</translation>
    </message>
    <message>
        <source>the table of rules has no listing for {}: look it up</source>
        <translation>la tabla de reglas no tiene nada sobre {}: consúltelo</translation>
    </message>
    <message>
        <source>the taxon{}</source>
        <translation>el taxón{}</translation>
    </message>
    <message>
        <source>the tray or pot it is in, by name</source>
        <translation>la bandeja o maceta en que está, por nombre</translation>
    </message>
    <message>
        <source>the unit of the temperatures is not said</source>
        <translation>no se dice la unidad de las temperaturas</translation>
    </message>
    <message>
        <source>the very same sight stands above already</source>
        <translation>la misma observación ya consta arriba</translation>
    </message>
    <message>
        <source>the very same stands above already</source>
        <translation>lo mismo ya consta arriba</translation>
    </message>
    <message>
        <source>the weighings differ by {:.1f} % (coefficient of variation), at most {:.0f} % would do</source>
        <translation>las pesadas difieren un {:.1f} % (coeficiente de variación), bastaría a lo sumo {:.0f} %</translation>
    </message>
    <message>
        <source>the {} '{}' stands on line {} already</source>
        <translation>{} «{}» ya consta en la línea {}</translation>
    </message>
    <message>
        <source>the {} file has {} bytes, {} fewer than it says</source>
        <translation>el archivo {} tiene {} bytes, {} menos de los que dice</translation>
    </message>
    <message>
        <source>there are no offers</source>
        <translation>no hay ofertas</translation>
    </message>
    <message>
        <source>there is a mix '{}' already</source>
        <translation>ya hay un sustrato «{}»</translation>
    </message>
    <message>
        <source>there is a place '{}' already</source>
        <translation>ya hay un lugar «{}»</translation>
    </message>
    <message>
        <source>there is a pot '{}' already</source>
        <translation>ya hay una maceta o bandeja «{}»</translation>
    </message>
    <message>
        <source>there is a taxon '{}' already</source>
        <translation>ya hay un taxón «{}»</translation>
    </message>
    <message>
        <source>there is a {} '{}' already</source>
        <translation>ya existe: {} «{}»</translation>
    </message>
    <message>
        <source>there is no book '{}'</source>
        <translation>no hay ningún libro «{}»</translation>
    </message>
    <message>
        <source>there is no column '{}'</source>
        <translation>no hay ninguna columna «{}»</translation>
    </message>
    <message>
        <source>there is no column {}</source>
        <translation>no hay ninguna columna {}</translation>
    </message>
    <message>
        <source>there is no cone {}</source>
        <translation>no hay ningún cono {}</translation>
    </message>
    <message>
        <source>there is no copy '{}'</source>
        <translation>no hay ninguna copia «{}»</translation>
    </message>
    <message>
        <source>there is no entry {}</source>
        <translation>no hay ninguna anotación {}</translation>
    </message>
    <message>
        <source>there is no folder '{}'</source>
        <translation>no hay ninguna carpeta «{}»</translation>
    </message>
    <message>
        <source>there is no folder '{}' to write into</source>
        <translation>no hay ninguna carpeta «{}» en la que escribir</translation>
    </message>
    <message>
        <source>there is no lot {}</source>
        <translation>no hay ningún lote {}</translation>
    </message>
    <message>
        <source>there is no mix called '{}'</source>
        <translation>no hay ningún sustrato llamado «{}»</translation>
    </message>
    <message>
        <source>there is no picture in '{}'</source>
        <translation>no hay ninguna foto en «{}»</translation>
    </message>
    <message>
        <source>there is no place {}</source>
        <translation>no hay ningún lugar {}</translation>
    </message>
    <message>
        <source>there is no plant {}</source>
        <translation>no hay ninguna planta {}</translation>
    </message>
    <message>
        <source>there is no pollen lot {}</source>
        <translation>no hay ningún lote de polen {}</translation>
    </message>
    <message>
        <source>there is no pot or tray called '{}'</source>
        <translation>no hay ninguna maceta ni bandeja llamada «{}»</translation>
    </message>
    <message>
        <source>there is no printer of that name</source>
        <translation>no hay ninguna impresora con ese nombre</translation>
    </message>
    <message>
        <source>there is no round {}</source>
        <translation>no hay ninguna ronda {}</translation>
    </message>
    <message>
        <source>there is no tray or pot called '{}'</source>
        <translation>no hay ninguna bandeja ni maceta llamada «{}»</translation>
    </message>
    <message>
        <source>there is no {} '{}'</source>
        <translation>no existe: {} «{}»</translation>
    </message>
    <message>
        <source>there is no {} '{}' in {}</source>
        <translation>no existe: {} «{}» en {}</translation>
    </message>
    <message>
        <source>there is no {} {} in this book</source>
        <translation>no existe en este libro: {} {}</translation>
    </message>
    <message>
        <source>there is nothing on line {}</source>
        <translation>no hay nada en la línea {}</translation>
    </message>
    <message>
        <source>this entry is of a round already</source>
        <translation>esta anotación ya es de una ronda</translation>
    </message>
    <message>
        <source>this is no day after sowing</source>
        <translation>esto no es un día después de la siembra</translation>
    </message>
    <message>
        <source>this is no file</source>
        <translation>esto no es un archivo</translation>
    </message>
    <message>
        <source>this is no text</source>
        <translation>esto no es texto</translation>
    </message>
    <message>
        <source>this is not the link of entry {}, whose turn it is</source>
        <translation>este no es el enlace de la anotación {}, a la que le toca</translation>
    </message>
    <message>
        <source>this is not the mirror of entry {}</source>
        <translation>esto no es el reflejo de la anotación {}</translation>
    </message>
    <message>
        <source>this is still empty</source>
        <translation>esto está vacío todavía</translation>
    </message>
    <message numerus="yes">
        <source>this pass is {} days before the cone was seen</source>
        <translation>
            <numerusform>esta pasada es {} día anterior a cuando se vio el cono</numerusform>
            <numerusform>esta pasada es {} días anterior a cuando se vio el cono</numerusform>
        </translation>
    </message>
    <message>
        <source>this plant</source>
        <translation>esta planta</translation>
    </message>
    <message>
        <source>this round ended on {}</source>
        <translation>esta ronda terminó el {}</translation>
    </message>
    <message>
        <source>this round has that tray already</source>
        <translation>esta ronda ya tiene esa bandeja</translation>
    </message>
    <message>
        <source>this taxon has a route already</source>
        <translation>este taxón ya tiene una ruta</translation>
    </message>
    <message>
        <source>those before it, taken together</source>
        <translation>las anteriores, tomadas juntas</translation>
    </message>
    <message>
        <source>throw them away all the same</source>
        <translation>tirarlas de todos modos</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>sin abrir</translation>
    </message>
    <message>
        <source>time by which half of the seed that came up was up (Farooq et al. 2005)</source>
        <translation>tiempo en que había nacido la mitad de la semilla que nació (Farooq et al. 2005)</translation>
    </message>
    <message>
        <source>time scale</source>
        <translation>escala de tiempo</translation>
    </message>
    <message>
        <source>to another place</source>
        <translation>a otro lugar</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>por hacer</translation>
    </message>
    <message>
        <source>to {}</source>
        <translation>a {}</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>too few cones and trays to look at it together with the others</source>
        <translation>muy pocos conos y bandejas para mirarlo junto con las otras</translation>
    </message>
    <message>
        <source>took an entry back</source>
        <translation>se anuló una anotación</translation>
    </message>
    <message>
        <source>tray</source>
        <translation>bandeja</translation>
    </message>
    <message>
        <source>tray '{}' has two inspections on day {}</source>
        <translation>la bandeja «{}» tiene dos revisiones el día {}</translation>
    </message>
    <message>
        <source>tray or pot</source>
        <translation>bandeja o maceta</translation>
    </message>
    <message>
        <source>triangle</source>
        <translation>triángulo</translation>
    </message>
    <message>
        <source>two a fertile scale at most</source>
        <translation>dos por escama fértil a lo sumo</translation>
    </message>
    <message>
        <source>two codes in one line, {} and {}</source>
        <translation>dos códigos en una línea, {} y {}</translation>
    </message>
    <message>
        <source>two days or two times in one line</source>
        <translation>dos días o dos horas en una línea</translation>
    </message>
    <message>
        <source>two plans of different months cannot be compared</source>
        <translation>dos planes de meses distintos no pueden compararse</translation>
    </message>
    <message>
        <source>two seeds each at most, </source>
        <translation>dos semillas cada una a lo sumo, </translation>
    </message>
    <message>
        <source>unexplained</source>
        <translation>sin explicación</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>unknown father</source>
        <translation>padre desconocido</translation>
    </message>
    <message>
        <source>unreliable</source>
        <translation>no fiable</translation>
    </message>
    <message>
        <source>unsorted</source>
        <translation>sin clasificar</translation>
    </message>
    <message>
        <source>unsorted seeds are</source>
        <translation>semillas sin clasificar hay</translation>
    </message>
    <message>
        <source>unsure</source>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>up to {:.1f}</source>
        <translation>hasta {:.1f}</translation>
    </message>
    <message>
        <source>upper end of its range</source>
        <translation>extremo alto de su intervalo</translation>
    </message>
    <message>
        <source>use it first, or test it</source>
        <translation>úselo primero o pruébelo</translation>
    </message>
    <message>
        <source>verb</source>
        <translation>verbo</translation>
    </message>
    <message>
        <source>viable pollen</source>
        <translation>polen viable</translation>
    </message>
    <message>
        <source>want label</source>
        <translation>pedir etiqueta</translation>
    </message>
    <message>
        <source>watch male cone</source>
        <translation>mirar cono masculino</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>water changed</source>
        <translation>agua cambiada</translation>
    </message>
    <message>
        <source>water of {} changed</source>
        <translation>agua de {} cambiada</translation>
    </message>
    <message>
        <source>way of seeing</source>
        <translation>modo de ver</translation>
    </message>
    <message>
        <source>way of standing</source>
        <translation>modo de estar</translation>
    </message>
    <message>
        <source>weibull</source>
        <translation>weibull</translation>
    </message>
    <message>
        <source>weighing {} is {}, which is no weight</source>
        <translation>la pesada {} es {}, que no es un peso</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>húmedo</translation>
    </message>
    <message>
        <source>what a parent plant is called</source>
        <translation>cómo se llama una planta progenitora</translation>
    </message>
    <message>
        <source>what can still come, in words</source>
        <translation>lo que aún puede venir, en palabras</translation>
    </message>
    <message>
        <source>what is '{}' in {} cannot become '{}'</source>
        <translation>lo que es «{}» en {} no puede pasar a «{}»</translation>
    </message>
    <message>
        <source>what is pinned to '{}' does not fit in {}: {} are missing</source>
        <translation>lo fijado a «{}» no cabe en {}: faltan {}</translation>
    </message>
    <message>
        <source>what is pinned to '{}' weighs {:.0f} kg/m² in {}: {:.0f} more than it bears</source>
        <translation>lo fijado a «{}» pesa {:.0f} kg/m² en {}: {:.0f} más de lo que soporta</translation>
    </message>
    <message>
        <source>what is put off has a day, and what is dismissed has none</source>
        <translation>lo aplazado tiene un día, y lo tachado no lo tiene</translation>
    </message>
    <message>
        <source>what is scanned now is moved to {}</source>
        <translation>lo que se lea ahora pasa a {}</translation>
    </message>
    <message>
        <source>what is worth remembering</source>
        <translation>lo que vale la pena recordar</translation>
    </message>
    <message>
        <source>what the book knew of the taxon</source>
        <translation>lo que el libro sabía del taxón</translation>
    </message>
    <message>
        <source>what the row is about: cross, season or cross-season, else tray</source>
        <translation>de qué trata la fila: cross, season o cross-season; si no, tray</translation>
    </message>
    <message>
        <source>what the supplier said of parents and papers is not recorded</source>
        <translation>no consta lo que dijo el proveedor de padres y documentos</translation>
    </message>
    <message>
        <source>what times are counted in: days, or degree-days above a base</source>
        <translation>en qué se cuentan los tiempos: días, o grados-día sobre una base</translation>
    </message>
    <message>
        <source>what you reckon with</source>
        <translation>con qué calcula</translation>
    </message>
    <message>
        <source>where it came from</source>
        <translation>de dónde vino</translation>
    </message>
    <message>
        <source>where it may end</source>
        <translation>dónde puede acabar</translation>
    </message>
    <message>
        <source>where it stands, by name or code</source>
        <translation>dónde está, por nombre o código</translation>
    </message>
    <message>
        <source>where the seed was kept</source>
        <translation>dónde se guardó la semilla</translation>
    </message>
    <message>
        <source>whether the float test holds for this taxon is not known</source>
        <translation>no se sabe si la prueba de flotación vale para este taxón</translation>
    </message>
    <message>
        <source>whether the float test holds for {} is not known</source>
        <translation>no se sabe si la prueba de flotación vale para {}</translation>
    </message>
    <message>
        <source>who bought is not recorded</source>
        <translation>no consta quién compró</translation>
    </message>
    <message>
        <source>who this plant comes from is not known, or not in the register</source>
        <translation>no se sabe de quién viene esta planta, o no está en el registro</translation>
    </message>
    <message>
        <source>width</source>
        <translation>ancho</translation>
    </message>
    <message>
        <source>with the shift key held or Caps Lock on</source>
        <translation>con la tecla de mayúsculas pulsada o bloqueada</translation>
    </message>
    <message>
        <source>within {} days</source>
        <translation>en {} días</translation>
    </message>
    <message>
        <source>without the range of {}</source>
        <translation>sin el intervalo de {}</translation>
    </message>
    <message>
        <source>without this collection nothing of {} is left on {}, when some was used</source>
        <translation>sin esta recolección no queda nada de {} el {}, cuando se usó</translation>
    </message>
    <message>
        <source>without this collection {} has {:.3g} ml too little on {}</source>
        <translation>sin esta recolección a {} le faltan {:.3g} ml el {}</translation>
    </message>
    <message>
        <source>written twice</source>
        <translation>escritas dos veces</translation>
    </message>
    <message>
        <source>x-ray</source>
        <translation>rayos X</translation>
    </message>
    <message>
        <source>yes where the book holds invented data</source>
        <translation>yes donde el libro tiene datos inventados</translation>
    </message>
    <message numerus="yes">
        <source>{1:g} ml of pollen for a cone: the middle of {0} cones in the book.</source>
        <translation>
            <numerusform>{1:g} ml de polen por cono: la mediana de {0} cono del libro.</numerusform>
            <numerusform>{1:g} ml de polen por cono: la mediana de {0} conos del libro.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} began on {2}, {0} days after {3}</source>
        <translation>
            <numerusform>{1} empezó el {2}, {0} día después del {3}</numerusform>
            <numerusform>{1} empezó el {2}, {0} días después del {3}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} closed on {2}, {0} days before this pass</source>
        <translation>
            <numerusform>{1} cerró el {2}, {0} día antes de esta pasada</numerusform>
            <numerusform>{1} cerró el {2}, {0} días antes de esta pasada</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} is {0} days before the day {2} ({3})</source>
        <translation>
            <numerusform>{1} es {0} día antes del día «{2}» ({3})</numerusform>
            <numerusform>{1} es {0} días antes del día «{2}» ({3})</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} is {0} days from now</source>
        <translation>
            <numerusform>falta {0} día para {1}</numerusform>
            <numerusform>faltan {0} días para {1}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} of {2} sown, {0} trays</source>
        <translation>
            <numerusform>{1} de {2} sembradas, {0} bandeja</numerusform>
            <numerusform>{1} de {2} sembradas, {0} bandejas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} of {2} trays can still sprout, {0} seeds waiting: the share can rise.</source>
        <translation>
            <numerusform>{1} de {2} bandejas aún pueden dar plántulas, {0} semilla en espera: la proporción puede subir.</numerusform>
            <numerusform>{1} de {2} bandejas aún pueden dar plántulas, {0} semillas en espera: la proporción puede subir.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} plants</source>
        <translation>
            <numerusform>{1} planta</numerusform>
            <numerusform>{1} plantas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1} was sown on {2}, {0} days after this look</source>
        <translation>
            <numerusform>{1} se sembró el {2}, {0} día después de esta revisión</numerusform>
            <numerusform>{1} se sembró el {2}, {0} días después de esta revisión</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{1}{0} earlier cones of {2}</source>
        <translation>
            <numerusform>{1}{0} cono anterior de {2}</numerusform>
            <numerusform>{1}{0} conos anteriores de {2}</numerusform>
        </translation>
    </message>
    <message>
        <source>{:.0f} % of grains</source>
        <translation>{:.0f} % de los granos</translation>
    </message>
    <message>
        <source>{:.0f} % of the seed germinates sooner or later by it</source>
        <translation>según ella germina tarde o temprano el {:.0f} % de la semilla</translation>
    </message>
    <message>
        <source>{:.0f} days</source>
        <translation>{:.0f} días</translation>
    </message>
    <message>
        <source>{:.0f} to {:.0f} % of its floaters are filled ({:.0f} % range)</source>
        <translation>del {:.0f} al {:.0f} % de las que flotan están llenas (intervalo del {:.0f} %)</translation>
    </message>
    <message>
        <source>{:.0f}–{:.0f}, likely {:.0f}</source>
        <translation>{:.0f}–{:.0f}, probable {:.0f}</translation>
    </message>
    <message>
        <source>{:.1f} months</source>
        <translation>{:.1f} meses</translation>
    </message>
    <message>
        <source>{:.1f}–{:.1f} %, likely {:.1f}</source>
        <translation>{:.1f}–{:.1f} %, probable {:.1f}</translation>
    </message>
    <message>
        <source>{:.2g} in 100</source>
        <translation>{:.2g} en 100</translation>
    </message>
    <message>
        <source>{:.3g} ml less than wanted</source>
        <translation>{:.3g} ml menos de lo pedido</translation>
    </message>
    <message>
        <source>{:g} % range, share, %</source>
        <translation>intervalo del {:g} %, proporción, %</translation>
    </message>
    <message>
        <source>{:g} cents a litre and month</source>
        <translation>{:g} céntimos por litro y mes</translation>
    </message>
    <message>
        <source>{:g} litres in a pack</source>
        <translation>{:g} litros por envase</translation>
    </message>
    <message>
        <source>{:g} litres on hand</source>
        <translation>{:g} litros existentes</translation>
    </message>
    <message>
        <source>{:g} loose litres from one that is pressed</source>
        <translation>{:g} litros sueltos de uno prensado</translation>
    </message>
    <message>
        <source>{:g} ml of pollen are needed and {:g} ml are left</source>
        <translation>se necesitan {:g} ml de polen y quedan {:g} ml</translation>
    </message>
    <message>
        <source>{:g} ml of pollen for a cone are assumed (no source).</source>
        <translation>Se suponen {:g} ml de polen por cono (sin fuente).</translation>
    </message>
    <message>
        <source>{:g} seconds to place in</source>
        <translation>{:g} segundos para colocar</translation>
    </message>
    <message>
        <source>{:g} to {:g} filled of {} floaters</source>
        <translation>de {:g} a {:g} llenas de {} que flotan</translation>
    </message>
    <message>
        <source>{} '{}' is no day</source>
        <translation>{} «{}» no es un día</translation>
    </message>
    <message>
        <source>{} (at least {})</source>
        <translation>{} (al menos {})</translation>
    </message>
    <message>
        <source>{} (invented data)</source>
        <translation>{} (datos inventados)</translation>
    </message>
    <message>
        <source>{} ({}) is a female plant: it gives no pollen and cannot be the father</source>
        <translation>{} ({}) es una planta hembra: no da polen y no puede ser el padre</translation>
    </message>
    <message>
        <source>{} ({}) is a male plant: it has no cone to pollinate</source>
        <translation>{} ({}) es una planta macho: no tiene cono que polinizar</translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation>{} y {}</translation>
    </message>
    <message>
        <source>{} and {} come from different cones; a lot holds seed of one</source>
        <translation>{} y {} vienen de conos distintos; un lote contiene semilla de uno solo</translation>
    </message>
    <message numerus="yes">
        <source>{} bought in</source>
        <translation>
            <numerusform>{} comprada</numerusform>
            <numerusform>{} compradas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} came in</source>
        <translation>entraron {}</translation>
    </message>
    <message>
        <source>{} came off on {} and gave no seed</source>
        <translation>{} cayó el {} y no dio semilla</translation>
    </message>
    <message numerus="yes">
        <source>{} came up</source>
        <translation>
            <numerusform>nació {}</numerusform>
            <numerusform>nacieron {}</numerusform>
        </translation>
    </message>
    <message>
        <source>{} cannot be female: the pollen {} came from it</source>
        <translation>{} no puede ser hembra: de ella salió el polen {}</translation>
    </message>
    <message>
        <source>{} cannot be male: {} is a female cone of it</source>
        <translation>{} no puede ser macho: {} es un cono femenino suyo</translation>
    </message>
    <message>
        <source>{} cannot be read: {}</source>
        <translation>{} no puede leerse: {}</translation>
    </message>
    <message>
        <source>{} cannot be used: {}</source>
        <translation>{} no puede usarse: {}</translation>
    </message>
    <message>
        <source>{} cannot be written: {}</source>
        <translation>{} no puede escribirse: {}</translation>
    </message>
    <message numerus="yes">
        <source>{} clean seeds of {} wait: sort, sow them or put them by</source>
        <translation>
            <numerusform>{} semilla limpia de {} espera: clasifíquela, siémbrela o guárdela</numerusform>
            <numerusform>{} semillas limpias de {} esperan: clasifíquelas, siémbrelas o guárdelas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} cleaned, {} lost</source>
        <translation>{} limpiada, {} perdidas</translation>
    </message>
    <message>
        <source>{} closed on {}, before this look</source>
        <translation>{} cerró el {}, antes de esta observación</translation>
    </message>
    <message>
        <source>{} collected from {}</source>
        <translation>{} recogido de {}</translation>
    </message>
    <message>
        <source>{} comes apart: harvest it</source>
        <translation>{} se deshace: coséchelo</translation>
    </message>
    <message numerus="yes">
        <source>{} cones</source>
        <translation>
            <numerusform>{} cono</numerusform>
            <numerusform>{} conos</numerusform>
        </translation>
    </message>
    <message>
        <source>{} cones of this book</source>
        <translation>{} conos de este libro</translation>
    </message>
    <message numerus="yes">
        <source>{} cones, {} seeds; {} of {} sown came up</source>
        <translation>
            <numerusform>{} cono, {} semillas; nacieron {} de {} sembradas</numerusform>
            <numerusform>{} conos, {} semillas; nacieron {} de {} sembradas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} copies of a label</source>
        <translation>{} copias de una etiqueta</translation>
    </message>
    <message>
        <source>{} crosses</source>
        <translation>{} cruces</translation>
    </message>
    <message>
        <source>{} crosses are asked for, and {:g} can be made with the cones, the pollen and the room there are</source>
        <translation>se piden {} cruces, y pueden hacerse {:g} con los conos, el polen y el espacio que hay</translation>
    </message>
    <message>
        <source>{} crosses are pinned and {} asked for</source>
        <translation>hay {} cruces fijados y se piden {}</translation>
    </message>
    <message>
        <source>{} cut open: {} filled, {} empty</source>
        <translation>{} abiertas: {} llenas, {} vacías</translation>
    </message>
    <message>
        <source>{} days measured, {} without temperature</source>
        <translation>{} días medidos, {} sin temperatura</translation>
    </message>
    <message>
        <source>{} days of soaking</source>
        <translation>{} días de remojo</translation>
    </message>
    <message>
        <source>{} days of waiting</source>
        <translation>{} días de espera</translation>
    </message>
    <message>
        <source>{} degree-days above {} °C in the days measured</source>
        <translation>{} grados-día sobre {} °C en los días medidos</translation>
    </message>
    <message numerus="yes">
        <source>{} died</source>
        <translation>
            <numerusform>{} murió</numerusform>
            <numerusform>{} murieron</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} discarded</source>
        <translation>
            <numerusform>{} desechada</numerusform>
            <numerusform>{} desechadas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} does not fit from {}: {}.</source>
        <translation>{} no cabe desde {}: {}.</translation>
    </message>
    <message>
        <source>{} does not fit today: {}.</source>
        <translation>{} no cabe hoy: {}.</translation>
    </message>
    <message>
        <source>{} earlier cones of the plant</source>
        <translation>{} conos anteriores de la planta</translation>
    </message>
    <message numerus="yes">
        <source>{} earlier cones of the plant: right 8 times in 10</source>
        <translation>
            <numerusform>{} cono anterior de la planta: acierta 8 veces de 10</numerusform>
            <numerusform>{} conos anteriores de la planta: acierta 8 veces de 10</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} earlier cones of {}</source>
        <translation>
            <numerusform>{} cono anterior de {}</numerusform>
            <numerusform>{} conos anteriores de {}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} entries</source>
        <translation>
            <numerusform>{} asiento</numerusform>
            <numerusform>{} asientos</numerusform>
        </translation>
    </message>
    <message>
        <source>{} fertile scales</source>
        <translation>{} escamas fértiles</translation>
    </message>
    <message>
        <source>{} fertile scales, </source>
        <translation>{} escamas fértiles, </translation>
    </message>
    <message>
        <source>{} filled of {} opened: {} too many</source>
        <translation>{} llenas de {} abiertas: {} de más</translation>
    </message>
    <message>
        <source>{} filled of {} seeds: {} too many</source>
        <translation>{} llenas de {} semillas: {} de más</translation>
    </message>
    <message>
        <source>{} filled seeds cannot be found by cutting</source>
        <translation>{} semillas llenas no pueden hallarse abriendo</translation>
    </message>
    <message>
        <source>{} fits: at most {:.2f} of {}.</source>
        <translation>{} cabe: a lo sumo {:.2f} de {}.</translation>
    </message>
    <message>
        <source>{} floaters, {} opened</source>
        <translation>{} que flotan, {} abiertas</translation>
    </message>
    <message>
        <source>{} from {} are batch {}{}</source>
        <translation>{} de {} son la partida {}{}</translation>
    </message>
    <message>
        <source>{} from {} are {} {}</source>
        <translation>{} de {} son {} {}</translation>
    </message>
    <message>
        <source>{} from {} into {}, '{}'</source>
        <translation>{} de {} a {}, «{}»</translation>
    </message>
    <message numerus="yes">
        <source>{} gaps, the longest of {} hours from {}</source>
        <translation>
            <numerusform>{} hueco de {} horas desde el {}</numerusform>
            <numerusform>{} huecos, el más largo de {} horas desde el {}</numerusform>
        </translation>
    </message>
    <message>
        <source>{} gave no seed: {}</source>
        <translation>{} no dio semilla: {}</translation>
    </message>
    <message>
        <source>{} germinated</source>
        <translation>{} germinadas</translation>
    </message>
    <message>
        <source>{} germinated and {} removed</source>
        <translation>{} germinadas y {} retiradas</translation>
    </message>
    <message>
        <source>{} germinated is below zero</source>
        <translation>{} germinadas es menor que cero</translation>
    </message>
    <message>
        <source>{} germinated of 100 sown cannot be</source>
        <translation>{} germinadas de 100 sembradas no puede ser</translation>
    </message>
    <message>
        <source>{} germinated of {} counted</source>
        <translation>{} germinados de {} contados</translation>
    </message>
    <message>
        <source>{} germinated on day 0, the day of sowing</source>
        <translation>{} germinadas el día 0, el de la siembra</translation>
    </message>
    <message>
        <source>{} go by “{}”.</source>
        <translation>{} responden a «{}».</translation>
    </message>
    <message>
        <source>{} has a row for this entry, which is '{}'</source>
        <translation>{} tiene una fila para esta anotación, que es «{}»</translation>
    </message>
    <message>
        <source>{} has ended, nothing is left in this {}{}</source>
        <translation>{} terminó, no queda nada en esto: {}{}</translation>
    </message>
    <message>
        <source>{} has no link: it was not written by the program</source>
        <translation>{} no tiene enlace: no la escribió el programa</translation>
    </message>
    <message>
        <source>{} has no mix in the book, and these come into '{}'</source>
        <translation>{} no tiene sustrato en el libro, y estas van a «{}»</translation>
    </message>
    <message>
        <source>{} has no place in the book, and none was named</source>
        <translation>{} no tiene lugar en el libro, y no se nombró ninguno</translation>
    </message>
    <message>
        <source>{} has no route, so no plants are reckoned: give its germination and steps</source>
        <translation>{} no tiene ruta, así que no se calculan plantas: dé su germinación y sus pasos</translation>
    </message>
    <message>
        <source>{} has no row for this entry</source>
        <translation>{} no tiene fila para esta anotación</translation>
    </message>
    <message>
        <source>{} has no seed on {}</source>
        <translation>{} no tiene semilla el {}</translation>
    </message>
    <message>
        <source>{} has nothing to pot on {}</source>
        <translation>{} no tiene nada que trasplantar el {}</translation>
    </message>
    <message>
        <source>{} has {:.3g} ml on {}, {}</source>
        <translation>{} tiene {:.3g} ml el {}, {}</translation>
    </message>
    <message>
        <source>{} has {} '{}' on {}</source>
        <translation>{} tiene {} «{}» el {}</translation>
    </message>
    <message>
        <source>{} has {} '{}' on {}, and {} are asked for: {} too many</source>
        <translation>{} tiene {} «{}» el {}, y se piden {}: {} de más</translation>
    </message>
    <message>
        <source>{} has {} '{}' on {}, and {} are counted: {} too many</source>
        <translation>{} tiene {} «{}» el {}, y se cuentan {}: {} de más</translation>
    </message>
    <message>
        <source>{} has {} rows for this entry</source>
        <translation>{} tiene {} filas para esta anotación</translation>
    </message>
    <message>
        <source>{} has {} to pot on {}, and {} are to be potted: {} too many</source>
        <translation>{} tiene {} por trasplantar el {}, y se quieren trasplantar {}: {} de más</translation>
    </message>
    <message>
        <source>{} holds nothing on {}</source>
        <translation>{} no contiene nada el {}</translation>
    </message>
    <message>
        <source>{} holds seed judged '{}', {} '{}'</source>
        <translation>{} contiene semilla juzgada «{}», {} «{}»</translation>
    </message>
    <message>
        <source>{} holds seed judged by {}, {} by {}</source>
        <translation>{} contiene semilla juzgada por {}, {} por {}</translation>
    </message>
    <message>
        <source>{} holds {}</source>
        <translation>{} contiene {}</translation>
    </message>
    <message>
        <source>{} in = {} on hand + {} ended</source>
        <translation>{} entraron = {} existentes + {} terminadas</translation>
    </message>
    <message>
        <source>{} in all.</source>
        <translation>{} en total.</translation>
    </message>
    <message>
        <source>{} in your book; good seed of this taxon floats too: {}.</source>
        <translation>{} en su libro; la semilla buena de este taxón también flota: {}.</translation>
    </message>
    <message>
        <source>{} in your book; that does not say yet whether the float test can be trusted for this taxon: {}.</source>
        <translation>{} en su libro; eso aún no dice si puede confiarse en la prueba de flotación para este taxón: {}.</translation>
    </message>
    <message>
        <source>{} in your book; the float test can be trusted for this taxon: {}.</source>
        <translation>{} en su libro; puede confiarse en la prueba de flotación para este taxón: {}.</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} en {}</translation>
    </message>
    <message>
        <source>{} in {} trays leaves {} of them empty</source>
        <translation>{} en {} bandejas deja {} de ellas vacías</translation>
    </message>
    <message>
        <source>{} in {}: what stands and the targets of that month take {} of {}; {} are missing.</source>
        <translation>{} en {}: lo que hay y las metas de ese mes ocupan {} de {}; faltan {}.</translation>
    </message>
    <message>
        <source>{} into {}</source>
        <translation>{} a {}</translation>
    </message>
    <message>
        <source>{} is a female plant and cannot be the pollen parent</source>
        <translation>{} es una planta hembra y no puede ser la planta padre</translation>
    </message>
    <message>
        <source>{} is a female plant: it gives no pollen</source>
        <translation>{} es una planta hembra: no da polen</translation>
    </message>
    <message>
        <source>{} is a folder</source>
        <translation>{} es una carpeta</translation>
    </message>
    <message>
        <source>{} is a male plant and cannot be the seed parent</source>
        <translation>{} es una planta macho y no puede ser la planta madre</translation>
    </message>
    <message>
        <source>{} is a male plant: it has no cone to pollinate</source>
        <translation>{} es una planta macho: no tiene cono que polinizar</translation>
    </message>
    <message>
        <source>{} is a plant, not a pollen lot</source>
        <translation>{} es una planta, no un lote de polen</translation>
    </message>
    <message>
        <source>{} is a {} plant</source>
        <translation>{} es una planta {}</translation>
    </message>
    <message>
        <source>{} is a {}, not a {}</source>
        <translation>{} es: {}; no: {}</translation>
    </message>
    <message>
        <source>{} is below {}</source>
        <translation>{} es menor que {}</translation>
    </message>
    <message>
        <source>{} is both pinned and forbidden</source>
        <translation>{} está fijado y prohibido a la vez</translation>
    </message>
    <message>
        <source>{} is far out of range</source>
        <translation>{} está muy fuera de rango</translation>
    </message>
    <message>
        <source>{} is in '{}', not in '{}'</source>
        <translation>{} está en «{}», no en «{}»</translation>
    </message>
    <message>
        <source>{} is in no store</source>
        <translation>{} no está guardada en ningún sitio</translation>
    </message>
    <message>
        <source>{} is in the book</source>
        <translation>{} está en el libro</translation>
    </message>
    <message>
        <source>{} is in the book as {}</source>
        <translation>{} consta en el libro como {}</translation>
    </message>
    <message>
        <source>{} is in the hand already</source>
        <translation>{} ya está en la mano</translation>
    </message>
    <message>
        <source>{} is left out: {}</source>
        <translation>{} queda fuera: {}</translation>
    </message>
    <message>
        <source>{} is missing or of another version; install it as the package says</source>
        <translation>{} falta o es de otra versión; instálelo como dice el paquete</translation>
    </message>
    <message>
        <source>{} is no month of this plan</source>
        <translation>{} no es un mes de este plan</translation>
    </message>
    <message>
        <source>{} is no place of this book</source>
        <translation>{} no es un lugar de este libro</translation>
    </message>
    <message>
        <source>{} is no plant of this book</source>
        <translation>{} no es una planta de este libro</translation>
    </message>
    <message>
        <source>{} is no running number of a code</source>
        <translation>{} no es el número corriente de un código</translation>
    </message>
    <message>
        <source>{} is no tray, and counts belong to one</source>
        <translation>{} no es una bandeja, y los recuentos son de una</translation>
    </message>
    <message>
        <source>{} is no {} to choose from</source>
        <translation>{} no está entre lo que puede elegirse: {}</translation>
    </message>
    <message>
        <source>{} is not from {} to {}</source>
        <translation>{} no está entre {} y {}</translation>
    </message>
    <message>
        <source>{} is not in the 120 months from {}</source>
        <translation>{} no está en los 120 meses desde {}</translation>
    </message>
    <message>
        <source>{} is not right by one character.</source>
        <translation>{} está mal por un carácter.</translation>
    </message>
    <message>
        <source>{} is not what was written, or an entry before it was taken out: its link is {}, and what stands there gives {}</source>
        <translation>{} no es lo que se escribió, o se quitó una anotación anterior: su enlace es {}, y lo que hay da {}</translation>
    </message>
    <message>
        <source>{} is not within {}: look whether the picture was taken there</source>
        <translation>{} no está dentro de {}: mire si la foto se tomó allí</translation>
    </message>
    <message>
        <source>{} is pinned to '{}', but nothing of it will stand. Take the pin out.</source>
        <translation>{} está fijado a «{}», pero no quedará nada de él. Suéltelo.</translation>
    </message>
    <message>
        <source>{} is pinned to '{}', where it cannot stand: {}</source>
        <translation>{} está fijado a «{}», donde no puede estar: {}</translation>
    </message>
    <message>
        <source>{} is pinned twice: {} and {}</source>
        <translation>{} está fijado dos veces: {} y {}</translation>
    </message>
    <message>
        <source>{} is potted into '{}' (step {}) with '{}' instead of '{}'.</source>
        <translation>{} se trasplanta a «{}» (paso {}) con «{}» en lugar de «{}».</translation>
    </message>
    <message>
        <source>{} is said to come from a female plant</source>
        <translation>se dice que {} viene de una planta hembra</translation>
    </message>
    <message>
        <source>{} is the code of a {}</source>
        <translation>{} es un código de: {}</translation>
    </message>
    <message>
        <source>{} is the code of a {}, not of a lot</source>
        <translation>{} es un código de: {}, no de un lote</translation>
    </message>
    <message>
        <source>{} is the label of a {}</source>
        <translation>{} es una etiqueta de: {}</translation>
    </message>
    <message>
        <source>{} is the label of another book</source>
        <translation>{} es la etiqueta de otro libro</translation>
    </message>
    <message>
        <source>{} is the label of another book: its codes begin with {}, those of this book with {}.</source>
        <translation>{} es la etiqueta de otro libro: sus códigos empiezan con {}, los de este con {}.</translation>
    </message>
    <message>
        <source>{} is the label of another book: its series is {}, this book's is {}</source>
        <translation>{} es la etiqueta de otro libro: su serie es {}, la de este es {}</translation>
    </message>
    <message>
        <source>{} is there twice</source>
        <translation>{} está dos veces</translation>
    </message>
    <message>
        <source>{} is ticked in the calendar</source>
        <translation>{} está marcado en el calendario</translation>
    </message>
    <message>
        <source>{} is to be moved to {}</source>
        <translation>{} se moverá a {}</translation>
    </message>
    <message>
        <source>{} is {} days from now. If that is not the day, reverse entry {}.</source>
        <translation>El {} es dentro de {} días. Si no es ese el día, anule la anotación {}.</translation>
    </message>
    <message numerus="yes">
        <source>{} judged empty</source>
        <translation>
            <numerusform>{} juzgada vacía</numerusform>
            <numerusform>{} juzgadas vacías</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} judged filled</source>
        <translation>
            <numerusform>{} juzgada llena</numerusform>
            <numerusform>{} juzgadas llenas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} judged filled of {} wait: sow them or put them by</source>
        <translation>
            <numerusform>{} juzgada llena de {} espera: siémbrela o guárdela</numerusform>
            <numerusform>{} juzgadas llenas de {} esperan: siémbrelas o guárdelas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} kg for a litre of wet mix</source>
        <translation>{} kg por litro de sustrato húmedo</translation>
    </message>
    <message>
        <source>{} leads back to a cone and to a purchase</source>
        <translation>{} lleva a un cono y a una compra</translation>
    </message>
    <message>
        <source>{} leads back to no cone and no purchase</source>
        <translation>{} no lleva a ningún cono ni compra</translation>
    </message>
    <message>
        <source>{} left out: {}</source>
        <translation>{} queda fuera: {}</translation>
    </message>
    <message>
        <source>{} links for {} entries</source>
        <translation>{} enlaces para {} anotaciones</translation>
    </message>
    <message numerus="yes">
        <source>{} lost</source>
        <translation>
            <numerusform>{} perdida</numerusform>
            <numerusform>{} perdidas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} lots</source>
        <translation>{} lotes</translation>
    </message>
    <message numerus="yes">
        <source>{} lots are left out of pots and mix; their bench room is counted as it is.</source>
        <translation>
            <numerusform>{} lote queda fuera de macetas y sustrato; su sitio en la mesa cuenta tal cual.</numerusform>
            <numerusform>{} lotes quedan fuera de macetas y sustrato; su sitio en la mesa cuenta tal cual.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} lots are pinned to '{}', which would have no size</source>
        <translation>
            <numerusform>{} lote está fijado a «{}», que quedaría sin medidas</numerusform>
            <numerusform>{} lotes están fijados a «{}», que quedaría sin medidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} lots moved</source>
        <translation>
            <numerusform>{} lote movido</numerusform>
            <numerusform>{} lotes movidos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} lots that stand in it go by this now</source>
        <translation>
            <numerusform>{} lote que está en ella se rige por esto desde ahora</numerusform>
            <numerusform>{} lotes que están en ella se rigen por esto desde ahora</numerusform>
        </translation>
    </message>
    <message>
        <source>{} may be ripe: look whether it comes loose</source>
        <translation>{} puede estar maduro: mire si se suelta</translation>
    </message>
    <message numerus="yes">
        <source>{} mixes name it so as their part, too</source>
        <translation>
            <numerusform>{} sustrato también lo nombra así como componente</numerusform>
            <numerusform>{} sustratos también lo nombran así como componente</numerusform>
        </translation>
    </message>
    <message>
        <source>{} ml</source>
        <translation>{} ml</translation>
    </message>
    <message>
        <source>{} ml of pollen</source>
        <translation>{} ml de polen</translation>
    </message>
    <message>
        <source>{} ml of {}</source>
        <translation>{} ml de {}</translation>
    </message>
    <message>
        <source>{} ml of {} thrown away</source>
        <translation>{} ml de {} tirados</translation>
    </message>
    <message>
        <source>{} mm is longer than a kilometre</source>
        <translation>{} mm es más de un kilómetro</translation>
    </message>
    <message>
        <source>{} months from {}, drawn {} times over. Ranges are 10 – 50 – 90 %.</source>
        <translation>{} meses desde {}, simulados {} veces. Los intervalos son 10 – 50 – 90 %.</translation>
    </message>
    <message>
        <source>{} more expected (8 times in 10), likely {}</source>
        <translation>se esperan {} más (8 veces de 10), probable {}</translation>
    </message>
    <message>
        <source>{} more expected, likely {}</source>
        <translation>se esperan {} más, probable {}</translation>
    </message>
    <message numerus="yes">
        <source>{} moves</source>
        <translation>
            <numerusform>{} traslado</numerusform>
            <numerusform>{} traslados</numerusform>
        </translation>
    </message>
    <message>
        <source>{} must lie between 0 and 1, and this is {}</source>
        <translation>{} debe estar entre 0 y 1, y es {}</translation>
    </message>
    <message>
        <source>{} must lie from 0 to 1, and this is {}</source>
        <translation>{} debe ir de 0 a 1, y es {}</translation>
    </message>
    <message>
        <source>{} needed, {} there, {} short</source>
        <translation>se necesitan {}, hay {}, faltan {}</translation>
    </message>
    <message numerus="yes">
        <source>{} new leaves</source>
        <translation>
            <numerusform>{} hoja nueva</numerusform>
            <numerusform>{} hojas nuevas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} new roots</source>
        <translation>
            <numerusform>{} raíz nueva</numerusform>
            <numerusform>{} raíces nuevas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} now on {}</source>
        <translation>{} ahora en {}</translation>
    </message>
    <message>
        <source>{} of '{}' for {} plants to be potted by {}; see what is there, mix or order the rest</source>
        <translation>{} de «{}» para {} plantas que se trasplantan hasta el {}; mire qué hay, mezcle o pida el resto</translation>
    </message>
    <message>
        <source>{} of '{}' have {} cells, and {} seeds are to be sown: {} too many</source>
        <translation>{} de «{}» tienen {} alvéolos, y se quieren sembrar {} semillas: {} de más</translation>
    </message>
    <message>
        <source>{} of its {} days have no temperature</source>
        <translation>{} de sus {} días no tienen temperatura</translation>
    </message>
    <message>
        <source>{} of the same plant was pollinated {} days before. If that is the cone, reverse entry {} and give its code.</source>
        <translation>{} de la misma planta se polinizó {} días antes. Si es ese el cono, anule la anotación {} y dé su código.</translation>
    </message>
    <message>
        <source>{} of the seed sown, by {}</source>
        <translation>{} de la semilla sembrada, a {}</translation>
    </message>
    <message>
        <source>{} of {}</source>
        <translation>{} de {}</translation>
    </message>
    <message>
        <source>{} of {} ({})</source>
        <translation>{} de {} ({})</translation>
    </message>
    <message>
        <source>{} of {} ({}), collected {}</source>
        <translation>{} de {} ({}), recogido el {}</translation>
    </message>
    <message>
        <source>{} of {} are needed and {} are free</source>
        <translation>se necesitan {} de {} y hay {} libres</translation>
    </message>
    <message numerus="yes">
        <source>{} of {} dead</source>
        <translation>
            <numerusform>{} de {} muerta</numerusform>
            <numerusform>{} de {} muertas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} of {} discarded</source>
        <translation>
            <numerusform>{} de {} desechada</numerusform>
            <numerusform>{} de {} desechadas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} of {} find no room in {}: {}.</source>
        <translation>{} de {} no hallan sitio en {}: {}.</translation>
    </message>
    <message>
        <source>{} of {} grains germinated</source>
        <translation>germinaron {} de {} granos</translation>
    </message>
    <message>
        <source>{} of {} grains on {}</source>
        <translation>{} de {} granos el {}</translation>
    </message>
    <message>
        <source>{} of {} is no share</source>
        <translation>{} de {} no es una proporción</translation>
    </message>
    <message>
        <source>{} of {} is old from {}: {} ({})</source>
        <translation>{} de {} es viejo desde el {}: {} ({})</translation>
    </message>
    <message numerus="yes">
        <source>{} of {} planted out</source>
        <translation>
            <numerusform>{} de {} plantada en su sitio</numerusform>
            <numerusform>{} de {} plantadas en su sitio</numerusform>
        </translation>
    </message>
    <message>
        <source>{} of {} put by: {}{}</source>
        <translation>{} de {} guardadas: {}{}</translation>
    </message>
    <message numerus="yes">
        <source>{} of {} sold</source>
        <translation>
            <numerusform>{} de {} vendida</numerusform>
            <numerusform>{} de {} vendidas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} of {} sown in {}: {}</source>
        <translation>{} de {} sembradas en {}: {}</translation>
    </message>
    <message>
        <source>{} of {} sown, {} of {}</source>
        <translation>{} de {} sembradas, {} de {}</translation>
    </message>
    <message>
        <source>{} of {} sown: {} too many</source>
        <translation>{} de {} sembradas: {} de más</translation>
    </message>
    <message>
        <source>{} of {} to {} months</source>
        <translation>{} de {} a {} meses</translation>
    </message>
    <message>
        <source>{} of {}, from {}</source>
        <translation>{} del {}, de {}</translation>
    </message>
    <message>
        <source>{} of {}: are its scales loose?</source>
        <translation>{} de {}: ¿están sueltas sus escamas?</translation>
    </message>
    <message>
        <source>{} on {} from {}; a later move has it on {} now</source>
        <translation>{} en {} desde el {}; por un traslado posterior ahora está en {}</translation>
    </message>
    <message>
        <source>{} on {} from {}; later moves have {} of them elsewhere now</source>
        <translation>{} en {} desde el {}; por traslados posteriores {} de ellos están ahora en otro lugar</translation>
    </message>
    <message>
        <source>{} on {}, </source>
        <translation>{} el {}, </translation>
    </message>
    <message>
        <source>{} on {}{}</source>
        <translation>{} el {}{}</translation>
    </message>
    <message>
        <source>{} opened of {} seeds: {} too many</source>
        <translation>{} abiertas de {} semillas: {} de más</translation>
    </message>
    <message>
        <source>{} other crosses of the taxon</source>
        <translation>otros {} cruces del taxón</translation>
    </message>
    <message>
        <source>{} packs as its least order</source>
        <translation>{} envases como pedido mínimo</translation>
    </message>
    <message>
        <source>{} parts of {} cannot be</source>
        <translation>{} partes de {} no pueden ser</translation>
    </message>
    <message numerus="yes">
        <source>{} passes</source>
        <translation>
            <numerusform>{} pasada</numerusform>
            <numerusform>{} pasadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} passes, last {}</source>
        <translation>
            <numerusform>{} pasada, la última el {}</numerusform>
            <numerusform>{} pasadas, la última el {}</numerusform>
        </translation>
    </message>
    <message>
        <source>{} pictures are of a day after {}: {}</source>
        <translation>{} fotos son de un día posterior al {}: {}</translation>
    </message>
    <message>
        <source>{} pictures do not say on which day they were taken: {}</source>
        <translation>{} fotos no dicen en qué día se tomaron: {}</translation>
    </message>
    <message numerus="yes">
        <source>{} planted out</source>
        <translation>
            <numerusform>{} plantada fuera</numerusform>
            <numerusform>{} plantadas fuera</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} plants</source>
        <translation>
            <numerusform>{} planta</numerusform>
            <numerusform>{} plantas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} plants need no seeds</source>
        <translation>{} plantas no necesitan semillas</translation>
    </message>
    <message numerus="yes">
        <source>{} plants of {} into '{}'</source>
        <translation>
            <numerusform>{} planta de {} a «{}»</numerusform>
            <numerusform>{} plantas de {} a «{}»</numerusform>
        </translation>
    </message>
    <message>
        <source>{} plants would take {:.3g} seeds, more than any nursery sows</source>
        <translation>{} plantas pedirían {:.3g} semillas, más de lo que siembra ningún vivero</translation>
    </message>
    <message>
        <source>{} pollen, {}</source>
        <translation>polen {}, {}</translation>
    </message>
    <message>
        <source>{} pots are more than any nursery fills</source>
        <translation>{} macetas son más de las que llena ningún vivero</translation>
    </message>
    <message>
        <source>{} pots take no mix</source>
        <translation>{} macetas no llevan sustrato</translation>
    </message>
    <message numerus="yes">
        <source>{} potted</source>
        <translation>
            <numerusform>{} a maceta</numerusform>
            <numerusform>{} a maceta</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} potted on</source>
        <translation>
            <numerusform>{} trasplantada</numerusform>
            <numerusform>{} trasplantadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} readings look like a fault of the sensor ({}) and take no part</source>
        <translation>
            <numerusform>{} lectura parece un fallo del sensor ({}) y no cuenta</numerusform>
            <numerusform>{} lecturas parecen un fallo del sensor ({}) y no cuentan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} readings taken in</source>
        <translation>
            <numerusform>{} lectura incorporada</numerusform>
            <numerusform>{} lecturas incorporadas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} removed is below zero</source>
        <translation>{} retiradas es menor que cero</translation>
    </message>
    <message>
        <source>{} rows</source>
        <translation>{} filas</translation>
    </message>
    <message numerus="yes">
        <source>{} seedlings of {} can go into pots</source>
        <translation>
            <numerusform>{} plántula de {} puede ir a maceta</numerusform>
            <numerusform>{} plántulas de {} pueden ir a maceta</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} seeds</source>
        <translation>
            <numerusform>{} semilla</numerusform>
            <numerusform>{} semillas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} seeds a cell cannot be</source>
        <translation>{} semillas por alvéolo no pueden ser</translation>
    </message>
    <message>
        <source>{} seeds a cone cannot be</source>
        <translation>{} semillas por cono no pueden ser</translation>
    </message>
    <message>
        <source>{} seeds are more than any nursery counts</source>
        <translation>{} semillas son más de las que cuenta ningún vivero</translation>
    </message>
    <message numerus="yes">
        <source>{} seeds are not sown yet and not counted.</source>
        <translation>
            <numerusform>{} semilla aún no está sembrada y no se cuenta.</numerusform>
            <numerusform>{} semillas aún no están sembradas y no se cuentan.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} seeds harvested</source>
        <translation>
            <numerusform>{} semilla cosechada</numerusform>
            <numerusform>{} semillas cosechadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} seeds harvested {}</source>
        <translation>
            <numerusform>{} semilla cosechada el {}</numerusform>
            <numerusform>{} semillas cosechadas el {}</numerusform>
        </translation>
    </message>
    <message>
        <source>{} seeds in a '{}' of {} cells</source>
        <translation>{} semillas en una «{}» de {} celdas</translation>
    </message>
    <message numerus="yes">
        <source>{} seeds judged filled in {}</source>
        <translation>
            <numerusform>{} semilla juzgada llena en {}</numerusform>
            <numerusform>{} semillas juzgadas llenas en {}</numerusform>
        </translation>
    </message>
    <message>
        <source>{} seeds of {} are not cleaned yet</source>
        <translation>{} semillas de {} aún no están limpias</translation>
    </message>
    <message>
        <source>{} seeds of {} are soaking: change the water</source>
        <translation>{} semillas de {} están en remojo: cambie el agua</translation>
    </message>
    <message numerus="yes">
        <source>{} seeds of {} are sown in {} besides.</source>
        <translation>
            <numerusform>Además se siembra {} semilla de {} en {}.</numerusform>
            <numerusform>Además se siembran {} semillas de {} en {}.</numerusform>
        </translation>
    </message>
    <message>
        <source>{} seeds of {} have soaked: take them out, float them</source>
        <translation>{} semillas de {} ya estuvieron en remojo: sáquelas, hágalas flotar</translation>
    </message>
    <message>
        <source>{} seeds of {} may have ripened on: look at them, sow</source>
        <translation>{} semillas de {} pueden haber posmadurado: mírelas, siémbrelas</translation>
    </message>
    <message numerus="yes">
        <source>{} seeds of {}: look for roots and leaves</source>
        <translation>
            <numerusform>{} semilla de {}: busque raíces y hojas</numerusform>
            <numerusform>{} semillas de {}: busque raíces y hojas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} seeds wait past their route's months.</source>
        <translation>
            <numerusform>{} semilla espera más allá de los meses de su ruta.</numerusform>
            <numerusform>{} semillas esperan más allá de los meses de su ruta.</numerusform>
        </translation>
    </message>
    <message>
        <source>{} seen: a {}, not counted on a round</source>
        <translation>{} vista: {}; no se cuenta en una ronda</translation>
    </message>
    <message>
        <source>{} since sowing</source>
        <translation>{} desde la siembra</translation>
    </message>
    <message numerus="yes">
        <source>{} sold</source>
        <translation>
            <numerusform>{} vendida</numerusform>
            <numerusform>{} vendidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} sown</source>
        <translation>
            <numerusform>{} sembrada</numerusform>
            <numerusform>{} sembradas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} sown in one tray, and no tray holds more than {}</source>
        <translation>{} sembradas en una bandeja, y ninguna admite más de {}</translation>
    </message>
    <message>
        <source>{} sown is below zero</source>
        <translation>{} sembradas es menor que cero</translation>
    </message>
    <message>
        <source>{} sown, not up</source>
        <translation>{} sembradas, sin nacer</translation>
    </message>
    <message>
        <source>{} stands in '{}', which is not on its route; it is taken to be at the step of '{}'.</source>
        <translation>{} está en «{}», que no es de su ruta; se toma como si estuviera en el paso de «{}».</translation>
    </message>
    <message>
        <source>{} stands on {} now</source>
        <translation>{} está ahora en {}</translation>
    </message>
    <message>
        <source>{} taken in, {} as they are, {} of other calendars passed over</source>
        <translation>{} incorporados, {} como están, {} de otros calendarios omitidos</translation>
    </message>
    <message numerus="yes">
        <source>{} taken out dead</source>
        <translation>
            <numerusform>{} muerta retirada</numerusform>
            <numerusform>{} muertas retiradas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} targets of '{}' want {:.0f} seeds; {:.0f} are at hand, {:.0f} are lacking.</source>
        <translation>
            <numerusform>{} objetivo de «{}» necesita {:.0f} semillas; hay {:.0f}, faltan {:.0f}.</numerusform>
            <numerusform>{} objetivos de «{}» necesitan {:.0f} semillas; hay {:.0f}, faltan {:.0f}.</numerusform>
        </translation>
    </message>
    <message>
        <source>{} times the time to come up</source>
        <translation>{} veces el tiempo de nacer</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation>{} a {}</translation>
    </message>
    <message>
        <source>{} to {} of the floaters may be filled</source>
        <translation>de {} a {} de las que flotan pueden estar llenas</translation>
    </message>
    <message>
        <source>{} to {}, likely {}</source>
        <translation>{} a {}, probable {}</translation>
    </message>
    <message>
        <source>{} took no pollen: no seed of it is counted.</source>
        <translation>{} no recibió polen: no se cuenta semilla suya.</translation>
    </message>
    <message numerus="yes">
        <source>{} trays</source>
        <translation>
            <numerusform>{} bandeja</numerusform>
            <numerusform>{} bandejas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} trays had been sown by then, and all are left out, see below.</source>
        <translation>
            <numerusform>Hasta entonces se había sembrado {} bandeja, y queda fuera, vea abajo.</numerusform>
            <numerusform>Hasta entonces se habían sembrado {} bandejas, y todas quedan fuera, vea abajo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>{} trays of the taxon that are over</source>
        <translation>
            <numerusform>{} bandeja del taxón que ya terminó</numerusform>
            <numerusform>{} bandejas del taxón que ya terminaron</numerusform>
        </translation>
    </message>
    <message>
        <source>{} trays stay out of what is looked at together: what sets them apart goes hand in hand</source>
        <translation>{} bandejas quedan fuera de lo que se mira junto: lo que las distingue va de la mano</translation>
    </message>
    <message>
        <source>{} up of {} sown: {} too many</source>
        <translation>{} nacidas de {} sembradas: {} de más</translation>
    </message>
    <message>
        <source>{} values seen</source>
        <translation>{} valores vistos</translation>
    </message>
    <message>
        <source>{} waiting, past {}, the end by its route</source>
        <translation>{} en espera, pasado el {}, el final según su ruta</translation>
    </message>
    <message>
        <source>{} waiting; no route says for how long</source>
        <translation>{} en espera; ninguna ruta dice hasta cuándo</translation>
    </message>
    <message>
        <source>{} was begun on {}, after this day</source>
        <translation>{} se empezó el {}, después de este día</translation>
    </message>
    <message>
        <source>{} was collected on {}, after this test</source>
        <translation>{} se recogió el {}, después de esta prueba</translation>
    </message>
    <message>
        <source>{} was collected on {}, {} days after this</source>
        <translation>{} se recogió el {}, {} días después de esto</translation>
    </message>
    <message>
        <source>{} was collected on {}, {} days after this pollination</source>
        <translation>{} se recogió el {}, {} días después de esta polinización</translation>
    </message>
    <message>
        <source>{} was harvested on {} and gave seed</source>
        <translation>{} se cosechó el {} y dio semilla</translation>
    </message>
    <message>
        <source>{} was harvested on {}, before this look</source>
        <translation>{} se cosechó el {}, antes de esta observación</translation>
    </message>
    <message>
        <source>{} was harvested on {}, before this pollination</source>
        <translation>{} se cosechó el {}, antes de esta polinización</translation>
    </message>
    <message>
        <source>{} was never sown, or its sowing was reversed</source>
        <translation>{} nunca se sembró, o se anuló su siembra</translation>
    </message>
    <message>
        <source>{} was pollinated on {}, {} days after this harvest</source>
        <translation>{} se polinizó el {}, {} días después de esta cosecha</translation>
    </message>
    <message>
        <source>{} was scanned already</source>
        <translation>{} ya se leyó</translation>
    </message>
    <message>
        <source>{} was thrown away on {}</source>
        <translation>{} se tiró el {}</translation>
    </message>
    <message>
        <source>{} was to be ripe by {}: no seed of it is counted. Harvest it, if it still stands.</source>
        <translation>{} debía estar maduro hasta el {}: no se cuenta semilla suya. Coséchelo, si sigue en pie.</translation>
    </message>
    <message>
        <source>{} weighings are too few to compare</source>
        <translation>{} pesadas son muy pocas para comparar</translation>
    </message>
    <message numerus="yes">
        <source>{} were filled</source>
        <translation>
            <numerusform>{} estaba llena</numerusform>
            <numerusform>{} estaban llenas</numerusform>
        </translation>
    </message>
    <message>
        <source>{} with a leaf</source>
        <translation>{} con hoja</translation>
    </message>
    <message>
        <source>{} with a root</source>
        <translation>{} con raíz</translation>
    </message>
    <message>
        <source>{} with {}</source>
        <translation>{} con {}</translation>
    </message>
    <message>
        <source>{} would be its own ancestor: {}, parent of {}</source>
        <translation>{} sería su propio antepasado: {}, padre de {}</translation>
    </message>
    <message>
        <source>{} would go from '{}' to '{}' of the same lot</source>
        <translation>{} iría de «{}» a «{}» del mismo lote</translation>
    </message>
    <message numerus="yes">
        <source>{} years old</source>
        <translation>
            <numerusform>{} año</numerusform>
            <numerusform>{} años</numerusform>
        </translation>
    </message>
    <message>
        <source>{} {:.4g}, bound {:.4g}, gap {:.2g} %: proven the best there is</source>
        <translation>{} {:.4g}, cota {:.4g}, diferencia {:.2g} %: demostrado que es lo mejor</translation>
    </message>
    <message>
        <source>{} {:.4g}, bound {:.4g}: at most {:.2g} % from the best</source>
        <translation>{} {:.4g}, cota {:.4g}: a lo sumo {:.2g} % de lo mejor</translation>
    </message>
    <message>
        <source>{} {} is in the book</source>
        <translation>{} {} está en el libro</translation>
    </message>
    <message>
        <source>{} {} of {} → {} in {}</source>
        <translation>{} {} de {} → {} en {}</translation>
    </message>
    <message>
        <source>{} {} on the table, and {} are counted: {} too many</source>
        <translation>{} {} en la mesa, y se cuentan {}: {} de más</translation>
    </message>
    <message>
        <source>{} {}: {} of {}, {}{}</source>
        <translation>{} {}: {} de {}, {}{}</translation>
    </message>
    <message>
        <source>{} °C is hot for stored seed. If that was °F, it is {} °C: reverse this entry and put the seed by anew.</source>
        <translation>{} °C es mucho calor para semilla guardada. Si eran °F, son {} °C: anule esta anotación y guarde la semilla de nuevo.</translation>
    </message>
    <message>
        <source>{} · as of {}</source>
        <translation>{} · al {}</translation>
    </message>
    <message>
        <source>{}, and {} of this book</source>
        <translation>{}, y {} de este libro</translation>
    </message>
    <message>
        <source>{}, as of {}</source>
        <translation>{}, al {}</translation>
    </message>
    <message>
        <source>{}, continued</source>
        <translation>{}, continuación</translation>
    </message>
    <message>
        <source>{}, sown in {}</source>
        <translation>{}, sembrada en {}</translation>
    </message>
    <message>
        <source>{}, {} to {}: {} instead of {}, {}{:.0f} on average.</source>
        <translation>{}, de {} a {}: {} en lugar de {}, {}{:.0f} de media.</translation>
    </message>
    <message>
        <source>{}: cannot be written: {}</source>
        <translation>{}: no puede escribirse: {}</translation>
    </message>
    <message>
        <source>{}: test page</source>
        <translation>{}: página de prueba</translation>
    </message>
    <message>
        <source>{}: the float test is {} from now on. {}</source>
        <translation>{}: la prueba de flotación es {} desde ahora. {}</translation>
    </message>
    <message>
        <source>{}: {:.0f}-{:.0f} % of the grains germinate, {} of {} did</source>
        <translation>{}: germina del {:.0f} al {:.0f} % de los granos, lo hicieron {} de {}</translation>
    </message>
    <message>
        <source>{}: {:.0f}–{:.0f} % germinable, half of it up by day {:.0f}–{:.0f}</source>
        <translation>{}: {:.0f}–{:.0f} % germinable, la mitad nacida el día {:.0f}–{:.0f}</translation>
    </message>
    <message>
        <source>{}: {} cannot be told apart.</source>
        <translation>{}: {} no pueden distinguirse.</translation>
    </message>
    <message>
        <source>{}: {} counted, as the book says</source>
        <translation>{}: {} contadas, como dice el libro</translation>
    </message>
    <message>
        <source>{}: {} counted, the book had {}; {} missing, noted as unexplained</source>
        <translation>{}: {} contadas, el libro tenía {}; faltan {}, anotadas sin explicación</translation>
    </message>
    <message>
        <source>{}: {} counted, the book had {}; {} more, noted as unexplained</source>
        <translation>{}: {} contadas, el libro tenía {}; {} de más, anotadas sin explicación</translation>
    </message>
    <message>
        <source>{}: {} dead, {} left; the next look from {}</source>
        <translation>{}: {} muertas, quedan {}; la próxima revisión desde el {}</translation>
    </message>
    <message>
        <source>{}: {} judged filled, {} judged empty</source>
        <translation>{}: {} juzgadas llenas, {} juzgadas vacías</translation>
    </message>
    <message>
        <source>{}: {} of {} opened were filled</source>
        <translation>{}: {} de {} abiertas estaban llenas</translation>
    </message>
    <message>
        <source>{}: {} points in a hundred</source>
        <translation>{}: {} puntos de cien</translation>
    </message>
    <message>
        <source>{}: {} seeds in, but {} on hand and {} ended</source>
        <translation>{}: entraron {} semillas, pero hay {} y terminaron {}</translation>
    </message>
    <message>
        <source>{}: {}; nothing more is expected of it.</source>
        <translation>{}: {}; no se espera nada más de ella.</translation>
    </message>
    <message>
        <source>{}; no placing is better.</source>
        <translation>{}; ninguna colocación es mejor.</translation>
    </message>
    <message>
        <source>{}; {}, which lies within that, and opening more would leave too few. Keep them and float them again later.</source>
        <translation>{}; {}, que está dentro de eso, y abrir más dejaría muy pocas. Consérvelas y hágalas flotar otra vez más tarde.</translation>
    </message>
    <message>
        <source>{}; {}, which lies within that. Open {} more before you decide.</source>
        <translation>{}; {}, que está dentro de eso. Abra {} más antes de decidir.</translation>
    </message>
    <message>
        <source>{}; {}. But {}: open {} more before any are thrown away.</source>
        <translation>{}; {}. Pero {}: abra {} más antes de tirar ninguna.</translation>
    </message>
    <message>
        <source>{}; {}. Discard them.</source>
        <translation>{}; {}. Deséchelas.</translation>
    </message>
    <message>
        <source>{}; {}. Sow them.</source>
        <translation>{}; {}. Siémbrelas.</translation>
    </message>
    <message>
        <source>{}{} from '{}'{} back to '{}'{}</source>
        <translation>{}{} de «{}»{} de vuelta a «{}»{}</translation>
    </message>
    <message>
        <source>{}{} in {}</source>
        <translation>{}{} en {}</translation>
    </message>
    <message>
        <source>{}{} of {}: '{}' instead of '{}'</source>
        <translation>{}{} de {}: «{}» en lugar de «{}»</translation>
    </message>
    <message>
        <source>{}{} was '{}', is '{}'</source>
        <translation>{}{} era «{}», es «{}»</translation>
    </message>
    <message>
        <source>{}–{} %, likely {} %</source>
        <translation>{}–{} %, probable {} %</translation>
    </message>
    <message>
        <source>{}–{} %, {} of {} on {}</source>
        <translation>{}–{} %, {} de {} el {}</translation>
    </message>
    <message>
        <source>{}–{}, likely {}</source>
        <translation>{}–{}, probable {}</translation>
    </message>
    <message>
        <source>{}… ({} bytes)</source>
        <translation>{}… ({} bytes)</translation>
    </message>
</context>
</TS>
