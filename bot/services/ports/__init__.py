"""What the services ask of the world, and the records that cross that line.

``events`` come in, ``messages`` go out, ``records`` are what is remembered, ``pipeline`` and
``repositories`` remember them, and ``world`` is the rest: the clock, the unit of work and the messenger.
"""
