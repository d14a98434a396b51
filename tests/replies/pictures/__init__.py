"""The pictures, checked for what they show and for how they look."""
