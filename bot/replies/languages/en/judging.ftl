## Dots measured on a plate

help-dots = `dots 10 10 9 11 10`: are these widths in mm even; `dots 10 10 9 of 10` against the called width; `dots 14 12 9 of 14 12 10` graded.
dots-even = Mean { $mean }, spread { $spread } %: accept.
dots-uneven = Mean { $mean }, spread { $spread } %: redo, at most { $most } % is even.
dots-as-called = Mean { $mean }, spread { $spread } %, each within { $leeway } mm of { $called }: accept.
dots-off-size = Mean { $mean }, spread { $spread } %: redo, dot { $nth } ({ $width }) is more than { $leeway } mm off { $called }.
dots-graded = { $count } dots, each at least { $step } mm smaller, the ends within { $leeway } mm of { $first } and { $last }: accept.
dots-not-graded = Redo: dot { $nth } ({ $width }) is not at least { $step } mm smaller than the one before ({ $before }).
dots-off-ends = Redo: dot { $nth } ({ $width }) is more than { $leeway } mm off { $called }.
dots-too-few = Measure two dots or more, like `dots 10 10 9 11 10`.
dots-too-many = Measure at most { $most } dots; it is a spot check.
dots-unreadable = I could not read “{ $typed }” as a width in mm; write widths with spaces between, like `dots 10 9.5 11`.
dots-out-of-range = A dot is more than 0 and at most { $most } mm wide; send the widths again, like `dots 10 10 9 11 10`.
dots-how-called = After `of` write one width, like `dots 10 10 9 of 10`, or one for each dot, like `dots 14 12 9 of 14 12 10`.
