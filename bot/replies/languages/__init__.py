"""The catalogues, one file a language."""
