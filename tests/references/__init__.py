"""Tests of references."""
