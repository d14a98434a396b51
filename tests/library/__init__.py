"""Tests of library."""
