"""The rehearsal of a scripted chat."""
