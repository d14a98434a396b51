"""Simulated kitchens of which the truth is known."""
