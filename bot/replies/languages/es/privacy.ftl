## What is held about me, forget me, sore

help-records = `records`: todo lo que guardo de ti, en privado, como archivo JSON; `records csv` como tabla, `records text` en mensajes.
help-forget = `forget me`: borra todo lo que guardo de ti; se pregunta una vez más en nuestra sala privada.
help-sore = `sore`, solo en nuestra sala privada: qué hacer. No se guarda nada.

records =
    Lo que guardo de ti, tal como está, por tabla: { $counts }.
    Para tu práctica, nunca para sueldo, turnos, ascensos ni sanciones. Las copias hechas antes las guarda quien me administra: pregúntale.
    Si no hay un archivo junto a esto, escribe `records text`.
records-spelt =
    Lo que guardo de ti, tal como está, por tabla: { $counts }.
    { $parts ->
        [one] Sigue en un mensaje; cópialo en un archivo tal cual.
       *[other] Sigue en { $parts } mensajes; únelos en orden, y son un solo archivo.
    }
which-records = Escribe `records` para un archivo JSON, `records csv` para una tabla, o `records text` para mensajes.
records-none = No guardo nada de ti, salvo que estás en la sala.
forget-whom = Solo tú a ti: `forget me`.
forget-first = Escribe primero `forget me`; entonces pregunto una vez.
forget-sure =
    Esto borra tus tandas, enlaces de fotos, palabras, preguntas, borradores, función y nombre aquí. No se puede deshacer.
    Las pizarras cerradas conservan sus sumas y dicen "una persona de cocina". Las manos que levantaste quedan como número, sin ti.
    Lo que escribiste en la sala queda allí. Las copias hechas antes las guarda quien me administra: pregúntale.
    `yes, forget me`, aquí en nuestra sala privada, lo hace durante las próximas 12 horas.
forgotten =
    Borrado. Ya no guardo nada de ti, salvo que estás en la sala.
    Lo que escribiste en la sala queda allí. Las copias hechas antes las guarda quien me administra: pregúntale.
sore = Entumecimiento, hormigueo o dolor: para y acude a un profesional sanitario cualificado. De esto no se guarda nada.
sore-in-private = En nuestra sala privada, por favor: `sore` se responde allí, y no se guarda nada.
