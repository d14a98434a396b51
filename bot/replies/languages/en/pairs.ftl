## Pair runs

pair-drill = { $name }, in a pair
pair-names = { $one } and { $other }
kept-for-pair = Kept for { $runner } and { $partner }. { $line }
pair-by-one-of-two = A pair run is sent by one of the two: `3:02 8/8 with @lio`, without `for`.
pair-with-whom = Drill { $drill } is laid out for two. Say with whom, like `3:02 8/8 with @lio`.
pair-with-self = A pair run needs somebody else; name them, like `3:02 8/8 with @lio`.
pair-one-plate = Drill { $drill } has one plate, so there is none to share. Send it without `with`.
