## Bests

first-mark = Primer tiempo de { $name } en { $drill }: { $time }.
new-best = Nuevo mejor tiempo de { $name } en { $drill }: { $time }, { $by } s menos.
best-again = Corregido: el mejor tiempo de { $name } en { $drill } es { $time }.
best-gone = Corregido: { $name } no tiene ahora ningún mejor tiempo con testigo en { $drill }.
best-luck = Nuevo mejor tiempo por { $by } s. Tus tandas suelen variar unos { $noise } s: dos más parecidas lo dirán.
best-line = { $drill }: { $time }, { $day }, { $accepted } de { $plates }.
best-unwitnessed = { $drill }: primer tiempo { $time }, { $day }. Será un mejor tiempo cuando alguien que lo vio levante la mano.
no-best = Aún no hay ninguna tanda con tiempo. Envía una como `3:02 8/8`.

## Why

why-clock = { $drill }, { $clock } = { $seconds } s, { $accepted } de { $attempted } buenos.
why-charge = Un rechazo: cambio de plato { $change } s + (un plato solo { $alone } s x tu velocidad { $clock_s }/{ $standard }) = { $one } s.
why-net = { $redo } rechazos x { $attempted }/{ $accepted } por la posibilidad de fallar otra vez x { $one } s = { $charge } s. Neto { $seconds } + { $charge } = { $net } s = { $time }.
why-pace = { $net } s / { $touches } toques = { $pace } s por toque.
why-levelled = Estándar { $standard } s / 1.5 = { $levelled_touches } toques nivelados; { $net } / { $levelled_touches } = { $levelled } nivelado.
why-fitted = Estándar calculado { $standard }; las tandas de la cocina dicen x { $factor } ({ $low } a { $high }), de { $runs } tandas de { $cooks } cocineros.
why-unfitted = Vale el estándar calculado { $standard }. Para uno ajustado aún falta: { $missing }.
why-not-compared = Vale el estándar calculado { $standard }: por debajo de 1:00, con voces o entre dos no se compara con otros ejercicios.
why-no-time = Menos de { $gate } de { $attempted } buenos: hay cuenta, no hay tiempo.
no-why = Aún no hay ninguna tanda tuya que explicar.
