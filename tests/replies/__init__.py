"""Tests of replies."""
