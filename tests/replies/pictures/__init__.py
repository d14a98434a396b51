"""The pictures, checked for what they show."""
