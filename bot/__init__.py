"""Platepace: a bot in a kitchen team's own chat room that runs weekly plating practice."""
